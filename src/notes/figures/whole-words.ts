/** Whole numbers said in words: "two hundred and fifty", "a hundred and four", "twenty-five hundred", and the short "one fifty", "fifty four oh five". */
import type { Reading } from './figure.ts';
import { isNumberName, ONES, PARTS, TEENS, TENS } from './number-names.ts';
import { partNameAt } from './part-names.ts';
import { at, joins, next, type Token } from './tokens.ts';

/** A number and the token after it. */
export interface Count {
  value: number;
  to: number;
}

/** Below a hundred: "five", "fifteen", "fifty", "fifty-five". */
export function belowHundred(tokens: readonly Token[], i: number): Count | undefined {
  const word = at(tokens, i);
  const small = ONES.get(word) ?? TEENS.get(word);
  if (small !== undefined) return { value: small, to: i + 1 };
  const tens = TENS.get(word);
  if (tens === undefined) return undefined;
  const k = next(tokens, i + 1);
  const one = k < 0 ? undefined : ONES.get(at(tokens, k));
  return one ? { value: tens + one, to: k + 1 } : { value: tens, to: i + 1 };
}

/** Below ten thousand: hundreds may be up to ninety-nine of them. */
function belowThousands(tokens: readonly Token[], i: number): Count | undefined {
  const low = belowHundred(tokens, i);
  let hundreds: number | undefined;
  let to = i;
  if (low) {
    const k = next(tokens, low.to);
    if (k < 0 || at(tokens, k) !== 'hundred' || low.value === 0) return low;
    hundreds = low.value;
    to = k + 1;
  } else if (at(tokens, i) === 'hundred') {
    hundreds = 1;
    to = i + 1;
  }
  if (hundreds === undefined) return undefined;
  const rest = remainder(tokens, to);
  return { value: hundreds * 100 + (rest?.value ?? 0), to: rest?.to ?? to };
}

/** "… and four", "… four": not "… and three quarters", whose part belongs to the fraction. */
function remainder(tokens: readonly Token[], i: number): Count | undefined {
  let k = next(tokens, i);
  if (k < 0) return undefined;
  const and = at(tokens, k) === 'and' || at(tokens, k) === '&';
  if (and) k = next(tokens, k + 1);
  const low = k < 0 ? undefined : belowHundred(tokens, k);
  if (!low || low.value === 0) return undefined;
  const after = next(tokens, low.to);
  const word = after < 0 ? '' : at(tokens, after);
  if (and && PARTS.has(word) && low.value < 10) return undefined;
  return word === 'hundred' || (!and && word === 'point') ? undefined : low;
}

/** Whole numbers below a million. */
export function countAt(tokens: readonly Token[], i: number): Count | undefined {
  const first = at(tokens, i);
  const article =
    first === 'a' && joins(tokens, i + 1, 2) && /^(?:hundred|thousand)$/.test(at(tokens, i + 1));
  const from = article ? i + 1 : i;
  const thousand = at(tokens, from) === 'thousand' && article;
  const head = thousand ? { value: 1, to: from } : belowThousands(tokens, from);
  if (!head) return undefined;
  const k = next(tokens, head.to);
  if (k < 0 || at(tokens, k) !== 'thousand' || head.value === 0) return head;
  let rest = next(tokens, k + 1);
  if (rest >= 0 && at(tokens, rest) === 'and') rest = next(tokens, rest + 1);
  const more = rest >= 0 && isNumberName(at(tokens, rest)) ? belowThousands(tokens, rest) : undefined;
  const after = more ? next(tokens, more.to) : -1;
  if (
    !more ||
    more.value === 0 ||
    more.value > 999 ||
    (after >= 0 && (PARTS.has(at(tokens, after)) || at(tokens, after) === 'thousand'))
  )
    return { value: head.value * 1000, to: k + 1 };
  return { value: head.value * 1000 + more.value, to: more.to };
}

/** Whether "one" at a line's end and "ninety-five" on the next are one number. */
function goesOn(tokens: readonly Token[], high: Count, k: number): boolean {
  const low = belowHundred(tokens, k);
  if (!low || (tokens[k]?.gap ?? 3) > 2) return false;
  const after = at(tokens, low.to);
  return (
    PRICED.test(after) ||
    (high.value < 10 && low.value >= 10 && (/^[.!?,]$/.test(after) || low.to >= tokens.length))
  );
}

/** Behind "three ninety-five" these leave no doubt, even over a line's end. */
const PRICED = /^(?:post|postage|carriage|freight|delivery|each|euros?|pounds?|quid|dollars)$/;

/** "one fifty", "eight fifty", "one oh five", "twelve ninety-five": what it is worth depends on the unit. */
export function pairAfter(tokens: readonly Token[], high: Count): NonNullable<Reading['pair']> | undefined {
  if (high.value < 1 || high.value > 99) return undefined;
  let k = next(tokens, high.to);
  if (
    k < 0 ||
    (!joins(tokens, k, 1) && !goesOn(tokens, high, k)) ||
    (k > high.to && high.value > 9 && !/^(?:oh|ninety)$/.test(at(tokens, k)) && high.value > 30)
  )
    return undefined;
  const oh = /^(?:oh|o|zero|nought|naught)$/.test(at(tokens, k));
  if (oh) k = next(tokens, k + 1);
  const low = k < 0 ? undefined : belowHundred(tokens, k);
  if (!low || low.value < 1 || (oh ? low.value > 9 : low.value < 10 && (high.value < 10 || k > high.to)))
    return undefined;
  // "on forty twenty three point four": the second number goes on by itself
  const after = next(tokens, low.to);
  if (
    after >= 0 &&
    (/^(?:point|hundred|thousand)$/.test(at(tokens, after)) || (partNameAt(tokens, after) && low.value < 20))
  )
    return undefined;
  return { high: high.value, low: low.value, oh, highTo: low.to };
}
