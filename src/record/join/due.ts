import { readQuantity } from '../files/machine.ts';
import { given, type Row } from '../read/field.ts';
import type { Report } from '../report-to.ts';
import { fieldRule } from '../rules/written.ts';
import type { DUE } from '../tables.ts';
import { shown } from '../text/words.ts';
import type { DueItem } from '../types.ts';
import type { References } from './references.ts';

/** Units of an interval: what they count, and their size in metres, seconds or days. */
const INTERVALS: Record<string, { per: DueItem['after']['per']; size: number }> = {
  km: { per: 'distance', size: 1000 },
  mi: { per: 'distance', size: 1609.344 },
  miles: { per: 'distance', size: 1609.344 },
  m: { per: 'distance', size: 1 },
  h: { per: 'hours', size: 3600 },
  hour: { per: 'hours', size: 3600 },
  hours: { per: 'hours', size: 3600 },
  min: { per: 'hours', size: 60 },
  day: { per: 'days', size: 1 },
  days: { per: 'days', size: 1 },
  d: { per: 'days', size: 1 },
  weeks: { per: 'days', size: 7 },
};

export function joinDue(row: Row<typeof DUE>, refer: References, report: Report): DueItem | undefined {
  const since = refer.rowChapter('due', 'since', row.since, row.at('since'));
  const done =
    row.done_in === undefined
      ? undefined
      : refer.rowChapter('due', 'done_in', row.done_in, row.at('done_in'));
  const read = readQuantity(row.after, undefined);
  const interval = read && 'quantity' in read ? INTERVALS[read.quantity.unit] : undefined;
  if (!read || 'wrong' in read || !interval || !(Number(read.quantity.text) > 0))
    return report.add(
      fieldRule('due', 'after'),
      row.at('after'),
      `${shown(row.after)} is no interval. Write a distance, hours or days, such as 300 km, 10 h or 30 days.`,
    );
  if (since && done && done.number < since.number)
    report.add(
      fieldRule('due', 'done_in'),
      row.at('done_in'),
      `${shown(row.done_in ?? '')} comes before ${shown(row.since)}, from which it counts. Look at both.`,
    );
  if (!since) return undefined;
  const amount = Number(read.quantity.text);
  return given({
    what: row.what,
    after: { amount, per: interval.per, text: row.after, size: amount * interval.size },
    since: row.since,
    doneIn: done && row.done_in,
    source: row.source,
    place: row.place,
  });
}
