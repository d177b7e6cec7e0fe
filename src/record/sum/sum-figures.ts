import type { Leaf, Solved } from './leaves.ts';
import { solve } from './solve-tree.ts';
import { type SumNode, SumProblem } from './sum-node.ts';

/** How closely the result is known: the most that one figure's last digit moves it. 0 where all are exact. */
export function closeness(tree: SumNode, leaves: ReadonlyMap<SumNode, Leaf>, result: number): number {
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
export function addsUp(node: SumNode): boolean {
  if (node.k === 'operator')
    return node.operator === '+' || node.operator === '-' || addsUp(node.left) || addsUp(node.right);
  return (node.k === 'negative' || node.k === 'function') && addsUp(node.of);
}

/**
 * Four significant figures, and never a decimal beyond the first that the figures put in can vouch for. A plain product
 * keeps two: 22 N times 0.3 m is 6.6 N·m, not 7.
 */
export function figures(value: number, known: number, difference: boolean): string {
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
