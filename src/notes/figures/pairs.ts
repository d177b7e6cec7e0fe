/** "sixty eight seventy two" without money or a unit is two readings; "one fifty" and "fifty four oh five" may be one. */
import { type Candidate, known, NONE } from './figure.ts';
import { inFull } from './said.ts';
import { at, type Token } from './tokens.ts';
import { MONEY } from './unit-words.ts';

/** "over nineteen ninety five" beside 19.91 mm is 19.95. */
function asDecimals(all: readonly Candidate[], one: Candidate): Candidate | undefined {
  const { pair, ...plain } = one;
  if (!pair) return undefined;
  const value = pair.high + pair.low / 100;
  const like = all.find(
    (other) =>
      known(other) &&
      other.decimal &&
      !MONEY.has(other.unit) &&
      Math.abs(other.from - one.from) < 40 &&
      Math.abs(other.value / value - 1) < 0.02,
  );
  return (
    like && {
      ...plain,
      value,
      digits: inFull(value),
      decimal: true,
      unit: like.unit,
      shared: true,
      carried: true,
    }
  );
}

export function splitPairs(tokens: readonly Token[], all: readonly Candidate[]): Candidate[] {
  if (all.every(({ pair, unit }) => !pair || unit !== '')) return [...all];
  return all.flatMap((one): Candidate[] => {
    if (!one.pair || one.unit !== '' || one.pair.oh || one.pair.high < 10 || one.pair.low < 10) return [one];
    // "fifty fifty whether it fits"
    if (one.pair.high === one.pair.low) return [{ ...one, unit: NONE }];
    const decimals = asDecimals(all, one);
    if (decimals) return [decimals];
    const { pair, ...plain } = one;
    const { high, low, highTo } = pair;
    const from = at(tokens, highTo) === '-' ? highTo + 1 : highTo;
    return [
      { ...plain, to: highTo, end: tokens[highTo - 1]?.end ?? one.end, value: high, digits: String(high) },
      { ...plain, from, start: tokens[from]?.start ?? one.start, value: low, digits: inFull(low) },
    ];
  });
}
