/** People who do something for the restorer, as far as the words show it: "Oona welded it", "he wouldn't take a penny". */
import type { TaggedWord } from './words.ts';

const list = (words: string): Set<string> => new Set(words.split(/[,\s]+/).filter(Boolean));

const KIN = list(
  `neighbour neighbor cousin brother sister uncle aunt auntie nephew niece father dad dada mother mum mam grandfather grandad friend mate pal chap lad bloke
  fellow gentleman lady man woman husband wife son daughter boy girl partner lads viewer reader subscriber somebody someone guy kid kids person people`,
);
/** What somebody does who helps; the machine's parts seldom do. */
const GIVES = list(
  `lent lends lend gave gives sent sends posted brought brings donated offered offers paid bought pressed welded welds machined soldered lathed bored reamed
  explained told showed taught found dug rang phoned wrote answered promised helped helps held holds pumped stood watched filmed drove drives followed towed
  came comes dropped collected fetched drew measured skimmed ground made makes cut cuts did does knelt lay sat stayed spent kept keeps printed translated turned turns
  slipped threw throws let lets`,
);
const SELDOM_A_THING = list(
  `lent lends lend gave sent posted donated offered offers paid bought welds explained told taught dug rang phoned wrote answered promised helped helps pumped watched filmed
  towed knelt stayed threw did does brought`,
);
const FILL = list(
  `also then just kindly even very already always both has had have 's 'd who has again really`,
);
const NO_NAME = list(
  `i we you he she they it that this which who what there everything nothing something anything one ones those these all both none it's that's engine`,
);
const PRONOUN = list('he she they');
const NOT_TAKEN =
  /\b(?:(?:won'?t|wouldn'?t|would not|will not|not|didn'?t|refused to|never) (?:take|have|hear of|accept|want|charge)\b[^.]{0,18}?\b(?:money|penny|cent|pence|anything|a thing|it back|crown|euro|quid|any|payment|petrol money|for (?:it|them|the))|(?:no charge|for nothing|free of charge|for free|only accept|as a (?:gift|present)|would only))/i;
const OWED =
  /\b(?:(?:owe|owes|owed|owing) (?:him|her|them|you|\p{Lu}\p{Ll}+)|(?:gets?|earned|deserves?|due|down for) (?:him |her |them )?(?:a|an|another|the|his|her) (?:\w+ )?(?:bottle|cake|pint|beer|pie|dinner|drink|box|jar|loaf)|(?:bottle|cake|beer|pint|chocolates|biscuits|jar|wine) (?:of \w+ )?(?:for|to) (?:him|her|them|the|my|\p{Lu}))/u;
const BLESSED =
  /\b(?:bless (?:him|her|them|you)|(?:top|good|decent) (?:man|lad|woman|sort|of (?:him|her|them))|you'?re a (?:saint|star|legend)|a saint|cheers|much obliged|thx|thanx|tnx|ta)\b/i;
const FOR_ME = /\b(?:for (?:me|us)|(?:lent|gave|sent|brought|told|showed|taught|made|cut|let) (?:me|us))\b/i;
const WITH =
  /\b(?:with|had) (?:my |our )?\p{Lu}\p{Ll}{2,} (?:on|at|work|hold|push|pump|steer|read|watch|holding|pumping|pushing|standing|watching|steering|reading|beside|behind|next to)\b/u;

/** Names of what the words show of helpers; "a name" alone says little. `from` is where the text stands in the source of its words. */
export function helpersIn(
  text: string,
  words: readonly TaggedWord[],
  from: number,
  names: ReadonlySet<string>,
): Set<string> {
  const out = new Set<string>();
  const written = /\p{Ll}/u.test(text) && /\p{Lu}/u.test(text.slice(1));
  for (let at = 0; at < words.length; at++) {
    const word = words[at];
    if (!word) continue;
    const first = text.charCodeAt(word.start - from);
    const capital = first >= 65 && first <= 90;
    const kin = KIN.has(word.text);
    const named = names.has(word.text);
    const name =
      named ||
      (word.pos === 'PROPN' &&
        capital &&
        !/^[A-Z0-9]+$/.test(text.slice(word.start - from, word.end - from)));
    if (named) out.add('a known name');
    else if (name && at > 0) out.add('a name');
    if (kin) out.add('kin');
    let next = words[at + 1];
    for (
      let k = at + 1;
      next && k < at + 4 && (FILL.has(next.text) || next.pos === 'ADV' || (name && next.pos === 'PROPN'));
      k++
    )
      next = words[k + 1];
    if (!next || !GIVES.has(next.text)) continue;
    if (named || name || kin) out.add(named ? 'a known name gives' : 'somebody gives');
    else if (PRONOUN.has(word.text)) {
      if (SELDOM_A_THING.has(next.text)) out.add('he or she gives');
    } else if (
      !written &&
      SELDOM_A_THING.has(next.text) &&
      /^(?:NOUN|PROPN|ADJ|ADV|X|INTJ|VERB)$/.test(word.pos) &&
      !NO_NAME.has(word.text) &&
      !/^(?:DET|PRON|ADP|AUX|ADJ|NUM)$/.test(words[at - 1]?.pos ?? '')
    )
      out.add('a bare word gives');
  }
  if (NOT_TAKEN.test(text)) out.add('takes nothing');
  if (OWED.test(text)) out.add('is owed');
  if (BLESSED.test(text)) out.add('blessed');
  if (FOR_ME.test(text)) out.add('for me');
  if (WITH.test(text)) out.add('with somebody at it');
  return out;
}
