import { expect, test } from 'vitest';
import { account } from '../../../src/record/money/account.ts';
import { checkMoney } from '../../../src/record/money/checks.ts';
import { aSeries, type WrittenRow } from './a-series.ts';
import { RATES } from './ledgers.ts';

/** Rows of 25 an order: 20 parts, freight, duty, fee, a refund, a tool. */
function longSeries(rows: number) {
  const orders = Array.from({ length: Math.ceil(rows / 25) }, (_, at) => ({ id: `order-${at}` }));
  const parts = Array.from({ length: Math.ceil(rows / 3) }, (_, at) => ({ id: `part-${at}` }));
  const written = Array.from({ length: rows }, (_, at): WrittenRow => {
    const place = at % 25;
    const kinds = ['freight', 'duty', 'fee', 'refund', 'tool'] as const;
    const kind = kinds[place - 20] ?? 'part';
    const part = kind === 'refund' ? at - 13 : at;
    return {
      date: `2026-03-${String(6 + (at % 5)).padStart(2, '0')}`,
      kind,
      amount: `${1 + (at % 97)}.${String(at % 100).padStart(2, '0')}`,
      currency: ['EUR', 'GBP', 'CZK', 'USD'][at % 4] ?? 'EUR',
      order: `order-${Math.floor(at / 25)}`,
      ...((kind === 'part' || kind === 'refund') && { part: `part-${part % parts.length}` }),
    };
  });
  return aSeriesQuick(written, orders, parts);
}

/** The joined series without the quadratic look-ups of the small fixture. */
function aSeriesQuick(rows: WrittenRow[], orders: { id: string }[], parts: { id: string }[]) {
  const series = aSeries({ rates: RATES, rows });
  const byOrder = Map.groupBy(series.ledger, (line) => line.order ?? '');
  const byPart = Map.groupBy(series.ledger, (line) => line.part ?? '');
  const shell = aSeries({ rows: [], orders: orders.slice(0, 1), parts: parts.slice(0, 1) });
  series.orders = orders.flatMap(({ id }) =>
    shell.orders.map((one) => ({ ...one, id, lines: byOrder.get(id) ?? [] })),
  );
  series.parts = parts.flatMap(({ id }) =>
    shell.parts.map((one) => ({ ...one, id, lines: byPart.get(id) ?? [] })),
  );
  return series;
}

test.each([
  [10_000, 1],
  [200_000, 20],
])('%i rows are turned into home money, checked and reckoned in under %i s', (rows, limit_s) => {
  const started = process.cpuUsage();
  const series = longSeries(rows);
  checkMoney(series.ledger, series.orders, () => {});
  const of = account(series);
  // Time of the processor, so that a busy machine does not fail the test.
  const seconds = process.cpuUsage(started).user / 1e6;
  expect(of.orders).toHaveLength(rows / 25);
  expect(seconds).toBeLessThan(limit_s);
});
