/** What a calculator found, said: the page's texts filled with its figures. */
import { chartRows } from './chart-rows.ts';
import type { Found, Output, Refusal, Solve, Values } from './contract.ts';
import { type Figures, filled } from './holes.ts';
import { escaped } from './svg.ts';

/** Markup with holes, in order; `each` is repeated for every row, and pieces that find no figure are left out. */
export interface Block {
  /** Of a table or drawing, which stand only where `solve` has something for them. */
  name?: string;
  /** Filled with outputs alone, so that what was put in under the same name is not shown as worked out. */
  results?: true;
  open: readonly string[];
  each?: readonly string[];
  close?: readonly string[];
}

/** Places on a sheet where an answer is drawn. */
export type Part = 'results' | 'drawings' | 'notes' | 'tables' | 'working';

/** What a page carries of a calculator's texts. */
export interface SaidOnPage {
  /** Sentences of refusal, by the word that `solve` has for them. */
  wrong: Readonly<Record<string, string>>;
  lists: Readonly<Record<string, readonly string[]>>;
  /** Outputs that a field of the same name may start from. */
  carry: Readonly<Record<string, string>>;
  parts: Partial<Readonly<Record<Part, readonly Block[]>>>;
}

/** An answer as a sheet shows it. */
export interface Answer {
  ok: true;
  /** By the names of the declared outputs; those that the given fields cannot answer are absent. */
  outputs: Readonly<Record<string, Output | undefined>>;
  /** Markup; an empty part is not shown. */
  parts: Partial<Record<Part, string>>;
}

const fill = (texts: readonly string[] = [], figures: Figures, safe?: (word: string) => string) =>
  texts.map((text) => filled(text, figures, safe)).join('');

export const drawn = ({ open, each, close }: Block, figures: Figures, rows: readonly Figures[]): string =>
  fill(open, figures, escaped) +
  rows.map((row) => fill(each, { ...figures, ...row }, escaped)).join('') +
  fill(close, figures, escaped);

/** What fills the holes: what the reader put in, without its ±, then the outputs, then the other figures that were found. */
export function figuresOf(values: Values, found: Found | Refusal): Record<string, Figures[string]> {
  const given: Record<string, Figures[string]> = {};
  for (const [name, value] of Object.entries(values))
    if (typeof value !== 'object') given[name] = value;
    else if ('si' in value) given[name] = value.si;
  return { ...given, ...found.outputs, ...found.figures };
}

/** `solve` with its figures said. `sheet` is the sheet's name, which tells its tables from those of another on the page. */
export const answering =
  ({ wrong, lists, parts }: SaidOnPage, solve: Solve, sheet: string) =>
  (values: Values): Answer | Refusal => {
    const found = solve(values);
    const figures = figuresOf(values, found);
    figures['sheet'] = sheet;
    if (!found.ok) {
      const errors = found.errors.map(({ field, message }) => ({
        field,
        message: filled(wrong[message] ?? message, { ...figures, here: figures[field] ?? '' }),
      }));
      return { ok: false, errors };
    }
    for (const [name, each] of Object.entries(lists)) {
      const all = found.lists?.[name]?.map((row) => fill(each, { ...figures, ...row }));
      figures[name] = all?.join('; ') || undefined;
    }
    const { outputs, shown = {} } = found;
    const draw = (block: Block): string => {
      // Without a name it stands always: results of what was worked out alone, sentences and formulas of all figures.
      if (!block.name) return drawn(block, block.results ? outputs : figures, []);
      const it = shown[block.name];
      if (!it) return '';
      if ('curves' in it) return drawn(block, figures, chartRows(it));
      const { at, rows = [{}] } = it;
      return rows.length > 0 ? drawn(block, { ...figures, ...at }, rows) : '';
    };
    const drawnParts = Object.entries(parts).map(([part, blocks]) => [part, blocks.map(draw).join('')]);
    return { ok: true, outputs, parts: Object.fromEntries(drawnParts) };
  };
