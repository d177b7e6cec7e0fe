/** A text as a row of tokens, as the gate reads it. */

/** One word or number of a text. */
export interface Token {
  /** Lower case, without apostrophe: "dont", "lean", "25". */
  word: string;
  /** Set where the token is a figure. */
  number?: number;
  /** Where it stands in its field. */
  offset: number;
  end: number;
  /** Place in the row; a sentence's end widens the gap, so that windows seldom reach across it. */
  at: number;
}

/** Left out of the row, so that "jack the front up" and "jack front up" read alike. */
const SKIPPED = new Set(
  'a an the this that these those its our their some any very quite really just uh um er erm so well then again now'.split(
    ' ',
  ),
);

export const isSkipped = (word: string): boolean => SKIPPED.has(word);

const TENS: Readonly<Record<string, number>> = {
  twenty: 20,
  thirty: 30,
  forty: 40,
  fifty: 50,
  sixty: 60,
  seventy: 70,
  eighty: 80,
  ninety: 90,
};
const ONES: Readonly<Record<string, number>> = {
  one: 1,
  two: 2,
  three: 3,
  four: 4,
  five: 5,
  six: 6,
  seven: 7,
  eight: 8,
  nine: 9,
  ten: 10,
  eleven: 11,
  twelve: 12,
  fifteen: 15,
  sixteen: 16,
  hundred: 100,
};

/** Value of a number word ("fifty", "twelve"), for figures spoken in captions. */
export const numberWord = (word: string): number | undefined => NUMBERS.get(word);
export const isTens = (word: string): boolean => TENS_NAMED.has(word);
const NUMBERS = new Map(Object.entries({ ...TENS, ...ONES }));
const TENS_NAMED = new Set(Object.keys(TENS));

const SENTENCE_GAP = 7;
const PIECE = /(\d+(?:[.,]\d+)*)(?=([a-z°%]*))|[a-z]+(?:['’][a-z]+)*|[.!?;\n]+|[,:()–—]|[°%]/g;

/** Reads a text into `into`, starting at place `at`; returns the next free place. */
export function tokenise(text: string, at: number, into: Token[]): number {
  const lower = text.toLowerCase();
  PIECE.lastIndex = 0;
  let next = at;
  for (let found = PIECE.exec(lower); found !== null; found = PIECE.exec(lower)) {
    const piece = found[0];
    const first = piece.charCodeAt(0);
    const offset = found.index;
    if (first >= 48 && first <= 57) {
      // "2k" and "2t" are words of the trade; elsewhere figure and unit part company.
      const unit = found[2];
      if ((unit === 'k' || unit === 't') && piece === '2') {
        PIECE.lastIndex = offset + 2;
        into.push({ word: piece + unit, offset, end: offset + 2, at: next++ });
        continue;
      }
      into.push({ word: piece, number: readFigure(piece), offset, end: offset + piece.length, at: next++ });
    } else if ((first < 97 && first !== 37) || first > 8000) {
      // A comma parts phrases, a full stop or a line's end parts sentences.
      if (into.length > 0) next += /[,:()–—]/.test(piece) ? 1 : SENTENCE_GAP;
    } else {
      const word = piece.includes("'") || piece.includes('’') ? piece.replace(/['’]/g, '') : piece;
      if (SKIPPED.has(word)) continue;
      const number = numberWord(word);
      into.push(
        number === undefined
          ? { word, offset, end: offset + piece.length, at: next++ }
          : { word, number, offset, end: offset + piece.length, at: next++ },
      );
    }
  }
  return next;
}

const readFigure = (text: string): number =>
  Number(/^\d{1,3}(,\d{3})+$/.test(text) ? text.replace(/,/g, '') : text.replace(',', '.'));
