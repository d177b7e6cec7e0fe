import { given, type Row } from '../read/field.ts';
import type { Report } from '../report-to.ts';
import { fieldRule } from '../rules/written.ts';
import type { CORRECTIONS, ODOMETER } from '../tables.ts';
import { shown } from '../text/words.ts';
import type { Correction, OdometerReading, Series } from '../types.ts';
import { joinDue } from './due.ts';
import { joinMeasurements } from './measurements.ts';
import type { References } from './references.ts';
import { joinRefit } from './refit.ts';
import type { Parsed } from './series.ts';

export type State = Pick<Series, 'refit' | 'corrections' | 'measurements' | 'due' | 'odometer'>;

/** Joins what tells the state of the machine: refit list, corrections, measurements, due list, readings. */
export function joinState(parsed: Parsed, refer: References, report: Report): State {
  const { tables } = parsed;
  const due = tables.due.flatMap((row) => joinDue(row, refer, report) ?? []);
  for (const item of due) {
    const { per } = item.after;
    if (per === 'days' || tables.odometer.some((row) => (row.unit === 'h') === (per === 'hours'))) continue;
    report.add(
      'due/reading',
      item.place,
      `${shown(item.what)} counts ${per === 'hours' ? 'hours' : 'a distance'} and odometer.csv has no reading of ${per === 'hours' ? 'hours' : 'distance'}. Add one.`,
    );
  }
  return {
    refit: joinRefit(parsed, refer, report),
    corrections: tables.corrections.flatMap((row) => joinCorrection(row, refer, report) ?? []),
    measurements: joinMeasurements(tables.measurements, refer, report),
    due,
    odometer: joinOdometer(tables.odometer, refer, report),
  };
}

function joinCorrection(
  row: Row<typeof CORRECTIONS>,
  refer: References,
  report: Report,
): Correction | undefined {
  const chapter = refer.rowChapter('corrections', 'chapter', row.chapter, row.at('chapter'));
  if (!chapter) return undefined;
  if (row.was === row.now)
    report.add(
      'corrections/same',
      row.at('now'),
      `${shown(row.now)} is what was published. Write what is right.`,
    );
  if (
    row.step !== undefined &&
    !refer.step(chapter, row.step, fieldRule('corrections', 'step'), row.at('step'))
  )
    return undefined;
  const { date, step, was, now, why, place } = row;
  return given({ date, chapter: row.chapter, step, was, now, why, canHurt: row.can_hurt, place });
}

function joinOdometer(
  rows: readonly Row<typeof ODOMETER>[],
  refer: References,
  report: Report,
): OdometerReading[] {
  const readings: OdometerReading[] = [];
  for (const row of rows) {
    if (!refer.rowChapter('odometer', 'chapter', row.chapter, row.at('chapter'))) continue;
    const before = readings.findLast((one) => one.unit === row.unit && one.date <= row.date);
    if (before && Number(row.reading) < Number(before.reading))
      report.add(
        'odometer/backwards',
        row.at('reading'),
        `${row.reading} ${row.unit} of ${row.date} is less than ${before.reading} ${before.unit} of ${before.date}. Look at both readings.`,
      );
    const { date, chapter, reading, unit, place } = row;
    readings.push({ date, chapter, reading, unit, place });
  }
  return readings;
}
