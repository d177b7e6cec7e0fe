/** "spend: sheet 14, wax 11.60, disc set 8": the sums of a line that its head calls money. */
import type { Candidate } from './figure.ts';
import type { Leaning } from './leaning.ts';
import { counts } from './standing.ts';
import { at, joins, type Token } from './tokens.ts';
import { MONEY } from './unit-words.ts';

const HEAD =
  /^(?:spend|spent|cost|costs|paid|bill|bills|money|damage|receipts|expenses|outlay|budget|accounts|prices)$/;

export function settleLists(tokens: readonly Token[], all: readonly Candidate[], leaning: Leaning): void {
  let head = -1;
  let scanned = 0;
  for (const [i, one] of all.entries()) {
    for (; scanned < one.from; scanned++) {
      if ((tokens[scanned]?.gap ?? 0) >= 2 || scanned === 0) head = headAt(tokens, scanned);
    }
    if (
      head < 0 ||
      one.from < head ||
      one.unit !== '' ||
      one.fraction ||
      one.value <= 0 ||
      counts(tokens, one)
    )
      continue;
    const after = joins(tokens, one.to, 1) ? at(tokens, one.to) : '';
    if (!/^(?:[,;.+=&)]|and|plus|for|each|ea|ish|odd|$)/.test(after)) continue;
    const unit = beside(all, i, head) ?? leaning.money;
    if (unit === '') continue;
    one.unit = unit;
    one.shared = true;
    one.carried = true;
  }
}

/** The token behind the colon of "spent today:", or -1. */
function headAt(tokens: readonly Token[], from: number): number {
  let money = false;
  for (let k = from; k < from + 6; k++) {
    if (k > from && (tokens[k]?.gap ?? 3) >= 2) return -1;
    if (HEAD.test(at(tokens, k))) money = true;
    if (at(tokens, k) === ':') return money ? k + 1 : -1;
  }
  return -1;
}

const beside = (all: readonly Candidate[], i: number, head: number): string | undefined => {
  for (let k = i - 1; k >= 0 && (all[k]?.from ?? 0) >= head; k--)
    if (MONEY.has(all[k]?.unit ?? '')) return all[k]?.unit;
  return undefined;
};
