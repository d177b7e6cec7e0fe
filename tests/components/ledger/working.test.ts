import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { printerOf } from '../../../src/components/ledger/printing.ts';
import { eachKept, exactShare, orderBalance, workingOf } from '../../../src/components/ledger/working.ts';
import { account } from '../../../src/record/money/account.ts';
import { aSeries, rate } from '../../record/money/a-series.ts';
import { ledger } from '../../record/money/ledgers.ts';

const series = aSeries({
  rates: [rate('2026-03-01', 'EUR', 'GBP', '0.80')],
  orders: [{ id: 'a', freightBy: 'weight', feeBy: 'even' }],
  parts: [{ id: 'rings' }, { id: 'seals' }],
  rows: [
    {
      date: '2026-03-02',
      kind: 'part',
      part: 'rings',
      order: 'a',
      amount: '40.00',
      currency: 'GBP',
      qty: 4,
      weight_kg: 0.08,
    },
    { date: '2026-03-02', kind: 'part', part: 'seals', order: 'a', amount: '20.00', qty: 3, weight_kg: 0.06 },
    { date: '2026-03-02', kind: 'freight', order: 'a', amount: '7.01' },
    { date: '2026-03-02', kind: 'fee', order: 'a', amount: '3.00' },
    { date: '2026-03-12', kind: 'refund', part: 'rings', order: 'a', amount: '10.00', qty: 2 },
  ],
});
const of = account(series);
const print = printerOf(series);
const order = of.orderById.get('a');
const rings = order?.goods[0];
if (!order || !rings) throw new Error('the order has its rings');

describe('the working of a landed cost', () => {
  test('follows price, shares and what went back, line by line', () => {
    expect(
      workingOf(rings, of, print).map((line) => [line.what, line.how, print.figures(line.comes)]),
    ).toEqual([
      ['Price', '40.00\u00a0GBP at 1 EUR = 0.80 GBP (a bank, 1 Mar 2026)', '50.00'],
      ['Share of freight', '7.01 × 0.08 / 0.14\u00a0kg, by weight', '4.01'],
      ['Share of the fee', '3.00 / 2, evenly', '1.50'],
      ['Refunded', '2 of 4 sent back', '−10.00'],
      ['Stays with the series', 'freight, duty and fees of 2 of 4 sent back', '−2.76'],
    ]);
    expect(print.figures(rings.landed)).toBe('42.75');
  });
  test('shows the share before it was rounded', () => {
    const freight = order.charges[0];
    expect(freight && [0, 1].map((row) => exactShare(freight, row, 2, '.'))).toEqual(['4.0057', '3.0042']);
  });
  test('says what each piece kept came to', () => {
    expect(eachKept(rings)).toBe(2138n);
  });
  test('sums to the landed cost, for any ledger', () => {
    fc.assert(
      fc.property(ledger, (written) => {
        const any = aSeries(written);
        const worked = account(any);
        for (const one of worked.goods) {
          const lines = workingOf(one, worked, printerOf(any));
          expect(lines.reduce((sum, line) => sum + line.comes, 0n)).toBe(one.landed);
        }
      }),
    );
  });
});

describe('the balance of an order', () => {
  test('names what its rows came to', () => {
    expect(orderBalance(order, of).map(({ what, comes }) => [what, print.figures(comes)])).toEqual([
      ['Landed cost of its goods', '67.25'],
      ['Freight, duty and fees on what was sent back', '2.76'],
    ]);
    expect(print.figures(order.total)).toBe('70.01');
  });
  test('sums to what was paid, for any ledger', () => {
    fc.assert(
      fc.property(ledger, (written) => {
        const worked = account(aSeries(written));
        for (const one of worked.orders)
          expect(orderBalance(one, worked).reduce((sum, line) => sum + line.comes, 0n)).toBe(one.total);
      }),
    );
  });
});
