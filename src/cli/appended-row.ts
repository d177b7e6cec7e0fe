import { type DecimalMark, decimalText, findDecimalMark, readDecimal } from '../record/money/decimal.ts';
import { delimiterOf, readCsv } from '../record/read/csv.ts';
import type { Fields } from '../record/read/field.ts';
import { Report } from '../record/report-to.ts';
import { Lines } from '../record/text/lines.ts';

/** How a table is written, found from the table itself so that a row can be added in its own manner. */
export interface TableManner {
  byteOrderMark: boolean;
  lineEnd: '\n' | '\r\n';
  delimiter: string;
  /** Every cell stands in quotes, as some programs write. */
  allQuoted: boolean;
  mark: DecimalMark | undefined;
  /** Headings as written, in their order. */
  headings: string[];
}

/** A heading as fields are named: "Maker Number" is maker_number. */
export const fieldName = (heading: string): string =>
  heading
    .trim()
    .toLowerCase()
    .replace(/[\s-]+/g, '_');

/** The manner of a table. `stated` is the decimal mark of series.yaml; without it the table's own figures tell. */
export function mannerOf(written: string, fields: Fields, stated: DecimalMark | undefined): TableManner {
  const byteOrderMark = written.startsWith('\ufeff');
  const text = (byteOrderMark ? written.slice(1) : written).replace(/\r\n?/g, '\n');
  const [heading, ...records] = readCsv(new Lines('', text), new Report());
  const headings = heading?.cells.map((cell) => cell.text) ?? [];
  const figures = records.flatMap((record) =>
    record.cells.flatMap((cell, at) =>
      fields[fieldName(headings[at] ?? '')]?.kind.numeric ? [cell.text] : [],
    ),
  );
  const shown = findDecimalMark(figures);
  const first = text.trimStart();
  return {
    byteOrderMark,
    lineEnd: /\r\n/.test(written) ? '\r\n' : '\n',
    delimiter: delimiterOf(text),
    allQuoted:
      headings.length > 0 &&
      first.slice(0, first.indexOf('\n') + 1 || undefined).split('"').length - 1 >= headings.length * 2,
    mark: stated ?? (shown === 'mixed' ? undefined : shown),
    headings,
  };
}

/** A row's cells in the order of the table's headings, as one line without its end. */
export function rowLine(values: ReadonlyMap<string, string>, manner: TableManner): string {
  return manner.headings
    .map((heading) => quoted(values.get(fieldName(heading)) ?? '', manner))
    .join(manner.delimiter);
}

function quoted(cell: string, { allQuoted, delimiter, lineEnd }: TableManner): string {
  const needs = cell.includes(delimiter) || /["\n\r]|^\s|\s$/.test(cell);
  if (!allQuoted && !needs) return cell;
  return `"${cell.replaceAll('"', '""').replace(/\r?\n/g, lineEnd)}"`;
}

/** The table with the line at its end; every byte before stays as it was. */
export function withLine(written: string, line: string, { lineEnd }: TableManner): string {
  const open = written !== '' && !/[\r\n]$/.test(written);
  return `${written}${open ? lineEnd : ''}${line}${lineEnd}`;
}

/** Number of the line that `withLine` adds, from 1. */
export function lineNumberAfter(written: string): number {
  const ends = written.match(/\r\n|\r|\n/g)?.length ?? 0;
  return ends + (written === '' || /[\r\n]$/.test(written) ? 1 : 2);
}

/** A figure in the table's own decimal mark: 12.50 becomes 12,50 where the table has commas. Words stay as they are. */
export function inManner(figure: string, mark: DecimalMark | undefined): string {
  const known = readDecimal(figure, mark);
  const read = known.ok ? known : readDecimal(figure, undefined);
  if (!read.ok) return figure;
  const plain = decimalText(read.value);
  return mark === ',' ? plain.replace('.', ',') : plain;
}
