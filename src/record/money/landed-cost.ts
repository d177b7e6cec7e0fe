import type { LedgerKind, LedgerLine, Order, ShareBasis } from '../types.ts';
import { decimalOf, toWeights } from './decimal.ts';
import { divideRounded } from './rounding.ts';
import { split } from './split.ts';

/** What an order can charge on top of its goods. */
export type ChargeKind = 'freight' | 'duty' | 'fee';
export const CHARGES: readonly ChargeKind[] = ['freight', 'duty', 'fee'];

/** Kinds that an order's charges are shared over. */
const GOODS: ReadonlySet<LedgerKind> = new Set(['part', 'consumable', 'tool', 'outside work']);
export const isCharge = (kind: LedgerKind): kind is ChargeKind =>
  kind === 'freight' || kind === 'duty' || kind === 'fee';
export const isGoods = (line: LedgerLine): boolean => GOODS.has(line.kind);

/** One charge of an order and how it was shared; `weights` and `shares` run beside the order's goods. All in home minor units. */
export interface ChargeShares {
  line: LedgerLine;
  kind: ChargeKind;
  basis: ShareBasis;
  /** What each of the goods weighs in this share: home minor units, or weight in a common small unit. */
  weights: bigint[];
  shares: bigint[];
}

/** One row of goods at the door. Amounts in home minor units. */
export interface LandedLine {
  line: LedgerLine;
  price: bigint;
  freight: bigint;
  duty: bigint;
  fee: bigint;
  /** Pieces sent back, out of `line.qty`. */
  returnedQty: number;
  /** Refunded for this row's pieces; positive. */
  refunded: bigint;
  /** The part of freight, duty and fees that belongs to pieces sent back: a cost of the series, not of the part. */
  lost: bigint;
  /** price − refunded + freight + duty + fee − lost. */
  landed: bigint;
}

/** An order's rows with its charges shared over its goods. Refunds come later, as they may lie outside the order's rows. */
export interface OrderAccount {
  order: Order;
  goods: LandedLine[];
  charges: ChargeShares[];
  /** Refunds and sales among the order's rows. */
  back: LedgerLine[];
  /** Charges that could not be shared, because nothing in the order takes them: an error that the check names. */
  unshared: LedgerLine[];
  /** Sum of the order's rows in home minor units. */
  total: bigint;
}

/** Rows in the order of the file, whatever order they are handed over in: ties of a split go by it. */
export function byPlace(a: LedgerLine, b: LedgerLine): number {
  return a.place.line - b.place.line || a.place.column - b.place.column;
}

/**
 * Shares an order's freight, duty and fees over its goods, each charge by its own basis. A charge that names a part falls
 * on that part's rows alone.
 * Customs value is the price with its share of the freight, so freight itself by customs value is shared by value.
 * The order's rows may be in any currency: values are compared in home money.
 */
export function landedOrder(order: Order): OrderAccount {
  const lines = [...order.lines].sort(byPlace);
  const goods = lines.filter(isGoods).map(bare);
  const charges: ChargeShares[] = [];
  const unshared: LedgerLine[] = [];
  for (const kind of CHARGES)
    for (const line of lines) {
      if (line.kind !== kind) continue;
      const basis = basisOf(order, kind);
      const weights = weightsOf(
        goods,
        kind === 'freight' && basis === 'customs value' ? 'value' : basis,
        line.part,
      );
      if (!weights) {
        unshared.push(line);
        continue;
      }
      const shares = split(line.home.minor, weights);
      charges.push({ line, kind, basis, weights, shares });
      for (const [row, one] of goods.entries()) one[kind] += shares[row] ?? 0n;
    }
  for (const one of goods) settle(one);
  return {
    order,
    goods,
    charges,
    back: lines.filter((line) => line.kind === 'refund' || line.kind === 'sale'),
    unshared,
    total: lines.reduce((sum, line) => sum + line.home.minor, 0n),
  };
}

/** How an order shares one kind of charge. */
export const basisOf = (order: Order, kind: ChargeKind): ShareBasis =>
  ({ freight: order.freightBy, duty: order.dutyBy, fee: order.feeBy })[kind];

/** A row of goods before anything is shared over it. */
export function bare(line: LedgerLine): LandedLine {
  const price = line.home.minor;
  return {
    line,
    price,
    freight: 0n,
    duty: 0n,
    fee: 0n,
    returnedQty: 0,
    refunded: 0n,
    lost: 0n,
    landed: price,
  };
}

function weightsOf(
  goods: readonly LandedLine[],
  basis: ShareBasis,
  part: string | undefined,
): bigint[] | undefined {
  const takes = goods.map((one) => part === undefined || one.line.part === part);
  if (!takes.includes(true)) return undefined;
  const all = basisWeights(goods, basis);
  const weights = all.map((weight, row) => (takes[row] ? weight : 0n));
  return weights.some((weight) => weight > 0n) ? weights : takes.map((takesIt) => (takesIt ? 1n : 0n));
}

function basisWeights(goods: readonly LandedLine[], basis: ShareBasis): bigint[] {
  switch (basis) {
    case 'value':
      return goods.map((one) => one.price);
    case 'customs value':
      return goods.map((one) => one.price + one.freight);
    case 'weight':
      return toWeights(goods.map((one) => decimalOf(one.line.weight_kg ?? 0)));
    case 'even':
      return goods.map(() => 1n);
  }
}

/**
 * Puts a refund to rows of its part, in the order given: pieces sent back up to each row's quantity, and the money in
 * proportion to them. Money back without pieces (quantity 0), or for more pieces than were bought, goes by price.
 */
export function applyRefund(rows: readonly LandedLine[], refund: LedgerLine): void {
  if (rows.length === 0) return;
  let left = refund.qty;
  const taken = rows.map((one) => {
    const pieces = Math.min(left, tidy(one.line.qty - one.returnedQty));
    left = tidy(left - pieces);
    one.returnedQty = tidy(one.returnedQty + pieces);
    return pieces;
  });
  const weights = taken.some((pieces) => pieces > 0)
    ? toWeights(taken.map(decimalOf))
    : rows.map((one) => one.price);
  for (const [row, share] of split(-refund.home.minor, weights).entries()) {
    const one = rows[row];
    if (one) one.refunded += share;
  }
}

/** A quantity without the dust of binary subtraction: 1.5 − 1.2 is 0.3. */
const tidy = (qty: number): number => Number(qty.toFixed(6));

/** Works out what a row costs at the door once its charges and refunds are known. */
export function settle(one: LandedLine): void {
  const charges = one.freight + one.duty + one.fee;
  one.lost = one.returnedQty > 0 ? returnedShare(charges, one) : 0n;
  one.landed = one.price - one.refunded + charges - one.lost;
}

/** Charges in proportion to the pieces sent back. */
function returnedShare(charges: bigint, { returnedQty, line }: LandedLine): bigint {
  const [back = 0n, all = 1n] = toWeights([decimalOf(returnedQty), decimalOf(line.qty)]);
  return divideRounded(charges * back, all);
}
