import type { Day, RateRow } from '../types.ts';
import {
  type Decimal,
  type DecimalMark,
  decimalText,
  type Read,
  readDecimal,
  sameDecimal,
} from './decimal.ts';

/** One published rate, 1 base = rate quote, with its figure held exactly. */
export interface Rate extends RateRow {
  exact: Decimal;
}

/** Rates by pair, each oldest first. */
export type RateTable = ReadonlyMap<string, readonly Rate[]>;

const pair = (base: string, quote: string): string => `${base}/${quote}`;

/**
 * Rates made ready for look-up; the order in which they were written does not matter.
 * @throws {RangeError} for a rate that is no positive decimal: the reader has refused it before.
 */
export function rateTable(rows: Iterable<RateRow>): RateTable {
  const table = new Map<string, Rate[]>();
  for (const row of rows) {
    const read = readRate(row.rate, '.');
    if (!read.ok) throw new RangeError(read.message);
    const rate: Rate = { ...row, exact: read.value.exact };
    const key = pair(rate.base, rate.quote);
    const same = table.get(key);
    if (same) same.push(rate);
    else table.set(key, [rate]);
  }
  for (const row of table.values()) row.sort((a, b) => (a.date < b.date ? -1 : a.date > b.date ? 1 : 0));
  return table;
}

/** Rates of one pair and day that differ: which one holds would depend on the order of rows. */
export function contradictingRates(table: RateTable): [Rate, Rate][] {
  const found: [Rate, Rate][] = [];
  for (const row of table.values())
    for (const [index, rate] of row.entries()) {
      const before = row[index - 1];
      if (before && before.date === rate.date && !sameDecimal(before.exact, rate.exact))
        found.push([before, rate]);
    }
  return found;
}

/** The newest rate of a pair on or before a day, of any age. */
export function newestRate(table: RateTable, base: string, quote: string, day: Day): Rate | undefined {
  const row = table.get(pair(base, quote)) ?? [];
  let low = 0;
  let high = row.length;
  while (low < high) {
    const middle = (low + high) >> 1;
    if ((row[middle]?.date ?? '') <= day) low = middle + 1;
    else high = middle;
  }
  return row[low - 1];
}

/** A rate from its cell: as canonical text and exactly. 0 is refused. */
export function readRate(
  text: string,
  mark: DecimalMark | undefined,
): Read<{ rate: string; exact: Decimal }> {
  const read = readDecimal(text, mark, 'a rate');
  if (!read.ok) return read;
  if (read.value.digits === 0n)
    return { ok: false, message: `"${text}" is 0, which is no rate of exchange.` };
  return { ok: true, value: { rate: decimalText(read.value), exact: read.value } };
}
