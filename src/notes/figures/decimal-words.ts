/** What follows a spoken point: "four", "oh eight", "twenty five". */
import { ONES } from './number-names.ts';
import { partNameAt } from './part-names.ts';
import { at, joins, next, type Token } from './tokens.ts';
import { belowHundred } from './whole-words.ts';

const ZERO = /^(?:oh|o|zero|nought|naught|nil)$/;

/** The decimals as digits, and the token after them; undefined where no digit follows. */
export function decimalsAt(tokens: readonly Token[], i: number): { digits: string; to: number } | undefined {
  let digits = '';
  let to = i;
  for (let k = i; digits.length < 5; ) {
    const word = at(tokens, k);
    if (tokens[k]?.kind === 'number') {
      if (digits !== '' || !/^\d+$/.test(word) || !joins(tokens, k, 1)) break;
      return { digits: word, to: k + 1 };
    }
    const digit = ZERO.test(word) ? 0 : ONES.get(word);
    if (digit !== undefined) {
      // "seven point nine seven point seven": the second seven begins the next number.
      const after = next(tokens, k + 1);
      if (
        digits !== '' &&
        after >= 0 &&
        (at(tokens, after) === 'point' || (digit > 0 && partNameAt(tokens, after)))
      )
        break;
      digits += digit;
      to = k + 1;
    } else if (/^0*$/.test(digits)) {
      const two = belowHundred(tokens, k);
      return two ? { digits: digits + two.value, to: two.to } : digits === '' ? undefined : { digits, to };
    } else break;
    const following = next(tokens, to);
    if (following < 0) break;
    k = following;
  }
  return digits === '' ? undefined : { digits, to };
}
