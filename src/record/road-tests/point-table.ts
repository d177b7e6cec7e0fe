import { clockSeconds } from '../captions.ts';
import { findDecimalMark } from '../money/decimal.ts';
import { type Cell, type CsvRecord, readCsv } from '../read/csv.ts';
import { readFigure } from '../read/kinds.ts';
import type { Report } from '../report-to.ts';
import type { Lines } from '../text/lines.ts';
import { meant, shown } from '../text/words.ts';
import { type PointsText, type ReadPoint, SLOPES, type SpeedUnit } from './points.ts';

const SECONDS: Record<string, number> = { s: 1, sec: 1, min: 60, 'm:ss': 60, 'h:mm:ss': 3600 };
const SPEEDS: Record<string, SpeedUnit> = {
  'km/h': 'km/h',
  kmh: 'km/h',
  kph: 'km/h',
  mph: 'mph',
  'mi/h': 'mph',
};
const HEADING = /^(?:indicated\s+)?(time|speed|slope)\b\s*[([,]?\s*([^)\]]*?)[)\]]?$/i;

/** A column "slope" tells a table of points from a recording of a run. */
export function isPointTable(lines: Lines): boolean {
  const heading = lines.text.slice(0, Math.max(0, `${lines.text}\n`.indexOf('\n')));
  return heading.split(/[,;\t]/).some((cell) => /^"?\s*slope\s*"?$/i.test(cell.trim()));
}

/**
 * Points that were written down: "time (m:ss), indicated speed (km/h), slope". Times and slopes may be left empty; any number
 * of rows will do.
 */
export function readPointTable(lines: Lines, report: Report): PointsText | undefined {
  const [heading, ...records] = readCsv(lines, report);
  if (!heading) return undefined;
  const columns = readHeading(heading, report);
  if (!columns) return undefined;
  const found = findDecimalMark(records.flatMap((record) => record.cells.map((cell) => cell.text)));
  const mark = found === 'mixed' ? undefined : (found ?? '.');
  const points: ReadPoint[] = [];
  for (const record of records) {
    const cell = (at: number): Cell => record.cells[at] ?? { text: '', place: record.place };
    const [time, speed, slope] = [cell(columns.time), cell(columns.speed), cell(columns.slope)];
    const wrong = ({ place }: Cell, message: string) => report.add('road-tests/figure', place, message);
    const read = readFigure(speed.text, mark);
    if (!read.ok) {
      const missing = 'A speed is missing here. Write it, or take the row out.';
      return wrong(speed, speed.text.trim() === '' ? missing : read.message);
    }
    const plain = slope.text.trim().toLowerCase();
    const known = SLOPES.find((one) => one === plain);
    if (plain !== '' && !known) {
      report.add(
        'road-tests/slope',
        slope.place,
        `${shown(slope.text)} is no slope. ${meant(slope.text, SLOPES)} Leave it empty where nothing was noted.`,
      );
      return undefined;
    }
    const time_s = secondsOf(time, columns.seconds);
    if (typeof time_s === 'string') return wrong(time, time_s);
    points.push({
      value: Number(read.value),
      unit: columns.unit,
      words: speed.text.trim(),
      at: speed.place,
      ...(time_s === undefined ? {} : { time_s }),
      ...(known ? { slope: known } : {}),
    });
  }
  return { points, aloud: false };

  function secondsOf({ text }: Cell, each: number): number | string | undefined {
    if (text.trim() === '') return undefined;
    if (text.includes(':'))
      return clockSeconds(text) ?? `${shown(text)} is no time. Write minutes and seconds, such as 1:05.`;
    const read = readFigure(text, mark);
    return read.ok ? Number(read.value) * each : read.message;
  }
}

interface Columns {
  time: number;
  speed: number;
  slope: number;
  /** In a figure of time without a colon. */
  seconds: number;
  unit: SpeedUnit;
}

function readHeading(heading: CsvRecord, report: Report): Columns | undefined {
  const columns: Partial<Columns> = { time: -1, seconds: 1 };
  for (const [at, { text, place }] of heading.cells.entries()) {
    const [, name = '', written = ''] = HEADING.exec(text.trim()) ?? [];
    const unit = written.trim().toLowerCase();
    const unknown = (choices: readonly string[]): undefined =>
      report.add(
        'road-tests/columns',
        place,
        `${unit === '' ? `The column "${name}" has no unit` : `${shown(written)} is no unit of ${name}`}. Write it in the heading, such as "${name} (${choices[0]})"; known are ${choices.join(', ')}.`,
      );
    if (/^time$/i.test(name)) {
      if (SECONDS[unit] === undefined) return unknown(['m:ss', 's', 'min']);
      Object.assign(columns, { time: at, seconds: SECONDS[unit] });
    } else if (/^speed$/i.test(name)) {
      if (SPEEDS[unit] === undefined) return unknown(['km/h', 'mph']);
      Object.assign(columns, { speed: at, unit: SPEEDS[unit] });
    } else if (/^slope$/i.test(name)) columns.slope = at;
  }
  const { time = -1, speed, slope = -1, seconds = 1, unit } = columns;
  if (speed === undefined || unit === undefined)
    return report.add(
      'road-tests/columns',
      heading.place,
      'The points have no column "speed". Write one with its unit, such as "indicated speed (km/h)".',
    );
  return { time, speed, slope, seconds, unit };
}
