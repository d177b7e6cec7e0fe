/** The work that a statement tells of, as a step's title in the imperative: "I drained the old oil out" → "Drain the old oil". */
import { DEEDS, PLAIN_DEEDS } from './vocabulary/work.ts';
import type { TaggedWord } from './words.ts';

export interface Deed {
  title: string;
  /** The verb's dictionary form. */
  verb: string;
  /** How it is told: done, ordered ("drain the …"), meant ("I'll drain"), or a bare "tank off". */
  told: 'done' | 'ordered' | 'meant' | 'bare';
  /** Index of the word that tells it. */
  at: number;
  /** What is worked on, without its article; empty where only "it" is said. */
  object: string;
}

const list = (words: string): Set<string> => new Set(words.split(/[,\s]+/).filter(Boolean));
const VERBS = list(DEEDS);
const PLAIN = list(PLAIN_DEEDS);
const PARTICLES = list('off out up down back in on apart together over away through');
/** Forms that the tagger's dictionary does not lead back. */
const FORMS: Readonly<Record<string, string>> = {
  undid: 'undo',
  undone: 'undo',
  bled: 'bleed',
  ground: 'grind',
  cut: 'cut',
  set: 'set',
  put: 'put',
  split: 'split',
  took: 'take',
  drove: 'drive',
  felt: 'feel',
  drew: 'draw',
  bent: 'bend',
  hung: 'hang',
  "chk'd": 'check',
  chkd: 'check',
  refitted: 'refit',
  fitted: 'fit',
  primered: 'prime',
  rewound: 'wind',
  torqued: 'torque',
  greased: 'grease',
  lapped: 'lap',
  honed: 'hone',
};
/** Words before a verb that say it is not done here: feared, wished, told of others or of another day. */
const NOT_DONE = list(
  "can can't cannot could would won't never not n't should shouldn't if unless until till when whenever who which has needs need wants want wanted says said supposed meant ought might may must without instead before after tried trying hate hates love like liked used able afraid",
);
const MEANT = list("'ll i'll we'll will let's lets gonna shall");
const WITHOUT_ARTICLE = list(
  'it them this that these those everything all both one some any each more two three four five six seven eight nine ten my his her our their',
);

export function deedIn(words: readonly TaggedWord[]): Deed | undefined {
  if (/^(?:next|tomorrow|later|todo|still|remember|maybe|if|when|should)$/.test(words[0]?.text ?? ''))
    return undefined;
  for (const [at, word] of words.entries()) {
    const deed = verbAt(words, at) ?? (PARTICLES.has(word.text) ? bareAt(words, at) : undefined);
    if (deed) return deed;
  }
  return undefined;
}

function verbAt(words: readonly TaggedWord[], at: number): Deed | undefined {
  const word = words[at];
  if (!word || !/^[a-z'-]+$/.test(word.text)) return undefined;
  const verb = FORMS[word.text] ?? word.lemma;
  if (!VERBS.has(verb)) return undefined;
  const told = howTold(words, at, verb);
  if (!told) return undefined;
  let next = at + 1;
  const particle: string[] = [];
  while (PARTICLES.has(words[next]?.text ?? '') && particle.length < 2)
    particle.push(words[next++]?.text ?? '');
  let object = phraseAt(words, next);
  let pronoun = '';
  if (object.text === '') {
    pronoun =
      /^(?:it|them|her|that|this|those|these|everything|both)$/.exec(words[next]?.text ?? '')?.[0] ?? '';
    if (pronoun) next += 1;
    const before = told === 'done' || told === 'ordered' ? phraseBefore(words, at) : '';
    if (!pronoun && before) object = { text: before, end: next };
  }
  if (object.text !== '' || pronoun !== '')
    for (
      let k = Math.max(object.end, next), most = k + 2;
      k < most && PARTICLES.has(words[k]?.text ?? '') && words[k]?.pos !== 'NOUN';
      k++
    ) {
      // "in" and "on" before a thing lead to a place; alone they say what was done.
      if (
        /^(?:in|on|over|through)$/.test(words[k]?.text ?? '') &&
        /^(?:DET|NOUN|PROPN|NUM|ADJ|PRON)$/.test(words[k + 1]?.pos ?? '')
      )
        break;
      particle.push(words[k]?.text ?? '');
    }
  if (PLAIN.has(verb) && phraseAt(words, next - (pronoun ? 1 : 0)).text === '' && !pronoun) return undefined;
  if (object.text === '' && !pronoun && told === 'done' && word.pos === 'NOUN') return undefined;
  return { title: titleOf(verb, particle, object.text, pronoun), verb, told, at, object: object.text };
}

function howTold(words: readonly TaggedWord[], at: number, verb: string): Deed['told'] | undefined {
  const word = words[at];
  if (!word) return undefined;
  const inflected = word.text !== verb;
  const before = words.slice(Math.max(0, at - 4), at);
  const last = before.at(-1);
  // "Set" and "cut" are told by who does it.
  const past =
    (inflected && !/(?:ing|s)$/.test(word.text)) ||
    (word.text in FORMS && /^(?:i|we|he|she|they|'ve|have|was|were|got)$/.test(last?.text ?? ''));
  if (/^(?:came|come|comes|coming|looks?|feels?|felt)$/.test(last?.text ?? '')) return undefined;
  if (
    before.slice(-3).some(({ text }) => NOT_DONE.has(text)) &&
    !/^(?:drained|removed|cleaned|fitted)$/.test(word.text)
  )
    return undefined;
  if (
    last &&
    /^(?:the|a|an|my|this|that|to|no|some|each|very|too|bit|of|new|its)$/.test(last.text) &&
    !(last.text === 'to' && /^(?:going|got|have|had|is|was)$/.test(before.at(-2)?.text ?? ''))
  )
    return undefined;
  if (before.slice(-3).some(({ text }) => MEANT.has(text)) && !inflected) return 'meant';
  if (/ing$/.test(word.text))
    return word.pos === 'VERB' &&
      (!last ||
        /^(?:'m|am|i'm|we're|'re|are|then|start|started|by|now|and|,|was)$/.test(last.text) ||
        last.pos === 'PUNCT' ||
        last.pos === 'CCONJ')
      ? 'done'
      : undefined;
  if (past)
    return word.pos === 'ADJ' && /^(?:NOUN|PROPN)$/.test(words[at + 1]?.pos ?? '') && last
      ? undefined
      : 'done';
  if (inflected) return undefined;
  // A bare form: an order, or what "I" and "we" do.
  if (
    !last ||
    last.pos === 'PUNCT' ||
    /^(?:and|then|now|so|right|okay|ok|first|also|you|i|we|just|next|go|finally|well|please)$/.test(last.text)
  ) {
    if (word.pos === 'NOUN' && !/^(?:DET|PRON|NUM)$/.test(words[at + 1]?.pos ?? '') && last?.pos !== 'PRON')
      return undefined;
    return 'ordered';
  }
  return undefined;
}

/** "tank off", "both wheels back on": a thing and where it went. */
function bareAt(words: readonly TaggedWord[], at: number): Deed | undefined {
  const way = words[at]?.text ?? '';
  if (!/^(?:off|out|apart|in|on|back|down|up)$/.test(way)) return undefined;
  const next = words[at + 1];
  const ends =
    !next || next.pos === 'PUNCT' || /^(?:and|then|with|w|first|now|so|again|but|today)$/.test(next.text);
  if (
    !ends &&
    !(/^(?:off|apart)$/.test(way) && /^(?:NOUN|DET|ADJ)$/.test(next?.pos ?? '')) &&
    !(way === 'back' && /^(?:on|in|together)$/.test(next?.text ?? ''))
  )
    return undefined;
  let from = at;
  while (from > 0 && /^(?:NOUN|PROPN|ADJ|NUM)$/.test(words[from - 1]?.pos ?? '')) from -= 1;
  if (from > 0 && /^(?:is|'s|are|was|were|comes?|came|goes|went)$/.test(words[from - 1]?.text ?? '')) {
    let k = from - 1;
    if (from !== at) return undefined;
    while (k > 0 && /^(?:NOUN|PROPN|ADJ|NUM)$/.test(words[k - 1]?.pos ?? '')) k -= 1;
    if (k === from - 1) return undefined;
    return bare(words.slice(k, from - 1), way, next, at);
  }
  const lead = words[from - 1];
  if (
    from === at ||
    (lead && lead.pos !== 'PUNCT' && !/^(?:the|and|then|so|both|with|now|right|okay|a|my)$/.test(lead.text))
  )
    return undefined;
  return bare(words.slice(from, at), way, next, at);
}

function bare(
  things: readonly TaggedWord[],
  way: string,
  next: TaggedWord | undefined,
  at: number,
): Deed | undefined {
  const object = things.map(({ text }) => text).join(' ');
  const last = things.at(-1);
  if (
    !last ||
    last.pos === 'ADJ' ||
    last.pos === 'NUM' ||
    object.length > 40 ||
    /^(?:day|time|way|lot|bit|week|year|thing|money|price|turn|moment|mind)s?$/.test(last.text)
  )
    return undefined;
  const ways = way === 'back' && /^(?:on|in|together)$/.test(next?.text ?? '') ? `back ${next?.text}` : way;
  if (way === 'back' && ways === 'back') return undefined;
  const verb = /^(?:off|out|apart|down)$/.test(way) ? 'take' : 'put';
  return {
    title: `${verb === 'take' ? 'Take' : 'Put'} the ${object} ${ways}`,
    verb,
    told: 'bare',
    at,
    object,
  };
}

/** A thing named from a word on: "the old gearbox oil", up to five words. */
function phraseAt(words: readonly TaggedWord[], from: number): { text: string; end: number } {
  const out: string[] = [];
  let noun = false;
  let k = from;
  for (; k < words.length && out.length < 6; k++) {
    const word = words[k];
    if (!word) break;
    if (
      out.length === 0 &&
      (word.pos === 'DET' || /^(?:my|his|her|our|your|its|their|both|all|of)$/.test(word.text))
    ) {
      if (/^(?:both|all|every|each)$/.test(word.text)) out.push(word.text);
      continue;
    }
    if (word.pos === 'NOUN' || word.pos === 'PROPN') noun = true;
    else if (noun || !/^(?:ADJ|NUM|VERB)$/.test(word.pos) || (word.pos === 'VERB' && !/ed$/.test(word.text)))
      break;
    if (!/^[a-z0-9][a-z0-9'./-]*$/.test(word.text) || word.text === 'w' || word.text === 'abt') break;
    out.push(word.text);
  }
  return noun ? { text: out.join(' '), end: k } : { text: '', end: from };
}

/** "old petrol drained": the thing may stand before the word for the work, with "was" between. */
function phraseBefore(words: readonly TaggedWord[], at: number): string {
  let end = at;
  while (
    end > 0 &&
    /^(?:was|were|is|are|got|been|be|'s|has|have|had|all|then|now|also)$/.test(words[end - 1]?.text ?? '')
  )
    end -= 1;
  let from = end;
  while (from > 0 && end - from < 4 && /^(?:NOUN|PROPN|ADJ)$/.test(words[from - 1]?.pos ?? '')) from -= 1;
  const things = words.slice(from, end);
  if (things.length === 0 || !/^(?:NOUN|PROPN)$/.test(things.at(-1)?.pos ?? '')) return '';
  return things.map(({ text }) => text).join(' ');
}

function titleOf(verb: string, particle: readonly string[], object: string, pronoun: string): string {
  const parts = [...new Set(particle)];
  const first = object.split(' ')[0] ?? '';
  const thing =
    object === '' ? pronoun : WITHOUT_ARTICLE.has(first) || /^\d/.test(first) ? object : `the ${object}`;
  // "Jack up the van", and "Take the wheel off" where one word says what goes.
  const words = [verb, ...(thing.split(' ').length > 4 ? [...parts, thing] : [thing, ...parts])]
    .filter(Boolean)
    .join(' ');
  return words.slice(0, 1).toUpperCase() + words.slice(1);
}
