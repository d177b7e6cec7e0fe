import type { Day, LedgerKind, LedgerLine, Money } from '../types.ts';
import type { DecimalMark } from './decimal.ts';
import { type Exchange, exchanged, exchangeOn, farFrom, readRowRate } from './exchange.ts';
import { money, readAmount } from './money.ts';
import type { RateTable } from './rates.ts';

/** The cells of a ledger row that make its money. */
export interface RowMoneyCells {
  date: Day;
  kind: LedgerKind;
  amount: string;
  currency: string;
  rate?: string;
}

/** What the series says about money. */
export interface MoneyRules {
  home: string;
  rates: RateTable;
  /** From series.yaml's rate_max_days. */
  maxDays: number;
  mark: DecimalMark | undefined;
}

/** What is wrong, and in which cell. A warning leaves the money standing. */
export interface RowMoneyProblem {
  column: 'amount' | 'rate';
  severity: 'error' | 'warning';
  message: string;
}

/** The money of a row, and its home money with the sign that its kind gives it. */
export type RowMoney = { amount: Money; home: Money; rate?: NonNullable<LedgerLine['rate']> };

/** Reads a row's amount and turns it into home money, telling what is wrong with either. */
export function rowMoney(
  cells: RowMoneyCells,
  rules: MoneyRules,
  say: (problem: RowMoneyProblem) => void,
): RowMoney | undefined {
  const amount = readAmount(cells.amount, cells.currency, rules.mark);
  if (!amount.ok) {
    say({ column: 'amount', severity: 'error', message: amount.message });
    return undefined;
  }
  const sign = cells.kind === 'refund' || cells.kind === 'sale' ? -1n : 1n;
  if (cells.currency === rules.home) {
    if (cells.rate !== undefined)
      say({
        column: 'rate',
        severity: 'warning',
        message: `The row is in home money, so its rate "${cells.rate}" is not used. Leave it empty, or look at the currency.`,
      });
    return { amount: amount.value, home: money(amount.value.minor * sign, rules.home) };
  }
  const by = exchangeFor(cells, rules, say);
  if (!by) return undefined;
  const home = exchanged(amount.value, rules.home, by);
  return { amount: amount.value, home: money(home.minor * sign, rules.home), rate: by.used };
}

function exchangeFor(
  { date, currency, rate }: RowMoneyCells,
  { home, rates, maxDays, mark }: MoneyRules,
  say: (problem: RowMoneyProblem) => void,
): Exchange | undefined {
  const published = exchangeOn(date, currency, home, rates, maxDays);
  if (rate === undefined) {
    if (published.ok) return published.value;
    say({ column: 'rate', severity: 'error', message: published.message });
    return undefined;
  }
  const own = readRowRate(rate, mark, date, currency, home, rates);
  if (!own.ok) {
    say({ column: 'rate', severity: 'error', message: own.message });
    return undefined;
  }
  if (published.ok && farFrom(own.value, published.value))
    say({
      column: 'rate',
      severity: 'warning',
      message: `${own.value.used.text} is far from ${published.value.used.text} (${published.value.used.source}, ${published.value.used.date}). Look whether it is the wrong way round or a digit slipped.`,
    });
  return own.value;
}
