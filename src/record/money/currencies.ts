import * as iso4217 from 'dinero.js/currencies';

/**
 * Digits after the decimal mark by ISO 4217 code. Not from Intl, whose digits are those that shops print: it gives the
 * forint 0 where the standard gives 2. The package counts the ariary and the ouguiya in fifths, which are their coins; the
 * standard writes both with 2 digits.
 */
const MINOR_DIGITS: ReadonlyMap<string, number> = new Map(
  Object.values(iso4217).map(({ code, base, exponent }) => [code, (base as number) === 10 ? exponent : 2]),
);

/** Whether a text is a currency code of ISO 4217, in capitals. */
export const isCurrency = (code: string): boolean => MINOR_DIGITS.has(code);

/**
 * Digits of the minor unit: EUR 2, JPY 0, KWD 3.
 * @throws {RangeError} for a code that ISO 4217 does not have.
 */
export function minorDigits(code: string): number {
  const digits = MINOR_DIGITS.get(code);
  if (digits === undefined) throw new RangeError(`currency must be an ISO 4217 code, got ${code}`);
  return digits;
}

/** What is wrong with a currency cell, and what to write; nothing if it is right. */
export function currencyProblem(text: string): string | undefined {
  if (isCurrency(text)) return undefined;
  const capitals = text.trim().toUpperCase();
  if (isCurrency(capitals)) return `"${text}" is not a currency code. Write it in capitals: ${capitals}.`;
  const symbol = SYMBOLS.get(text.trim());
  if (symbol) return `"${text}" is a sign, not a currency code. Write ${symbol}.`;
  return `"${text}" is not a currency of ISO 4217. Write its three letters, such as EUR, GBP or JPY.`;
}

/** Signs that stand for one code in the ledgers that restorers keep; $ and ¥ name several currencies and are left to ask. */
const SYMBOLS: ReadonlyMap<string, string> = new Map([
  ['€', 'EUR'],
  ['£', 'GBP, or the code of the pound that was paid'],
  ['$', 'USD, or the code of the dollar that was paid'],
  ['¥', 'JPY or CNY'],
  ['Kč', 'CZK'],
  ['zł', 'PLN'],
  ['Ft', 'HUF'],
]);
