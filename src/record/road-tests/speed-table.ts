import { type Quantity, toSi, type UnitId } from '../../calc/units.ts';
import { findDecimalMark } from '../money/decimal.ts';
import { type CsvRecord, readCsv } from '../read/csv.ts';
import { readFigure } from '../read/kinds.ts';
import type { Report } from '../report-to.ts';
import type { Lines } from '../text/lines.ts';
import { shown } from '../text/words.ts';
import { checkSamples, type PlacedSample, tellHoles } from './check-samples.ts';
import type { RunText } from './run.ts';

/** What a column of a run may hold, and its units as a heading names them. */
const COLUMNS: Record<string, { quantity: Quantity; units: Record<string, UnitId> }> = {
  time: { quantity: 'time', units: { s: 's', sec: 's', ms: 'ms', min: 'min' } },
  speed: {
    quantity: 'speed',
    units: {
      'km/h': 'km/h',
      kmh: 'km/h',
      kph: 'km/h',
      mph: 'mph',
      'mi/h': 'mph',
      'm/s': 'm/s',
      'ft/s': 'ft/s',
    },
  },
  height: { quantity: 'length', units: { m: 'm', ft: 'ft' } },
};
const MAX_POINTS = 100_000;

interface Column {
  at: number;
  quantity: Quantity;
  unit: UnitId;
  indicated: boolean;
}

/**
 * Reads a run from a table whose heading names the units: "time (s), speed (km/h)", and "height (m)" where it is known.
 * "indicated speed (km/h)" says that the figures were read off the vehicle's own instrument.
 */
export function readSpeedTable(lines: Lines, report: Report): RunText | undefined {
  const [heading, ...records] = readCsv(lines, report);
  if (!heading) return undefined;
  const columns = readHeading(heading, report);
  const [time, speed, height] = [columns.get('time'), columns.get('speed'), columns.get('height')];
  if (!time || !speed) return undefined;
  if (records.length > MAX_POINTS)
    return report.add(
      'file/too-long',
      records[MAX_POINTS]?.place ?? heading.place,
      `The run has ${records.length} rows; ${MAX_POINTS} are read at most. Split it.`,
    );
  const found = findDecimalMark(records.flatMap((record) => record.cells.map((cell) => cell.text)));
  const mark = found === 'mixed' ? undefined : (found ?? '.');
  const figure = (record: CsvRecord, column: Column): number | undefined => {
    const cell = record.cells[column.at];
    const read = readFigure(cell?.text ?? '', mark);
    if (cell && read.ok) return toSi(Number(read.value), column.quantity, column.unit);
    const place = cell?.place ?? record.place;
    const said =
      cell && cell.text !== '' && !read.ok
        ? read.message
        : 'A figure is missing here. Write it, or take the row out.';
    return report.add('road-tests/figure', place, said);
  };
  const samples: PlacedSample[] = [];
  for (const record of records) {
    const [t, v] = [figure(record, time), figure(record, speed)];
    if (t === undefined || v === undefined) return undefined;
    const place = (column: Column) => record.cells[column.at]?.place ?? record.place;
    const written = `${record.cells[speed.at]?.text} ${speed.unit}`;
    if (v < 0)
      return report.add(
        'road-tests/figure',
        place(speed),
        `${shown(written)} is a speed backwards. Write speeds without a sign.`,
      );
    const h = height && record.cells[height.at]?.text ? figure(record, height) : undefined;
    const sample = { time_s: t, speed_mps: v, at: { time: place(time), speed: place(speed) }, written };
    samples.push(h === undefined ? sample : { ...sample, height_m: h });
  }
  if (!checkSamples(samples, lines.file, report)) return undefined;
  tellHoles(samples, report);
  return { samples: fromStart(samples), from: 'speeds', indicated: speed.indicated };
}

function readHeading(heading: CsvRecord, report: Report): Map<string, Column> {
  const columns = new Map<string, Column>();
  for (const [at, cell] of heading.cells.entries()) {
    const found = /^(?:(indicated)\s+)?(time|speed|height)\b\s*[([,]?\s*([^)\]]*?)[)\]]?$/i.exec(
      cell.text.trim(),
    );
    if (!found) continue;
    const name = (found[2] ?? '').toLowerCase();
    const known = COLUMNS[name];
    const written = (found[3] ?? '').trim();
    const unit = known?.units[written.toLowerCase()];
    const choices = Object.values(known?.units ?? {});
    if (!known || unit === undefined) {
      report.add(
        'road-tests/columns',
        cell.place,
        `${written === '' ? `The column "${name}" has no unit` : `${shown(written)} is no unit of ${name}`}. Write it in the heading, such as "${name} (${choices[0]})"; known are ${[...new Set(choices)].join(', ')}.`,
      );
      columns.set(name, { at: -1, quantity: 'count', unit: 'n', indicated: false });
    } else columns.set(name, { at, quantity: known.quantity, unit, indicated: found[1] !== undefined });
  }
  for (const name of ['time', 'speed'])
    if (!columns.has(name))
      report.add(
        'road-tests/columns',
        heading.place,
        `The run has no column "${name}". Write one with its unit, such as "${name === 'time' ? 'time (s)' : 'speed (km/h)'}".`,
      );
  for (const [name, column] of columns) if (column.at < 0) columns.delete(name);
  return columns;
}

/** Without places; times and heights from the first sample. */
export function fromStart(samples: readonly PlacedSample[]): RunText['samples'] {
  const first = samples[0];
  const height = samples.find((one) => one.height_m !== undefined)?.height_m;
  return samples.map(({ time_s, speed_mps, height_m }) => ({
    time_s: time_s - (first?.time_s ?? 0),
    speed_mps,
    ...(height_m === undefined || height === undefined ? {} : { height_m: height_m - height }),
  }));
}
