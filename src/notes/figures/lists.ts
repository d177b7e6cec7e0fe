/** "spend: sheet 14, wax 11.60, disc set 8", "all in thou: 4, 6, 5": the figures of a line whose head names their unit or calls them money. */
import type { Candidate } from './figure.ts';
import { unitNameOf } from './headings.ts';
import type { Leaning } from './leaning.ts';
import { counts } from './standing.ts';
import { at, joins, type Token } from './tokens.ts';
import { MONEY } from './unit-words.ts';

const HEAD =
  /^(?:spend|spent|cost|costs|paid|bill|bills|money|damage|receipts|expenses|outlay|budget|accounts|prices|score|tally|reckoning|bought|shopping|sums?|totals?)$/;
const TIMES: Readonly<Record<string, string>> = { hours: 'h', hrs: 'h', minutes: 'min', mins: 'min' };

export function settleLists(tokens: readonly Token[], all: readonly Candidate[], leaning: Leaning): void {
  let head: Head | undefined;
  let scanned = 0;
  for (const [i, one] of all.entries()) {
    for (; scanned < one.from; scanned++) {
      if ((tokens[scanned]?.gap ?? 0) >= 2 || scanned === 0) head = headAt(tokens, scanned);
    }
    // "hrs 6.5"
    const hours =
      one.unit === '' && (tokens[one.from - 1]?.gap ?? 0) >= 2 ? TIMES[at(tokens, one.from - 1)] : undefined;
    if (hours && (tokens[one.to]?.gap ?? 3) >= 2) {
      one.unit = hours;
      continue;
    }
    if (!head || one.from < head.to || one.unit !== '' || one.value <= 0 || counts(tokens, one)) continue;
    const after = joins(tokens, one.to, 1) ? at(tokens, one.to) : '';
    if (!(head.unit === '' ? MAY_FOLLOW_SUM : MAY_FOLLOW).test(after)) continue;
    if (head.unit === '' && one.fraction) continue;
    const unit = head.unit || (beside(all, i, head.to) ?? leaning.money);
    if (unit === '') continue;
    one.unit = unit;
    one.shared = true;
    one.carried = true;
  }
}

interface Head {
  /** The token behind its colon. */
  to: number;
  /** Empty where it calls for money. */
  unit: string;
}
const MAY_FOLLOW_SUM = /^(?:[,;.+=&)]|and|plus|for|each|ea|ish|odd|$)/;
const MAY_FOLLOW = /^(?:[,;.+=&)/|(–-]|and|plus|to|or|left|right|front|rear|top|bottom|max|min|new|old|$)/;

/** "spent today:", "all in thou:", "hours:" at a line's begin. */
function headAt(tokens: readonly Token[], from: number): Head | undefined {
  let colon = from + 1;
  while (colon < from + 8 && at(tokens, colon) !== ':' && (tokens[colon]?.gap ?? 3) < 2) colon += 1;
  if (at(tokens, colon) !== ':') return undefined;
  let money = false;
  let unit = '';
  for (let k = from; k < from + 8; k++) {
    if (k > from && (tokens[k]?.gap ?? 3) >= 2) return undefined;
    const word = at(tokens, k);
    if (HEAD.test(word)) money = true;
    if (tokens[k]?.kind === 'number') return undefined;
    const name = unitNameOf(word);
    if (name && /^(?:in|all|\(|,|\[)$/.test(at(tokens, k - 1))) unit = name;
    if (word !== ':' || (tokens[k + 1]?.gap ?? 3) >= 3) continue;
    const hours = k - from < 3 ? TIMES[at(tokens, k - 1)] : undefined;
    if (MONEY.has(unit)) return { to: k + 1, unit };
    return unit !== '' || hours
      ? { to: k + 1, unit: unit || (hours ?? '') }
      : money
        ? { to: k + 1, unit: '' }
        : undefined;
  }
  return undefined;
}

const beside = (all: readonly Candidate[], i: number, head: number): string | undefined => {
  for (let k = i - 1; k >= 0 && (all[k]?.from ?? 0) >= head; k--)
    if (MONEY.has(all[k]?.unit ?? '')) return all[k]?.unit;
  return undefined;
};
