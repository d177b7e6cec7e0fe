import { stringify } from 'csv-stringify/sync';
import type { Series } from '../types.ts';
import { accountOf } from './account.ts';
import type { DecimalMark } from './decimal.ts';
import type { Column, Table } from './export-tables.ts';
import { money, plainAmount } from './money.ts';

/**
 * CSV that spreadsheets open as it is meant: a byte-order mark so that ö stays ö, Windows line ends as RFC 4180 asks, no
 * text that could become a formula, and numbers with their sign. With a decimal comma, cells are parted by semicolons.
 */
export function toCsv({ columns, rows }: Table, mark: DecimalMark = '.'): string {
  const cells = rows.map((row) => row.map((cell, at) => csvCell(cell, columns[at]?.type ?? 'text', mark)));
  return stringify([columns.map((one) => one.name), ...cells], {
    bom: true,
    delimiter: mark === ',' ? ';' : ',',
    record_delimiter: 'windows',
  });
}

function csvCell(cell: string | undefined, type: Column<never>['type'], mark: DecimalMark): string {
  if (cell === undefined) return '';
  if (type === 'amount' || type === 'quantity') return mark === ',' ? cell.replace('.', ',') : cell;
  return harmless(cell);
}

/** An apostrophe before text that a spreadsheet would work out: = + - @, a tab or a line break at its start. */
export function harmless(text: string): string {
  return /^[\s\u00a0]*[=+\-@＝＋－＠\t\r\n]/u.test(text) ? `'${text}` : text;
}

/** JSON as the schema describes it: amounts as text, so that no reader's program turns them into binary fractions. */
export function toJson(series: Series, table: Table, schema: string): string {
  const account = accountOf(series);
  const rows = table.rows.map((row) =>
    Object.fromEntries(
      table.columns.flatMap(({ name }, at) => (row[at] === undefined ? [] : [[name, row[at]] as const])),
    ),
  );
  return JSON.stringify(
    {
      $schema: schema,
      title: series.title,
      as_of: series.asOf,
      home_currency: account.home,
      total: plainAmount(money(account.total, account.home)),
      rows,
    },
    undefined,
    1,
  );
}

const FORMATS: Record<Column<never>['type'], object> = {
  text: { type: 'string' },
  code: { type: 'string' },
  date: { type: 'string', format: 'date' },
  quantity: { type: 'string', pattern: '^\\d+(\\.\\d+)?$' },
  amount: { type: 'string', pattern: '^-?\\d+(\\.\\d+)?$' },
};

/** The schema of `toJson`'s answer, JSON Schema 2020-12. Columns that may be empty are not required. */
export function toSchema(title: string, table: Table): string {
  const properties = table.columns.map(({ name, type, says }) => [
    name,
    { ...FORMATS[type], description: says },
  ]);
  const always = table.columns.filter((one) => one.always);
  const amount = { ...FORMATS.amount };
  return JSON.stringify(
    {
      $schema: 'https://json-schema.org/draft/2020-12/schema',
      title,
      description: 'Amounts are decimals written as text, with a point and all digits of their currency.',
      type: 'object',
      required: ['title', 'as_of', 'home_currency', 'total', 'rows'],
      properties: {
        $schema: { type: 'string' },
        title: { type: 'string', description: 'Title of the series.' },
        as_of: { type: 'string', format: 'date', description: 'The day that the figures are of.' },
        home_currency: { type: 'string', description: 'ISO 4217.' },
        total: { ...amount, description: 'All that was paid, less what came back, in home money.' },
        rows: {
          type: 'array',
          items: {
            type: 'object',
            required: always.map((one) => one.name),
            properties: Object.fromEntries(properties),
            additionalProperties: false,
          },
        },
      },
      additionalProperties: false,
    },
    undefined,
    1,
  );
}
