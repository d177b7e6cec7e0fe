/**
 * Each word of a text as the tagger's tables have it: its pieces with their stem, their dictionary forms, and what the rules
 * for parts of speech need to know of them. A written form is looked up once, and always in the same way, whatever was read before.
 */
import model from 'wink-eng-lite-web-model';
import cacheOf from 'wink-nlp/src/cache.js';
import compileTRex from 'wink-nlp/src/compile-trex.js';
import writerOf from 'wink-nlp/src/dd-wrapper.js';
import tokenizerOf from 'wink-nlp/src/tokenizer.js';
import type { WinkCache, WinkModel, WinkWriter } from './inside-wink.ts';

/** A word, a mark, or one half of a contraction. */
export interface Entry {
  value: string;
  /** In small letters. */
  small: string;
  stem: string;
  /** Its part of speech before its neighbours are looked at, by number. */
  usual: number;
  /** A part of speech that no neighbour changes; 0 for none. */
  fixed: number;
  /** What the rules see instead of its part of speech; 0 where they see that. */
  hint: number;
  canBe(tag: number): boolean;
  lemmaAs(tag: number): string;
}

/** What a run of characters without blanks consists of. */
export interface Read {
  entries: readonly Entry[];
  /** Its pieces, one behind the other, are the run as it is written. */
  whole: boolean;
}

/** A token's numbers: the word, its blanks with a contraction's piece above them, its dictionary form with its tag above that. */
const SIZE = 4;
const BLANKS = 65_535;
const LEMMA = 0xfffff;
const TAG_SHIFT = 20;
const TAG = 0x3f;
/** Parts of speech by number: a noun where the lexicon has none. */
const NOUN = 8;

const english = model as unknown as WinkModel;

export class Tables {
  readonly #core = english.core();
  readonly #hints = english.pos().transformers;
  readonly #cache: WinkCache = cacheOf(this.#core, english.featureFn);
  readonly #lexicon = this.#cache.intrinsicSize();
  readonly #tokenize = tokenizerOf(compileTRex(this.#core.trex), this.#core.tcat.hash, this.#core.preserve);
  readonly #known = new Map<string, Read>();
  /** Parts of speech by number. */
  readonly names: readonly string[] = this.#core.features.pos.list;

  read(written: string): Read {
    let found = this.#known.get(written);
    if (!found) {
      const tokens = this.#tokens(written);
      const entries = Array.from({ length: tokens.length / SIZE }, (_, at) => this.#entry(tokens, at));
      found = { entries, whole: entries.map(({ value }) => value).join('') === written };
      this.#known.set(written, found);
    }
    return found;
  }

  #tokens(written: string): number[] {
    const tokens: number[] = [];
    const writer = writerOf({ cache: this.#cache, tokens, nonBreakingSpaces: {} });
    // Words that were met before and are not in the lexicon decide nothing: else a name with its "'s" is one word or two,
    // by what stood before it in the text.
    const inLexicon = (text: string): boolean =>
      (this.#cache.lookup(text)?.[0] ?? this.#lexicon) < this.#lexicon;
    const steady: WinkWriter = {
      ...writer,
      _addTokenIfInCache: (text, blanks, hard) =>
        inLexicon(text) ? writer._addTokenIfInCache(text, blanks, hard) : 0,
      isLexeme: (text) => (inLexicon(text) ? writer.isLexeme(text) : null),
    };
    this.#tokenize(steady, written);
    return tokens;
  }

  #entry(tokens: readonly number[], nth: number): Entry {
    const cache = this.#cache;
    const [word = 0, expansion = 0, set = 0] = tokens.slice(nth * SIZE);
    const value = cache.value(word);
    const normal = expansion > BLANKS ? cache.nox(expansion) : cache.normal(word);
    const fixed = (set >>> TAG_SHIFT) & TAG;
    const spelt = cache.mappedSpelling(word);
    /** The one dictionary form that it has in any part of speech. */
    const only =
      expansion > BLANKS
        ? cache.value(set & LEMMA)
        : cache.property(spelt, 'isSLemma') === 1
          ? cache.value(cache.property(spelt, 'lemma'))
          : undefined;
    const lemmas: (string | undefined)[] = [];
    return {
      value,
      small: value.toLowerCase().replaceAll('’', "'"),
      stem: english.addons.stem(value),
      usual: set === 0 ? cache.posOf(spelt) || NOUN : fixed,
      fixed,
      hint: this.#hints[0]?.(0, cache, tokens, nth) ?? 0,
      canBe: (tag) => cache.isMemberPOS(normal, tag),
      lemmaAs: (tag) => {
        lemmas[tag] ??= (
          only ?? english.addons.lemmatize(cache.value(normal), this.names[tag] ?? '', cache)
        ).toLowerCase();
        return lemmas[tag] ?? '';
      },
    };
  }
}
