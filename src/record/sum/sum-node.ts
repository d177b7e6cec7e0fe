import { NONE, type SumUnit } from './dimensions.ts';

export type Operator = '+' | '-' | '*' | '/' | '^';

export const FUNCTIONS = ['sqrt', 'sin', 'cos', 'tan', 'asin', 'acos', 'atan'] as const;
export type FunctionName = (typeof FUNCTIONS)[number];

/** A sum as a tree. `at` is the offset of the node in the author's text. */
export type SumNode =
  | { k: 'figure'; text: string; unitText: string; unit: SumUnit; at: number }
  | { k: 'machine'; path: string; at: number }
  | { k: 'pi'; at: number }
  | { k: 'negative'; of: SumNode; at: number }
  | { k: 'operator'; operator: Operator; left: SumNode; right: SumNode; at: number }
  | { k: 'function'; name: FunctionName; of: SumNode; at: number };

/** What is wrong with a sum, and where in its text. Thrown inside this folder only. */
export class SumProblem extends Error {
  readonly at: number;
  constructor(message: string, at: number) {
    super(message);
    this.at = at;
  }
}

export const BARE: SumUnit = { name: '', size: 1, dimensions: NONE };
