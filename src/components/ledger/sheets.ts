import type { LedgerLine } from '../../record/types.ts';

/** The ledger on one page, or where it is long, on one page a year with the newest first. */
export interface Sheet {
  /** Part of the address after /costs/ledger/; absent for the first page. */
  sheet: string | undefined;
  /** The year shown; absent where all rows stand on one page. */
  year?: string;
  lines: readonly LedgerLine[];
}

/** Rows that one page holds before it is split: about 300 kB of table, which a phone still sorts at once. */
const LONG = 1500;

/** @param lines oldest first */
export function sheetsOf(lines: readonly LedgerLine[], long = LONG): Sheet[] {
  if (lines.length <= long) return [{ sheet: undefined, lines }];
  const years = [...Map.groupBy(lines, (line) => line.date.slice(0, 4))].reverse();
  return years.map(([year, ofYear], at) => ({ sheet: at === 0 ? undefined : year, year, lines: ofYear }));
}
