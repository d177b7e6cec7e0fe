/** Cuts speech without stops where a new turn begins. A cut too few only makes a long sentence; one too many breaks it. */
import type { TaggedWord } from './words.ts';

/** Marks of a fresh start, wherever the words before them can end a sentence. */
const MARKERS = new Set([
  'okay',
  'ok',
  'right',
  'now',
  'anyway',
  'next',
  'thanks',
  'then',
  'so',
  'well',
  'first',
  'finally',
  'also',
  'oh',
  'cheers',
  'yeah',
  'yes',
  'no',
  'alright',
]);
const SUBJECTS = new Set([
  'i',
  'we',
  'it',
  'that',
  'this',
  'there',
  'you',
  'he',
  'she',
  'they',
  'these',
  'those',
  'here',
  "i'm",
  "i've",
  "i'll",
  "i'd",
]);
const LINKS = new Set(['and', 'but', 'so', 'because', 'cos', 'or']);
/** Words that nothing new begins behind: they wait for what follows. */
const WAITING = new Set(
  'if as when because where how than to the a an of for with so till until before after while whether like think bet say said says know not why sure then by from at in on is was do did can should must could would will hope suppose unless once since see thing what just which who that and or but means mean reckon guess tell told wish thought feel felt make sure makes made let lets get got though although every each either neither whichever wherever whenever whatever whoever some any my your his her our their no very quite too much more less about around into onto under over between through'.split(
    ' ',
  ),
);
const NOT_FRESH: ReadonlyMap<string, RegExp> = new Map([
  ['so', /^(?:that|far|much|many|tight|loose|hard|bad|i|long)$/],
  ['then', /^(?:the|it|you)$/],
  ['now', /^(?:and|it)$/],
  [
    'right',
    /^(?:side|hand|one|front|rear|way|up|hub|down|round|through|at|on|in|angle|place|thread|stuff|size|tool|sort|kind|bit|off|away|out|back|into|to|across|under|over|past|against|along|behind|until|till|before|after|here|there|height|length|amount|moment)$/,
  ],
  ['next', /^(?:to|time|week|year|one|month|door|size)$/],
  ['well', /^(?:worn|inside|below|above|within|and|enough)$/],
  ['first', /^(?:gear|one|time|and|coat|fill|kick|pull|go|start|of)$/],
  ['no', /./],
]);

export function turns(words: readonly TaggedWord[], from: number, to: number): [number, number][] {
  const out: [number, number][] = [];
  let start = 0;
  let verb = false;
  let begins = from;
  for (const [i, word] of words.entries()) {
    if (i > start && i < words.length - 2 && freshAt(words, i, i - start, verb)) {
      out.push([begins, word.start]);
      begins = word.start;
      start = i;
      verb = false;
    }
    if (word.pos === 'VERB' || word.pos === 'AUX') verb = true;
  }
  out.push([begins, to]);
  return out;
}

function freshAt(words: readonly TaggedWord[], i: number, length: number, verb: boolean): boolean {
  const word = words[i];
  // "and uh the plan": a filler parts nothing.
  let k = i - 1;
  while (k > 0 && words[k]?.pos === 'INTJ' && /^(?:uh|um|er|erm|hmm)$/.test(words[k]?.text ?? '')) k -= 1;
  const before = words[k];
  const next = words[i + 1];
  if (!word || !before || !next || before.pos === 'PUNCT') return false;
  if (WAITING.has(before.text) || before.pos === 'DET' || before.pos === 'AUX' || before.pos === 'PART')
    return false;
  if (
    MARKERS.has(word.text) &&
    length >= 4 &&
    (verb || length >= 6) &&
    !NOT_FRESH.get(word.text)?.test(next.text)
  )
    return true;
  const acts = word.text.includes("'") || ahead(words, i + 1);
  if (LINKS.has(word.text)) {
    // "Two hundred and twenty" is one number.
    if (before.pos === 'NUM' && (next.pos === 'NUM' || next.text === 'a')) return false;
    const subject =
      SUBJECTS.has(next.text) ||
      ((next.pos === 'DET' || next.pos === 'NOUN' || next.pos === 'PROPN') && ahead(words, i + 2));
    return (
      length >= (word.text === 'because' || word.text === 'cos' ? 22 : 9) &&
      verb &&
      (subject || length >= 24) &&
      words.length - i >= 4
    );
  }
  if ((!verb && length < 12) || (before.pos === 'ADP' && length < 7)) return false;
  // "When I twisted it": what a verb is done to begins nothing.
  if (/^(?:it|you)$/.test(word.text) && before.pos === 'VERB' && next.pos !== 'AUX' && next.text !== "'s")
    return false;
  // "And waggle it side to side": a verb of "it" has an ending.
  if (word.text === 'it' && next.pos !== 'AUX' && next.text !== "'s" && next.text === next.lemma)
    return false;
  if (SUBJECTS.has(word.text) && !/^(?:that|this|these|those)$/.test(word.text))
    return (
      length >= (word.text.includes("'") ? 5 : 6) &&
      acts &&
      before.pos !== 'SCONJ' &&
      !(before.pos === 'NOUN' && /^(?:i|we|you|he|she|they)$/.test(word.text) && length < 9)
    );
  if (/^(?:that|this|these|those)$/.test(word.text))
    return (
      length >= 7 &&
      (next.pos === 'AUX' || next.text === "'s") &&
      before.pos !== 'VERB' &&
      before.pos !== 'SCONJ' &&
      before.pos !== 'NOUN'
    );
  // "… by hand | the inner bearing is blue": a thing with its verb behind a whole clause.
  if (
    length >= 9 &&
    word.pos === 'DET' &&
    /^(?:the|a|an|my|his|her|our|other)$/.test(word.text) &&
    before.pos !== 'VERB' &&
    before.pos !== 'ADP' &&
    before.pos !== 'SCONJ'
  )
    return thingActs(words, i);
  return false;
}

/** Whether a verb that can be a sentence's own follows within two words. */
function ahead(words: readonly TaggedWord[], i: number): boolean {
  for (let k = i; k < Math.min(words.length, i + 2); k++) {
    const word = words[k];
    if (!word) return false;
    if (word.pos === 'AUX' || word.pos === 'VERB' || word.text === "'s" || word.text === "n't") return true;
    if (word.pos !== 'ADV') return false;
  }
  return false;
}

function thingActs(words: readonly TaggedWord[], i: number): boolean {
  let nouns = 0;
  for (let k = i + 1; k < Math.min(words.length, i + 5); k++) {
    const word = words[k];
    if (!word) return false;
    if (word.pos === 'NOUN' || word.pos === 'PROPN') nouns += 1;
    else if (nouns > 0) return word.pos === 'AUX' || word.text === "'s";
    else if (word.pos !== 'ADJ' && word.pos !== 'NUM') return false;
  }
  return false;
}
