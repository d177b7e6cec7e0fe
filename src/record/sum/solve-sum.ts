import type { Op, Term } from '../../calc/contract.ts';
import { termMathml } from '../../calc/working.ts';
import { inLanguage, printQuantity, withSymbol } from '../quantity/print-quantity.ts';
import { unitNamed } from '../quantity/unit-named.ts';
import { shown } from '../text/words.ts';
import type { MachineValue, SumResult } from '../types.ts';
import { type Dimensions, dimensionName, NONE, same, sumUnit, times } from './dimensions.ts';
import { BARE, parseSum, type SumNode, SumProblem } from './parse-sum.ts';

/** What a sum may look up. */
export interface SumSurroundings {
  machine: ReadonlyMap<string, MachineValue>;
  language: string;
  /** Words for a machine value that does not exist; the reader of references has them. */
  missing(path: string): string;
}

/** A value on the way: SI, and its dimensions. */
interface Solved {
  si: number;
  dimensions: Dimensions;
}

/** A figure of the sum that is known only so closely. */
interface Leaf extends Solved {
  /** One unit of its last written digit, or its ±; 0 for counts and round nominal figures. */
  step: number;
  printed: string;
}

/**
 * Works a sum out, with units, in the unit asked for.
 * @throws {SumProblem} what is wrong, with the offset in `of`, or -1 for what is wrong with `to`
 */
export function solveSum(of: string, to: string, around: SumSurroundings): SumResult {
  const tree = parseSum(of);
  const leaves = new Map<SumNode, Leaf>();
  collect(tree, around, leaves);
  const wanted = resultUnit(to, around);
  const result = solve(tree, leaves);
  if (!same(result.dimensions, wanted.dimensions))
    throw new SumProblem(
      `The result is ${dimensionName(result.dimensions)}, not ${dimensionName(wanted.dimensions)}, so it cannot be given in ${shown(to)}. ${hint(result.dimensions, wanted.dimensions)}`,
      0,
    );
  const value = result.si / wanted.size;
  if (!Number.isFinite(value))
    throw new SumProblem(
      'The result is no number: something is divided by nothing, or a root has a negative value.',
      0,
    );
  const text = figures(value, closeness(tree, leaves, result.si) / wanted.size, addsUp(tree));
  const also =
    wanted.unitText === ''
      ? undefined
      : printQuantity({ kind: 'figure', quantity: { text, unit: wanted.unitText } }, around.language).also;
  const said = withSymbol(inLanguage(text, around.language), wanted.symbol);
  const formula = termMathml(term(tree, leaves), true);
  const answer = termMathml({ k: 'n', si: value, figure: said }, true);
  return {
    text: said,
    ...(also === undefined ? {} : { also }),
    mathml: `<math><mrow>${formula}<mo>=</mo>${answer}</mrow></math>`,
  };
}

function hint(result: Dimensions, wanted: Dimensions): string {
  const [angle, without] = [result[5], times(result, [0, 0, 0, 0, 0, result[5]], -1)];
  if (angle !== 0 && same(without, times(wanted, [0, 0, 0, 0, 0, wanted[5]], -1)))
    return 'Angles are no bare numbers: divide by (360 deg) for a part of a turn, or by (1 rad).';
  return 'Look at the units of each figure.';
}

function resultUnit(
  to: string,
  around: SumSurroundings,
): { size: number; dimensions: Dimensions; symbol: string; unitText: string } {
  if (to.trim() === '1') return { size: 1, dimensions: NONE, symbol: '', unitText: '' };
  try {
    const unit = solve(parseSum(`1 ${to}`), collect(parseSum('1'), around, new Map()), true);
    const spelt = to.replace(/[()]/g, '');
    const known = unitNamed(spelt);
    const symbol = known?.symbol ?? to.replace(/\^2/g, '²').replace(/\^3/g, '³');
    return { size: unit.si, dimensions: unit.dimensions, symbol, unitText: known ? spelt : '' };
  } catch (error) {
    if (!(error instanceof SumProblem)) throw error;
    throw new SumProblem(
      `${shown(to)} is no unit that a result can be given in. Write one such as mm, L, deg, or 1 for a bare number.`,
      -1,
    );
  }
}

/** Looks up every figure and machine value of a sum. */
function collect(node: SumNode, around: SumSurroundings, leaves: Map<SumNode, Leaf>): Map<SumNode, Leaf> {
  switch (node.k) {
    case 'figure':
      leaves.set(node, figureLeaf(node.text, node.unit, node.unitText, around.language));
      break;
    case 'machine':
      leaves.set(node, machineLeaf(node.path, node.at, around));
      break;
    case 'operator':
      collect(node.left, around, leaves);
      collect(node.right, around, leaves);
      break;
    case 'negative':
    case 'function':
      collect(node.of, around, leaves);
      break;
    case 'pi':
      break;
    default:
      node satisfies never;
  }
  return leaves;
}

function figureLeaf(
  text: string,
  unit: { size: number; dimensions: Dimensions },
  unitText: string,
  language: string,
): Leaf {
  const decimals = text.split('.')[1]?.length ?? 0;
  const bare = unitText === '';
  return {
    si: Number(text) * unit.size,
    dimensions: unit.dimensions,
    step: decimals === 0 || bare ? 0 : 10 ** -decimals * unit.size,
    printed: withSymbol(inLanguage(text, language), bare ? '' : (unitNamed(unitText)?.symbol ?? unitText)),
  };
}

function machineLeaf(path: string, at: number, { machine, missing, language }: SumSurroundings): Leaf {
  const value = machine.get(path);
  if (!value) throw new SumProblem(missing(path), at);
  const { now } = value;
  if (!now)
    throw new SumProblem(
      `"machine.${path}" is ${shown(value.text ?? value.asBuiltText ?? '')}, which is no figure to reckon with.`,
      at,
    );
  const named = now.unit === '' ? undefined : unitNamed(now.unit);
  const unit = now.unit === '' ? BARE : named && sumUnit(named.quantity, named.unit);
  if (!unit)
    throw new SumProblem(
      `"machine.${path}" is in ${shown(now.unit)}, which a sum cannot use: it is no plain multiple of a unit. Write the figure in another unit.`,
      at,
    );
  const decimals = now.text.split('.')[1]?.length ?? 0;
  const step = now.pm === undefined ? (decimals === 0 ? 0 : 10 ** -decimals) : Number(now.pm);
  return {
    si: Number(now.text) * unit.size,
    dimensions: unit.dimensions,
    step: step * unit.size,
    printed: withSymbol(inLanguage(now.text, language), named?.symbol ?? ''),
  };
}

const ANGLE: Dimensions = [0, 0, 0, 0, 0, 1];

function solve(node: SumNode, leaves: ReadonlyMap<SumNode, Solved>, literal = false): Solved {
  switch (node.k) {
    case 'figure':
    case 'machine': {
      const leaf = leaves.get(node);
      if (leaf) return leaf;
      if (literal && node.k === 'figure')
        return { si: Number(node.text) * node.unit.size, dimensions: node.unit.dimensions };
      throw new SumProblem('A machine value cannot stand here.', node.at);
    }
    case 'pi':
      return { si: Math.PI, dimensions: NONE };
    case 'negative': {
      const { si, dimensions } = solve(node.of, leaves, literal);
      return { si: -si, dimensions };
    }
    case 'operator':
      return operate(node, solve(node.left, leaves, literal), solve(node.right, leaves, literal));
    case 'function':
      return apply(node, solve(node.of, leaves, literal));
    default:
      return node satisfies never;
  }
}

function operate(node: Extract<SumNode, { k: 'operator' }>, left: Solved, right: Solved): Solved {
  switch (node.operator) {
    case '+':
    case '-':
      if (!same(left.dimensions, right.dimensions))
        throw new SumProblem(
          `${dimensionName(left.dimensions)} and ${dimensionName(right.dimensions)} cannot be ${node.operator === '+' ? 'added' : 'subtracted'}. Look at the units on both sides.`.replace(
            /^./,
            (first) => first.toUpperCase(),
          ),
          node.at,
        );
      return {
        si: node.operator === '+' ? left.si + right.si : left.si - right.si,
        dimensions: left.dimensions,
      };
    case '*':
      return { si: left.si * right.si, dimensions: times(left.dimensions, right.dimensions) };
    case '/':
      if (right.si === 0) throw new SumProblem('Something is divided by 0 here.', node.at);
      return { si: left.si / right.si, dimensions: times(left.dimensions, right.dimensions, -1) };
    case '^':
      if (!same(right.dimensions, NONE)) throw new SumProblem('A power must be a bare number.', node.at);
      if (Math.abs(right.si) > 12) throw new SumProblem('A power above 12 is not worked out here.', node.at);
      return {
        si: left.si ** right.si,
        dimensions: left.dimensions.map((one) => one * right.si) as unknown as Dimensions,
      };
    default:
      return node.operator satisfies never;
  }
}

function apply({ name, at }: Extract<SumNode, { k: 'function' }>, of: Solved): Solved {
  if (name === 'sqrt') {
    if (of.si < 0) throw new SumProblem('The root of a negative value is no figure.', at);
    return { si: Math.sqrt(of.si), dimensions: of.dimensions.map((one) => one / 2) as unknown as Dimensions };
  }
  if (name === 'sin' || name === 'cos' || name === 'tan') {
    if (!same(of.dimensions, ANGLE))
      throw new SumProblem(
        `${name} wants an angle and gets ${dimensionName(of.dimensions)}. Write its unit, such as 24 deg.`,
        at,
      );
    return { si: Math[name](of.si), dimensions: NONE };
  }
  if (!same(of.dimensions, NONE))
    throw new SumProblem(`${name} wants a bare number and gets ${dimensionName(of.dimensions)}.`, at);
  if (name !== 'atan' && Math.abs(of.si) > 1)
    throw new SumProblem(`${name} of a number beyond 1 is no angle.`, at);
  return { si: Math[name](of.si), dimensions: ANGLE };
}

/** How closely the result is known: the most that one figure's last digit moves it. 0 where all are exact. */
function closeness(tree: SumNode, leaves: ReadonlyMap<SumNode, Leaf>, result: number): number {
  let most = 0;
  // A figure that stands twice moves in both places at once.
  const figures = Map.groupBy(leaves, ([node]) =>
    node.k === 'machine' ? node.path : node.k === 'figure' ? `${node.text} ${node.unitText}` : '',
  );
  for (const same of figures.values()) {
    if (same.every(([, leaf]) => leaf.step === 0)) continue;
    const moved = new Map<SumNode, Solved>(leaves);
    for (const [node, { si, step, dimensions }] of same) moved.set(node, { si: si + step, dimensions });
    try {
      most = Math.max(most, Math.abs(solve(tree, moved).si - result));
    } catch (error) {
      // One step beyond a domain's end (asin of 1): the other figures decide.
      if (!(error instanceof SumProblem)) throw error;
    }
  }
  return most;
}

/** Whether anything is added or subtracted: a small difference of large figures has few digits left. */
function addsUp(node: SumNode): boolean {
  if (node.k === 'operator')
    return node.operator === '+' || node.operator === '-' || addsUp(node.left) || addsUp(node.right);
  return (node.k === 'negative' || node.k === 'function') && addsUp(node.of);
}

/**
 * Four significant figures, and never a decimal beyond the first that the figures put in can vouch for. A plain product
 * keeps two: 22 N times 0.3 m is 6.6 N·m, not 7.
 */
function figures(value: number, known: number, difference: boolean): string {
  const lead = value === 0 ? 0 : Math.floor(Math.log10(Math.abs(value)));
  const four = Math.max(0, 3 - lead);
  const vouched = known > 0 ? Math.max(0, -Math.floor(Math.log10(known) + 1e-9)) : Number.POSITIVE_INFINITY;
  const sure = difference ? vouched : Math.max(vouched, Math.max(0, 1 - lead));
  if (sure < four) return plain(value, sure);
  const text = plain(value, Math.min(9, four));
  return text.includes('.') ? text.replace(/\.?0+$/, '') : text;
}

function plain(value: number, decimals: number): string {
  const text = value.toFixed(decimals);
  return Number(text) === 0 ? text.replace('-', '') : text;
}

const OPS: Record<string, Op> = { '+': '+', '-': '-', '*': '*', '/': '/', '^': '^' };

/** The same tree for the code that sets formulas. */
function term(node: SumNode, leaves: ReadonlyMap<SumNode, Leaf>): Term {
  switch (node.k) {
    case 'figure':
    case 'machine': {
      const leaf = leaves.get(node);
      const printed = leaf?.printed ?? '';
      return node.k === 'figure' && node.unitText === ''
        ? { k: 'n', si: leaf?.si ?? 0, figure: printed }
        : { k: 'v', text: printed, si: leaf?.si ?? 0, figure: printed };
    }
    case 'pi':
      return { k: 'n', si: Math.PI, figure: 'π' };
    case 'negative': {
      const of = term(node.of, leaves);
      return of.k === 'n'
        ? { ...of, figure: `−${of.figure}` }
        : { k: 'op', op: '*', args: [{ k: 'n', si: -1, figure: '−1' }, of] };
    }
    case 'operator':
      return {
        k: 'op',
        op: OPS[node.operator] ?? '*',
        args: [term(node.left, leaves), term(node.right, leaves)],
      };
    case 'function':
      return { k: 'op', op: node.name, args: [term(node.of, leaves)] };
    default:
      return node satisfies never;
  }
}
