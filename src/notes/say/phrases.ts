/** A vocabulary's phrases, met in tagged words. A word in its dictionary form is met in every inflection; an inflected word as it stands. */
import { type TaggedWord, taggedWords } from './words.ts';

interface Phrase {
  name: string;
  parts: readonly { stem?: string; text: string }[];
}

export interface Hit {
  /** Name of the class that the phrase belongs to. */
  name: string;
  /** Index of the first word, and how many. */
  at: number;
  length: number;
  denied: boolean;
}

export type Phrases = ReadonlyMap<string, readonly Phrase[]>;

/** Lists of phrases, parted by commas, under the name of their class. Indexed by the first word's text or stem. */
export function phrasesOf(
  lists: Readonly<Record<string, string>>,
  how: 'every inflection' | 'as written' = 'every inflection',
): Phrases {
  const index = new Map<string, Phrase[]>();
  const put = (key: string, phrase: Phrase): void => {
    const known = index.get(key);
    if (known) known.push(phrase);
    else index.set(key, [phrase]);
  };
  for (const [name, list] of Object.entries(lists))
    for (const words of new Set(list.split(',').flatMap(spellings))) {
      if (words === '') continue;
      const parts = taggedWords(words).map(({ text, stem, lemma }) =>
        how === 'every inflection' && text === lemma && text.length > 3 ? { text, stem } : { text },
      );
      const first = parts[0];
      if (!first) continue;
      put(first.stem ?? first.text, { name, parts });
    }
  for (const list of index.values()) list.sort((a, b) => b.parts.length - a.parts.length);
  return index;
}

/** A phrase as written, and without the apostrophe that quick hands leave out. */
function spellings(phrase: string): string[] {
  const plain = phrase.replace(/\s+/g, ' ').trim();
  return plain.includes("'") ? [plain, plain.replaceAll("'", '')] : [plain];
}

/** Every hit of every class; of one class only the longest that begins at a word. */
export function hitsIn(words: readonly TaggedWord[], phrases: Phrases): Hit[] {
  const hits: Hit[] = [];
  for (const [at, { text, stem }] of words.entries()) {
    const seen = new Set<string>();
    for (const key of text === stem ? [text] : [text, stem])
      for (const { name, parts } of phrases.get(key) ?? []) {
        if (seen.has(name) || !meets(words, at, parts)) continue;
        seen.add(name);
        hits.push({ name, at, length: parts.length, denied: words[at]?.denied === true });
      }
  }
  return hits;
}

function meets(words: readonly TaggedWord[], at: number, parts: Phrase['parts']): boolean {
  return parts.every((part, i) => {
    const word = words[at + i];
    return (
      word !== undefined && (part.stem === undefined ? word.text === part.text : word.stem === part.stem)
    );
  });
}
