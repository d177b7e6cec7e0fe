import { type Dimensions, dimensionName, NONE, same, times } from './dimensions.ts';
import type { Solved } from './leaves.ts';
import { type SumNode, SumProblem } from './sum-node.ts';

const ANGLE: Dimensions = [0, 0, 0, 0, 0, 1];

/** The value of a tree whose figures have been looked up. @throws {SumProblem} units that do not fit, or no figure */
export function solve(node: SumNode, leaves: ReadonlyMap<SumNode, Solved>, literal = false): Solved {
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
