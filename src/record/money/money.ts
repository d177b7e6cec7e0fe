import type { Money } from '../types.ts';
import { minorDigits } from './currencies.ts';
import { type DecimalMark, type Read, readDecimal } from './decimal.ts';

export const money = (minor: bigint, currency: string): Money => ({ minor, currency });

/**
 * An amount as an author wrote it, in whole minor units. More digits than the currency has are refused, unless they are
 * zeros (spreadsheets write 1200.00 for yen).
 */
export function readAmount(text: string, currency: string, mark: DecimalMark | undefined): Read<Money> {
  const read = readDecimal(text, mark, 'an amount');
  if (!read.ok) return read;
  const digits = minorDigits(currency);
  let { digits: minor, scale } = read.value;
  while (scale > digits && minor % 10n === 0n) {
    minor /= 10n;
    scale -= 1;
  }
  if (scale > digits) {
    const has = digits === 0 ? 'none' : String(digits);
    return {
      ok: false,
      message: `"${text}" has ${scale} digits after the decimal mark, but ${currency} has ${has}. Write the amount that was paid.`,
    };
  }
  return { ok: true, value: money(minor * 10n ** BigInt(digits - scale), currency) };
}

/**
 * The amount in digits, with all decimals of its currency and no groups: "-1234.50". For files and exports.
 * @example
 * plainAmount({ minor: 1200n, currency: 'JPY' }) // => "1200"
 */
export function plainAmount(amount: Money, mark: DecimalMark = '.'): string {
  const digits = minorDigits(amount.currency);
  const sign = amount.minor < 0n ? '-' : '';
  const figures = String(amount.minor < 0n ? -amount.minor : amount.minor).padStart(digits + 1, '0');
  if (digits === 0) return sign + figures;
  return `${sign}${figures.slice(0, -digits)}${mark}${figures.slice(-digits)}`;
}

/** The amount grouped as the language does, without its currency, for columns whose head names it: "1,234.50", "−12.00". */
export function printFigures(amount: Money, language: string): string {
  return format(amount, language, 'decimal');
}

/** The amount with its currency as the language writes it: "€1,234.50". */
export function printMoney(amount: Money, language: string): string {
  return format(amount, language, 'currency');
}

function format(amount: Money, language: string, style: 'decimal' | 'currency'): string {
  const text = plainAmount(amount) as Intl.StringNumericLiteral;
  return formatter(language, amount.currency, style).format(text).replace('-', '−');
}

const formatters = new Map<string, Intl.NumberFormat>();

function formatter(language: string, currency: string, style: 'decimal' | 'currency'): Intl.NumberFormat {
  const key = `${language}|${currency}|${style}`;
  const known = formatters.get(key);
  if (known) return known;
  const digits = minorDigits(currency);
  const made = new Intl.NumberFormat(language, {
    minimumFractionDigits: digits,
    maximumFractionDigits: digits,
    ...(style === 'currency' && { style, currency }),
  });
  formatters.set(key, made);
  return made;
}
