import { daysBetween } from '../day.ts';
import type { Day, LedgerLine, Money } from '../types.ts';
import { minorDigits } from './currencies.ts';
import type { DecimalMark, Read } from './decimal.ts';
import { money } from './money.ts';
import { newestRate, type Rate, type RateTable, readRate } from './rates.ts';
import { divideRounded } from './rounding.ts';

/** How many days old a rate may be where series.yaml does not say: `rate_max_days`. Ours: a week with holidays. */
export const RATE_MAX_DAYS = 10;

/** Home money for one unit of another currency as an exact fraction, and how it was come by. */
export interface Exchange {
  num: bigint;
  den: bigint;
  used: NonNullable<LedgerLine['rate']>;
}

/**
 * An amount in home money: one exact multiplication and one rounding, whatever the direction of the rates.
 * @example 100 USD at 1 EUR = 1.4389 USD and 1 EUR = 269.85 HUF are 18753.91 HUF
 */
export function exchanged(amount: Money, home: string, by: Exchange): Money {
  const up = 10n ** BigInt(minorDigits(home));
  const down = 10n ** BigInt(minorDigits(amount.currency));
  return money(divideRounded(amount.minor * by.num * up, by.den * down), home);
}

/**
 * How to get from a currency to home money on a day: the newest rate on or before it, in whichever direction it was
 * published (divided by the rate itself, never multiplied by a rounded inverse), else across a third currency whose
 * rates to both are known. No rate used is older than `maxDays`.
 * The message of a failure names the day and the currency.
 */
export function exchangeOn(
  day: Day,
  from: string,
  home: string,
  table: RateTable,
  maxDays: number,
): Read<Exchange> {
  const direct = leg(day, from, home, table, maxDays);
  if (direct.fresh) return { ok: true, value: exchangeOf(direct.fresh) };
  const across = crossing(day, from, home, table, maxDays);
  if (across) return { ok: true, value: across };
  const old = direct.stale;
  const why = old
    ? `the newest is of ${old.date}, ${daysBetween(old.date, day)} days before, and rate_max_days allows ${maxDays}`
    : 'rates.csv has none on or before that day';
  return {
    ok: false,
    message: `There is no rate between ${from} and ${home} for ${day}: ${why}. Add one to rates.csv, or write it in the row's rate column.`,
  };
}

interface Step {
  rate: Omit<Rate, 'place'>;
  /** Whether the currency come from is the rate's base. */
  fromBase: boolean;
}

function leg(
  day: Day,
  from: string,
  to: string,
  table: RateTable,
  maxDays: number,
): { fresh?: Step; stale?: Rate } {
  const toBase = newestRate(table, to, from, day);
  const fromBase = newestRate(table, from, to, day);
  const rate = fromBase && (!toBase || fromBase.date > toBase.date) ? fromBase : toBase;
  if (!rate) return {};
  return daysBetween(rate.date, day) <= maxDays
    ? { fresh: { rate, fromBase: rate === fromBase } }
    : { stale: rate };
}

function crossing(
  day: Day,
  from: string,
  home: string,
  table: RateTable,
  maxDays: number,
): Exchange | undefined {
  const third = new Set([...table.keys()].flatMap((key) => key.split('/')));
  for (const via of [...third].sort()) {
    if (via === from || via === home) continue;
    const first = leg(day, from, via, table, maxDays).fresh;
    const second = leg(day, via, home, table, maxDays).fresh;
    if (first && second) return joined(exchangeOf(first), exchangeOf(second));
  }
  return undefined;
}

function joined(a: Exchange, b: Exchange): Exchange {
  return {
    num: a.num * b.num,
    den: a.den * b.den,
    used: {
      text: `${a.used.text}; ${b.used.text}`,
      date: [a.used.date, b.used.date].sort()[0] ?? a.used.date,
      source: a.used.source === b.used.source ? a.used.source : `${a.used.source}; ${b.used.source}`,
    },
  };
}

function exchangeOf({ rate, fromBase }: Step): Exchange {
  const power = 10n ** BigInt(rate.exact.scale);
  const used = { text: `1 ${rate.base} = ${rate.rate} ${rate.quote}`, date: rate.date, source: rate.source };
  return fromBase
    ? { num: rate.exact.digits, den: power, used }
    : { num: power, den: rate.exact.digits, used };
}

/**
 * A rate written on a ledger row. A plain figure runs in the direction in which rates.csv publishes the pair; where
 * rates.csv does not have it, it says how much of the row's currency one unit of home money bought ("25.12" on a row of CZK
 * with EUR at home: 1 EUR = 25.12 CZK). Either direction can be written out: "1 GBP = 1.17 EUR".
 */
export function readRowRate(
  text: string,
  mark: DecimalMark | undefined,
  day: Day,
  currency: string,
  home: string,
  table: RateTable,
): Read<Exchange> {
  const homeQuoted = table.has(`${currency}/${home}`) && !table.has(`${home}/${currency}`);
  const plain = homeQuoted ? [currency, text, home] : [home, text, currency];
  const spoken = /^\s*1\s*([A-Z]{3})\s*=\s*(.+?)\s*([A-Z]{3})\s*$/.exec(text);
  const [base = '', figure = '', quote = ''] = spoken ? spoken.slice(1) : plain;
  if (!(base === home && quote === currency) && !(base === currency && quote === home))
    return {
      ok: false,
      message: `"${text}" is not a rate between ${currency} and ${home}. Write it as 1 ${home} = … ${currency}, or as 1 ${currency} = … ${home}.`,
    };
  const read = readRate(figure, mark);
  if (!read.ok) return read;
  const rate = { date: day, base, quote, ...read.value, source: 'as paid' };
  return { ok: true, value: exchangeOf({ rate, fromBase: base === currency }) };
}

/**
 * Whether a row's own rate is so far from the published one (more than a factor of 1.25) that it was probably written the
 * wrong way round or with a slipped point. The factor is ours: wide enough for a bank's margin.
 */
export function farFrom(own: Exchange, published: Exchange): boolean {
  const a = own.num * published.den * 4n;
  const b = published.num * own.den * 4n;
  return a * 4n > b * 5n || b * 4n > a * 5n;
}
