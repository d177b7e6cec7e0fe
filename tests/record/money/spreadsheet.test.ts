import { cpSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { expect, test } from 'vitest';
import { account } from '../../../src/record/money/account.ts';
import { plainAmount } from '../../../src/record/money/money.ts';
import { readSeries } from '../../../src/record/read-series.ts';

/**
 * as-written.csv was typed by hand, with commas and decimal points; saved-again.csv is the same table as LibreOffice Calc
 * 7.4 saved it for a German desk: semicolons, decimal commas, trailing zeros gone, quotes only where it needs them.
 */
const HERE = fileURLToPath(new URL('spreadsheet/', import.meta.url));
const BASE = fileURLToPath(new URL('../../series/_base/content', import.meta.url));

const RATES = `date,base,quote,rate,source
2026-03-01,EUR,CZK,25.1200,a bank
`;
const ORDERS = 'order,date,supplier,freight_by\nkorbel-1,2026-03-01,Korbel & Sons,weight\n';
const PARTS = `part,name,system,status
shoes-front,"Brake shoes, front",brakes,fitted
springs,Return springs,brakes,fitted
`;

async function read(ledger: string) {
  const content = mkdtempSync(join(tmpdir(), 'oilway-'));
  try {
    cpSync(BASE, content, { recursive: true });
    cpSync(join(HERE, ledger), join(content, 'ledger.csv'));
    writeFileSync(join(content, 'rates.csv'), RATES);
    writeFileSync(join(content, 'orders.csv'), ORDERS);
    writeFileSync(join(content, 'parts.csv'), PARTS);
    const { series, problems } = await readSeries(content);
    if (!series) throw new Error('the series could not be read');
    const rows = series.ledger.map(({ place: _, ...row }) => row);
    const of = account(series);
    const parts = [...of.partById.values()].map((one) => [one.part.id, one.landed]);
    return { rows, total: of.total, parts, problems: problems.map(({ rule, message }) => [rule, message]) };
  } finally {
    rmSync(content, { recursive: true, force: true });
  }
}

test('a ledger that a spreadsheet saved with semicolons and decimal commas reads the same as before', async () => {
  const before = await read('as-written.csv');
  const after = await read('saved-again.csv');
  expect(before.rows).toHaveLength(8);
  expect(before.rows.map((row) => plainAmount(row.home))).toEqual([
    '57.72',
    '3.44',
    '8.36',
    '3.75',
    '-491.47',
    '39.90',
    '7.65',
    '-41.06',
  ]);
  expect(after).toEqual(before);
});
