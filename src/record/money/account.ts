import type { LedgerLine, Part, Series } from '../types.ts';
import { type Group, groupsOf } from './groups.ts';
import type { LandedLine, OrderAccount } from './landed-cost.ts';
import { byDate, type Reckoning, reckon } from './reckoning.ts';
import { type Standing, standingOf } from './standing.ts';

/** What one part cost, over all its purchases. Amounts in home minor units. */
export interface PartAccount {
  part: Part;
  /** Purchases, oldest first. */
  bought: LandedLine[];
  /** Everything in the ledger that names the part, oldest first: purchases, charges, refunds, sales. */
  history: LedgerLine[];
  price: bigint;
  freight: bigint;
  duty: bigint;
  fee: bigint;
  refunded: bigint;
  /** Charges on pieces sent back: outside `landed`. */
  lost: bigint;
  landed: bigint;
  /** Money back from selling it, outside `landed`. */
  sold: bigint;
  boughtQty: number;
  returnedQty: number;
}

/** The whole reckoning of a series, worked out once and read by every page, table, chart and export. */
export interface Account extends Reckoning {
  /** Home currency; every plain bigint of the account is whole minor units of it. */
  home: string;
  /** All rows, oldest first. */
  lines: LedgerLine[];
  /** Rows of each chapter, by its id, oldest first. */
  linesByChapter: ReadonlyMap<string, LedgerLine[]>;
  /** What each row of goods came to at the door. */
  landedOf: ReadonlyMap<LedgerLine, LandedLine>;
  orderById: ReadonlyMap<string, OrderAccount>;
  partById: ReadonlyMap<string, PartAccount>;
  /** Sum of what was paid, and of what came back (both positive); the total is their difference. */
  paid: bigint;
  back: bigint;
  /** Charges on goods sent back, over the series. */
  lost: bigint;
  groups: { by: Group['by']; title: string; groups: Group[] }[];
  standing: Standing;
}

const reckoned = new WeakMap<Series, Account>();

/** The account of a series; the same object each time it is asked for. */
export function accountOf(series: Series): Account {
  const known = reckoned.get(series);
  if (known) return known;
  const made = account(series);
  reckoned.set(series, made);
  return made;
}

/** Works the account out anew; pages use `accountOf`. */
export function account(series: Series): Account {
  const reckoning = reckon(series.ledger, series.orders, series.parts);
  const lines = [...series.ledger].sort(byDate);
  const partById = partAccounts(series.parts, reckoning, lines);
  return {
    ...reckoning,
    home: series.homeCurrency,
    lines,
    linesByChapter: Map.groupBy(lines, (line) => line.chapter ?? ''),
    landedOf: new Map(reckoning.goods.map((one) => [one.line, one])),
    orderById: new Map(reckoning.orders.map((one) => [one.order.id, one])),
    partById,
    paid: sum(lines.map((line) => (line.home.minor > 0n ? line.home.minor : 0n))),
    back: -sum(lines.map((line) => (line.home.minor < 0n ? line.home.minor : 0n))),
    lost: sum(reckoning.goods.map((one) => one.lost)),
    groups: groupsOf(series, reckoning, lines),
    standing: standingOf(series, reckoning.total, partById),
  };
}

const SUMMED = ['price', 'freight', 'duty', 'fee', 'refunded', 'lost', 'landed'] as const;

function partAccounts(
  parts: readonly Part[],
  reckoning: Reckoning,
  lines: readonly LedgerLine[],
): Map<string, PartAccount> {
  const accounts = new Map(parts.map((part) => [part.id, emptyPart(part)]));
  for (const one of reckoning.goods) {
    const account = accounts.get(one.line.part ?? '');
    if (!account) continue;
    account.bought.push(one);
    for (const key of SUMMED) if (one[key] !== 0n) account[key] += one[key];
    account.boughtQty += one.line.qty;
    account.returnedQty += one.returnedQty;
  }
  for (const line of lines) {
    const account = accounts.get(line.part ?? '');
    if (!account) continue;
    account.history.push(line);
    if (line.kind === 'sale') account.sold -= line.home.minor;
  }
  return accounts;
}

function emptyPart(part: Part): PartAccount {
  const none = { price: 0n, freight: 0n, duty: 0n, fee: 0n, refunded: 0n, lost: 0n, landed: 0n, sold: 0n };
  return { part, bought: [], history: [], ...none, boughtQty: 0, returnedQty: 0 };
}

const sum = (amounts: readonly bigint[]): bigint => amounts.reduce((a, b) => a + b, 0n);
