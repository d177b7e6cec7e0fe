/** The work that a statement tells of, as a step's title in the imperative: "I drained the old oil out" → "Drain the old oil out". */
import { bareAt, laidAt } from './bare.ts';
import { howTold, isPartOfName, type ToldAs } from './how-told.ts';
import { notWorkedOn } from './not-worked-on.ts';
import { otherDeedAt } from './other-deeds.ts';
import { PARTICLES, type Phrase, phraseAt, phraseBefore, whereTo, withArticle } from './phrase.ts';
import { placesIn } from './place.ts';
import { verbForm } from './verb-form.ts';
import { DEEDS, NOT_WORK, PLAIN_DEEDS } from './vocabulary/work.ts';
import type { TaggedWord } from './words.ts';

export interface Deed {
  /** Empty where work is told, but nothing that a step could be called by. */
  title: string;
  /** The verb's dictionary form. */
  verb: string;
  /** How it is told: done, ordered ("drain the …"), meant ("I'll drain"), or a bare "tank off". */
  told: ToldAs;
  /** Index of the word that tells it. */
  at: number;
  /** What is worked on, without its article; empty where only "it" is said, or what no title names: gloves, an hour, a cake. */
  object: string;
}

const list = (words: string): Set<string> => new Set(words.split(/[,\s]+/).filter(Boolean));
const VERBS = list(DEEDS);
const PLAIN = list(PLAIN_DEEDS);
const NO_WORK = new Set([
  ...list(NOT_WORK),
  ...list('begin finish end manage reach show need scrap ask hide perish park stamp enjoy'),
]);
const SHORT_PARTICLES = list('off out up down back in on apart together over away through home');
/** "Oil changed", "points set": told of what was done though the verb is a plain one. */
const DONE_TO = /^(?:change|set|fix|check|lock|line|build|turn)$/;
/** Need to say where: "put the rule" is half a sentence. */
const NEEDS_WHERE = /^(?:put|take|lay|draw)$/;
/** What an engine is done to where only "it" is said. */
const ENGINE = /^(?:start|kick|crank|fire|rev)$/;

export function deedIn(words: readonly TaggedWord[]): Deed | undefined {
  if (/^(?:next|tomorrow|later|todo|still|remember|maybe|if|when|should)$/.test(words[0]?.text ?? ''))
    return undefined;
  let vague: Deed | undefined;
  for (const [at, word] of words.entries()) {
    const deed =
      otherDeedAt(words, at) ??
      verbAt(words, at) ??
      (PARTICLES.has(word.text) ? (bareAt(words, at) ?? laidAt(words, at)) : undefined);
    // Work on a named thing says more than "clean it" before it, and that more than work on nothing that has a name here.
    if (deed && deed.object !== '') return deed;
    if (deed && (!vague || (vague.title === '' && deed.title !== ''))) vague = deed;
  }
  return vague;
}

function verbAt(words: readonly TaggedWord[], at: number): Deed | undefined {
  const word = words[at];
  if (!word || !/^[a-z'-]+$/.test(word.text)) return undefined;
  let verb = verbForm(word, VERBS);
  const known = VERBS.has(verb);
  // A verb that the list does not have is work where a thing of the machine stands behind it.
  if (
    !known &&
    (word.pos !== 'VERB' ||
      /^(?:was|were|is|are|'s|'re|been|be)$/.test(words[at - 1]?.text ?? '') ||
      NO_WORK.has(verb) ||
      (!/^(?:DET|PRON)$/.test(words[at + 1]?.pos ?? '') && !/^(?:i|we)$/.test(words[at - 1]?.text ?? '')) ||
      (word.text === verb && !/^(?:DET|PRON)$/.test(words[at + 1]?.pos ?? '')) ||
      !placesIn(words.slice(at + 1, at + 6)).length)
  )
    return undefined;
  if (word.text === verb && isPartOfName(words, at)) return undefined;
  // "Paint: three coats", "I make that 22 cm", "a hundred stamped on it".
  if (words[at + 1]?.text === ':' || words[at - 1]?.pos === 'NUM') return undefined;
  if (verb === 'make' && (words[at + 1]?.pos === 'PRON' || /^(?:that|it)$/.test(words[at + 1]?.text ?? '')))
    return undefined;
  if (word.text === 'felt' && !/^(?:DET|PRON|ADP)$/.test(words[at + 1]?.pos ?? '')) return undefined;
  const told = howTold(words, at, verb);
  if (!told) return undefined;
  // "Clamp the hose, no, don't clamp the hose."
  const takenBack = words.some(
    ({ text, lemma }, k) =>
      k > at &&
      (text === verb || lemma === verb) &&
      /^(?:n't|not|dont|never)$/.test(words[k - 1]?.text ?? ''),
  );
  if (takenBack) return { title: '', verb, told, at, object: '' };
  const unnamed: Deed = { title: '', verb, told, at, object: '' };
  if (verb === 'brush' && words[at - 1]?.text === 'wire') verb = 'wire-brush';
  let next = at + 1;
  const before: string[] = [];
  while (SHORT_PARTICLES.has(words[next]?.text ?? '') && before.length < 2) {
    const way = words[next]?.text ?? '';
    if (
      /^(?:in|on|over|through)$/.test(way) &&
      /^(?:DET|NOUN|PROPN|NUM|ADJ)$/.test(words[next + 1]?.pos ?? '')
    )
      break;
    if (way === 'back' && /^(?:end|axle|wheel|plate|brake)s?$/.test(words[next + 1]?.text ?? '')) break;
    before.push(way);
    next += 1;
  }
  let object = phraseAt(words, next);
  let pronoun = '';
  if (object.text === '') {
    pronoun =
      /^(?:it|them|her|that|this|those|these|everything|both)$/.exec(words[next]?.text ?? '')?.[0] ?? '';
    if (pronoun) next += 1;
    const stoodBefore = told === 'done' || told === 'ordered' ? phraseBefore(words, at) : '';
    if (!pronoun && stoodBefore)
      object = { text: stoodBefore, full: withArticle(stoodBefore), end: next, led: true };
  }
  // "Pressed the new one in": what it is one of was named before.
  if (/\bones?$/.test(object.text)) {
    pronoun = object.full;
    next = object.end;
    object = { text: '', full: '', end: next, led: true };
  }
  if (object.text !== '' && notWorkedOn(object.text)) return unnamed;
  // "He wrapped it": what others did to something unnamed is no step of this machine.
  if (object.text === '' && /^(?:he|she|they)$/.test(words[at - 1]?.text ?? '')) return unnamed;
  // "The oil drained away": nobody did that.
  if (before.includes('away') && phraseAt(words, at + 1 + before.length).text === '') return undefined;
  const wentTo =
    object.text !== '' || pronoun !== ''
      ? whereTo(words, Math.max(object.end, next), verb)
      : { particles: [], to: '' };
  const nothingBehind = phraseAt(words, next - (pronoun ? 1 : 0)).text === '';
  if (PLAIN.has(verb) && nothingBehind && !pronoun && !(object.text !== '' && DONE_TO.test(verb)))
    return undefined;
  if (verb === 'put' && /^(?:list|shelf|page)$/.test(phraseAt(words, object.end + 1).text)) return unnamed;
  if (
    NEEDS_WHERE.test(verb) &&
    before.length + wentTo.particles.length === 0 &&
    wentTo.to === '' &&
    !isBehind(words, object)
  )
    return unnamed;
  if (object.text === '' && !pronoun && told === 'done' && word.pos === 'NOUN') return undefined;
  // An order with nothing behind it is a thing's name: "spring, pin, tap".
  if (
    object.text === '' &&
    !pronoun &&
    told === 'ordered' &&
    before.length === 0 &&
    words[at + 1]?.pos !== 'PUNCT'
  )
    return unnamed;
  const tries = words[at - 1]?.text === 'to' && /^(?:tried|trying)$/.test(words[at - 2]?.text ?? '');
  if (verb === 'mix' && object.text === '') object = { text: 'fuel', full: 'the fuel', end: next, led: true };
  const engine =
    object.text === '' &&
    /^(?:it|her|that)$/.test(pronoun) &&
    (ENGINE.test(verb) || (verb === 'turn' && wentTo.particles[0] === 'over'));
  if (engine) object = { text: 'engine', full: 'the engine', end: next, led: true };
  const title = titleOf(tries ? `try to ${verb}` : verb, before, object, engine ? '' : pronoun, wentTo);
  return { title, verb, told, at, object: object.text };
}

/** "Put a rule across it", "draw the plug": somewhere is told, though not in a way that a title takes. */
const isBehind = (words: readonly TaggedWord[], { end, text }: Phrase): boolean =>
  text !== '' &&
  placesIn([...words.slice(Math.max(0, end - 2), end)]).length > 0 &&
  words[end]?.pos === 'ADP';

function titleOf(
  verb: string,
  before: readonly string[],
  object: Phrase,
  pronoun: string,
  wentTo: { particles: readonly string[]; to: string },
): string {
  const behind = wentTo.particles.filter((way) => !before.includes(way));
  const words = [verb, ...before, object.text === '' ? pronoun : object.full, ...behind]
    .filter(Boolean)
    .join(' ');
  const title = `${words} ${wentTo.to}`.trim();
  const short = title.split(' ').length > 9 ? words : title;
  return short.slice(0, 1).toUpperCase() + short.slice(1);
}
