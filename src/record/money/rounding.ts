/**
 * The one rounding rule of the ledger: to the nearest whole number, halves away from zero, so that a row and its
 * reversal always cancel. Every amount in home money is rounded here, once, and never again.
 * Source: nearest cent with exact halves up, Council Regulation (EC) No 1103/97, article 5 (from memory).
 * @throws {RangeError} if the divisor is 0.
 * @example
 * divideRounded(5n, 2n) // => 3n
 * divideRounded(-5n, 2n) // => -3n
 */
export function divideRounded(dividend: bigint, divisor: bigint): bigint {
  if (divisor === 0n) throw new RangeError('divisor must not be 0');
  const negative = dividend < 0n !== divisor < 0n;
  const n = dividend < 0n ? -dividend : dividend;
  const d = divisor < 0n ? -divisor : divisor;
  const whole = (2n * n + d) / (2n * d);
  return negative ? -whole : whole;
}
