import { describe, expect, test } from 'vitest';
import { checkMoney } from '../../../src/record/money/checks.ts';
import { severityOf } from '../../../src/record/rules/written.ts';
import { aSeries, rate, type WrittenSeries } from './a-series.ts';

function findings(written: WrittenSeries): string[] {
  const series = aSeries(written);
  const found: string[] = [];
  checkMoney(series.ledger, series.orders, ({ rule, line, message }) =>
    found.push(`${line.place.line} ${severityOf(rule)} ${rule} ${message}`),
  );
  return found;
}

const part = { date: '2026-03-02', kind: 'part', part: 'shoes', order: 'a' } as const;

describe('an order', () => {
  test('with freight and no part is an error', () => {
    expect(
      findings({
        orders: [{ id: 'a' }],
        rows: [{ date: '2026-03-02', kind: 'freight', order: 'a', amount: '9.00' }],
      }),
    ).toEqual([
      '2 error orders/charge-alone Order "a" has freight and no part to share it over. Give a row of goods the order "a", or leave the order of this row empty.',
    ]);
  });
  test('that shares by weight needs every weight', () => {
    expect(
      findings({
        orders: [{ id: 'a', freightBy: 'weight' }],
        rows: [
          { ...part, amount: '9.00', weight_kg: 1 },
          { ...part, part: 'drum', item: 'Brake drum', amount: '9.00' },
          { date: '2026-03-02', kind: 'freight', order: 'a', amount: '9.00' },
        ],
      }),
    ).toEqual([
      '3 error orders/weight-missing Order "a" shares its freight by weight, but "Brake drum" has none. Write the weight of the whole row, or share by value.',
    ]);
  });
  test('that shares by weight needs none of outside work, unless there is nothing else', () => {
    const turning = { date: '2026-03-02', kind: 'outside work', item: 'Drum turned', order: 'a' } as const;
    const freight = { date: '2026-03-02', kind: 'freight', order: 'a', amount: '9.00' } as const;
    const orders = [{ id: 'a', freightBy: 'weight' as const }];
    const work = { ...turning, amount: '40.00' };
    expect(findings({ orders, rows: [{ ...part, amount: '9.00', weight_kg: 1 }, work, freight] })).toEqual(
      [],
    );
    expect(findings({ orders, rows: [work, freight] })[0]).toContain('but "Drum turned" has none');
  });
  test('with a charge for a part that it does not hold is an error', () => {
    expect(
      findings({
        orders: [{ id: 'a' }],
        rows: [
          { ...part, amount: '9.00' },
          { date: '2026-03-02', kind: 'duty', order: 'a', part: 'drum', amount: '1.00' },
        ],
      })[0],
    ).toContain('has duty and no row of part "drum" to share it over');
  });
});

describe('a refund', () => {
  test('larger than what was paid is a warning that shows both', () => {
    expect(
      findings({
        orders: [{ id: 'a' }],
        rows: [
          { ...part, amount: '40.00' },
          { ...part, kind: 'refund', date: '2026-03-09', amount: '44.00' },
        ],
      }),
    ).toEqual([
      '3 warning ledger/refund-above-paid €44.00 came back for part "shoes" in order "a", more than the €40.00 that was paid for it. Check both amounts.',
    ]);
  });
  test('of two rows together larger than what was paid is told once', () => {
    expect(
      findings({
        orders: [{ id: 'a' }],
        rows: [
          { ...part, qty: 4, amount: '40.00' },
          { ...part, kind: 'refund', date: '2026-03-09', amount: '25.00' },
          { ...part, kind: 'refund', date: '2026-03-12', amount: '25.00' },
        ],
      }),
    ).toHaveLength(1);
  });
  test('in full is fine, also where the rate has moved since', () => {
    expect(
      findings({
        rates: [rate('2026-03-01', 'EUR', 'GBP', '0.90'), rate('2026-03-09', 'EUR', 'GBP', '0.80')],
        orders: [{ id: 'a' }],
        rows: [
          { ...part, amount: '40.00', currency: 'GBP' },
          { ...part, kind: 'refund', date: '2026-03-09', amount: '40.00', currency: 'GBP' },
        ],
      }),
    ).toEqual([]);
  });
  test('of a part that was never bought is a warning', () => {
    expect(
      findings({ rows: [{ date: '2026-03-09', kind: 'refund', part: 'seat', amount: '5.00' }] })[0],
    ).toContain('Nothing was paid for part "seat", yet €5.00 came back');
  });
  test('of more pieces than were bought is a warning', () => {
    expect(
      findings({
        orders: [{ id: 'a' }],
        rows: [
          { ...part, qty: 2, amount: '40.00' },
          { ...part, kind: 'refund', date: '2026-03-09', qty: 3, amount: '30.00' },
        ],
      })[0],
    ).toContain('3 pieces of part "shoes" were sent back in order "a", but 2 were bought');
  });
  test('of a part bought in two orders should name its order', () => {
    expect(
      findings({
        orders: [{ id: 'a' }, { id: 'b' }],
        rows: [
          { ...part, amount: '40.00' },
          { ...part, order: 'b', amount: '40.00' },
          { date: '2026-03-09', kind: 'refund', part: 'shoes', amount: '40.00' },
        ],
      })[0],
    ).toContain('Name the order that this refund belongs to');
  });
});
