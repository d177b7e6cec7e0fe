import type { Op, Sign, Term } from './contract.ts';
import { figureMathml } from './holes.ts';
import { escaped } from './svg.ts';

/** One line of working, shown as formula, figures put in, result. A symbol knows its figure, so that the two cannot differ. */
export interface WorkingLine {
  /** "Rod angle from the bore axis" */
  says: string;
  /** A hole that asks for what the line needs. */
  when?: string;
  /** What is worked out: the left side and the result. */
  is: Sign;
  formula: Term;
}

/** A plain number of a formula: the 2 of 2r. */
export const num = (x: number, figure = String(x)): Term => ({ k: 'n', si: x, figure });

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

/** A figure in a formula; a hole is filled with its markup once there are figures. */
const set = (figure: string) => (/^[{<]/.test(figure) ? figure : figureMathml(figure));

/** A formula as MathML: symbols, or the figures put in. */
export function termMathml(term: Term, figures: boolean): string {
  if (term.k === 'n') return set(term.figure);
  if (term.k === 'v') {
    if (figures) return set(term.figure);
    const letter = `<mi>${escaped(term.text)}</mi>`;
    return term.sub ? `<msub>${letter}<mtext>${escaped(term.sub)}</mtext></msub>` : letter;
  }
  const args = term.args.map((arg, i) => {
    const inner = termMathml(arg, figures);
    if (brackets(term.op, arg, i, figures && term.op !== '/')) return mrow(mo('('), inner, mo(')'));
    // Whether a hole needs brackets is known once it is filled.
    const beside = arg.k === 'v' && i > 0 && term.op !== '/' && BINDS[term.op];
    return figures && beside ? inner.replace('|math}', '|term}') : inner;
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
    mrow(mo('='), set(is.figure)),
  ];
  return parts.map((part) => `<math>${part}</math>`).join(' ');
}
