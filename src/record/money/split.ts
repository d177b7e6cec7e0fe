/**
 * Shares of a whole amount in proportion to weights, by the largest remainder: each share is first rounded down, and the
 * minor units left over go one each to the largest remainders, the earlier row first where two are equal.
 * Shares always sum to the total; a weight of 0 gets 0. Where all weights are 0, every row counts the same.
 * A negative total is split as its positive, then turned round.
 * @throws {RangeError} if there are no weights, or one is negative.
 * @example
 * split(100n, [1n, 1n, 1n]) // => [34n, 33n, 33n]
 */
export function split(total: bigint, weights: readonly bigint[]): bigint[] {
  if (weights.length === 0) throw new RangeError('weights must not be empty');
  if (weights.some((w) => w < 0n)) throw new RangeError('weights must be at least 0');
  if (total < 0n) return split(-total, weights).map((share) => -share);
  const sum = weights.reduce((a, w) => a + w, 0n);
  if (sum === 0n)
    return split(
      total,
      weights.map(() => 1n),
    );
  const shares = weights.map((w) => (total * w) / sum);
  const byRemainder = weights
    .map((w, row) => ({ row, remainder: (total * w) % sum }))
    .sort((a, b) => (a.remainder === b.remainder ? a.row - b.row : a.remainder < b.remainder ? 1 : -1));
  const left = Number(total - shares.reduce((a, s) => a + s, 0n));
  for (const { row } of byRemainder.slice(0, left)) shares[row] = (shares[row] ?? 0n) + 1n;
  return shares;
}
