import { type DecimalMark, findDecimalMark } from '../money/decimal.ts';
import type { Report } from '../report-to.ts';
import { fieldRule } from '../rules/written.ts';
import type { Lines } from '../text/lines.ts';
import { nearest } from '../text/nearest.ts';
import { count, either, shown } from '../text/words.ts';
import { type Cell, type CsvRecord, readCsv } from './csv.ts';
import { type Fields, type Row, readField, toWrite } from './field.ts';

export interface TableOptions {
  report: Report;
  /** As series.yaml states it; without it the table's own figures decide where they leave no doubt. */
  mark: DecimalMark | undefined;
  maxRows: number;
}

/**
 * Reads a table by its fields. Columns may stand in any order; a column that no field knows is a warning, one that is
 * needed and missing an error. Rows whose needed cells cannot be read are left out, with their problems told.
 */
export function readTable<F extends Fields>(
  lines: Lines,
  area: string,
  fields: F,
  options: TableOptions,
): Row<F>[] {
  const { report } = options;
  const [heading, ...records] = readCsv(lines, report);
  if (!heading) return [];
  const columns = readHeading(heading, area, fields, report);
  if (!columns) return [];
  if (records.length > options.maxRows) {
    const first = records[options.maxRows];
    if (first)
      report.add(
        'file/too-long',
        first.place,
        `The table has ${count(records.length, 'row')}; ${options.maxRows} are read at most. Split it or remove rows.`,
      );
    records.length = options.maxRows;
  }
  const mark = options.mark ?? markShown(figures(records, columns, fields));
  const rows: Row<F>[] = [];
  for (const record of records) {
    if (!rightLength(record, heading, report)) continue;
    const row = readRow(record, columns, area, fields, { report, mark });
    if (row) rows.push(row);
  }
  return rows;
}

/** Column names by position; undefined where a needed one is missing. */
function readHeading(
  heading: CsvRecord,
  area: string,
  fields: Fields,
  report: Report,
): (string | undefined)[] | undefined {
  const known = Object.keys(fields);
  const seen = new Map<string, Cell>();
  const columns = heading.cells.map((cell) => {
    const name = cell.text
      .trim()
      .toLowerCase()
      .replace(/[\s-]+/g, '_');
    if (name === '') return undefined;
    if (seen.has(name)) {
      report.add(
        'csv/column-twice',
        cell.place,
        `The column ${shown(cell.text)} stands twice. Remove or rename one.`,
      );
      return undefined;
    }
    seen.set(name, cell);
    if (known.includes(name)) return name;
    const near = nearest(name, known);
    report.add(
      'csv/unknown-column',
      cell.place,
      `There is no column ${shown(cell.text)} in this table, so it is not read. ${near ? `The nearest is "${near}".` : `Known are ${either(known, 'and')}.`}`,
    );
    return undefined;
  });
  const missing = known.filter((name) => fields[name]?.needed && !seen.has(name));
  for (const name of missing)
    report.add(
      'csv/missing-column',
      heading.place,
      `The column "${name}" is missing. ${toWrite(fields[name])}`,
    );
  void area;
  return missing.length > 0 ? undefined : columns;
}

function markShown(figures: Iterable<string>): DecimalMark | undefined {
  const found = findDecimalMark(figures);
  return found === 'mixed' ? undefined : found;
}

function rightLength(record: CsvRecord, heading: CsvRecord, report: Report): boolean {
  const [has, wants] = [record.cells.length, heading.cells.length];
  if (has === wants) return true;
  if (has > wants && record.cells.slice(wants).every((cell) => cell.text.trim() === '')) return true;
  report.add(
    'csv/row-length',
    record.place,
    has > wants
      ? `This row has ${count(has, 'cell')} where the heading has ${wants}. Put text that holds the delimiter in quotes.`
      : `This row has ${count(has, 'cell')} where the heading has ${wants}. Write a delimiter for each empty cell.`,
  );
  return false;
}

function* figures(
  records: readonly CsvRecord[],
  columns: readonly (string | undefined)[],
  fields: Fields,
): Iterable<string> {
  const numeric = columns.flatMap((name, at) =>
    name !== undefined && fields[name]?.kind.numeric ? [at] : [],
  );
  for (const record of records) for (const at of numeric) yield record.cells[at]?.text ?? '';
}

function readRow<F extends Fields>(
  record: CsvRecord,
  columns: readonly (string | undefined)[],
  area: string,
  fields: F,
  reading: { report: Report; mark: DecimalMark | undefined },
): Row<F> | undefined {
  const values: Record<string, unknown> = {};
  const cells = new Map<string, Cell>();
  let whole = true;
  for (const [at, name] of columns.entries()) {
    const field = name === undefined ? undefined : fields[name];
    const cell = record.cells[at];
    if (name === undefined || !field || !cell) continue;
    cells.set(name, cell);
    const text = cell.text.trim();
    if (text === '') {
      if (!field.needed) continue;
      whole = false;
      reading.report.add(fieldRule(area, name), cell.place, `"${name}" is empty. ${toWrite(field)}`);
      continue;
    }
    const value = readField(field, fieldRule(area, name), { text, place: cell.place }, reading);
    if (value === undefined && field.needed) whole = false;
    values[name] = value;
  }
  if (!whole) return undefined;
  const at = (column: string) => cells.get(column)?.place ?? record.place;
  return { ...values, place: record.place, at } as unknown as Row<F>;
}
