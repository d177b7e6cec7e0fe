import { readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import Big from 'big.js';
import { parse } from 'csv-parse/sync';
import { add, type Dinero, dinero, subtract, toSnapshot } from 'dinero.js';
import { EUR } from 'dinero.js/currencies';
import { beforeAll, describe, expect, test } from 'vitest';
import { type Account, account } from '../../../src/record/money/account.ts';
import { plainAmount } from '../../../src/record/money/money.ts';
import { readSeries } from '../../../src/record/read-series.ts';

/**
 * The demo's money, worked out again from its files by other libraries: csv-parse reads, big.js turns into euros and shares,
 * dinero.js sums. Where an author's own series has taken the demo's place, there is nothing to compare.
 */
const CONTENT = fileURLToPath(new URL('../../../content', import.meta.url));
const isDemo = /^name: .*Tarn 265 Carrier/m.test(readFileSync(`${CONTENT}/machine.yaml`, 'utf8'));

type Cells = Record<string, string>;
const rowsOf = (name: string): Cells[] =>
  parse(readFileSync(`${CONTENT}/${name}.csv`), { bom: true, columns: true });

function inEuros(row: Cells, rates: readonly Cells[]): Big {
  const currency = row['currency'] || 'EUR';
  const amount = new Exact(row['amount'] ?? '');
  if (currency === 'EUR') return amount;
  const rate = row['rate'] || newest(rates, currency, row['date'] ?? '');
  return amount.div(rate).round(2, Big.roundHalfUp);
}

const Exact = Big();
Exact.DP = 40;

function newest(rates: readonly Cells[], currency: string, day: string): string {
  const fitting = rates.filter(
    (rate) => rate['base'] === 'EUR' && rate['quote'] === currency && (rate['date'] ?? '') <= day,
  );
  return fitting.sort((a, b) => ((a['date'] ?? '') < (b['date'] ?? '') ? 1 : -1))[0]?.['rate'] ?? 'none';
}

const comesBack = (row: Cells): boolean => row['kind'] === 'refund' || row['kind'] === 'sale';
const cents = (amount: Big): Dinero<number, 'EUR'> =>
  dinero({ amount: Number(amount.times(100).toFixed(0)), currency: EUR });
const NOTHING = dinero({ amount: 0, currency: EUR });
const sumOf = (rows: readonly Cells[], rates: readonly Cells[]): number => {
  const sum = rows.reduce(
    (all, row) => (comesBack(row) ? subtract : add)(all, cents(inEuros(row, rates))),
    NOTHING,
  );
  return toSnapshot(sum).amount;
};

describe.runIf(isDemo)('the demo’s totals, recomputed by other libraries', () => {
  let of: Account;
  let ledger: Cells[];
  let rates: Cells[];
  beforeAll(async () => {
    const { series } = await readSeries(CONTENT);
    if (!series) throw new Error('the demo cannot be read');
    of = account(series);
    ledger = rowsOf('ledger');
    rates = rowsOf('rates');
  });

  test('the whole series', () => {
    expect(Number(of.total)).toBe(sumOf(ledger, rates));
  });

  test.each([
    ['chapter', 'chapter'],
    ['kind', 'kind'],
    ['currency', 'currency'],
  ] as const)('by %s', (by, column) => {
    const groups = of.groups.find((one) => one.by === by)?.groups ?? [];
    expect(groups.length).toBeGreaterThan(1);
    for (const group of groups) {
      const rows = ledger.filter((row) => row[column] === group.key);
      expect([group.key, Number(group.home)]).toEqual([group.key, sumOf(rows, rates)]);
    }
  });

  test('every row at its day’s rate', () => {
    const ours = of.lines.map((line) => `${line.place.line} ${plainAmount(line.home).replace('-', '')}`);
    const theirs = ledger.map((row, at) => `${at + 2} ${inEuros(row, rates).toFixed(2)}`);
    expect(ours.sort()).toEqual(theirs.sort());
  });

  test('every share of freight, duty and fees lies within a cent of the exact one', () => {
    for (const { goods, charges } of of.orders)
      for (const { line, basis, shares } of charges) {
        const weights = goods.map((one) => {
          if (basis === 'weight') return new Exact(String(one.line.weight_kg ?? 0));
          if (basis === 'even') return new Exact(1);
          const freight = basis === 'customs value' && line.kind !== 'freight' ? one.freight : 0n;
          return new Exact(String(one.price + freight));
        });
        const all = weights.reduce((sum, one) => sum.plus(one), new Exact(0));
        for (const [row, weight] of weights.entries()) {
          const exact = new Exact(String(line.home.minor)).times(weight).div(all);
          expect(exact.minus(String(shares[row])).abs().lt(1)).toBe(true);
        }
      }
  });
});
