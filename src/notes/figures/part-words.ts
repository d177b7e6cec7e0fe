/** Parts of one in words: "half", "a quarter", "three eighths", "five hundredths", "… and a half". */
import { ONES, TEENS } from './number-names.ts';
import { type Part, partNameAt } from './part-names.ts';
import { at, next, type Token } from './tokens.ts';
import type { Count } from './whole-words.ts';

/** Parts that are ordinals as well, so that the singular counts only behind "a" or "one". */
const ORDINAL = /^(?:third|fifth|sixth|tenth|hundredth|thousandth)$/;

/** "quarter", "a half", "an eighth": one part without a number before it. */
export function onePartAt(tokens: readonly Token[], i: number): Part | undefined {
  const article = /^an?$/.test(at(tokens, i));
  const k = article ? next(tokens, i + 1) : i;
  if (k < 0) return undefined;
  const part = partNameAt(tokens, k);
  if (!part || /s$/.test(at(tokens, part.to - 1))) return undefined;
  // "Eighth kilometre"
  if (
    !article &&
    /^(?:eighth|sixteenth)$/.test(at(tokens, k)) &&
    /^(?:kilometre|mile|lap|hour|day|week|metre|time|go)$/.test(at(tokens, part.to))
  )
    return undefined;
  if (article || !ORDINAL.test(at(tokens, k))) return part;
  return undefined;
}

/** What a count in parts is: "three eighths", "one tenth", "three quarter inch"; not "twenty third". */
export function partsAfter(tokens: readonly Token[], count: Count): Part | undefined {
  const k = next(tokens, count.to);
  const part = k < 0 ? undefined : partNameAt(tokens, k);
  if (!part || count.value <= 0) return undefined;
  const name = at(tokens, part.to - 1);
  if (name === 'half') return undefined;
  if (ORDINAL.test(name) && count.value !== 1) return undefined;
  return part;
}

/** "… and a half", "… and three quarters", "… and an eighth", "… and a bit". */
export function andPartAt(
  tokens: readonly Token[],
  i: number,
): { add: number; size: number; to: number } | undefined {
  let k = next(tokens, i);
  if (k < 0) return undefined;
  const and = /^(?:and|&|an)$/.test(at(tokens, k));
  if (and) k = next(tokens, k + 1);
  if (k < 0) return undefined;
  const bit = /^(?:a|the)$/.test(at(tokens, k)) && /^(?:bit|touch|smidge)$/.test(at(tokens, k + 1));
  if (bit) return and ? { add: 0, size: 0, to: k + 2 } : undefined;
  const one = onePartAt(tokens, k);
  if (one && (and || at(tokens, k) === 'a') && one.size <= 64 && !(one.size === 10 || one.size === 5))
    return { add: 1 / one.size, size: one.size, to: one.to };
  if (!and) return undefined;
  const over = ONES.get(at(tokens, k)) ?? TEENS.get(at(tokens, k));
  const under = over ? next(tokens, k + 1) : -1;
  const part = under < 0 ? undefined : partNameAt(tokens, under);
  return over && part && part.size > over && (part.size <= 64 || part.size === 100) && part.size !== 10
    ? { add: over / part.size, size: part.size, to: part.to }
    : undefined;
}
