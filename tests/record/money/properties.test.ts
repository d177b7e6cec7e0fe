import Big from 'big.js';
import { add, dinero, toDecimal } from 'dinero.js';
import { EUR } from 'dinero.js/currencies';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { account } from '../../../src/record/money/account.ts';
import { plainAmount } from '../../../src/record/money/money.ts';
import { divideRounded } from '../../../src/record/money/rounding.ts';
import { split } from '../../../src/record/money/split.ts';
import type { LedgerLine } from '../../../src/record/types.ts';
import { aSeries } from './a-series.ts';
import { ledger, RATES } from './ledgers.ts';

const weights = fc.array(fc.bigInt({ min: 0n, max: 10n ** 12n }), { minLength: 1, maxLength: 30 });
const total = fc.bigInt({ min: -(10n ** 12n), max: 10n ** 12n });
const sum = (amounts: readonly bigint[]) => amounts.reduce((a, b) => a + b, 0n);

describe('shares', () => {
  test('always sum to the whole', () => {
    fc.assert(fc.property(total, weights, (whole, by) => sum(split(whole, by)) === whole));
  });
  test('are never a whole minor unit away from the exact share', () => {
    fc.assert(
      fc.property(total, weights, (whole, by) => {
        const all = sum(by);
        if (all === 0n) return;
        split(whole, by).forEach((share, row) => {
          const off = share * all - whole * (by[row] ?? 0n);
          expect((off < 0n ? -off : off) < all).toBe(true);
        });
      }),
    );
  });
  test('give nothing to a weight of 0, unless all are 0', () => {
    fc.assert(
      fc.property(total, weights, (whole, by) => {
        if (sum(by) === 0n) return;
        split(whole, by).forEach((share, row) => {
          if (by[row] === 0n) expect(share).toBe(0n);
        });
      }),
    );
  });
});

describe('the account of any ledger', () => {
  test('goods at the door, what was lost on goods sent back, and the rest sum to the rows', () => {
    fc.assert(
      fc.property(ledger, (written) => {
        const of = account(aSeries(written));
        const landed = sum(of.goods.map((one) => one.landed + one.lost));
        const apart = sum(of.apart.map((line) => line.home.minor));
        expect(landed + apart).toBe(of.total);
      }),
    );
  });

  test('sums to the same whichever way the rows are gathered', () => {
    fc.assert(
      fc.property(ledger, (written) => {
        const of = account(aSeries(written));
        for (const { groups } of of.groups) expect(sum(groups.map((one) => one.home))).toBe(of.total);
        expect(of.paid - of.back).toBe(of.total);
      }),
    );
  });

  test('does not depend on the order of the rows, but for the row that gets an odd cent', () => {
    fc.assert(
      fc.property(ledger, fc.infiniteStream(fc.nat()), (written, dice) => {
        const shuffled = [...written.rows]
          .map((row) => ({ row, at: dice.next().value }))
          .sort((a, b) => a.at - b.at)
          .map(({ row }) => row);
        const one = account(aSeries(written));
        const other = account(aSeries({ ...written, rows: shuffled }));
        expect(other.total).toBe(one.total);
        for (const by of ['chapter', 'kind', 'supplier', 'currency', 'month'] as const)
          expect(groupsBy(other, by)).toEqual(groupsBy(one, by));
        const charges = written.rows.length;
        for (const [id, part] of one.partById) {
          const off = part.landed - (other.partById.get(id)?.landed ?? 0n);
          expect((off < 0n ? -off : off) <= BigInt(charges * 2)).toBe(true);
        }
      }),
    );
  });

  test('is as before once a row is reversed', () => {
    fc.assert(
      fc.property(ledger, fc.nat(), (written, which) => {
        const row = written.rows[which % written.rows.length];
        if (!row || row.kind === 'refund' || row.kind === 'sale') return;
        const { order: _, part: __, ...bare } = row;
        const rows = [...written.rows, row, { ...bare, kind: 'refund' as const }];
        expect(account(aSeries({ ...written, rows })).total).toBe(account(aSeries(written)).total);
      }),
    );
  });
});

describe('recomputed by other libraries', () => {
  /** Home money by big.js: rates applied by hand, rounded half away from zero at the cent. */
  function byBig(line: LedgerLine): Big {
    const amount = new Big(plainAmount(line.amount));
    const newest = RATES.filter(
      (rate) => [rate.base, rate.quote].includes(line.amount.currency) && rate.date <= line.date,
    ).sort((a, b) => (a.date < b.date ? 1 : -1))[0];
    const big = Big();
    big.DP = 40;
    const exact =
      newest === undefined || line.amount.currency === 'EUR'
        ? amount
        : newest.base === 'EUR'
          ? big(amount).div(newest.rate)
          : big(amount).times(newest.rate);
    const rounded = exact.round(2, Big.roundHalfUp);
    return line.kind === 'refund' || line.kind === 'sale' ? rounded.neg() : rounded;
  }

  test('big.js comes to the same home money of every row and the same total', () => {
    fc.assert(
      fc.property(ledger, (written) => {
        const series = aSeries(written);
        const rows = series.ledger.map(byBig);
        expect(series.ledger.map((line) => plainAmount(line.home))).toEqual(
          rows.map((one) => one.toFixed(2)),
        );
        const whole = rows.reduce((a, b) => a.plus(b), new Big(0));
        expect(plainAmount({ minor: account(series).total, currency: 'EUR' })).toBe(whole.toFixed(2));
      }),
    );
  });

  test('dinero.js sums the same rows to the same total', () => {
    fc.assert(
      fc.property(ledger, (written) => {
        const series = aSeries(written);
        const whole = series.ledger
          .map((line) => dinero({ amount: Number(line.home.minor), currency: EUR }))
          .reduce(add, dinero({ amount: 0, currency: EUR }));
        expect(plainAmount({ minor: account(series).total, currency: 'EUR' })).toBe(toDecimal(whole));
      }),
    );
  });

  test('big.js rounds halves the same way', () => {
    const number = fc.bigInt({ min: -(10n ** 9n), max: 10n ** 9n });
    fc.assert(
      fc.property(number, fc.bigInt({ min: 1n, max: 1000n }), (n, d) => {
        const big = Big();
        big.DP = 60;
        const exact = big(String(n)).div(String(d));
        // A third or a seventh has no end: 60 places decide it, as no half lies that near.
        expect(divideRounded(n, d)).toBe(BigInt(exact.round(0, Big.roundHalfUp).toFixed(0)));
      }),
    );
  });
});

function groupsBy(of: ReturnType<typeof account>, by: string): [string, bigint][] {
  const groups = of.groups.find((one) => one.by === by)?.groups ?? [];
  return groups.map((one): [string, bigint] => [one.key, one.home]).sort(([a], [b]) => (a < b ? -1 : 1));
}
