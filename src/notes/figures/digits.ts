/** A number written in digits: groups, decimal point or comma, fractions with a stroke or a sign, a leading point. */
import type { Reading } from './figure.ts';
import { at, joins, type Token } from './tokens.ts';
import { SIGNS } from './unit-words.ts';

export const VULGAR: Readonly<Record<string, number>> = {
  '½': 1 / 2,
  '¼': 1 / 4,
  '¾': 3 / 4,
  '⅓': 1 / 3,
  '⅔': 2 / 3,
  '⅛': 1 / 8,
  '⅜': 3 / 8,
  '⅝': 5 / 8,
  '⅞': 7 / 8,
  '⅕': 1 / 5,
};
const OVER = new Set([2, 3, 4, 8, 16, 32, 64]);
const TENTHS = new Set([10, 100, 1000]);

/** Whether the text writes decimals with a comma: told by figures that can be read in no other way. */
export type Comma = boolean;

export function digitsAt(tokens: readonly Token[], i: number, comma: Comma): Reading | undefined {
  const token = tokens[i];
  if (!token || token.kind === 'word') return undefined;
  if (token.kind === 'number') return numberAt(tokens, i, comma);
  const alone = VULGAR[token.text];
  if (alone !== undefined) return reading(i, i + 1, alone, true);
  if (token.text === '.' && joins(tokens, i + 1) && startsApart(tokens, i)) {
    const digits = at(tokens, i + 1);
    if (/^\d+$/.test(digits))
      return { ...reading(i, i + 2, Number(`0.${digits}`)), digits: `0.${digits}`, decimal: true };
  }
  return undefined;
}

function numberAt(tokens: readonly Token[], i: number, comma: Comma): Reading | undefined {
  const stroke = fractionAt(tokens, i);
  if (stroke) return stroke;
  const plain = plainAt(tokens, i, comma);
  if (!plain || plain.decimal) return plain;
  return mixed(tokens, plain) ?? plain;
}

const reading = (from: number, to: number, value: number, fraction = false): Reading => ({
  from,
  to,
  value,
  digits: String(Math.round(value * 1e6) / 1e6),
  word: false,
  decimal: false,
  ...(fraction ? { fraction } : {}),
});

const startsApart = (tokens: readonly Token[], i: number): boolean =>
  i === 0 || !joins(tokens, i) || /^[(/~±£€$@+–—-]$/.test(at(tokens, i - 1));

/** "3/8", "1/10": never a part of "3/4/26" or of "21/5". */
function fractionAt(tokens: readonly Token[], i: number): Reading | undefined {
  const [over, under] = [at(tokens, i), at(tokens, i + 2)];
  if (at(tokens, i + 1) !== '/' || !joins(tokens, i + 1) || !joins(tokens, i + 2)) return undefined;
  if (
    !/^\d{1,3}$/.test(over) ||
    !/^\d{1,4}$/.test(under) ||
    (at(tokens, i + 3) === '/' && joins(tokens, i + 3))
  )
    return undefined;
  if (at(tokens, i - 1) === '/' && joins(tokens, i)) return undefined;
  const [a, b] = [Number(over), Number(under)];
  if (!(a > 0 && a < b && (OVER.has(b) || TENTHS.has(b)))) return undefined;
  // "5/16ths"
  const to = /^(?:ths?|nds?|rds?)$/.test(at(tokens, i + 3)) && joins(tokens, i + 3) ? i + 4 : i + 3;
  return { ...reading(i, to, a / b, true), part: b };
}

/** "2 1/2", "2-1/2", "2 and 1/2", "1½", "1 ½". */
function mixed(tokens: readonly Token[], plain: Reading): Reading | undefined {
  if (!/^\d+$/.test(plain.digits)) return undefined;
  let i = plain.to;
  if (at(tokens, i) === 'and' && joins(tokens, i, 1) && joins(tokens, i + 1, 1)) {
    const more = plain.value < 20 ? fractionAt(tokens, i + 1) : undefined;
    if (!more || TENTHS.has(more.part ?? 0)) return undefined;
    return { ...reading(plain.from, more.to, plain.value + more.value, true), part: more.part ?? 2 };
  }
  if (at(tokens, i) === '-' && joins(tokens, i) && joins(tokens, i + 1)) i += 1;
  if (!joins(tokens, i, 1)) return undefined;
  const sign = VULGAR[at(tokens, i)];
  if (sign !== undefined) return reading(plain.from, i + 1, plain.value + sign, true);
  const more = fractionAt(tokens, i);
  if (!more || joins(tokens, i) === (i === plain.to) || plain.value > 99 || TENTHS.has(more.part ?? 0))
    return undefined;
  return { ...reading(plain.from, more.to, plain.value + more.value, true), part: more.part ?? 2 };
}

function plainAt(tokens: readonly Token[], i: number, comma: Comma): Reading | undefined {
  const raw = at(tokens, i);
  // "9 200", "1 250 000"
  let grouped = raw;
  let to = i + 1;
  if (/^[1-9]\d{0,2}$/.test(raw))
    while (/^\d{3}(?:[.,]\d{1,2})?$/.test(at(tokens, to)) && tokens[to]?.gap === 1 && /^\d+$/.test(grouped))
      grouped += at(tokens, to++);
  if (to > i + 1 && tokens[to]?.kind === 'number' && tokens[to]?.gap === 1) {
    grouped = raw;
    to = i + 1;
  }
  // No sum has three decimals
  const sum = /^[1-9]\d{0,2}\.\d{3}$/.test(grouped) && isMoney(tokens, i, to);
  const digits = sum ? grouped.replace('.', '') : settled(grouped, comma);
  if (digits === undefined) return undefined;
  return { from: i, to, value: Number(digits), digits, word: false, decimal: digits.includes('.') };
}

const isMoney = (tokens: readonly Token[], from: number, to: number): boolean =>
  SIGNS[at(tokens, from - 1)] !== undefined ||
  /^(?:[€£$¥]|eur|euros?|czk|kč|kc|crowns|koruna?|koruny|korun|jpy|yen|usd|dollars|gbp|huf|forints?|pln)$/.test(
    at(tokens, to),
  );

/** "1,250.50", "1.250,50", "18,50", "0,250", "1,250": undefined where it is no number, such as a date. */
function settled(raw: string, comma: Comma): string | undefined {
  if (/^\d+$/.test(raw)) return raw;
  if (/^[1-9]\d{0,2}(?:,\d{3})+(?:\.\d+)?$/.test(raw) && !(comma && /^\d{1,3},\d{3}$/.test(raw)))
    return raw.replaceAll(',', '');
  if (/^[1-9]\d{0,2}(?:\.\d{3})+,\d+$/.test(raw) || /^[1-9]\d{0,2}(?:\.\d{3}){2,}$/.test(raw))
    return raw.replaceAll('.', '').replace(',', '.');
  return /^\d+[.,]\d+$/.test(raw) ? raw.replace(',', '.') : undefined;
}

/** Whether a text writes decimal commas: "18,50" and "0,2" can be nothing else. */
export const writesComma = (text: string): Comma =>
  /(?<![\d.,])(?:\d+,\d{1,2}|0,\d+)(?![\d,]|\.\d)/.test(text) &&
  !/(?<![\d.,])\d+\.\d{1,2}(?![\d.,])/.test(text);
