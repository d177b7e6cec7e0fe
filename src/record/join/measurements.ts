import { given, type Row } from '../read/field.ts';
import type { Report } from '../report-to.ts';
import type { MEASUREMENTS } from '../tables.ts';
import type { Measurement } from '../types.ts';
import type { References } from './references.ts';

export function joinMeasurement(
  row: Row<typeof MEASUREMENTS>,
  refer: References,
  report: Report,
): Measurement | undefined {
  if (!refer.rowChapter('measurements', 'chapter', row.chapter, row.at('chapter'))) return undefined;
  const [min, max] = [row.min, row.max];
  const wrong = (column: 'min' | 'max' | 'limit_pm', message: string) =>
    report.add('measurements/limits', row.at(column), message);
  if (min !== undefined && max !== undefined && Number(min) > Number(max))
    return wrong(
      'max',
      `The limits run from ${min} to ${max}, the wrong way round. Write the lower one under "min".`,
    );
  if (row.limit_pm !== undefined && (min !== undefined || max !== undefined))
    return wrong('limit_pm', 'There are both limits and a ±. Write one of the two.');
  if (row.limit_pm !== undefined && row.new === undefined)
    return wrong(
      'limit_pm',
      'A ± needs the figure when new. Write it under "new", or write "min" and "max".',
    );
  return given({
    date: row.date,
    chapter: row.chapter,
    item: row.item,
    position: row.position,
    found: row.found,
    foundPm: row.found_pm,
    asNew: row.new,
    min,
    max,
    limitPm: row.limit_pm,
    left: row.left,
    unit: row.unit,
    source: row.source,
    note: row.note,
    place: row.place,
  });
}
