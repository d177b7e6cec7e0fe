/** The work that a statement tells of, as a step's title in the imperative: "I drained the old oil out" → "Drain the old oil". */
import { bareAt, laidAt } from './bare.ts';
import { PARTICLES, phraseAt, phraseBefore, whereTo, withArticle } from './phrase.ts';
import { placesIn } from './place.ts';
import { DEEDS, NOT_WORK, PLAIN_DEEDS } from './vocabulary/work.ts';
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
const NO_WORK = list(NOT_WORK);
const SHORT_PARTICLES = list('off out up down back in on apart together over away through');
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
const HARMED = list(
  'bend strip split crack break twist snap stretch tear scratch burn melt blow freeze seal worn round catch pinch chip dent',
);
const MEANT = list("'ll i'll we'll will let's lets gonna shall");

export function deedIn(words: readonly TaggedWord[]): Deed | undefined {
  if (/^(?:next|tomorrow|later|todo|still|remember|maybe|if|when|should)$/.test(words[0]?.text ?? ''))
    return undefined;
  let vague: Deed | undefined;
  for (const [at, word] of words.entries()) {
    const deed =
      verbAt(words, at) ?? (PARTICLES.has(word.text) ? (bareAt(words, at) ?? laidAt(words, at)) : undefined);
    // Work on a named thing says more than "clean it" before it.
    if (deed && deed.object !== '') return deed;
    vague ??= deed;
  }
  return vague;
}

function verbAt(words: readonly TaggedWord[], at: number): Deed | undefined {
  const word = words[at];
  if (!word || !/^[a-z'-]+$/.test(word.text)) return undefined;
  const verb = FORMS[word.text] ?? word.lemma;
  const known = VERBS.has(verb);
  // A verb that the list does not have is work where a thing of the machine stands behind it.
  if (
    !known &&
    (word.pos !== 'VERB' ||
      /^(?:was|were|is|are|'s|'re|been|be)$/.test(words[at - 1]?.text ?? '') ||
      NO_WORK.has(verb) ||
      !placesIn(words.slice(at + 1, at + 6)).length)
  )
    return undefined;
  const told = howTold(words, at, verb);
  if (!told) return undefined;
  let next = at + 1;
  const particle: string[] = [];
  while (SHORT_PARTICLES.has(words[next]?.text ?? '') && particle.length < 2) {
    const way = words[next]?.text ?? '';
    if (
      /^(?:in|on|over|through)$/.test(way) &&
      /^(?:DET|NOUN|PROPN|NUM|ADJ)$/.test(words[next + 1]?.pos ?? '')
    )
      break;
    particle.push(way);
    next += 1;
  }
  let object = phraseAt(words, next);
  let pronoun = '';
  if (object.text === '') {
    pronoun =
      /^(?:it|them|her|that|this|those|these|everything|both)$/.exec(words[next]?.text ?? '')?.[0] ?? '';
    if (pronoun) next += 1;
    const before = told === 'done' || told === 'ordered' ? phraseBefore(words, at) : '';
    if (!pronoun && before) object = { text: before, end: next };
  }
  const wentTo =
    object.text !== '' || pronoun !== ''
      ? whereTo(words, Math.max(object.end, next))
      : { particles: [], to: '' };
  if (PLAIN.has(verb) && phraseAt(words, next - (pronoun ? 1 : 0)).text === '' && !pronoun) return undefined;
  if (object.text === '' && !pronoun && told === 'done' && word.pos === 'NOUN') return undefined;
  return {
    title: titleOf(verb, [...particle, ...wentTo.particles], object.text, pronoun, wentTo.to),
    verb,
    told,
    at,
    object: object.text,
  };
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
  // "Is bent", "was cracked": a state, which nobody did just now.
  if (HARMED.has(verb) && !/^(?:i|we|'ve|then|and)$/.test(last?.text ?? '') && past) return undefined;
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
  // "The seal was four ninety": a thing, and no order.
  if (/^(?:AUX)$/.test(words[at + 1]?.pos ?? '')) return undefined;
  // A bare form: an order, or what "I" and "we" do.
  if (
    !last ||
    last.pos === 'PUNCT' ||
    /^(?:and|then|now|so|right|okay|ok|first|also|you|i|we|just|next|go|finally|well|please|to|there|back|done|out|off)$/.test(
      last.text,
    )
  ) {
    if (word.pos === 'NOUN' && !/^(?:DET|PRON|NUM)$/.test(words[at + 1]?.pos ?? '') && last?.pos !== 'PRON')
      return undefined;
    return 'ordered';
  }
  return undefined;
}

function titleOf(
  verb: string,
  particle: readonly string[],
  object: string,
  pronoun: string,
  to: string,
): string {
  const ways = [...new Set(particle)];
  const thing = object === '' ? pronoun : withArticle(object);
  // "Jack up the van", and "Take the wheel off" where few words say what goes.
  const words = [verb, ...(thing.split(' ').length > 4 ? [...ways, thing] : [thing, ...ways]), to];
  const title = words.filter(Boolean).join(' ');
  return title.slice(0, 1).toUpperCase() + title.slice(1);
}
