/** "sixty eight seventy two" without money or a unit is two readings; "one fifty" and "fifty four oh five" may be one. */
import type { Candidate } from './figure.ts';
import { inFull } from './said.ts';
import { at, type Token } from './tokens.ts';

export function splitPairs(tokens: readonly Token[], all: readonly Candidate[]): Candidate[] {
  if (all.every(({ pair, unit }) => !pair || unit !== '')) return [...all];
  return all.flatMap((one): Candidate[] => {
    if (!one.pair || one.unit !== '' || one.pair.oh || one.pair.high < 10 || one.pair.low < 10) return [one];
    const { pair, ...plain } = one;
    const { high, low, highTo } = pair;
    const from = at(tokens, highTo) === '-' ? highTo + 1 : highTo;
    return [
      { ...plain, to: highTo, end: tokens[highTo - 1]?.end ?? one.end, value: high, digits: String(high) },
      { ...plain, from, start: tokens[from]?.start ?? one.start, value: low, digits: inFull(low) },
    ];
  });
}
