/** The work that a statement tells of, as a step's title in the imperative: "I drained the old oil out" → "Drain the old oil". */

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
const PARTICLES = list('off out up down back in on apart together over away through under onto into round');
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

/** "Trolley jack under the cross member", "primer on the tank": a thing of the shed and where it goes, without a verb. */
function laidAt(words: readonly TaggedWord[], at: number): Deed | undefined {
  const way = words[at]?.text ?? '';
  const tool = words[at - 1]?.text ?? '';
  if (!/^(?:under|on|in|over|onto|into|through|round)$/.test(way) || !LAID.has(tool)) return undefined;
  const before = words.slice(Math.max(0, at - 5), at - 1);
  if (before.some(({ pos, text }) => pos === 'VERB' || pos === 'AUX' || text === 'of' || text === 'no'))
    return undefined;
  const where = phraseAt(words, at + 1);
  if (where.text === '') return undefined;
  const title = tool === 'jack' ? `Jack up the ${where.text}` : `Put the ${tool} ${way} the ${where.text}`;
  return { title, verb: tool === 'jack' ? 'jack' : 'put', told: 'bare', at, object: where.text };
}

const LAID = list(
  'jack stands chocks primer undercoat topcoat paint grease gasket sealant clamp tray pan rag heat penetrating tape',
);

function verbAt(words: readonly TaggedWord[], at: number): Deed | undefined {
  const word = words[at];
  if (!word || !/^[a-z'-]+$/.test(word.text)) return undefined;
  const verb = FORMS[word.text] ?? word.lemma;
  const known = VERBS.has(verb);
  // A verb that the list does not have is work where a thing of the machine stands behind it.
  if (!known && (word.pos !== 'VERB' || NO_WORK.has(verb) || !placesIn(words.slice(at + 1, at + 6)).length))
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

/** Behind what was worked on: "back on", "off", or a short "into the pan". */
function whereTo(words: readonly TaggedWord[], from: number): { particles: string[]; to: string } {
  const particles: string[] = [];
  let k = from;
  for (; k < from + 2 && PARTICLES.has(words[k]?.text ?? ''); k++) {
    const way = words[k]?.text ?? '';
    const place = phraseAt(words, k + 1);
    const leads = /^(?:in|on|over|through|under|onto|into|round|to|from)$/.test(way);
    if (leads && place.text !== '' && place.text.split(' ').length <= 3)
      return { particles, to: `${way} ${withArticle(place.text)}` };
    if (leads && /^(?:DET|NOUN|PROPN|NUM|ADJ)$/.test(words[k + 1]?.pos ?? '')) break;
    particles.push(way);
  }
  const way = words[k]?.text ?? '';
  const place = /^(?:to|from|into|onto)$/.test(way) ? phraseAt(words, k + 1) : undefined;
  if (place && place.text !== '' && place.text.split(' ').length <= 3 && !/\d/.test(place.text))
    return { particles, to: `${way} ${withArticle(place.text)}` };
  return { particles, to: '' };
}

const withArticle = (thing: string): string =>
  WITHOUT_ARTICLE.has(thing.split(' ')[0] ?? '') || /^\d/.test(thing) ? thing : `the ${thing}`;

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

/** "tank off", "both wheels back on": a thing and where it went. */
function bareAt(words: readonly TaggedWord[], at: number): Deed | undefined {
  const way = words[at]?.text ?? '';
  if (!/^(?:off|out|apart|in|on|back|down|up)$/.test(way)) return undefined;
  const next = words[at + 1];
  const ends =
    !next ||
    next.pos === 'PUNCT' ||
    /^(?:and|then|with|w|first|next|now|so|again|but|today|here)$/.test(next.text);
  if (
    !ends &&
    !(/^(?:off|apart)$/.test(way) && /^(?:NOUN|DET|ADJ)$/.test(next?.pos ?? '')) &&
    !(way === 'back' && /^(?:on|in|together)$/.test(next?.text ?? ''))
  )
    return undefined;
  let from = at;
  while (from > 0 && inThing(words[from - 1])) from -= 1;
  if (from > 0 && /^(?:is|'s|are|was|were|comes?|came|goes|went)$/.test(words[from - 1]?.text ?? '')) {
    let k = from - 1;
    if (from !== at) return undefined;
    while (k > 0 && inThing(words[k - 1])) k -= 1;
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

/** Part of a thing's name. "Mounts" and "plugs" look like verbs to a tagger. */
const inThing = (word: TaggedWord | undefined): boolean =>
  word !== undefined &&
  (/^(?:NOUN|PROPN|ADJ|NUM)$/.test(word.pos) ||
    (word.pos === 'VERB' && /s$/.test(word.text) && placesIn([word]).length > 0));

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
