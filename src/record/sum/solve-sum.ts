import { termMathml } from '../../calc/working.ts';
import { inLanguage, printQuantity, withSymbol } from '../quantity/print-quantity.ts';
import { unitNamed } from '../quantity/unit-named.ts';
import { shown } from '../text/words.ts';
import type { SumResult } from '../types.ts';
import { type Dimensions, dimensionName, NONE, same, times } from './dimensions.ts';
import { collect, type Leaf, type SumSurroundings } from './leaves.ts';
import { parseSum } from './parse-sum.ts';
import { solve } from './solve-tree.ts';
import { addsUp, closeness, figures } from './sum-figures.ts';
import { type SumNode, SumProblem } from './sum-node.ts';
import { term } from './sum-term.ts';

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
