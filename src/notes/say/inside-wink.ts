/** What of wink-nlp and its model of English is used behind its front door, as it is built in the version that package.json names. */

/** The lexicon, and the words met that it does not have. */
export interface WinkCache {
  lookup(text: string): readonly number[] | null;
  value(index: number): string;
  /** The plain form of a word, and of a piece of a contraction. */
  normal(index: number): number;
  nox(packed: number): number;
  mappedSpelling(index: number): number;
  property(index: number, name: string): number;
  posOf(index: number): number;
  isMemberPOS(index: number, pos: number): boolean;
  intrinsicSize(): number;
}

export interface WinkDocument {
  cache: WinkCache;
  /** Four numbers a token. */
  tokens: number[];
  nonBreakingSpaces: object;
}

/** Puts tokens into a document. */
export interface WinkWriter {
  _addTokenIfInCache(text: string, blanks: number, hard: string | null): number;
  isLexeme(text: string): readonly number[] | null;
}

export interface WinkModel {
  core(): {
    trex: unknown;
    tcat: { hash: unknown };
    preserve: unknown;
    features: { pos: { list: string[] } };
  };
  pos(): {
    machines: string[];
    transformers: ((tag: number, cache: WinkCache, tokens: readonly number[], at: number) => number)[];
  };
  featureFn: unknown;
  addons: {
    stem(word: string): string;
    lemmatize(word: string, pos: string, cache: WinkCache): string;
  };
}
