import fc from 'fast-check';
import type { WrittenRow, WrittenSeries } from './a-series.ts';
import { rate } from './a-series.ts';

/** Ledgers of any shape that a reader would accept: parts, charges, refunds and sales, in orders and out, in five currencies. */
const CURRENCIES = ['EUR', 'GBP', 'CZK', 'USD', 'JPY'];
const PARTS = ['rings', 'shoes', 'cable', 'chain'];
const ORDERS = ['a', 'b', 'c'];

export const RATES = [
  rate('2026-03-01', 'EUR', 'GBP', '0.85310'),
  rate('2026-03-01', 'EUR', 'CZK', '25.120'),
  rate('2026-03-01', 'USD', 'EUR', '0.9215'),
  rate('2026-03-01', 'EUR', 'JPY', '161.37'),
  rate('2026-03-06', 'EUR', 'GBP', '0.85125'),
  rate('2026-03-06', 'EUR', 'JPY', '160.94'),
];

const amountIn = (currency: string): fc.Arbitrary<string> =>
  fc
    .bigInt({ min: 1n, max: 5_000_00n })
    .map((minor) =>
      currency === 'JPY' ? String(minor) : `${minor / 100n}.${String(minor % 100n).padStart(2, '0')}`,
    );

const row: fc.Arbitrary<WrittenRow> = fc.constantFrom(...CURRENCIES).chain((currency) =>
  fc.record(
    {
      date: fc.integer({ min: 1, max: 10 }).map((day) => `2026-03-${String(day).padStart(2, '0')}`),
      kind: fc.constantFrom<WrittenRow['kind'][]>(
        'part',
        'part',
        'part',
        'consumable',
        'tool',
        'freight',
        'duty',
        'fee',
        'refund',
        'sale',
      ),
      amount: amountIn(currency),
      currency: fc.constant(currency),
      part: fc.constantFrom(...PARTS),
      order: fc.constantFrom(...ORDERS),
      qty: fc.integer({ min: 1, max: 6 }),
      weight_kg: fc.integer({ min: 1, max: 4000 }).map((grams) => grams / 1000),
    },
    { requiredKeys: ['date', 'kind', 'amount', 'currency'] },
  ),
);

const basis = fc.constantFrom('value' as const, 'weight' as const, 'customs value' as const, 'even' as const);

export const ledger: fc.Arbitrary<WrittenSeries> = fc.record({
  rates: fc.constant(RATES),
  orders: fc
    .tuple(basis, basis, basis)
    .map(([freightBy, dutyBy, feeBy]) => ORDERS.map((id) => ({ id, freightBy, dutyBy, feeBy }))),
  parts: fc.constant(PARTS.map((id, index) => ({ id, system: index % 2 === 0 ? 'engine' : 'brakes' }))),
  rows: fc.array(row, { minLength: 1, maxLength: 40 }),
});
