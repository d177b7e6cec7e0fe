import { describe, expect, test } from 'vitest';
import { account, accountOf } from '../../../src/record/money/account.ts';
import { money } from '../../../src/record/money/money.ts';
import { aSeries, rate } from './a-series.ts';

const estimate = (low: bigint, high: bigint, currency = 'EUR') => ({
  low: money(low, currency),
  high: money(high, currency),
});

describe('where the money stands', () => {
  const series = aSeries({
    budget: '500.00',
    rates: [rate('2026-09-01', 'EUR', 'CZK', '25.00')],
    orders: [{ id: 'abroad', date: '2026-09-05' }],
    parts: [
      { id: 'rings', status: 'fitted' },
      { id: 'cable', status: 'ordered' },
      { id: 'chain', status: 'ordered', estimate: estimate(4000n, 4500n) },
      { id: 'tyre', status: 'wanted', estimate: estimate(100000n, 125000n, 'CZK') },
      { id: 'lamp', status: 'wanted' },
      { id: 'bracket', status: 'wanted', origin: 'made' },
    ],
    rows: [
      { date: '2026-03-02', kind: 'part', part: 'rings', amount: '120.00' },
      { date: '2026-09-07', kind: 'part', part: 'cable', order: 'abroad', amount: '30.00' },
      { date: '2026-09-07', kind: 'freight', order: 'abroad', amount: '6.00' },
      { date: '2026-05-02', kind: 'sale', item: 'old tyre', amount: '16.00' },
    ],
  });
  const { standing, paid, back } = account(series);

  test('140.00 spent: 156.00 paid, 16.00 back, of a budget of 500.00', () => {
    expect([paid, back, standing.spent, standing.left]).toEqual([15600n, 1600n, 14000n, 36000n]);
  });
  test('the cable is ordered since the day of its order and paid with its freight; the chain is still to pay', () => {
    expect(standing.ordered.map((one) => [one.part.id, one.since, one.paid, one.toPay])).toEqual([
      ['cable', '2026-09-05', 3600n, { low: 0n, high: 0n }],
      ['chain', undefined, 0n, { low: 4000n, high: 4500n }],
    ]);
  });
  test('an estimate of 1 000 to 1 250 CZK at 25.00 is 40.00 to 50.00', () => {
    expect(standing.wantedToPay).toEqual({ low: 4000n, high: 5000n });
  });
  test('the forecast is spent, ordered and wanted together: 220.00 to 235.00', () => {
    expect(standing.forecast).toEqual({ low: 22000n, high: 23500n });
  });
  test('a bought part without an estimate is named as left out, a made one is not', () => {
    expect(standing.withoutEstimate.map((one) => one.id)).toEqual(['lamp']);
  });
  test('every way of gathering the rows sums to what was spent', () => {
    for (const { groups } of account(series).groups)
      expect(groups.reduce((sum, one) => sum + one.home, 0n)).toBe(14000n);
  });
  test('a series is reckoned once, whoever asks', () => {
    expect(accountOf(series)).toBe(accountOf(series));
  });
});
