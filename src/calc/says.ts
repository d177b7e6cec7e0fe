/**
 * What a calculator says with its figures, declared: texts with holes (holes.ts), formulas, tables, drawings. None of it is
 * loaded as script; it travels in the page that uses it, as page-says.ts makes it up.
 */
import { formula } from './formula.ts';
import type { As } from './holes.ts';
import type { Quantity, UnitId } from './units.ts';
import type { WorkingLine } from './working.ts';

/** Texts of which those stand that find their figures. */
export type Words = string | readonly string[];

export interface SaidTable {
  name: string;
  caption: Words;
  /**
   * Heading, and cell with the figures of its row: one text, where a missing figure is a dash, or several of which one
   * stands. A column whose heading is left out is left out.
   */
  columns: readonly (readonly [heading: string, cell: Words, kind?: 'words'])[];
}

/** A drawing of fixed parts with places and words to fill; `each` is drawn once a row. */
export interface SaidPicture {
  name: string;
  title: Words;
  desc: Words;
  height: number;
  parts: readonly string[];
  each?: readonly string[];
}

/** A chart's words; `curve` and `mark` are the labels of those that bring no word of their own. */
export interface SaidChart {
  name: string;
  title: Words;
  desc: Words;
  x: Words;
  y: Words;
  curve?: Words;
  mark?: Words;
}

export interface Says {
  /** Sentences of refusal, by the word that `solve` has for them; `{here}` is what was put into the field. */
  wrong?: Readonly<Record<string, string>>;
  notes?: readonly string[];
  /** Several things in a row, each said so, for a hole of the same name: "wheel (9.80 Hz); chain (3.27 Hz)". */
  lists?: Readonly<Record<string, Words>>;
  lines?: readonly WorkingLine[];
  tables?: readonly SaidTable[];
  drawings?: readonly (SaidPicture | SaidChart)[];
}

/**
 * Writes holes for figures of one kind.
 * @example
 * hole('length', 'mm')('travel') // => "{travel|length|mm|3}"
 */
export const hole =
  (quantity: Quantity, unit: UnitId, figures = 3, as: As = '') =>
  (name: string): string =>
    `{${name}|${quantity}|${unit}|${figures}${as && `|${as}`}}`;

/**
 * What a symbol of a formula stands for: a figure, or a constant in SI, and how it is printed, to four figures where no
 * number says otherwise; or a figure with what is printed for it, "{turns|rotation|rpm|4|bare}/min".
 */
export type SymbolOf =
  | readonly [figure: string | number, quantity: Quantity, unit: UnitId, figures?: number]
  | readonly [figure: string, text: string];

export type Symbols = Readonly<Record<string, SymbolOf>>;

/** Lines of working: what each works out, its formula, and a hole that asks for what it needs ("{?known=oil}"). */
export const lines = (
  symbols: Symbols,
  rows: readonly (readonly [says: string, formula: string, when?: string])[],
): readonly WorkingLine[] =>
  rows.map(([says, text, when = '']) => ({ says, when, ...formula(text, symbols) }));
