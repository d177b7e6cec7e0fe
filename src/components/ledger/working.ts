import type { Account } from '../../record/money/account.ts';
import { commonScale, decimalOf, decimalText, toWeights } from '../../record/money/decimal.ts';
import type { ChargeShares, LandedLine, OrderAccount } from '../../record/money/landed-cost.ts';
import { divideRounded } from '../../record/money/rounding.ts';
import type { LedgerLine, ShareBasis } from '../../record/types.ts';
import type { Printer } from './printing.ts';

/** One line of a working: what it is, how it comes about, what it comes to in home minor units. */
export interface WorkingLine {
  what: string;
  how: string;
  comes: bigint;
}

const BASIS_WORDS: Record<ShareBasis, string> = {
  value: 'by value',
  weight: 'by weight',
  'customs value': 'by customs value (price and freight)',
  even: 'evenly',
};
export const basisWords = (basis: ShareBasis): string => BASIS_WORDS[basis];

/** How a row's amount became home money. */
export function rateWords(line: LedgerLine, print: Printer): string {
  if (!line.rate) return `paid in ${line.home.currency}`;
  return `${print.paid(line.amount)} at ${line.rate.text} (${line.rate.source}, ${print.day(line.rate.date)})`;
}

/** A row of goods from price to landed cost, one line at a time; the lines sum to `landed`. */
export function workingOf(one: LandedLine, account: Account, print: Printer): WorkingLine[] {
  const lines: WorkingLine[] = [{ what: 'Price', how: rateWords(one.line, print), comes: one.price }];
  const order = account.orderById.get(one.line.order ?? '');
  const row = order?.goods.indexOf(one) ?? -1;
  for (const charge of order?.charges ?? []) {
    const share = charge.shares[row] ?? 0n;
    if (share !== 0n)
      lines.push({
        what: shareName(charge),
        how: shareWords(charge, row, order?.goods ?? [], print),
        comes: share,
      });
  }
  const shared = lines.slice(1).reduce((sum, line) => sum + line.comes, 0n);
  const direct = one.freight + one.duty + one.fee - shared;
  if (direct !== 0n)
    lines.push({ what: 'Charges', how: 'paid for this part outside an order', comes: direct });
  const back = `${print.quantity(one.returnedQty)} of ${print.quantity(one.line.qty)} sent back`;
  if (one.refunded !== 0n)
    lines.push({
      what: 'Refunded',
      how: one.returnedQty > 0 ? back : 'money back, nothing sent back',
      comes: -one.refunded,
    });
  if (one.lost !== 0n)
    lines.push({ what: 'Stays with the series', how: `freight, duty and fees of ${back}`, comes: -one.lost });
  return lines;
}

const shareName = ({ kind }: ChargeShares): string => `Share of ${kind === 'fee' ? 'the fee' : kind}`;

/** "8.36 × 57.72 / 61.17, by value"; by weight "17.35 × 0.42 / 0.57 kg, by weight". */
export function shareWords(
  charge: ChargeShares,
  row: number,
  goods: readonly LandedLine[],
  print: Printer,
): string {
  const { line, basis } = charge;
  return `${print.figures(line.home.minor)} ${proportion(charge, row, goods, print)}, ${basisWords(basis)}`;
}

/** The part of a charge that falls on a row: "× 57.72 / 61.17", or "/ 4" where all count the same. */
export function proportion(
  { basis, weights }: ChargeShares,
  row: number,
  goods: readonly LandedLine[],
  print: Printer,
): string {
  const own = weights[row] ?? 0n;
  const all = weights.reduce((sum, weight) => sum + weight, 0n);
  if (basis === 'even') return `/ ${weights.filter((weight) => weight > 0n).length}`;
  if (basis !== 'weight') return `× ${print.figures(own)} / ${print.figures(all)}`;
  const scale = commonScale(goods.map((one) => decimalOf(one.line.weight_kg ?? 0)));
  const kilograms = (weight: bigint) => print.quantity(Number(decimalText({ digits: weight, scale })));
  return `× ${kilograms(own)} / ${kilograms(all)}\u00a0kg`;
}

/** An exact share before it was rounded, two digits beyond the minor unit and cut off: "7.8892". For reading only. */
export function exactShare(charge: ChargeShares, row: number, digits: number, mark: string): string {
  const all = charge.weights.reduce((sum, weight) => sum + weight, 0n);
  if (all === 0n) return '';
  const places = digits + 2;
  const scaled = (charge.line.home.minor * (charge.weights[row] ?? 0n) * 100n) / all;
  const text = String(scaled).padStart(places + 1, '0');
  return `${text.slice(0, -places)}${mark}${text.slice(-places)}`;
}

/** What one piece that was kept came to, rounded; nothing where all went back. */
export function eachKept(one: LandedLine): bigint | undefined {
  const [landed = 0n, kept = 0n] = [one.landed, keptOf(one)];
  return kept > 0n ? divideRounded(landed * 1_000_000n, kept) : undefined;
}

/** Pieces kept, in millionths. */
function keptOf(one: LandedLine): bigint {
  const [all = 0n, back = 0n] = toWeights([decimalOf(one.line.qty), decimalOf(one.returnedQty), MILLIONTH]);
  return all - back;
}
const MILLIONTH = { digits: 1n, scale: 6 };

/** What an order's rows came to, put together again from its goods: the lines sum to the order's total. */
export function orderBalance(of: OrderAccount, account: Account): { what: string; comes: bigint }[] {
  const sum = (amounts: readonly bigint[]) => amounts.reduce((a, b) => a + b, 0n);
  const applied = of.back.filter((line) => account.refunds.includes(line));
  const apart = [...of.back.filter((line) => !applied.includes(line)), ...of.unshared];
  const elsewhere = sum(of.goods.map((one) => one.refunded)) + sum(applied.map((line) => line.home.minor));
  const direct =
    sum(of.goods.map((one) => one.freight + one.duty + one.fee)) -
    sum(of.charges.map((one) => one.line.home.minor));
  const lines = [
    { what: 'Landed cost of its goods', comes: sum(of.goods.map((one) => one.landed)) },
    { what: 'Freight, duty and fees on what was sent back', comes: sum(of.goods.map((one) => one.lost)) },
    { what: 'Refunds entered outside this order', comes: elsewhere },
    { what: 'Charges entered outside this order', comes: -direct },
    { what: 'Rows that belong to none of its goods', comes: sum(apart.map((line) => line.home.minor)) },
  ];
  return lines.filter((line, at) => at === 0 || line.comes !== 0n);
}
