import type { MoneyRule } from '../rules/money.ts';
import type { LedgerLine, Order } from '../types.ts';
import type { LandedLine } from './landed-cost.ts';
import { bare, basisOf, isCharge, isGoods } from './landed-cost.ts';
import { money, printMoney } from './money.ts';
import { byDate, refundedRows, rowsByPart } from './reckoning.ts';

/** What is wrong with the ledger as a whole, once each row has been read, and at which row. */
export interface MoneyFinding {
  rule: MoneyRule;
  line: LedgerLine;
  message: string;
}
type Say = (finding: MoneyFinding) => void;

/**
 * Checks that need more than one row: charges that nothing takes, weights that a share needs, refunds against what was
 * paid. `say` is told each finding.
 */
export function checkMoney(ledger: readonly LedgerLine[], orders: readonly Order[], say: Say): void {
  for (const order of orders) checkOrder(order, say);
  const rows = rowsByPart(ledger.filter(isGoods).map(bare));
  const refunds = Map.groupBy(
    ledger.filter((line) => line.kind === 'refund' && line.part !== undefined),
    (line) => `${line.part}\n${line.order ?? ''}`,
  );
  for (const group of refunds.values()) checkRefunds(group, rows, say);
}

function checkOrder(order: Order, say: Say): void {
  const goods = order.lines.filter(isGoods);
  for (const line of order.lines) {
    if (!isCharge(line.kind)) continue;
    const takers = line.part === undefined ? goods : goods.filter((one) => one.part === line.part);
    if (takers.length === 0) {
      const what = line.part === undefined ? 'no part' : `no row of part "${line.part}"`;
      say({
        rule: 'orders/charge-alone',
        line,
        message: `Order "${order.id}" has ${line.kind} and ${what} to share it over. Give a row of goods the order "${order.id}", or leave the order of this row empty.`,
      });
    } else if (basisOf(order, line.kind) === 'weight') {
      const light = takers.find(
        (one) => !weighs(one) && (one.kind !== 'outside work' || !takers.some(weighs)),
      );
      if (light)
        say({
          rule: 'orders/weight-missing',
          line: light,
          message: `Order "${order.id}" shares its ${line.kind} by weight, but "${light.item}" has none. Write the weight of the whole row, or share by value.`,
        });
    }
  }
}

/** Work done elsewhere weighs nothing by itself, and takes a share by weight only where the author gives it one. */
const weighs = (line: LedgerLine): boolean => line.weight_kg !== undefined && line.weight_kg > 0;

function checkRefunds(
  refunds: readonly LedgerLine[],
  rows: ReadonlyMap<string, LandedLine[]>,
  say: Say,
): void {
  const last = [...refunds].sort(byDate).at(-1);
  if (!last) return;
  const bought = refundedRows(rows, last);
  const warn = (rule: MoneyRule, message: string) => say({ rule, line: last, message });
  const where = last.order === undefined ? '' : ` in order "${last.order}"`;
  if (bought.length === 0) {
    warn(
      'ledger/refund-above-paid',
      `Nothing was paid for part "${last.part}"${where}, yet ${total(refunds)} came back. Look at the part and the order of this row.`,
    );
    return;
  }
  const lines = bought.map((one) => one.line);
  if (isMore(refunds, lines))
    warn(
      'ledger/refund-above-paid',
      `${total(refunds)} came back for part "${last.part}"${where}, more than the ${total(lines)} that was paid for it. Check both amounts.`,
    );
  const back = refunds.reduce((sum, one) => sum + one.qty, 0);
  const pieces = lines.reduce((sum, one) => sum + one.qty, 0);
  if (back > pieces)
    warn(
      'ledger/sent-back-too-many',
      `${back} pieces of part "${last.part}" were sent back${where}, but ${pieces} were bought. Check the quantities.`,
    );
  const orders = new Set(lines.map((one) => one.order));
  if (last.order === undefined && orders.size > 1)
    warn(
      'ledger/refund-order',
      `Part "${last.part}" was bought ${orders.size} times. Name the order that this refund belongs to; until then it counts for the newest.`,
    );
}

/** Compared in the currency paid where there is one, else in home money: a rate that moved is no mistake. */
function isMore(refunds: readonly LedgerLine[], paid: readonly LedgerLine[]): boolean {
  const own = oneCurrency([...refunds, ...paid]);
  return own === undefined
    ? -sum(refunds.map((one) => one.home.minor)) > sum(paid.map((one) => one.home.minor))
    : sum(refunds.map((one) => one.amount.minor)) > sum(paid.map((one) => one.amount.minor));
}

function total(lines: readonly LedgerLine[]): string {
  const own = oneCurrency(lines);
  if (own !== undefined) return printMoney(money(sum(lines.map((one) => one.amount.minor)), own), WORDS);
  const home = sum(lines.map((one) => one.home.minor));
  return printMoney(money(home < 0n ? -home : home, lines[0]?.home.currency ?? ''), WORDS);
}

/** Problems are told in English. */
const WORDS = 'en-GB';

function oneCurrency(lines: readonly LedgerLine[]): string | undefined {
  const all = new Set(lines.map((one) => one.amount.currency));
  return all.size === 1 ? [...all][0] : undefined;
}

const sum = (amounts: readonly bigint[]): bigint => amounts.reduce((a, b) => a + b, 0n);
