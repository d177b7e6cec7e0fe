/** What is found: a figure of a rough text, with the unit that it was said in. Nothing is converted. */
export interface Figure {
  /** Offsets in the text. */
  start: number;
  end: number;
  value: number;
  /** "mm", "EUR", "ratio", "turn" …, as it was said. "gal", "pt", "ton" and their like stay as they are until the series says which. */
  unit: string;
  /** Where a limit is meant. */
  limit?: 'min' | 'max' | 'limit';
  about?: boolean;
  /** The unit does not stand on this figure but on another one. */
  shared?: boolean;
  /** The unit is told by the words around, not by a row that ends in it: "17 mm … it should be 18". */
  carried?: boolean;
  /** Decimals as written, so that print keeps them. */
  digits: string;
}

/** What the series says of its units, so that nothing need be guessed. */
export interface Habits {
  /** Which gallon the series means, where series.yaml says so. */
  gallon?: 'imperial' | 'US';
  /** Unit of a plain speed: "fifty-five on the level". */
  speed?: 'km/h' | 'mph';
  /** Home currency, for "four ninety" in a text that names none. */
  money?: string;
}

/** A number on its way to being a figure. Token indices run from `from` up to, not including, `to`. */
export interface Reading {
  from: number;
  to: number;
  value: number;
  digits: string;
  /** Said in words. */
  word: boolean;
  /** Has a decimal point or comma. */
  decimal: boolean;
  /** Tenths, eighths, hundredths …: the value is already divided. */
  part?: number;
  /** "two fifty", "twelve ninety-five", "eleven six": two numbers that may be one. */
  pair?: { high: number; low: number; oh: boolean; highTo: number };
  /** Written with a stroke, a fraction sign, or said as halves and quarters. */
  fraction?: boolean;
  about?: boolean;
}

/** A reading with its unit: empty where none is known, `none` where it measures nothing. */
export interface Candidate extends Reading {
  unit: string;
  start: number;
  end: number;
  limit?: 'min' | 'max' | 'limit';
  shared?: boolean;
  carried?: boolean;
}

export const NONE = 'none';
export const known = ({ unit }: { unit: string }): boolean => unit !== '' && unit !== NONE;
