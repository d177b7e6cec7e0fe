import { describe, expect, test } from 'vitest';
import { type Account, account } from '../../../src/record/money/account.ts';
import { LOST } from '../../../src/record/money/groups.ts';
import { money, plainAmount } from '../../../src/record/money/money.ts';
import { aSeries, rate } from './a-series.ts';

const euros = (minor: bigint | undefined): string => plainAmount(money(minor ?? -1n, 'EUR'));

/** Price, freight, duty, fee and landed cost of a part. */
function cost(of: Account, part: string): string[] {
  const one = of.partById.get(part);
  return [one?.price, one?.freight, one?.duty, one?.fee, one?.landed].map(euros);
}

describe('an order from price to landed cost, worked by hand', () => {
  test('freight by value: 5.00 over 40.00 and 10.00 is 4.00 and 1.00', () => {
    const of = account(
      aSeries({
        orders: [{ id: 'a' }],
        parts: [{ id: 'shoes' }, { id: 'springs' }],
        rows: [
          { date: '2026-03-02', kind: 'part', part: 'shoes', order: 'a', amount: '40.00', qty: 4 },
          { date: '2026-03-02', kind: 'part', part: 'springs', order: 'a', amount: '10.00' },
          { date: '2026-03-02', kind: 'freight', order: 'a', amount: '5.00' },
        ],
      }),
    );
    expect(cost(of, 'shoes')).toEqual(['40.00', '4.00', '0.00', '0.00', '44.00']);
    expect(cost(of, 'springs')).toEqual(['10.00', '1.00', '0.00', '0.00', '11.00']);
  });

  test('each charge goes by its own basis: freight by weight, duty by customs value, fee evenly', () => {
    // Freight 9.00 over 1.2 kg and 0.3 kg: 7.20 and 1.80. Customs values 27.20 and 31.80 of 59.00; duty 5.90: 2.72 and 3.18.
    const of = account(
      aSeries({
        orders: [{ id: 'a', freightBy: 'weight', dutyBy: 'customs value', feeBy: 'even' }],
        parts: [{ id: 'drum' }, { id: 'gauge' }],
        rows: [
          { date: '2026-03-02', kind: 'part', part: 'drum', order: 'a', amount: '20.00', weight_kg: 1.2 },
          { date: '2026-03-02', kind: 'part', part: 'gauge', order: 'a', amount: '30.00', weight_kg: 0.3 },
          { date: '2026-03-04', kind: 'duty', order: 'a', amount: '5.90' },
          { date: '2026-03-02', kind: 'freight', order: 'a', amount: '9.00' },
          { date: '2026-03-04', kind: 'fee', order: 'a', amount: '3.01' },
        ],
      }),
    );
    expect(cost(of, 'drum')).toEqual(['20.00', '7.20', '2.72', '1.51', '31.43']);
    expect(cost(of, 'gauge')).toEqual(['30.00', '1.80', '3.18', '1.50', '36.48']);
  });

  test('a part bought twice in two orders, half returned', () => {
    // Order a: 40.00 + 10.00, freight 5.00 by value: 4.00 and 1.00.
    // Order b at 1 EUR = 0.80 GBP: 50.00 + 12.50, freight 10.00 by value: 8.00 and 2.00; customs values 58.00 and 14.50,
    // duty 6.25: 5.00 and 1.25. Two of four go back from each order; the first shop keeps 2.00.
    // Shoes: 90.00 − 18.00 − 25.00 + charges 17.00, of which half (2.00 + 6.50) went back with the pieces: 55.50.
    const of = account(
      aSeries({
        rates: [rate('2026-04-01', 'EUR', 'GBP', '0.80'), rate('2026-04-18', 'EUR', 'GBP', '0.80')],
        orders: [{ id: 'a' }, { id: 'b', dutyBy: 'customs value' }],
        parts: [{ id: 'shoes', system: 'brakes' }, { id: 'springs' }, { id: 'cable' }],
        rows: [
          { date: '2026-03-02', kind: 'part', part: 'shoes', order: 'a', amount: '40.00', qty: 4 },
          { date: '2026-03-02', kind: 'part', part: 'springs', order: 'a', amount: '10.00' },
          { date: '2026-03-02', kind: 'freight', order: 'a', amount: '5.00' },
          {
            date: '2026-04-02',
            kind: 'part',
            part: 'shoes',
            order: 'b',
            amount: '40.00',
            currency: 'GBP',
            qty: 4,
          },
          { date: '2026-04-02', kind: 'part', part: 'cable', order: 'b', amount: '10.00', currency: 'GBP' },
          { date: '2026-04-02', kind: 'freight', order: 'b', amount: '8.00', currency: 'GBP' },
          { date: '2026-04-09', kind: 'duty', order: 'b', amount: '6.25' },
          { date: '2026-03-20', kind: 'refund', part: 'shoes', order: 'a', amount: '18.00', qty: 2 },
          {
            date: '2026-04-20',
            kind: 'refund',
            part: 'shoes',
            order: 'b',
            amount: '20.00',
            currency: 'GBP',
            qty: 2,
          },
        ],
      }),
    );
    expect(cost(of, 'shoes')).toEqual(['90.00', '12.00', '5.00', '0.00', '55.50']);
    expect(euros(of.partById.get('shoes')?.refunded)).toBe('43.00');
    expect(cost(of, 'springs').at(-1)).toBe('11.00');
    expect(cost(of, 'cable').at(-1)).toBe('15.75');
    expect(euros(of.lost)).toBe('8.50');
    expect(euros(of.total)).toBe('90.75');
    const systems = of.groups.find((one) => one.by === 'system')?.groups ?? [];
    expect(systems.map((one) => [one.label, euros(one.home)])).toEqual([
      ['brakes', '55.50'],
      ['engine', '26.75'],
      [LOST, '8.50'],
    ]);
  });

  test('an odd cent goes to the row that stands first in the file', () => {
    const of = account(
      aSeries({
        orders: [{ id: 'a' }],
        parts: [{ id: 'p' }, { id: 'q' }, { id: 'r' }],
        rows: [
          { date: '2026-03-02', kind: 'freight', order: 'a', amount: '1.00' },
          { date: '2026-03-02', kind: 'part', part: 'q', order: 'a', amount: '10.00' },
          { date: '2026-03-02', kind: 'part', part: 'p', order: 'a', amount: '10.00' },
          { date: '2026-03-02', kind: 'part', part: 'r', order: 'a', amount: '10.00' },
        ],
      }),
    );
    expect(['q', 'p', 'r'].map((part) => cost(of, part)[1])).toEqual(['0.34', '0.33', '0.33']);
  });

  test('rows of two currencies in one order are shared by what they came to at home', () => {
    // 25 000 JPY at 160 are 156.25; freight 10.00 over 156.25 and 43.75 is 7.81 and 2.19.
    const of = account(
      aSeries({
        rates: [rate('2026-05-01', 'EUR', 'JPY', '160')],
        orders: [{ id: 'a' }],
        parts: [{ id: 'dynamo' }, { id: 'brushes' }],
        rows: [
          { date: '2026-05-02', kind: 'part', part: 'dynamo', order: 'a', amount: '25000', currency: 'JPY' },
          { date: '2026-05-02', kind: 'part', part: 'brushes', order: 'a', amount: '43.75' },
          { date: '2026-05-02', kind: 'freight', order: 'a', amount: '10.00' },
        ],
      }),
    );
    expect(cost(of, 'dynamo')).toEqual(['156.25', '7.81', '0.00', '0.00', '164.06']);
    expect(cost(of, 'brushes')).toEqual(['43.75', '2.19', '0.00', '0.00', '45.94']);
  });

  test('a duty that names a part falls on that part alone', () => {
    const of = account(
      aSeries({
        orders: [{ id: 'a' }],
        parts: [{ id: 'rings' }, { id: 'oil-can' }],
        rows: [
          { date: '2026-03-02', kind: 'part', part: 'rings', order: 'a', amount: '30.00' },
          { date: '2026-03-02', kind: 'part', part: 'oil-can', order: 'a', amount: '30.00' },
          { date: '2026-03-02', kind: 'duty', part: 'rings', order: 'a', amount: '3.00' },
        ],
      }),
    );
    expect(cost(of, 'rings').at(-1)).toBe('33.00');
    expect(cost(of, 'oil-can').at(-1)).toBe('30.00');
  });

  test('money back without pieces, quantity 0, leaves the freight with the part', () => {
    const of = account(
      aSeries({
        orders: [{ id: 'a' }],
        parts: [{ id: 'seat' }],
        rows: [
          { date: '2026-03-02', kind: 'part', part: 'seat', order: 'a', amount: '80.00' },
          { date: '2026-03-02', kind: 'freight', order: 'a', amount: '12.00' },
          { date: '2026-03-09', kind: 'refund', part: 'seat', order: 'a', amount: '10.00', qty: 0 },
        ],
      }),
    );
    expect(cost(of, 'seat').at(-1)).toBe('82.00');
    expect(of.lost).toBe(0n);
  });

  test('a refund without an order goes to the newest purchase on or before its day', () => {
    const of = account(
      aSeries({
        orders: [{ id: 'a' }, { id: 'b' }],
        parts: [{ id: 'plug' }],
        rows: [
          { date: '2026-03-02', kind: 'part', part: 'plug', order: 'a', amount: '6.00' },
          { date: '2026-03-02', kind: 'freight', order: 'a', amount: '1.00' },
          { date: '2026-04-02', kind: 'part', part: 'plug', order: 'b', amount: '7.00' },
          { date: '2026-04-02', kind: 'freight', order: 'b', amount: '2.00' },
          { date: '2026-04-09', kind: 'refund', part: 'plug', amount: '7.00' },
        ],
      }),
    );
    expect(of.partById.get('plug')?.bought.map((one) => [one.line.order, euros(one.landed)])).toEqual([
      ['a', '7.00'],
      ['b', '0.00'],
    ]);
    expect(euros(of.lost)).toBe('2.00');
  });

  test('what a sold part brought in is money back to the series, and leaves what it cost as it was', () => {
    const of = account(
      aSeries({
        parts: [{ id: 'old-seat' }],
        rows: [
          { date: '2026-03-02', kind: 'part', part: 'old-seat', amount: '20.00' },
          { date: '2026-06-02', kind: 'sale', part: 'old-seat', amount: '35.00' },
        ],
      }),
    );
    expect(cost(of, 'old-seat').at(-1)).toBe('20.00');
    expect(euros(of.partById.get('old-seat')?.sold)).toBe('35.00');
    expect(euros(of.total)).toBe('-15.00');
  });

  test('a part that was sent back and not yet refunded carries its price, but not its freight', () => {
    const of = account(
      aSeries({
        orders: [{ id: 'a' }],
        parts: [{ id: 'lamp', status: 'returned' }],
        rows: [
          { date: '2026-03-02', kind: 'part', part: 'lamp', order: 'a', amount: '25.00', qty: 2 },
          { date: '2026-03-02', kind: 'freight', order: 'a', amount: '5.00' },
        ],
      }),
    );
    expect(cost(of, 'lamp').at(-1)).toBe('25.00');
    expect(euros(of.lost)).toBe('5.00');
  });
});
