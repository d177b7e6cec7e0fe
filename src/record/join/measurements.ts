import { converted, type Rounding } from '../quantity/counterpart.ts';
import { unitNamed } from '../quantity/unit-named.ts';
import { given, type Row } from '../read/field.ts';
import type { Report } from '../report-to.ts';
import { fieldRule } from '../rules/written.ts';
import type { MEASUREMENTS } from '../tables.ts';
import { shown } from '../text/words.ts';
import type { Measurement } from '../types.ts';
import type { References } from './references.ts';

type MeasurementRow = Row<typeof MEASUREMENTS>;
type FigureColumn = 'found' | 'found_pm' | 'new' | 'min' | 'max' | 'limit_pm' | 'left';

/** Limits turned into another unit are rounded inward, so that nothing outside them is called within. */
const ROUNDING: Record<FigureColumn, Rounding> = {
  found: 'nearest',
  found_pm: 'up',
  new: 'nearest',
  min: 'up',
  max: 'down',
  limit_pm: 'down',
  left: 'nearest',
};

/** Joins the measurements; all figures of a row come out in the row's unit, and one item is measured in one quantity. */
export function joinMeasurements(
  rows: readonly MeasurementRow[],
  refer: References,
  report: Report,
): Measurement[] {
  const quantities = new Map<string, { quantity: string; row: MeasurementRow }>();
  return rows.flatMap((row) => {
    const named = unitNamed(row.unit);
    const known = named ? named.quantity : '';
    if (!named) {
      report.add(
        fieldRule('measurements', 'unit'),
        row.at('unit'),
        `${shown(row.unit)} is not a unit that is known here. Write one such as mm, in, bar, Nm or V.`,
      );
      return [];
    }
    const before = quantities.get(row.item);
    if (before && before.quantity !== known) {
      report.add(
        fieldRule('measurements', 'unit'),
        row.at('unit'),
        `${shown(row.item)} is measured in ${shown(before.row.unit)} in line ${before.row.place.line}; ${shown(row.unit)} cannot be compared with that. Look at the unit, or name the item otherwise.`,
      );
      return [];
    }
    quantities.set(row.item, before ?? { quantity: known, row });
    return joinRow(row, refer, report) ?? [];
  });
}

function joinRow(row: MeasurementRow, refer: References, report: Report): Measurement | undefined {
  const unit = unitNamed(row.unit);
  if (!unit) return undefined;
  let right = refer.rowChapter('measurements', 'chapter', row.chapter, row.at('chapter')) !== undefined;
  const inUnit = (column: FigureColumn): string | undefined => {
    const figure = row[column];
    if (figure?.unit === undefined) return figure?.text;
    const own = unitNamed(figure.unit);
    if (own?.quantity === unit.quantity) return converted(figure.text, own, unit.unit, ROUNDING[column]);
    right = false;
    return report.add(
      fieldRule('measurements', column),
      row.at(column),
      `${shown(figure.unit)} cannot be compared with ${shown(row.unit)}, the unit of the row. Write the figure in ${row.unit}.`,
    );
  };
  const [min, max, asNew, limitPm] = [inUnit('min'), inUnit('max'), inUnit('new'), inUnit('limit_pm')];
  const [found, foundPm, left] = [inUnit('found'), inUnit('found_pm'), inUnit('left')];
  const wrong = (column: FigureColumn, message: string) => {
    right = false;
    report.add('measurements/limits', row.at(column), message);
  };
  if (min !== undefined && max !== undefined && Number(min) > Number(max))
    wrong(
      'max',
      `The limits run from ${min} to ${max}, the wrong way round. Write the lower one under "min".`,
    );
  if (limitPm !== undefined && (min !== undefined || max !== undefined))
    wrong('limit_pm', 'There are both limits and a ±. Write one of the two.');
  if (limitPm !== undefined && asNew === undefined)
    wrong('limit_pm', 'A ± needs the figure when new. Write it under "new", or write "min" and "max".');
  if (!right || found === undefined) return undefined;
  const { date, chapter, item, position, source, note, place } = row;
  return given({
    date,
    chapter,
    item,
    position,
    found,
    foundPm,
    asNew,
    min,
    max,
    limitPm,
    left,
    unit: row.unit,
    source,
    note,
    place,
  });
}
