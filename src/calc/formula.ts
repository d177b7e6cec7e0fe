/** Reads a formula as a calculator declares it: "x = r + l - r cos(θ) - √(l^2 - (r sin(θ))^2)". */
import type { Op, Sign, Term } from './contract.ts';
import { printFigure } from './print-figure.ts';
import type { Symbols } from './says.ts';
import type { Quantity } from './units.ts';
import { num } from './working.ts';

const CONSTANTS: Readonly<Record<string, number>> = {
  π: Math.PI,
  '360°': 2 * Math.PI,
  '½': 0.5,
  '1000/min': 1000 / 60,
};
const FUNCTIONS: Readonly<Record<string, Op>> = {
  '√': 'sqrt',
  sin: 'sin',
  cos: 'cos',
  arcsin: 'asin',
  arccos: 'acos',
  arctan: 'atan',
};
/** A number of the figures themselves is written with a "#": it has no letter. */
const TOKEN = /\s*(360°|1000\/min|½|√|#?\p{L}+(?:_[\p{L}\d]+)?|[\d.]+|[-+/^()])/uy;

function tokens(text: string): string[] {
  const found: string[] = [];
  TOKEN.lastIndex = 0;
  while (TOKEN.lastIndex < text.trimEnd().length) {
    const [, token] = TOKEN.exec(text) ?? [];
    if (token === undefined) throw new RangeError(`"${text}" is no formula`);
    found.push(token);
  }
  return found;
}

/** Digits and unit, parted by a no-break space. */
function inMarkup(text: string): string {
  const [digits, unit] = text.split(/(?=\u00a0)(.*)/);
  return unit ? `<mrow><mn>${digits}</mn><mtext>${unit}</mtext></mrow>` : `<mn>${digits}</mn>`;
}

/** A symbol with a hole for its figure; a constant stands there already. */
function signOf(name: string, symbols: Symbols): Sign | Term {
  const of = symbols[name];
  if (!of) throw new RangeError(`"${name}" stands for no figure`);
  const [key, quantity, unit, figures = 4] = of;
  const known = typeof key === 'number' ? { si: key } : { si: Number.NaN, of: key };
  const figure =
    unit === undefined
      ? inMarkup(quantity)
      : typeof key === 'number'
        ? printFigure(known, quantity as Quantity, unit, figures)
        : `{${key}|${quantity}|${unit}|${figures}|math}`;
  if (name.startsWith('#')) return { k: 'n', ...known, figure };
  const [text = '', sub] = name.split('_');
  return { k: 'v', text, ...(sub === undefined ? {} : { sub }), ...known, figure };
}

/**
 * Left side and right side. A blank multiplies and binds looser than "/": "π/4 B^2 S" is (π/4) × B² × S.
 * @throws {RangeError} what is no formula, or has a symbol that stands for nothing
 */
export function formula(text: string, symbols: Symbols): { is: Sign; formula: Term } {
  const [left = '', right = ''] = text.split('=');
  const rest = tokens(right);
  const next = (...wanted: string[]) => (wanted.includes(rest[0] ?? '') ? rest.shift() : undefined);
  const op = (name: Op, args: Term[]): Term =>
    args.length === 1 && args[0] ? args[0] : { k: 'op', op: name, args };

  function sum(): Term {
    let [so, args]: [Op, Term[]] = ['+', [product()]];
    for (let sign = next('+', '-') as Op | undefined; sign; sign = next('+', '-') as Op | undefined) {
      if (sign !== so && args.length > 1) args = [op(so, args)];
      so = sign;
      args.push(product());
    }
    return op(so, args);
  }
  function product(): Term {
    const args: Term[] = [];
    while (rest.length && !/^[-+)]$/.test(rest[0] ?? '')) args.push(quotient());
    if (args.length === 0) throw new RangeError(`"${text}" lacks a figure`);
    return op('*', args);
  }
  function quotient(): Term {
    let term = power();
    while (next('/')) term = op('/', [term, power()]);
    return term;
  }
  function power(): Term {
    const base = atom();
    return next('^') ? op('^', [base, atom()]) : base;
  }
  function atom(): Term {
    const token = rest.shift() ?? '';
    const named = FUNCTIONS[token];
    if (named) return { k: 'op', op: named, args: [atom()] };
    if (token === '(') {
      const inner = sum();
      if (!next(')')) throw new RangeError(`"${text}" lacks a bracket`);
      return inner;
    }
    const constant = CONSTANTS[token];
    if (constant !== undefined) return num(constant, token);
    return /^\d/.test(token) ? num(Number(token)) : signOf(token, symbols);
  }

  const is = signOf(left.trim(), symbols);
  const term = sum();
  if (is.k !== 'v' || rest.length > 0) throw new RangeError(`"${text}" is no formula`);
  return { is, formula: term };
}
