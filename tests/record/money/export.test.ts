import { parse } from 'csv-parse/sync';
import { describe, expect, test } from 'vitest';
import { z } from 'zod';
import { account } from '../../../src/record/money/account.ts';
import { harmless, toCsv, toJson, toSchema } from '../../../src/record/money/export.ts';
import { ledgerTable, totalsTable } from '../../../src/record/money/export-tables.ts';
import type { Series } from '../../../src/record/types.ts';
import { aSeries, rate } from './a-series.ts';

function series(publishLedger: Series['publishLedger'] = 'lines'): Series {
  const made = aSeries({
    rates: [rate('2026-03-01', 'EUR', 'CZK', '25.00')],
    orders: [{ id: 'a' }],
    parts: [{ id: 'shoes', system: 'brakes' }],
    rows: [
      {
        date: '2026-03-02',
        kind: 'part',
        item: '=cmd|calc',
        part: 'shoes',
        order: 'a',
        amount: '1250.00',
        currency: 'CZK',
      },
      { date: '2026-03-02', kind: 'freight', item: 'Post; "signed for"', order: 'a', amount: '4.20' },
      {
        date: '2026-03-09',
        kind: 'refund',
        item: '-10 % for the scratch',
        part: 'shoes',
        order: 'a',
        amount: '5.00',
      },
      {
        date: '2026-03-03',
        kind: 'tool',
        item: 'Füßler',
        supplier: '+49 shop',
        amount: '9.99',
        chapter: '11-held',
      },
    ],
  });
  for (const line of made.ledger) line.privateNote = 'PLANTED-SECRET';
  return { ...made, publishLedger };
}

function rowsOf(csv: string, delimiter: string): Record<string, string>[] {
  return parse(csv, { bom: true, columns: true, delimiter });
}

describe('the ledger as a reader downloads it', () => {
  const table = ledgerTable(series());
  if (!table) throw new Error('the rows are published');

  test('opens in a spreadsheet with its letters, and its rows sum to the total', () => {
    const csv = toCsv(table);
    expect(csv.startsWith('\ufeffdate,kind,item,')).toBe(true);
    expect(csv.endsWith('\r\n')).toBe(true);
    const minor = rowsOf(csv, ',').reduce(
      (sum, row) => sum + BigInt(row['home_amount']?.replace('.', '') ?? ''),
      0n,
    );
    expect(minor).toBe(account(series()).total);
    expect(csv).toContain('Füßler');
  });
  test('has no text that becomes a formula, and no number that loses its sign', () => {
    const rows = rowsOf(toCsv(table), ',');
    expect(rows.map((row) => row['item'])).toEqual([
      "'=cmd|calc",
      'Post; "signed for"',
      'Füßler',
      "'-10 % for the scratch",
    ]);
    expect(rows[2]?.['supplier']).toBe("'+49 shop");
    expect(rows[3]?.['home_amount']).toBe('-5.00');
  });
  test('comes with semicolons and decimal commas as well', () => {
    const rows = rowsOf(toCsv(table, ','), ';');
    expect(rows.map((row) => row['home_amount'])).toEqual(['50,00', '4,20', '9,99', '-5,00']);
    expect(rows[1]?.['item']).toBe('Post; "signed for"');
  });
  test('says how each part came to its landed cost', () => {
    // 50.00 + 4.20 − 5.00, and the one piece went back, so its 4.20 stay with the series.
    expect(rowsOf(toCsv(table), ',')[0]).toMatchObject({
      rate: '1 EUR = 25.00 CZK',
      freight_share: '4.20',
      landed: '45.00',
    });
  });
  test('keeps private notes and chapters that are not out to itself', () => {
    for (const text of [toCsv(table), toJson(series(), table, 'ledger.schema.json')]) {
      expect(text).not.toContain('PLANTED-SECRET');
      expect(text).not.toContain('11-held');
    }
  });
  test('as JSON follows its own schema', () => {
    const schema = z.fromJSONSchema(JSON.parse(toSchema('Ledger', table)));
    const written = JSON.parse(toJson(series(), table, 'ledger.schema.json'));
    expect(schema.safeParse(written).error).toBeUndefined();
    expect(written.total).toBe('59.19');
    written.rows[0].private_note = 'x';
    expect(schema.safeParse(written).success).toBe(false);
  });
});

describe('what is published is the author’s choice', () => {
  test('totals: no rows, no supplier, no item', () => {
    expect(ledgerTable(series('totals'))).toBeUndefined();
    const table = totalsTable(series('totals'));
    const csv = table ? toCsv(table) : '';
    expect(csv).toContain('all,total,4,59.19,EUR');
    for (const word of ['Korbel', '+49', 'Füßler', 'scratch']) expect(csv).not.toContain(word);
  });
  test('nothing: neither', () => {
    expect(ledgerTable(series('nothing'))).toBeUndefined();
    expect(totalsTable(series('nothing'))).toBeUndefined();
  });
});

test.each(['=1', '+1', '-1', '@x', '\t=1', '\r=1', ' =1', '\u00a0=1', '＝1'])(
  '%j is made harmless',
  (text) => {
    expect(harmless(text)).toBe(`'${text}`);
  },
);
test('plain words stay as they are', () => {
  expect(harmless('Brake shoes, 4 off')).toBe('Brake shoes, 4 off');
});
