/** A fault's title as a mechanic would write it: "Fuel tap weeping at lever", from "fuel tap weeps at the lever, cork is hard as wood". */
import { hitsIn, type Phrases, phrasesOf } from '../../say/phrases.ts';
import { placesIn } from '../../say/place.ts';
import { WRONG } from '../../say/vocabulary/wrong.ts';
import type { TaggedWord } from '../../say/words.ts';
import { headline } from './headline.ts';
import { capital, nounsIn, tagged } from './nouns.ts';

export interface Titled {
  title: string;
  /** Dictionary form of the thing's last word: "tap"; empty where only "it" is said. */
  head: string;
  /** Words that tell it from its like: "left", "front". */
  side: string;
}

let compiled: Phrases | undefined;
/** How surely a clause tells of something wrong. */
function wrongIn(words: readonly TaggedWord[]): number {
  compiled ??= phrasesOf(WRONG);
  const hits = hitsIn(words, compiled);
  return Math.min(
    4,
    hits.reduce((sum, { name }) => sum + (name === 'judged' ? 0.3 : name === 'unsure' ? 1.5 : 3), 0),
  );
}

/** `thing` is what "it" stands for. */
export function faultTitle(words: string, because: string, thing: string): Titled {
  // Gravy and thumbnails are named too: only a part of the machine is what "it" stands for.
  const part = isPart(thing) ? thing : '';
  const label = /^([\p{L}][\p{L} /'-]{2,28}):\s/u.exec(words)?.[1] ?? '';
  const inLabel = tagged(label);
  const labelled =
    nounsIn(inLabel, label).length > 0 &&
    !inLabel.some(({ pos, text }) => pos === 'AUX' || /^(?:has|i|we|it)$/.test(text) || /ed$/.test(text));
  const pieces = piecesOf(labelled ? words.slice(label.length + 1) : words);
  let best: { text: string; tags: TaggedWord[]; at: number; score: number } | undefined;
  for (const [at, text] of pieces.entries()) {
    const lower = text.toLowerCase();
    const tags = tagged(text);
    // What the book says is no fault.
    const rule = /\b(?:limit|book|should|supposed|allow|wants to be)/.test(lower);
    const score =
      wrongIn(tags) +
      (/\b(?:gone|dead|missing|finished|none|nothing|plugged|solid|no (?!problem|matter|idea|longer))\b/.test(
        lower,
      )
        ? 1.5
        : 0) +
      (because !== '' && because !== 'as noted' && lower.includes(because) ? 1 : 0) +
      (nounsIn(tags, text).length > 0 && tags.length > 1 ? 1.5 : 0) +
      (tags.length > 1 ? 1 : -3) -
      (/^(?:cleared|fixed|cured|mended|tried|cut|put|took|measured|so i|had to)\b/.test(lower) ? 2 : 0) -
      (rule ? 3 : 0) -
      (/^(?:i|we|you)\b(?! (?:noticed|found|see|saw))/.test(lower) ? 2 : 0) -
      at * 0.3;
    if (!best || score > best.score) best = { text, tags, at, score };
  }
  const { text, tags, at } = best ?? { text: words, tags: tagged(words), at: 0 };
  // What "it" is in a later clause was named in an earlier one.
  const earlier = pieces.slice(0, at).flatMap((one) => {
    const those = tagged(one);
    return placesIn(those).length > 0 ? nounsIn(those, one) : [];
  });
  const meant = labelled ? label : (earlier[0]?.text ?? part);
  const { title, subject } = headline(text, tags, meant);
  const whose = machinePart(title) || meant === '' || !machinePart(meant) || FLOWS.test(meant) ? '' : meant;
  const known = title.toLowerCase().includes(whose.toLowerCase());
  // What was named a statement ago may be another thing: it is put before a title only where that says too little alone.
  const most = labelled || earlier.length > 0 ? 6 : 3;
  const long = title.split(' ').length;
  const full =
    whose !== '' && !known && long <= most
      ? `${capital(whose)}: ${lowered(title)}`
      : long > 1 || !SAYS.test(words)
        ? title
        : // "Gone.", "Dripping.": what was named last, whatever it was, or the words as they were said.
          thing !== '' && !title.toLowerCase().includes(thing.toLowerCase())
          ? `${capital(thing)}: ${lowered(title)}`
          : asSaid(words) || title;
  const named = subject === '' ? meant : subject;
  const head = nounsIn(tagged(named), named).at(-1)?.head ?? named.split(' ').at(-1) ?? '';
  return { title: full === '' ? 'Fault as noted' : full, head: head.toLowerCase(), side: sideOf(text) };
}

/** A bush or a seal may be anywhere, and what flows is everywhere. */
const FLOWS = /\b(?:petrol|fuel|mixture|coolant|oil|fluid|paint|primer|spark|timing|voltage)$/i;

const SAYS = /\p{L}{2}/u;

/** The first words as they were said, with no mark that a title may not have. */
const asSaid = (words: string): string =>
  capital(
    words
      .replace(/^[^\p{L}\p{N}]+/u, '')
      .split(/[.;:!?]/)[0]
      ?.split(/\s+/)
      .slice(0, 7)
      .join(' ')
      .replace(/[^\p{L}\p{N} ,/'-]/gu, '')
      .replace(/[ ,'-]+$/, '') ?? '',
  );

/** Whether the words name a part, wherever it may be. */
const isPart = (text: string): boolean =>
  placesIn(tagged(text.toLowerCase())).length > 0 || /\bbearings?$/.test(text);

/** Whether a part of the machine is named that has its place there: a bush may be anywhere, a kingpin may not. */
const machinePart = (text: string): boolean =>
  placesIn(tagged(text.toLowerCase())).some(({ name }) => name !== 'parts');

const lowered = (title: string): string =>
  /^\p{Lu}\p{Ll}/u.test(title) ? title.slice(0, 1).toLowerCase() + title.slice(1) : title;

/** Clauses of a statement, labels such as "next time:" put aside. */
function piecesOf(words: string): string[] {
  const list = words
    .replace(/^(?:next time|next|todo|to do|note|also|oh|and|so|but|right|okay|ok|well)[:,\s]+/i, '')
    .split(
      /[,;:!?()|]+\s*|\.\s+|\s(?:and|but|so|because|although|though)\s|\s[-–—]\s|\s(?=(?:there's|it's|that's|they're|there is|i've|i'm)\s)/,
    )
    .map((one) => one.replace(/^[-–—\s]+/, '').trim())
    .filter((one) => /\p{L}{2}/u.test(one));
  return list.length > 0 ? list : [words];
}

const SIDES =
  /\b(?:left|right|front|rear|back|inner|outer|upper|lower|top|bottom|near ?side|off ?side|nearside|offside|first|second|third|l\/h|r\/h|n\/s|o\/s|no\.? ?\d|number (?:one|two)|this side|other side)\b/gi;

export const sideOf = (text: string): string =>
  [...new Set((text.toLowerCase().match(SIDES) ?? []).map((one) => one.replace('back', 'rear')))]
    .sort()
    .join(' ');
