/** A clause as a headline: articles and "is" left out, what is denied kept, what happens again and again told as happening. */
import type { TaggedWord } from '../../say/words.ts';
import { capital } from './nouns.ts';

const MOST = 8;
/** A headline ends before one of these. */
const ENDS =
  /^(?:i|you|we|he|she|they|it|which|who|what|that|and|but|so|because|when|if|or|as|until|till|then|though|where|while|than|somebody|someone|ever|since|of course|look|mind|whatever)$/;
const DROPPED =
  /^(?:'d|the|a|an|is|are|was|were|be|been|being|am|'s|'re|'ve|isnt|this|these|those|some|just|really|very|quite|actually|still|also|now|there|here|altogether|all|bit|my|his|her|its|our|their|got|getting|gets|has|have|had|of|completely|simply|already|probably|nearly|pretty|absolutely|well)$/;
const KEPT_OF = /^(?:none|half|out|full|short|instead|most|lot)$/;
const LOOSE_END =
  /^(?:at|in|on|of|with|to|for|from|by|near|under|over|about|half|no|not|only|so|one|two|into|against|the|cannot|will|(?:does|do|did|will|would|could) not|like)$/;
/** "I noticed that", "found", "you can see": what follows is what was found. */
const LEADS =
  /^(?:(?:and|so|but|then|also|oh|well|now|okay|ok|right|yes|no(?=,)|the other thing is|another thing),? )*(?:(?:i|we|you|he|she)(?:'ve| have| had| can|'d)? (?:just |also |then )?(?:noticed|found|see|saw|discovered|spotted|think|reckon|notice|find)(?: (?:that|out))? |(?:found|noticed|saw|discovered|see)(?: that)? |you can see (?:from here )?(?:that )?|find out why |(?:because|since|where|when|if|as|that|at last|what else|now|also) |(?:now )?look(?: at (?:that|this|it))? (?=the |that |this )|(?:the )?(?:first|last|next|other) thing(?: is)? (?:is )?|it turns out(?: that)? |turns out |by the way )?/i;
const EXISTS = /^(?:there(?:'s|s| is| are| was| were|'re)|it's got|it has|they've got|got|has got|has)\s+/i;
const PRONOUN = /^(?:it|they|that|this|she|he|these|those|one|them)$/;
const DENIES: Readonly<Record<string, string>> = {
  wo: 'will not',
  ca: 'cannot',
  does: 'does not',
  do: 'do not',
  did: 'did not',
  could: 'could not',
  would: 'would not',
};
const RUN_TOGETHER: Readonly<Record<string, string>> = {
  wont: 'will not',
  cant: 'cannot',
  doesnt: 'does not',
  dont: 'do not',
  didnt: 'did not',
};

/** `thing` is what "it" stands for; `subject` is what the headline is about, empty where that is "it". */
export function headline(
  clause: string,
  tags: readonly TaggedWord[],
  thing: string,
): { title: string; subject: string } {
  let lead = LEADS.exec(clause)?.[0].length ?? 0;
  const exists = EXISTS.exec(clause.slice(lead));
  const hung = exists && /^(?:it|they|got|has)/i.test(exists[0]) ? thing : '';
  lead += exists?.[0].length ?? 0;
  const rest = tags.filter(({ start, pos }) => start >= lead && pos !== 'SPACE');
  // "The exhaust has got a hole in it": a hole in the exhaust.
  const turned = exists ? undefined : holeIn(clause, rest);
  if (turned) return { title: capital(tidy(turned.text)), subject: turned.subject };
  const verb = rest.findIndex(
    (word, at) =>
      word.pos === 'AUX' ||
      (at === 0 && word.pos === 'VERB' && word.text !== word.lemma && /[^s]s$/.test(word.text)) ||
      /^(?:'s|'re|has|have|had)$/.test(word.text) ||
      (at > 0 && word.pos === 'VERB' && !(/ed$|en$/.test(word.text) && rest[at + 1]?.pos === 'NOUN')),
  );
  const before = exists ? [] : rest.slice(0, Math.max(verb, 0));
  const out: string[] = [];
  let subject = '';
  const first = before.find(({ pos }) => !/^(?:DET|INTJ|CCONJ|PUNCT|SYM)$/.test(pos));
  const bare = !exists && before.length === 0 && thing !== '';
  if (first && /^(?:i|we|you|i'm|i've|we're|we've|you're)$/.test(first.text)) {
    if (thing !== '') out.push(thing);
  } else if (first && PRONOUN.test(first.text) && before[before.indexOf(first) + 1]?.text !== 'of') {
    if (thing !== '') out.push(thing);
  } else if (before.length > 0) {
    subject = subjectOf(clause, before, thing);
    if (subject !== '') out.push(subject);
  } else if (hung !== '') out.push(hung, 'with');
  else if (bare && /^(?:AUX|VERB|ADJ)$/.test(rest[0]?.pos ?? '')) out.push(thing);
  let length = out.join(' ').split(' ').filter(Boolean).length;
  const from = before.length;
  let denied = false;
  for (let at = from; at < rest.length && length < MOST; at++) {
    const word = rest[at];
    if (!word || /^(?:PUNCT|SYM|INTJ)$/.test(word.pos)) continue;
    const next = rest[at + 1];
    if (word.text === 'so' && next?.pos === 'ADJ') continue;
    if (ENDS.test(word.text) && out.length > 0 && at > from) break;
    const never =
      RUN_TOGETHER[word.text] ?? (next && /^(?:n't|nt|not)$/.test(next.text) ? DENIES[word.text] : undefined);
    if (never !== undefined) {
      out.push(never);
      denied = true;
      length += 2;
      if (RUN_TOGETHER[word.text] === undefined) at += 1;
      continue;
    }
    if (word.text === "n't" || word.text === 'nt' || word.text === 'isnt') {
      out.push('not');
      continue;
    }
    if (
      /^(?:has|have|had)$/.test(word.text) &&
      next &&
      (/^(?:DET|NUM)$/.test(next.pos) || /^(?:no|two|three|four|some)$/.test(next.text)) &&
      out.length > 0
    ) {
      out.push('with');
      length += 1;
      continue;
    }
    if (word.text === 'of' && KEPT_OF.test(out.at(-1) ?? '')) {
      out.push('of');
      continue;
    }
    if (word.text === 'of' && /^(?:NOUN|DET|PRON)$/.test(next?.pos ?? '') && out.length > 0) {
      out.push('of');
      continue;
    }
    if (
      (DROPPED.test(word.text) && !(word.text === 'all' && out.length === 0)) ||
      (word.pos === 'PRON' && !/^(?:nothing|none|anything|everything)$/.test(word.text))
    )
      continue;
    const said = clause.slice(word.start, word.end);
    const doing =
      !denied &&
      out.length > 0 &&
      word.text !== word.lemma &&
      /[^s]s$/.test(word.text) &&
      (word.pos === 'VERB' || (at === from && verb >= 0 && word.pos !== 'ADJ' && word.pos !== 'NOUN')) &&
      !rest.slice(at + 1).some(({ text }) => text === 'nothing');
    out.push(doing ? inProgress(word.lemma) : said);
    denied = false;
    length += 1;
  }
  while (out.length > 1 && LOOSE_END.test((out.at(-1) ?? '').toLowerCase())) out.pop();
  return { title: capital(tidy(out.join(' '))), subject };
}

const tidy = (text: string): string =>
  text
    // "O/s" and "l/h" are cut up by the tagger.
    .replace(/\b([on])\s*\/?\s*(s)\b/gi, '$1/$2')
    .replace(/\b([lr])\s*\/?\s*(h)\b/gi, '$1/$2')
    .replace(/\b(\p{L}+) \1\b/giu, '$1')
    .replace(/[^\p{L}\p{N} .,/'-]/gu, '')
    .replace(/(?:^| )(?:n't|nt|'s)\b/g, '')
    .replace(/\s+/g, ' ')
    .replace(/^[ .,'-]+|[ .,'-]+$/g, '');

/** Words before the verb, without articles: "near side rear shoe"; "one of the two studs" is a stud. */
function subjectOf(clause: string, before: readonly TaggedWord[], thing: string): string {
  const text = before.map(({ start, end }) => clause.slice(start, end)).join(' ');
  const one = /^one of (?:the |my |our )?(?:two |three |four |\w+teen |\d+ )?([\p{L} -]+)$/iu.exec(text)?.[1];
  if (one) {
    const [head = '', ...after] = one.split(' ');
    const named = one.split(/ (?=at |in |on |of )/)[0] ?? one;
    const words = named.split(' ');
    const last = words.pop() ?? head;
    return [...words, last.replace(/([^s])s$/, '$1'), ...after.slice(words.length)]
      .join(' ')
      .replace(/ (?:the|a) /g, ' ');
  }
  const words = before
    .filter(
      ({ text: said, pos }) =>
        pos !== 'PUNCT' &&
        pos !== 'INTJ' &&
        (!DROPPED.test(said) || said === 'of') &&
        !/^(?:which|that|who|if|when)$/.test(said),
    )
    .map(({ start, end }) => clause.slice(start, end));
  while (/^(?:and|so|but|then|of|also|oh|or|yes|which)$/i.test(words[0] ?? '')) words.shift();
  // "The upper one", of hoses, is the upper hose.
  const last = thing.split(' ').at(-1) ?? '';
  if (/^ones?$/i.test(words.at(-1) ?? '') && last !== '')
    words[words.length - 1] = /s$/i.test(words.at(-1) ?? '') ? last : last.replace(/([^s])s$/, '$1');
  return words.slice(-5).join(' ');
}

function holeIn(clause: string, rest: readonly TaggedWord[]): { text: string; subject: string } | undefined {
  const said = clause.slice(rest[0]?.start ?? 0);
  const found =
    /^(?:the |my |our |a )?([\p{L}][\p{L} -]{2,30}?)(?:'s| has| have|'ve)(?: got)? (?:a |an |some )?((?:small |big |tiny |little |pin ?)?(?:hole|crack|leak|dent|split|tear|groove|ridge|play|pinhole|kink)s?) (?:in|on|round) (?:it|them)\b/iu.exec(
      said,
    );
  return found ? { text: `${found[2]} in ${found[1]}`, subject: found[1] ?? '' } : undefined;
}

function inProgress(lemma: string): string {
  if (/[^aeiou]e$/.test(lemma) && !/ee$/.test(lemma)) return `${lemma.slice(0, -1)}ing`;
  if (/^[^aeiou]*[aeiou][bdgmnprt]$/.test(lemma)) return `${lemma}${lemma.at(-1)}ing`;
  return `${lemma}ing`;
}
