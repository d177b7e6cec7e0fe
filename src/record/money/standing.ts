import type { Day, Part, Series } from '../types.ts';
import type { PartAccount } from './account.ts';
import { exchanged, exchangeOn } from './exchange.ts';
import { type RateTable, rateTable } from './rates.ts';

/** From and to, home minor units. */
export interface Range {
  low: bigint;
  high: bigint;
}

/** A part still to come. */
export interface Awaited {
  part: Part;
  /** For ordered parts: the day of the order, where the ledger knows it. */
  since?: Day;
  /** Paid already, home minor units, with what the order charged on top; part of `spent`. */
  paid: bigint;
  /** Still to pay, in home money at the newest rate; absent where the author gave no estimate, or no rate is known. */
  toPay?: Range;
}

/**
 * Where the money stands on the series' day. Estimates in parts.csv are for all pieces of the row that are still to be
 * paid; an ordered part that has rows in the ledger counts as paid for.
 */
export interface Standing {
  /** All rows, money back taken off. */
  spent: bigint;
  budget?: bigint;
  /** Budget − spent; negative when it is overdrawn. */
  left?: bigint;
  /** Ordered and not arrived. */
  ordered: Awaited[];
  orderedPaid: bigint;
  orderedToPay: Range;
  wanted: Awaited[];
  wantedToPay: Range;
  /** Bought parts to come that have no estimate, or one in a currency without a rate: the forecast leaves them out. */
  withoutEstimate: Part[];
  /** Spent + ordered and unpaid + wanted. */
  forecast: Range;
}

export function standingOf(series: Series, spent: bigint, parts: ReadonlyMap<string, PartAccount>): Standing {
  const table = rateTable(series.rates);
  const awaited = (status: Part['status']): Awaited[] =>
    series.parts
      .filter((part) => part.status === status)
      .map((part) => awaitedPart(part, parts.get(part.id), series, table));
  const ordered = awaited('ordered');
  const wanted = awaited('wanted');
  const orderedToPay = total(ordered);
  const wantedToPay = total(wanted);
  return {
    spent,
    ...(series.budget && { budget: series.budget.minor, left: series.budget.minor - spent }),
    ordered,
    orderedPaid: ordered.reduce((sum, one) => sum + one.paid, 0n),
    orderedToPay,
    wanted,
    wantedToPay,
    withoutEstimate: [...ordered, ...wanted]
      .filter((one) => one.toPay === undefined && one.part.origin === 'bought')
      .map((one) => one.part),
    forecast: {
      low: spent + orderedToPay.low + wantedToPay.low,
      high: spent + orderedToPay.high + wantedToPay.high,
    },
  };
}

function awaitedPart(
  part: Part,
  account: PartAccount | undefined,
  series: Series,
  table: RateTable,
): Awaited {
  const paid = part.status === 'ordered' ? (account?.landed ?? 0n) : 0n;
  const since = part.status === 'ordered' ? orderedOn(account, series) : undefined;
  const settled = part.status === 'ordered' && account !== undefined && account.bought.length > 0;
  const toPay = settled ? { low: 0n, high: 0n } : estimateAtHome(part, series, table);
  return { part, paid, ...(since !== undefined && { since }), ...(toPay && { toPay }) };
}

/** The day of its newest order, else of its newest row. */
function orderedOn(account: PartAccount | undefined, series: Series): Day | undefined {
  const line = account?.bought.at(-1)?.line;
  return series.orders.find((one) => one.id === line?.order)?.date ?? line?.date;
}

function estimateAtHome(part: Part, series: Series, table: RateTable): Range | undefined {
  if (!part.estimate) return undefined;
  const { low, high } = part.estimate;
  const home = series.homeCurrency;
  if (low.currency === home) return { low: low.minor, high: high.minor };
  const exchange = exchangeOn(series.asOf, low.currency, home, table, Number.POSITIVE_INFINITY);
  if (!exchange.ok) return undefined;
  return {
    low: exchanged(low, home, exchange.value).minor,
    high: exchanged(high, home, exchange.value).minor,
  };
}

const total = (awaited: readonly Awaited[]): Range =>
  awaited.reduce(
    (sum, { toPay }) => ({ low: sum.low + (toPay?.low ?? 0n), high: sum.high + (toPay?.high ?? 0n) }),
    {
      low: 0n,
      high: 0n,
    },
  );
