/** A state and its mending in one breath, as quick notes have it: "neg lead green, scraped", "striker loose, did up". */
import { verbForm } from './verb-form.ts';
import { DEEDS } from './vocabulary/work.ts';
import type { TaggedWord } from './words.ts';

const WORK = new Set(DEEDS.split(/[,\s]+/).filter(Boolean));
const MENDED = new Set([
  'done',
  'did',
  'sorted',
  'new',
  'fixed',
  'ok',
  'replaced',
  'renewed',
  'cleared',
  'freed',
  'made',
  'mended',
  'swapped',
]);
const STOPS = /^[,;:\-–—→>]|^->$/;

/** True where a piece without work is followed, behind a comma, by a piece that begins with work done. */
export function thenMended(words: readonly TaggedWord[]): boolean {
  let worked = false;
  let length = 0;
  for (let at = 0; at < words.length; at++) {
    const word = words[at];
    if (!word) continue;
    if (STOPS.test(word.text)) {
      const next =
        words[at + 1]?.pos === 'ADV' || words[at + 1]?.text === 'so' ? words[at + 2] : words[at + 1];
      if (length >= 2 && !worked && next && (doneWork(next) || MENDED.has(next.text))) return true;
      continue;
    }
    length++;
    if (length === 1 && (doneWork(word) || (word.pos === 'VERB' && WORK.has(word.text)))) worked = true;
  }
  return false;
}

const doneWork = (word: TaggedWord): boolean => {
  const verb = verbForm(word, WORK);
  return verb !== word.text && WORK.has(verb);
};
