import { minorDigits } from '../../record/money/currencies.ts';
import { money, printFigures, printMoney } from '../../record/money/money.ts';
import type { Day, Money, Series } from '../../record/types.ts';

/** How the ledger's pages print: one language, one home currency. */
export interface Printer {
  /** Home money with its sign of currency: "€1,234.50". */
  home(minor: bigint): string;
  /** Home money for a column whose head names the currency: "1,234.50", "−12.00". */
  figures(minor: bigint): string;
  /** The same, or nothing where it is 0. */
  orNothing(minor: bigint): string;
  /** Any currency, figures and code: "1,450.00 CZK". */
  paid(amount: Money): string;
  /** "2 Mar 2026". */
  day(day: Day): string;
  /** "March 2026" of "2026-03". */
  month(month: string): string;
  /** A range, one figure where both ends are the same. */
  range(range: { low: bigint; high: bigint }): string;
  quantity(qty: number): string;
}

const printers = new WeakMap<Series, Printer>();

export function printerOf(series: Series): Printer {
  const known = printers.get(series);
  if (known) return known;
  const { language, homeCurrency } = series;
  const days = new Intl.DateTimeFormat(language, { dateStyle: 'medium', timeZone: 'UTC' });
  const months = new Intl.DateTimeFormat(language, { month: 'long', year: 'numeric', timeZone: 'UTC' });
  const quantities = new Intl.NumberFormat(language, { maximumFractionDigits: 6 });
  const home = (minor: bigint) => printMoney(money(minor, homeCurrency), language);
  const made: Printer = {
    home,
    figures: (minor) => printFigures(money(minor, homeCurrency), language),
    orNothing: (minor) => (minor === 0n ? '' : printFigures(money(minor, homeCurrency), language)),
    paid: (amount) => `${printFigures(amount, language)}\u00a0${amount.currency}`,
    day: (day) => days.format(new Date(`${day}T00:00:00Z`)),
    month: (month) => months.format(new Date(`${month}-01T00:00:00Z`)),
    range: ({ low, high }) => (low === high ? home(low) : `${home(low)} to ${home(high)}`),
    quantity: (qty) => quantities.format(qty),
  };
  printers.set(series, made);
  return made;
}

/** A class that keeps amounts of other digits in line with the decimals of the column: yen have none. */
export const digitsClass = (amount: Money): string | undefined => {
  const digits = minorDigits(amount.currency);
  return digits === 2 ? undefined : `digits-${digits}`;
};

/** Home minor units as a number, for drawing alone: a pixel is coarser than any binary fraction. */
export const drawn = (minor: bigint, currency: string): number => Number(minor) / 10 ** minorDigits(currency);

/** What the script that sorts and filters a table needs to know; `word` is what one row is. */
export const frameData = ({ homeCurrency, language }: Series, word: string) => ({
  'data-ledger': homeCurrency,
  'data-digits': minorDigits(homeCurrency),
  'data-language': language,
  'data-word': word,
});

/** A cell's label for the phone, where rows fold to lists; an empty cell is left out there. */
export const cell = (label: string, empty: boolean) => ({
  'data-label': label,
  'data-blank': empty ? '' : undefined,
});
