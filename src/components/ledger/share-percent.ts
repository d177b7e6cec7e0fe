import type { Group } from '../../record/money/groups.ts';
import { split } from '../../record/money/split.ts';

/** Each group's share of the whole in percent, summing to 100; nothing where money back makes a group negative. */
export function sharePercent(groups: readonly Group[]): string[] | undefined {
  if (groups.length === 0 || groups.some((one) => one.home < 0n) || groups.every((one) => one.home === 0n))
    return undefined;
  return split(
    100n,
    groups.map((one) => one.home),
  ).map((share) => `${share}\u00a0%`);
}
