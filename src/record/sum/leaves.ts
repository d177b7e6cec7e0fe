import { inLanguage, withSymbol } from '../quantity/print-quantity.ts';
import { unitNamed } from '../quantity/unit-named.ts';
import { shown } from '../text/words.ts';
import type { MachineValue } from '../types.ts';
import { type Dimensions, sumUnit } from './dimensions.ts';
import { BARE, type SumNode, SumProblem } from './sum-node.ts';

/** What a sum may look up. */
export interface SumSurroundings {
  machine: ReadonlyMap<string, MachineValue>;
  language: string;
  /** Words for a machine value that does not exist; the reader of references has them. */
  missing(path: string): string;
}

/** A value on the way: SI, and its dimensions. */
export interface Solved {
  si: number;
  dimensions: Dimensions;
}

/** A figure of the sum that is known only so closely. */
export interface Leaf extends Solved {
  /** One unit of its last written digit, or its ±; 0 for counts and round nominal figures. */
  step: number;
  printed: string;
}

/** Looks up every figure and machine value of a sum. */
export function collect(
  node: SumNode,
  around: SumSurroundings,
  leaves: Map<SumNode, Leaf>,
): Map<SumNode, Leaf> {
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
