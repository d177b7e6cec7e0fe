/** A number said in words, or in digits and words together: "three point four", "two and a quarter", "1 and a half", "3 point 5". */
import { decimalsAt } from './decimal-words.ts';
import type { Reading } from './figure.ts';
import { isNumberName } from './number-names.ts';
import { type Part, partNameAt } from './part-names.ts';
import { andPartAt, onePartAt, partsAfter } from './part-words.ts';
import { at, joins, next, type Token } from './tokens.ts';
import { type Count, countAt, pairAfter } from './whole-words.ts';

export const inFull = (value: number): string => String(Math.round(value * 1e6) / 1e6);

const NO_POINT = /^(?:this|that|some|what|no|any|which|each|every|one|high|low|weak|bad|starting|jacking)$/;

/** "a new one fourteen pounds": this "one" is a thing, and the number begins behind it. */
const A_THING =
  /^(?:new|old|good|other|big|small|better|spare|cheap|cheaper|this|that|which|every|only|wrong|right|proper|used|decent|second-hand|secondhand)$/;
const isThing = (tokens: readonly Token[], i: number): boolean =>
  at(tokens, i) === 'one' &&
  A_THING.test(at(tokens, i - 1)) &&
  isNumberName(at(tokens, i + 1)) &&
  !/^(?:hundred|thousand)$/.test(at(tokens, i + 1));

export function saidAt(tokens: readonly Token[], i: number): Reading | undefined {
  const word = at(tokens, i);
  if (isThing(tokens, i)) return undefined;
  if (word === 'point') return pointFirst(tokens, i);
  if (/^(?:a|couple)$/.test(word)) {
    const couple = coupleAt(tokens, i);
    if (couple) return couple;
  }
  if (word === 'oh' || word === 'o') {
    const k = next(tokens, i + 1);
    const point = k >= 0 && at(tokens, k) === 'point' ? decimalsAt(tokens, next(tokens, k + 1)) : undefined;
    return point ? whole(i, point.to, `0.${point.digits}`) : undefined;
  }
  const one = onePartAt(tokens, i);
  if (one) {
    // "half a tenth"
    const of = one.size < 8 ? finePartAt(tokens, one.to) : undefined;
    const size = one.size * (of?.size ?? 1);
    return {
      from: i,
      to: of?.to ?? one.to,
      value: 1 / size,
      digits: inFull(1 / size),
      word: true,
      decimal: false,
      fraction: true,
      part: of?.size ?? one.size,
    };
  }
  const count = countAt(tokens, i);
  return count && grown(tokens, { ...whole(i, count.to, String(count.value)), decimal: false }, count);
}

/** What words add to a number in digits: "1 and a half", "3 point 5", "5 hundredths", "2 thousand". */
export function withWords(tokens: readonly Token[], read: Reading): Reading {
  if (read.decimal || read.fraction || !joins(tokens, read.to, 2)) return read;
  const multiple = /^(?:hundred|thousand)$/.exec(at(tokens, read.to))?.[0];
  if (multiple) {
    const value = read.value * (multiple === 'hundred' ? 100 : 1000);
    return { ...read, to: read.to + 1, value, digits: inFull(value) };
  }
  const more = grown(tokens, read, { value: read.value, to: read.to });
  return more.pair ? read : { ...more, word: false };
}

const whole = (from: number, to: number, digits: string): Reading => ({
  from,
  to,
  value: Number(digits),
  digits,
  word: true,
  decimal: digits.includes('.'),
});

function pointFirst(tokens: readonly Token[], i: number): Reading | undefined {
  if (NO_POINT.test(at(tokens, i - 1)) && joins(tokens, i, 1)) return undefined;
  const k = next(tokens, i + 1);
  const found = k < 0 ? undefined : decimalsAt(tokens, k);
  return found ? whole(i, found.to, `0.${found.digits}`) : undefined;
}

function finePartAt(tokens: readonly Token[], i: number): Part | undefined {
  const k = at(tokens, i) === 'of' ? i + 1 : i;
  const part = at(tokens, k) === 'a' ? partNameAt(tokens, k + 1) : undefined;
  return part && part.size >= 10 ? part : undefined;
}

function coupleAt(tokens: readonly Token[], i: number): Reading | undefined {
  const k = at(tokens, i) === 'a' ? i + 1 : i;
  if (at(tokens, k) !== 'couple') return undefined;
  const to = at(tokens, k + 1) === 'of' ? k + 2 : k + 1;
  // "a couple of tenths"
  const part = partNameAt(tokens, to);
  if (part && part.size >= 10)
    return {
      ...whole(i, part.to, inFull(2 / part.size)),
      decimal: false,
      about: true,
      fraction: true,
      part: part.size,
    };
  return { ...whole(i, to, '2'), about: true };
}

/** Decimals, parts and tails behind a whole number. */
function grown(tokens: readonly Token[], base: Reading, count: Count): Reading {
  const k = next(tokens, count.to);
  if (k >= 0 && /^(?:point|comma)$/.test(at(tokens, k))) {
    const from = next(tokens, k + 1);
    const found = from < 0 ? undefined : decimalsAt(tokens, from);
    if (found) return bit(tokens, whole(base.from, found.to, `${count.value}.${found.digits}`));
  }
  const parts = partsAfter(tokens, count);
  if (parts) {
    const value = count.value / parts.size;
    return { ...base, to: parts.to, value, digits: inFull(value), fraction: true, part: parts.size };
  }
  const tail = andPartAt(tokens, count.to);
  if (tail) return tailed(tokens, base, count.value, tail);
  const pair = base.word ? pairAfter(tokens, count) : undefined;
  if (!pair) return base;
  const more = andPartAt(tokens, pair.highTo);
  const low = pair.low + (more?.add ?? 0);
  const value = pair.high * 100 + low;
  return {
    ...base,
    to: more?.to ?? pair.highTo,
    value,
    digits: inFull(value),
    pair: { ...pair, low, highTo: count.to },
  };
}

/** "two and a half", "two and a bit", "two and a half thousand", "two and a half hundredths". */
function tailed(
  tokens: readonly Token[],
  base: Reading,
  count: number,
  tail: { add: number; size: number; to: number },
): Reading {
  if (tail.size === 0) return { ...base, to: tail.to, about: true };
  const fine = partNameAt(tokens, tail.to);
  if (fine && fine.size >= 10) {
    const value = (count + tail.add) / fine.size;
    return { ...base, to: fine.to, value, digits: inFull(value), fraction: true, part: fine.size };
  }
  const multiple = /^(?:hundred|thousand)$/.exec(at(tokens, tail.to))?.[0];
  const value = (count + tail.add) * (multiple === 'hundred' ? 100 : multiple ? 1000 : 1);
  return {
    ...base,
    to: tail.to + (multiple ? 1 : 0),
    value,
    digits: inFull(value),
    ...(multiple ? {} : { fraction: true, part: tail.size }),
  };
}

function bit(tokens: readonly Token[], read: Reading): Reading {
  const tail = andPartAt(tokens, read.to);
  return tail?.size === 0 ? { ...read, to: tail.to, about: true } : read;
}
