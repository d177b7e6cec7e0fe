/** Sums: signs and codes before a number, pounds and pence behind it. */
import type { Candidate } from './figure.ts';
import { inFull } from './said.ts';
import { at, joins, next, type Token } from './tokens.ts';
import { formsOf } from './unit-forms.ts';
import { CODES, MONEY, SIGNS } from './unit-words.ts';
import { belowHundred } from './whole-words.ts';

/** "£4.50", "EUR 12": the code must not be the unit of the number before it. */
export function currencyBefore(
  tokens: readonly Token[],
  from: number,
  last: Candidate | undefined,
): { unit: string; from: number } | undefined {
  const k = from - 1;
  const word = at(tokens, k);
  if (!joins(tokens, from, 1) || (last && last.to > k)) return undefined;
  const unit = SIGNS[word] ?? (word === 'euro' && tokens[from]?.kind !== 'number' ? undefined : CODES[word]);
  if (!unit) return undefined;
  if (word === '$') {
    const land = joins(tokens, k) ? at(tokens, k - 1) : '';
    const code = land === 'a' ? 'AUD' : /^c$/.test(land) ? 'CAD' : land === 'nz' ? 'NZD' : unit;
    return { unit: code, from: code === unit && land !== 'us' ? k : k - 1 };
  }
  return { unit, from: k };
}

const COINS = /^(?:pence|cents|p)$/;

/** "nineteen pounds ninety", "two euros and twenty cents", "4 € 50". */
export function withCoins(tokens: readonly Token[], one: Candidate): Candidate {
  if (!(MONEY.has(one.unit) || one.unit === 'pounds?') || one.unit === 'JPY' || one.decimal || one.fraction)
    return one;
  let k = next(tokens, one.to);
  if (k < 0) return one;
  const and = at(tokens, k) === 'and';
  if (and) k = next(tokens, k + 1);
  if (k < 0) return one;
  const digits = /^\d\d$/.test(at(tokens, k));
  const small = digits ? { value: Number(at(tokens, k)), to: k + 1 } : belowHundred(tokens, k);
  if (!small || small.value < 1) return one;
  const coin = joins(tokens, small.to, 1) && COINS.test(at(tokens, small.to));
  if (!coin && (and || (small.value < 10 && small.value !== 5) || measuresOn(tokens, small.to))) return one;
  // "3 euro 20", but "3 € 20 nuts"
  const named = tokens[one.to - 1]?.kind === 'word' && at(tokens, one.to - 1).length > 3;
  if (!coin && digits && !joins(tokens, k) && !(named && endsThere(tokens, small.to))) return one;
  const to = small.to + (coin ? 1 : 0);
  const value = one.value + small.value / 100;
  return {
    ...one,
    to,
    end: tokens[to - 1]?.end ?? one.end,
    value,
    digits: value.toFixed(2),
    decimal: true,
    unit: one.unit === 'pounds?' ? 'GBP' : one.unit,
  };
}

const endsThere = (tokens: readonly Token[], i: number): boolean =>
  !joins(tokens, i, 1) ||
  /^(?:[.,;)!?]|each|for|the|and|plus|post|at|in|from|on|with|so|but|a)$/.test(at(tokens, i));

/** Whether what follows makes a number of its own: a unit, a point, a hundred, or a noun that it counts. */
export function measuresOn(tokens: readonly Token[], i: number): boolean {
  const word = joins(tokens, i, 1) ? at(tokens, i) : '';
  if (/^(?:point|hundred|thousand|percent)$/.test(word)) return true;
  if (
    formsOf(word).some(
      (form) => !form.digits && form.words.every((each, place) => at(tokens, i + place) === each),
    )
  )
    return true;
  return (
    /s$/.test(word) && word.length > 4 && !/^(?:plus|this|was|less|postage|unless|always|perhaps)$/.test(word)
  );
}

/** Pence and cents as parts of their money; `coin` is what a cent is of. */
export function inWholeMoney(one: Candidate, coin: string): Candidate {
  const unit = one.unit === 'pence?' ? 'GBP' : coin;
  const value = one.value / 100;
  return { ...one, value, digits: inFull(value), unit };
}
