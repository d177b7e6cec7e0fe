/**
 * Texts with holes, and what fills them. A calculator declares all that it says (says.ts) and works out figures alone; here
 * the two come together, on the server and in the browser by one code.
 * `{travel|length|mm|3}` is a figure as printed, `{name}` a word, or a place on a drawing to a tenth; `{?name}` prints
 * nothing and asks for a figure that is there and not nothing, `{?!name}` for none, `{?known=oil}` for a word; `{~name}` is
 * a dash where nothing fills it, `{top_#}` the figure of the row's number. What else asks in vain or finds nothing is left out: the sentence, the formula, the line
 * of a drawing.
 */
import type { Output } from './contract.ts';
import { DASH, printFigure, printNumber } from './print-figure.ts';
import { escaped, r1 } from './svg.ts';
import type { Quantity, UnitId } from './units.ts';

/** By name: a figure in SI with its doubt or without, a word, or whether something holds. */
export type Figures = Readonly<Record<string, Output | number | string | boolean | undefined>>;

/** How a figure is printed: as in a sentence, without its ±, without its unit, in a formula, there in brackets if below nothing. */
export type As = '' | 'plain' | 'bare' | 'math' | 'term';

const mo = (text: string) => `<mo>${text}</mo>`;

/** A figure as printed, in a formula: the digits as a number, the unit upright. */
export function figureMathml(figure: string): string {
  const [, minus, digits, unit] = /^(\u2212?)([^\u00a0°]*)(.*)$/.exec(figure) ?? [];
  const all = `${minus && mo(minus)}<mn>${digits}</mn>${unit && `<mtext>${escaped(unit)}</mtext>`}`;
  return minus || unit ? `<mrow>${all}</mrow>` : all;
}

/** `format` is quantity, unit, significant figures (and fixed decimals behind a point), and how it is printed. */
function printed(x: Output | number | string | boolean, format: string): string {
  const [quantity, unit, digits = '', as] = format.split('|');
  const [figures, decimals] = digits.split('.').map(Number);
  const o = typeof x === 'object' ? x : { si: Number(x) };
  const print = as === 'bare' ? printNumber : printFigure;
  const bare = as && as !== 'bare';
  const text = quantity
    ? print(bare ? { si: o.si } : o, quantity as Quantity, unit as UnitId, figures, decimals)
    : String(x);
  if (as !== 'math' && as !== 'term') return text;
  const math = figureMathml(text);
  return as === 'term' && text.startsWith('\u2212') ? `<mrow>${mo('(')}${math}${mo(')')}</mrow>` : math;
}

const HOLE = /\{(\?!?|~)?(\w+#?)(?:=([^{}|]+))?(?:\|([^{}]+))?\}/g;

/** The text with its holes filled; empty where one of them asks in vain or finds nothing. */
export function filled(text: string, figures: Figures, safe = (word: string) => word): string {
  let lacks = false;
  const said = text.replace(HOLE, (_, mark: string, name: string, word: string, format: string) => {
    const x = figures[name.replace('#', String(figures['row']))];
    if (mark?.startsWith('?')) {
      lacks ||= Boolean(word ? x === word : x) === (mark === '?!');
      return '';
    }
    if (x === undefined || Number.isNaN(x)) {
      lacks ||= mark !== '~';
      return DASH;
    }
    if (format) return printed(x, format);
    return typeof x === 'string' ? safe(x) : r1(typeof x === 'object' ? x.si : Number(x));
  });
  return lacks ? '' : said;
}

/** The first of several texts that finds what it asks for. */
export const firstFilled = (texts: readonly string[], figures: Figures): string =>
  texts.map((text) => filled(text, figures)).find(Boolean) ?? '';
