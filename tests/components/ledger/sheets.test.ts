import { expect, test } from 'vitest';
import { sheetsOf } from '../../../src/components/ledger/sheets.ts';
import { aSeries } from '../../record/money/a-series.ts';

const { ledger } = aSeries({
  rows: ['2024-11-02', '2025-01-05', '2025-06-01', '2026-02-01'].map((date) => ({
    date,
    kind: 'tool' as const,
    amount: '5.00',
  })),
});

test('a ledger of common length stands on one page', () => {
  expect(sheetsOf(ledger)).toEqual([{ sheet: undefined, lines: ledger }]);
});
test('a long one is split by year, the newest first, and loses no row', () => {
  const sheets = sheetsOf(ledger, 3);
  expect(sheets.map((one) => [one.sheet, one.year, one.lines.length])).toEqual([
    [undefined, '2026', 1],
    ['2025', '2025', 2],
    ['2024', '2024', 1],
  ]);
});
