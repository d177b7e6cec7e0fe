import { describe, expect, test } from 'vitest';
import { currencyProblem } from '../../../src/record/money/currencies.ts';
import { findDecimalMark, readDecimal } from '../../../src/record/money/decimal.ts';
import { money, plainAmount, printFigures, printMoney, readAmount } from '../../../src/record/money/money.ts';

function minor(text: string, currency = 'EUR', mark?: '.' | ','): bigint | string {
  const read = readAmount(text, currency, mark);
  return read.ok ? read.value.minor : read.message;
}

describe('an amount as it is written', () => {
  test.each([
    ['12.50', 'EUR', 1250n],
    ['12,50', 'EUR', 1250n],
    ['12', 'EUR', 1200n],
    ['1,234.50', 'EUR', 123450n],
    ['1.234,50', 'EUR', 123450n],
    ['1 234,50', 'EUR', 123450n],
    ["1'234.50", 'EUR', 123450n],
    ['1,234,567', 'EUR', 123456700n],
    ['0,125', 'KWD', 125n],
    ['1200.00', 'JPY', 1200n],
    ['1200', 'JPY', 1200n],
    ['90071992547409.93', 'EUR', 9007199254740993n],
  ])('%s %s is %s minor units', (text, currency, expected) => {
    expect(minor(text, currency)).toBe(expected);
  });

  test('1,234 is refused until the series says which mark it uses', () => {
    expect(minor('1,234')).toContain('can be read as 1234 or as 1 and 234 thousandths');
    expect(minor('1,234', 'EUR', '.')).toBe(123400n);
    expect(minor('1,234', 'KWD', ',')).toBe(1234n);
  });

  test.each([
    ['12,5o', 'is not an amount'],
    ['12.50.0', 'is not an amount'],
    ['1.2.3', 'is not an amount'],
    ['=SUM(H2:H9)', 'is a formula'],
    ['=12*3', 'is a formula'],
    ['+A1', 'is a formula'],
    ['@now', 'is a formula'],
    ['-5.00', 'is negative'],
    ['(5.00)', 'is negative'],
    ['€12', 'is not an amount'],
    ['', 'There is no figure here'],
    ['12.345', 'can be read as'],
    ['0.125', 'has 3 digits after the decimal mark, but EUR has 2'],
  ])('"%s" is refused: it %s', (text, why) => {
    expect(minor(text)).toContain(why);
  });

  test('half a yen is refused', () => {
    expect(minor('1200.5', 'JPY')).toContain('but JPY has none');
  });
  test('with a decimal point stated, 12,50 is refused', () => {
    expect(minor('12,50', 'EUR', '.')).toContain('decimal point, such as 12.50');
  });
});

describe('the decimal mark of a file', () => {
  test('is found from a figure that leaves no doubt', () => {
    expect(findDecimalMark(['1,234', '5,50'])).toBe(',');
    expect(findDecimalMark(['1,234', '5.5'])).toBe('.');
    expect(findDecimalMark(['1.234.567'])).toBe(',');
    expect(findDecimalMark(['1 234,5'])).toBe(',');
  });
  test('is not guessed from whole or doubtful figures, words or formulas', () => {
    expect(findDecimalMark(['1,234', '12', '', 'shoes', '=1.5', '1.2.3'])).toBeUndefined();
  });
  test('is told to be mixed where figures contradict each other', () => {
    expect(findDecimalMark(['5,50', '5.50'])).toBe('mixed');
  });
});

describe('a currency', () => {
  test.each([
    ['EUR', undefined],
    ['eur', 'Write it in capitals: EUR'],
    ['€', 'Write EUR'],
    ['EURO', 'is not a currency of ISO 4217'],
  ])('%s: %s', (text, why) => {
    if (why === undefined) expect(currencyProblem(text)).toBeUndefined();
    else expect(currencyProblem(text)).toContain(why);
  });
});

describe('an amount as it is printed', () => {
  test('in a file: all its digits, no groups, its sign', () => {
    expect(plainAmount(money(-5n, 'EUR'))).toBe('-0.05');
    expect(plainAmount(money(123456n, 'KWD'))).toBe('123.456');
    expect(plainAmount(money(-1200n, 'JPY'))).toBe('-1200');
    expect(plainAmount(money(1250n, 'EUR'), ',')).toBe('12,50');
  });
  test('on a page: as the language writes it, exactly, with the digits of ISO 4217 and a true minus', () => {
    expect(printMoney(money(123450n, 'EUR'), 'en-GB')).toBe('€1,234.50');
    expect(printMoney(money(9007199254740993n, 'EUR'), 'en-GB')).toBe('€90,071,992,547,409.93');
    expect(printFigures(money(-1200n, 'EUR'), 'en-GB')).toBe('−12.00');
    expect(printFigures(money(123450n, 'HUF'), 'en-GB')).toBe('1,234.50');
    expect(printFigures(money(123450n, 'EUR'), 'de-DE')).toBe('1.234,50');
  });
  test('what is printed plain is read back the same', () => {
    for (const value of [0n, 1n, 99n, 100n, 123456789n]) {
      const read = readDecimal(plainAmount(money(value, 'EUR')), '.');
      expect(read.ok && read.value.digits).toBe(value);
    }
  });
});
