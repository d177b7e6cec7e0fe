/** A vocabulary's phrases, met in tagged words. A word in its dictionary form is met in every inflection; an inflected word as it stands. */
import { type TaggedWord, taggedWords } from './words.ts';

interface Phrase {
  name: string;
  parts: readonly { inflects: boolean; text: string }[];
}

export interface Hit {
  /** Name of the class that the phrase belongs to. */
  name: string;
  /** Index of the first word, and how many. */
  at: number;
  length: number;
  denied: boolean;
}

export type Phrases = ReadonlyMap<string, Begun>;

/** Phrases that begin with one word, longest first: found by the word behind it, since "the" or "not" begins hundreds. */
class Begun {
  readonly #all: readonly Phrase[];
  readonly #alone: readonly Phrase[];
  readonly #seconds: ReadonlySet<string>;
  readonly #behind = new Map<string, readonly Phrase[]>();

  constructor(phrases: readonly Phrase[]) {
    this.#all = phrases.toSorted((a, b) => b.parts.length - a.parts.length);
    this.#alone = this.#all.filter(({ parts }) => parts.length === 1);
    this.#seconds = new Set(phrases.flatMap(({ parts }) => parts[1]?.text ?? []));
  }

  /** Those that can be met where this word follows, in order. */
  before(next: TaggedWord | undefined): readonly Phrase[] {
    if (!next || this.#seconds.size === 0) return this.#alone;
    const root = rootOf(next);
    const other = root !== next.text && this.#seconds.has(root);
    if (!other && !this.#seconds.has(next.text)) return this.#alone;
    const key = other ? `${next.text} ${root}` : next.text;
    let found = this.#behind.get(key);
    if (!found) {
      found = this.#all.filter(({ parts: [, part] }) => !part || isMet(part, next));
      this.#behind.set(key, found);
    }
    return found;
  }
}

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
      const parts = taggedWords(words).map(({ text, lemma, stem }) => ({
        text,
        // "Rounded" and "bearing" are dictionary words too, but not the form that the others are made from.
        inflects:
          how === 'every inflection' &&
          text === lemma &&
          text.length > 3 &&
          !(stem !== text && /(?:ed|ing|en|s)$/.test(text)),
      }));
      const first = parts[0];
      if (first) put(first.text, { name, parts });
    }
  return new Map([...index].map(([word, list]) => [word, new Begun(list)]));
}

/** How quick hands and full sentences write the same denial. */
const DENIALS: readonly (readonly [string, readonly string[]])[] = [
  ["won't ", ["wouldn't ", 'would not ', 'will not ']],
  ["doesn't ", ["don't ", "didn't ", 'does not ', 'do not ', 'did not ']],
  ["isn't ", ["aren't ", "wasn't ", "weren't ", 'is not ', 'was not ', 'are not ']],
  ["can't ", ['cannot ', "couldn't ", 'could not ', 'can not ']],
];

/** A phrase as written, with "is", "has" and "are" drawn together, its denial in every shape, and without the apostrophe that quick hands leave out. */
function spellings(phrase: string): string[] {
  const plain = phrase.replace(/\s+/g, ' ').trim();
  const drawn = plain
    .replace(/(^| )(?:is|has)(?= )/, "$1's")
    .replace(/(^| )are(?= )/, "$1're")
    .replace(/(^| )have(?= )/, "$1've");
  const denied = DENIALS.flatMap(([one, others]) =>
    plain.startsWith(one) ? others.map((other) => other + plain.slice(one.length)) : [],
  );
  return [plain, drawn, ...denied].flatMap((one) => [one, one.replaceAll("'", '')]);
}

/** Every hit of every class; of one class only the longest that begins at a word. Plain loops: this runs over every word of a source. */
export function hitsIn(words: readonly TaggedWord[], phrases: Phrases): Hit[] {
  const hits: Hit[] = [];
  for (let at = 0; at < words.length; at++) {
    const word = words[at];
    if (!word) continue;
    const before = hits.length;
    add(phrases.get(word.text), at, before);
    const root = rootOf(word);
    if (root !== word.text) add(phrases.get(root), at, before);
  }
  return hits;

  function add(known: Begun | undefined, at: number, before: number): void {
    if (!known) return;
    for (const { name, parts } of known.before(words[at + 1])) {
      if (!meets(words, at, parts)) continue;
      let seen = false;
      for (let k = before; k < hits.length; k++) if (hits[k]?.name === name) seen = true;
      if (!seen) hits.push({ name, at, length: parts.length, denied: words[at]?.denied === true });
    }
  }
}

/** The dictionary form; of a plural that the tagger took for a name, the singular. */
const rootOf = ({ text, lemma, pos }: TaggedWord): string =>
  lemma === text &&
  (pos === 'PROPN' || pos === 'NOUN') &&
  text.length > 4 &&
  text.endsWith('s') &&
  !text.endsWith('ss')
    ? text.slice(0, -1)
    : lemma;

const isMet = (part: Phrase['parts'][number], word: TaggedWord): boolean =>
  word.text === part.text || (part.inflects && rootOf(word) === part.text);

function meets(words: readonly TaggedWord[], at: number, parts: Phrase['parts']): boolean {
  for (let i = 0; i < parts.length; i++) {
    const part = parts[i];
    const word = words[at + i];
    if (!word || !part || !isMet(part, word)) return false;
  }
  return true;
}
