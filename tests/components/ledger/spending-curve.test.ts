import { describe, expect, test } from 'vitest';
import { sharePercent } from '../../../src/components/ledger/share-percent.ts';
import { spendingCurve } from '../../../src/components/ledger/spending-curve.ts';
import { account } from '../../../src/record/money/account.ts';
import type { Group } from '../../../src/record/money/groups.ts';
import { aSeries } from '../../record/money/a-series.ts';

const of = account(
  aSeries({
    budget: '100.00',
    rows: [
      { date: '2026-01-01', kind: 'tool', amount: '10.00' },
      { date: '2026-01-01', kind: 'tool', amount: '10.00' },
      { date: '2026-03-02', kind: 'part', amount: '60.00' },
      { date: '2026-04-01', kind: 'sale', amount: '30.00' },
    ],
  }),
);

describe('the curve of spending', () => {
  const curve = spendingCurve(of, '2026-05-01', [{ date: '2026-01-01', number: 1 }]);
  if (!curve) throw new Error('there are rows');

  test('runs from the first row to the day of the series, in steps, and falls where money came back', () => {
    // 0 to 100 over 196 units of height, 0 at 210: 20 is at 170.8, 80 at 53.2, 50 at 112.
    expect(curve.path).toBe('M4 210H4V170.8H214V53.2H319V112H424');
    expect(curve.end).toEqual({ x: 424, y: 112 });
  });
  test('shows the budget, the chapters and the months', () => {
    expect(curve.budget).toEqual({ y: 14 });
    expect(curve.chapters).toEqual([{ x: 4, number: 1 }]);
    expect(curve.months.map((one) => one.month)).toEqual(['2026-02', '2026-03', '2026-04', '2026-05']);
  });
  test('is not drawn without rows', () => {
    expect(spendingCurve(account(aSeries({ rows: [] })), '2026-05-01', [])).toBeUndefined();
  });
});

describe('shares in percent', () => {
  const group = (home: bigint): Group => ({ by: 'kind', key: String(home), label: '', rows: 1, home });
  test('sum to 100, where rounded one by one they would sum to 101', () => {
    expect(sharePercent([51n, 18n, 11n].map(group))).toEqual(['64\u00a0%', '22\u00a0%', '14\u00a0%']);
  });
  test('are left out where money back makes one negative', () => {
    expect(sharePercent([50n, -10n].map(group))).toBeUndefined();
  });
});
