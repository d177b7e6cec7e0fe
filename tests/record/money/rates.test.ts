import { describe, expect, test } from 'vitest';
import { contradictingRates, rateTable } from '../../../src/record/money/rates.ts';
import { type RowMoneyCells, type RowMoneyProblem, rowMoney } from '../../../src/record/money/row-money.ts';
import type { RateRow } from '../../../src/record/types.ts';
import { rate } from './a-series.ts';

const RATES = [
  rate('2026-03-01', 'EUR', 'CZK', '25.120'),
  rate('2026-03-05', 'EUR', 'CZK', '25.000'),
  rate('2026-03-05', 'GBP', 'EUR', '1.1730'),
];

function row(cells: Partial<RowMoneyCells>, rates: RateRow[] = RATES, home = 'EUR') {
  const problems: RowMoneyProblem[] = [];
  const read = rowMoney(
    { date: '2026-03-06', kind: 'part', amount: '1000.00', currency: 'CZK', ...cells },
    { home, rates: rateTable(rates), maxDays: 10, mark: '.' },
    (problem) => problems.push(problem),
  );
  return { home: read?.home.minor, used: read?.rate?.text, on: read?.rate?.date, problems };
}

describe('the rate of a row', () => {
  test('is the newest on or before its day', () => {
    expect(row({})).toMatchObject({ home: 4000n, used: '1 EUR = 25.000 CZK', on: '2026-03-05' });
    expect(row({ date: '2026-03-04' })).toMatchObject({ home: 3981n, on: '2026-03-01' });
  });
  test('is multiplied where its source publishes it the other way', () => {
    expect(row({ currency: 'GBP', amount: '10.00' })).toMatchObject({
      home: 1173n,
      used: '1 GBP = 1.1730 EUR',
    });
  });
  test('on the row itself goes before the published one', () => {
    expect(row({ rate: '24.5' })).toMatchObject({ home: 4082n, used: '1 EUR = 24.5 CZK', problems: [] });
  });
  test('on the row runs as rates.csv publishes the pair', () => {
    expect(row({ currency: 'GBP', amount: '10.00', rate: '1.20' })).toMatchObject({ home: 1200n });
  });
  test('on the row can be written out in either direction', () => {
    expect(row({ rate: '1 CZK = 0.0400 EUR' })).toMatchObject({ home: 4000n, used: '1 CZK = 0.0400 EUR' });
    expect(row({ rate: '1 EUR = 25 CZK' })).toMatchObject({ home: 4000n });
  });
  test('that was probably written the wrong way round is told, with the published one', () => {
    const [problem] = row({ currency: 'GBP', amount: '10.00', rate: '0.8525' }).problems;
    expect(problem).toMatchObject({ column: 'rate', severity: 'warning' });
    expect(problem?.message).toContain('1 GBP = 0.8525 EUR is far from 1 GBP = 1.1730 EUR');
  });
  test('that is missing is an error that names the day and the currency', () => {
    const { home, problems } = row({ currency: 'USD' });
    expect(home).toBeUndefined();
    expect(problems).toEqual([
      {
        column: 'rate',
        severity: 'error',
        message:
          "There is no rate between USD and EUR for 2026-03-06: rates.csv has none on or before that day. Add one to rates.csv, or write it in the row's rate column.",
      },
    ]);
  });
  test('may not be older than the series allows', () => {
    expect(row({ date: '2026-03-15' }).home).toBe(4000n);
    expect(row({ date: '2026-03-16' }).problems[0]?.message).toContain(
      'the newest is of 2026-03-05, 11 days before, and rate_max_days allows 10',
    );
  });
  test('of a day to come is never used', () => {
    expect(row({ date: '2026-02-28' }).problems[0]?.message).toContain('none on or before that day');
  });
  test('of 0, of two marks, of the wrong pair or as a formula is refused', () => {
    expect(row({ rate: '0' }).problems[0]?.message).toContain('is 0');
    expect(row({ rate: '25.1.2' }).problems[0]?.message).toContain('is not a rate');
    expect(row({ rate: '=1/25' }).problems[0]?.message).toContain('is a formula');
    expect(row({ rate: '1 USD = 25 CZK' }).problems[0]?.message).toContain('not a rate between CZK and EUR');
  });
  test('has no meaning on a row in home money', () => {
    expect(row({ currency: 'EUR', rate: '1.1' })).toMatchObject({
      home: 100000n,
      problems: [{ severity: 'warning' }],
    });
  });
});

test('a refund and a sale come out negative in home money', () => {
  expect(row({ kind: 'refund' }).home).toBe(-4000n);
  expect(row({ kind: 'sale' }).home).toBe(-4000n);
});

test('two different rates of one pair and day are found, equal ones are not', () => {
  const table = rateTable([
    ...RATES,
    rate('2026-03-05', 'EUR', 'CZK', '25.0'),
    rate('2026-03-01', 'EUR', 'CZK', '25.2'),
  ]);
  expect(contradictingRates(table).map(([a, b]) => [a.date, a.rate, b.rate])).toEqual([
    ['2026-03-01', '25.120', '25.2'],
  ]);
});
