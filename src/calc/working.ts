import type { Op, Sign, Term, WorkingLine } from './contract.ts';
import { printFigure } from './print-figure.ts';
import { escaped } from './svg.ts';
import type { Quantity, UnitId } from './units.ts';

/**
 * A symbol with its figure. A letter after an underscore is set as subscript: sign('d_p', …).
 * @example
 * sign('α', 0.41888, 'angle', 'deg').figure // => "24.00°"
 */
export function sign(name: string, si: number, quantity: Quantity, unit: UnitId, figures = 4): Sign {
  const [text = '', sub] = name.split('_');
  const figure = printFigure({ si }, quantity, unit, figures);
  return sub === undefined ? { k: 'v', text, si, figure } : { k: 'v', text, sub, si, figure };
}

/** A plain number of a formula: the 2 of 2r. */
export const num = (x: number, figure = String(x)): Term => ({ k: 'n', si: x, figure });

const op =
  (name: Op) =>
  (...args: readonly (Term | number)[]): Term => ({
    k: 'op',
    op: name,
    args: args.map((a) => (typeof a === 'number' ? num(a) : a)),
  });

export const add = op('+');
export const minus = op('-');
export const times = op('*');
export const over = op('/');
export const power = op('^');
export const root = op('sqrt');
export const sine = op('sin');
export const cosine = op('cos');
export const tangent = op('tan');
export const arcsine = op('asin');
export const arccosine = op('acos');
export const arctangent = op('atan');

export const line = (says: string, is: Sign, formula: Term): WorkingLine => ({ says, is, formula });

/** How tightly an operator binds; a looser argument is bracketed. */
const BINDS: Partial<Record<Op, number>> = { '+': 1, '-': 1, '*': 2, '/': 3, '^': 4 };

/** Whether an argument needs brackets: as it binds, and, with figures put in, where its unit or its minus would mislead. */
function brackets(parent: Op, arg: Term, at: number, figures: boolean): boolean {
  const outer = BINDS[parent];
  const base = parent === '^' && at === 0;
  if (arg.k === 'n') return base && arg.figure.includes('\u00a0');
  if (arg.k === 'v') return figures && !!outer && (base || (at > 0 && arg.figure.startsWith('\u2212')));
  const inner = BINDS[arg.op];
  if (!inner) return base;
  return !!outer && parent !== '/' && (base || inner < outer || (parent === '-' && at > 0 && inner === 1));
}

const mo = (text: string) => `<mo>${text}</mo>`;
const mrow = (...inner: string[]) => `<mrow>${inner.join('')}</mrow>`;
/** The code's asin is the trade's arcsin. */
const named = (op: Op) => op.replace(/^a/, 'arc');

/** A figure as printed: the digits as a number, the unit upright. */
function figureMathml(figure: string): string {
  const [, digits = '', unit = ''] = /^([^\u00a0°]*)(.*)$/.exec(figure) ?? [];
  const negative = digits.startsWith('\u2212');
  const number = `<mn>${negative ? digits.slice(1) : digits}</mn>`;
  const all = (negative ? mo('\u2212') : '') + number + (unit ? `<mtext>${escaped(unit)}</mtext>` : '');
  return negative || unit ? mrow(all) : all;
}

/** A formula as MathML: symbols, or the figures put in. */
export function termMathml(term: Term, figures: boolean): string {
  if (term.k === 'n') return figureMathml(term.figure);
  if (term.k === 'v') {
    if (figures) return figureMathml(term.figure);
    const letter = `<mi>${escaped(term.text)}</mi>`;
    return term.sub ? `<msub>${letter}<mtext>${escaped(term.sub)}</mtext></msub>` : letter;
  }
  const args = term.args.map((arg, i) => {
    const inner = termMathml(arg, figures);
    return brackets(term.op, arg, i, figures && term.op !== '/') ? mrow(mo('('), inner, mo(')')) : inner;
  });
  const [a = '', b = ''] = args;
  if (term.op === '/') return `<mfrac>${a}${b}</mfrac>`;
  if (term.op === '^') return `<msup>${a}${b}</msup>`;
  // The drawn sign needs a font for formulas; without one, as on many phones, the root would vanish from the page.
  if (term.op === 'sqrt') return mrow(mo('√'), mo('('), a, mo(')'));
  if (term.op === '*') return mrow(args.join(mo(figures ? '×' : '\u2062')));
  if (term.op === '+' || term.op === '-') return mrow(args.join(mo(term.op === '-' ? '\u2212' : '+')));
  const name = `<mi>${named(term.op)}</mi>`;
  return mrow(name, mo('\u2061'), mo('('), a, mo(')'));
}

/**
 * A line of working as three formulas beside each other, which wrap on a narrow page: symbols, figures put in, result.
 */
export function workingMathml({ is, formula }: WorkingLine): string {
  const parts = [
    mrow(termMathml(is, false), mo('='), termMathml(formula, false)),
    mrow(mo('='), termMathml(formula, true)),
    mrow(mo('='), figureMathml(is.figure)),
  ];
  return parts.map((part) => `<math>${part}</math>`).join(' ');
}

function termText(term: Term, figures: boolean): string {
  if (term.k === 'n') return term.figure;
  if (term.k === 'v') return figures ? term.figure : term.text + (term.sub ?? '');
  const args = term.args.map((arg, i) => {
    const loose =
      brackets(term.op, arg, i, figures) ||
      (term.op === '/' && arg.k === 'op' && BINDS[arg.op] !== undefined);
    return loose ? `(${termText(arg, figures)})` : termText(arg, figures);
  });
  const [a = '', b = ''] = args;
  if (term.op === '*') return args.join(' × ');
  if (term.op === '/') return `${a} / ${b}`;
  if (term.op === '^') return `${a}^${b}`;
  if (term.op === '+' || term.op === '-') return args.join(term.op === '-' ? ' \u2212 ' : ' + ');
  return `${term.op === 'sqrt' ? '√' : named(term.op)}(${a})`;
}

/** The same line in plain text, for a copy or a screen reader. */
export function workingText({ is, formula }: WorkingLine): string {
  return `${termText(is, false)} = ${termText(formula, false)} = ${termText(formula, true)} = ${is.figure}`;
}
