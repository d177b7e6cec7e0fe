import type { LedgerLine, Order, Part } from '../types.ts';
import type { LandedLine, OrderAccount } from './landed-cost.ts';
import { applyRefund, bare, byPlace, isCharge, isGoods, landedOrder, settle } from './landed-cost.ts';
import { split } from './split.ts';

/** Every row of the ledger in its place: goods at their landed cost, and what belongs to no goods. */
export interface Reckoning {
  orders: OrderAccount[];
  /** All rows of goods, in orders or not, by date. */
  goods: LandedLine[];
  /** Refunds that were put to goods of their part. */
  refunds: LedgerLine[];
  /** Rows that belong to no goods: sales, refunds without a part, charges of no order and no part. */
  apart: LedgerLine[];
  /** Sum of all rows, home minor units: equals goods landed + lost + apart. */
  total: bigint;
}

/**
 * Works out the whole ledger. Nothing is lost on the way: the landed cost of all goods, what was lost on goods sent back
 * and the rows that stand apart sum to the sum of the rows. All pieces of a part whose status is "returned" count as sent
 * back, whether its refund has come or not.
 */
export function reckon(
  ledger: readonly LedgerLine[],
  orders: readonly Order[],
  parts: readonly Part[],
): Reckoning {
  const accounts = orders.map(landedOrder);
  const known = new Set(orders.flatMap((order) => order.lines));
  const loose = ledger.filter((line) => !known.has(line)).sort(byDate);
  const goods = [...accounts.flatMap((one) => one.goods), ...loose.filter(isGoods).map(bare)];
  goods.sort((a, b) => byDate(a.line, b.line));
  const byPart = rowsByPart(goods);
  const apart: LedgerLine[] = accounts.flatMap((one) => one.unshared);
  const refunds: LedgerLine[] = [];
  for (const line of [...ledger].sort(byDate)) {
    if (line.kind === 'sale') apart.push(line);
    else if (line.kind === 'refund') {
      const rows = refundedRows(byPart, line);
      applyRefund(rows, line);
      (rows.length > 0 ? refunds : apart).push(line);
    } else if (isCharge(line.kind) && !known.has(line) && !onPart(byPart, line)) apart.push(line);
  }
  for (const part of parts)
    if (part.status === 'returned')
      for (const one of byPart.get(part.id) ?? []) one.returnedQty = one.line.qty;
  for (const one of goods) settle(one);
  return {
    orders: accounts,
    goods,
    refunds,
    apart,
    total: ledger.reduce((sum, line) => sum + line.home.minor, 0n),
  };
}

/** Oldest first; on one day in the order of the file. */
export const byDate = (a: LedgerLine, b: LedgerLine): number =>
  a.date < b.date ? -1 : a.date > b.date ? 1 : byPlace(a, b);

/** Rows of goods that name a part, by its id. */
export function rowsByPart(goods: readonly LandedLine[]): Map<string, LandedLine[]> {
  const rows = new Map<string, LandedLine[]>();
  for (const one of goods) {
    if (one.line.part === undefined) continue;
    const known = rows.get(one.line.part);
    if (known) known.push(one);
    else rows.set(one.line.part, [one]);
  }
  return rows;
}

/**
 * The rows that a refund is for: those of its part in its order, or without an order those bought on or before its day,
 * the newest first. The dearer row comes first where a day has two, so that the order of rows never matters.
 */
export function refundedRows(byPart: ReadonlyMap<string, LandedLine[]>, refund: LedgerLine): LandedLine[] {
  const rows = byPart.get(refund.part ?? '') ?? [];
  const fitting =
    refund.order === undefined
      ? rows.filter((one) => one.line.date <= refund.date)
      : rows.filter((one) => one.line.order === refund.order);
  return [...fitting].sort((a, b) => {
    if (a.line.date !== b.line.date) return a.line.date < b.line.date ? 1 : -1;
    if (a.price !== b.price) return a.price < b.price ? 1 : -1;
    return a.line.qty - b.line.qty || byPlace(a.line, b.line);
  });
}

/** A charge of no order that names a part: over that part's rows by price. */
function onPart(byPart: ReadonlyMap<string, LandedLine[]>, charge: LedgerLine): boolean {
  const rows = byPart.get(charge.part ?? '') ?? [];
  if (rows.length === 0 || !isCharge(charge.kind)) return false;
  const shares = split(
    charge.home.minor,
    rows.map((one) => one.price),
  );
  for (const [row, one] of rows.entries()) one[charge.kind] += shares[row] ?? 0n;
  return true;
}
