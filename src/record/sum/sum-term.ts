import type { Op, Term } from '../../calc/contract.ts';
import type { Leaf } from './leaves.ts';
import type { SumNode } from './sum-node.ts';

const OPS: Record<string, Op> = { '+': '+', '-': '-', '*': '*', '/': '/', '^': '^' };

/** The same tree for the code that sets formulas. */
export function term(node: SumNode, leaves: ReadonlyMap<SumNode, Leaf>): Term {
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
