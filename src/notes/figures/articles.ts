/** "an inch and a half", "a fiver", "half a litre"'s plain brother "a litre": one of a unit, said with an article. */
import type { Candidate, Reading } from './figure.ts';
import { measuresOn } from './money.ts';
import { isNumberName } from './number-names.ts';
import { andPartAt } from './part-words.ts';
import { inFull } from './said.ts';
import { at, joins, type Token } from './tokens.ts';
import { formAt } from './unit-at.ts';
import { MONEY } from './unit-words.ts';
import { belowHundred } from './whole-words.ts';

const SUMS: Readonly<Record<string, number>> = { fiver: 5, tenner: 10 };
/** Units that "a" makes a figure of, wherever they are said. */
const ALWAYS = new Set([
  'in',
  'gal',
  'imp gal',
  'US gal',
  'pt',
  'imp pt',
  'US pt',
  'qt',
  'L',
  'mL',
  'mm',
  'thou',
  'um',
  'cm',
  'fl oz',
  'oz',
  'g',
  'V',
  'mV',
]);
/** Units that are one only where the words before or behind measure. */
const MEASURED = new Set([
  'turn',
  'deg?',
  'm',
  'mi',
  'km',
  'yd',
  'ft',
  'bar',
  'h',
  'min',
  'day',
  'week',
  'kg',
  'pounds?',
  'GBP',
  'EUR',
  'USD',
  'mil?',
  'A',
  'psi',
  '%',
  'lb',
  'click',
]);
const MEASURES_BEFORE =
  /^(?:about|nearly|almost|over|under|only|just|by|than|within|another|took|takes|least|roughly|around|exactly|maybe|spent|lost|up|most|say)$/;
const EACH =
  /^(?:p|pence|cent|cents|times|drop|drops|mile|miles|strokes|pulls|revs|visits|sessions|hours|euro|euros|pound|pounds|crowns|dollars|yen|quid|once|twice|each|eur|gbp|usd|czk|jpy)$/;

export function withArticle(
  tokens: readonly Token[],
  i: number,
  text: (token: Token) => string,
): Candidate | undefined {
  const first = at(tokens, i);
  if (!/^(?:an?|another)$/.test(first) && !bareInch(tokens, i)) return undefined;
  const article = /^(?:an?|another)$/.test(first) ? i + 1 : i;
  const k = /^(?:good|bare|full|clear|whole|generous|short)$/.test(at(tokens, article))
    ? article + 1
    : article;
  if (!joins(tokens, k, 2)) return undefined;
  const base = { from: i, word: true, decimal: false, start: tokens[i]?.start ?? 0 };
  const sum = SUMS[at(tokens, k)];
  if (sum !== undefined)
    return { ...base, to: k + 1, value: sum, digits: String(sum), unit: 'note?', end: tokens[k]?.end ?? 0 };
  const read: Reading = { ...base, to: k, value: 1, digits: '1' };
  const found = formAt(tokens, k, read, text);
  if (
    !found ||
    (/s$/.test(at(tokens, found.to - 1)) &&
      !/^(?:us|celsius|gas)$/.test(at(tokens, found.to - 1)) &&
      at(tokens, found.to - 1) !== 'thous')
  )
    return undefined;
  const tail = andPartAt(tokens, found.to);
  const grown = tail !== undefined && tail.size > 0;
  if (!grown && !MONEY.has(found.unit) && !measures(tokens, i, found.unit, found.to)) return undefined;
  if (!grown && MONEY.has(found.unit) && !paid(tokens, i, found.to)) return undefined;
  const to = grown ? tail.to : found.to;
  const value = 1 + (tail?.add ?? 0);
  return {
    ...base,
    to,
    value,
    digits: inFull(value),
    unit: found.unit,
    end: tokens[to - 1]?.end ?? 0,
    ...(grown ? { fraction: true } : {}),
    ...(tail?.size === 0 ? { about: true } : {}),
  };
}

const COIN: Readonly<Record<string, string>> = {
  euro: 'EUR',
  pound: 'GBP',
  quid: 'GBP',
  dollar: 'USD',
  buck: 'USD',
};

/** "a euro fifty", "pound twenty". */
export function oneAndCoins(tokens: readonly Token[], i: number): Candidate | undefined {
  const k = /^(?:an?|one|another)$/.test(at(tokens, i)) ? i + 1 : i;
  const unit = COIN[at(tokens, k)];
  const low = unit && joins(tokens, k + 1, 1) ? belowHundred(tokens, k + 1) : undefined;
  if (!unit || !low || low.value < 10 || low.value % 5 !== 0 || measuresOn(tokens, low.to)) return undefined;
  if (k === i && isNumberName(at(tokens, i - 1))) return undefined;
  const value = 1 + low.value / 100;
  return {
    from: i,
    to: low.to,
    start: tokens[i]?.start ?? 0,
    end: tokens[low.to - 1]?.end ?? 0,
    word: true,
    decimal: true,
    value,
    digits: value.toFixed(2),
    unit,
  };
}

/** "inch and a half", "litre and a half" without an article. */
const bareInch = (tokens: readonly Token[], i: number): boolean =>
  /^(?:inch|litre|turn|millimetre|pint|gallon|hour|foot|metre|kilo)$/.test(at(tokens, i)) &&
  at(tokens, i + 1) === 'and' &&
  (andPartAt(tokens, i + 1)?.size ?? 0) > 0 &&
  !isNumberName(at(tokens, i - 1));

function measures(tokens: readonly Token[], i: number, unit: string, to: number): boolean {
  const [before, after] = [at(tokens, i - 1), at(tokens, to)];
  const joined = joins(tokens, i, 2);
  if (/^(?:h|min|day|week)$/.test(unit)) {
    if (/^(?:later|earlier|afterwards|before|after)$/.test(after) && unit !== 'day') return true;
    if (/^(?:later|earlier|afterwards)$/.test(after)) return true;
    if (
      unit === 'h' &&
      (/^(?:thinks|reckons|says|lost)$/.test(before) || (after === 'on' && at(tokens, to + 1) === 'the'))
    )
      return true;
    if (
      /^(?:whole|full|good|clear)$/.test(at(tokens, i + 1)) &&
      before !== 'for' &&
      !/^(?:day|week)$/.test(unit)
    )
      return true;
    if (before === 'of' && at(tokens, i - 2) === 'part') return true;
    // "an hour and twenty"
    if (
      unit === 'h' &&
      after === 'and' &&
      /^(?:five|ten|fifteen|twenty|thirty|forty|fifty)$/.test(at(tokens, to + 1))
    )
      return true;
  }
  if (joins(tokens, i, 1) && (EACH.test(before) || tokens[i - 1]?.kind === 'number' || isNumberName(before)))
    return false;
  if (ALWAYS.has(unit)) return true;
  if (!MEASURED.has(unit)) return false;
  if (joined && MEASURES_BEFORE.test(before) && !(unit === 'min' && /^(?:just|only)$/.test(before)))
    return true;
  if (after === 'or' && /^(?:so|two)$/.test(at(tokens, to + 1))) return true;
  if (
    /^(?:m|yd|ft|kg|mil\?|pounds\?)$/.test(unit) &&
    after === 'of' &&
    !/^(?:the|my|this|that|it)$/.test(at(tokens, to + 1))
  )
    return true;
  if (/^(?:m|yd|ft)$/.test(unit) && /^(?:long|wide|deep|away|off|from|apart)$/.test(after)) return true;
  if (/^(?:ft|m|yd|in|mi|km)$/.test(unit) && /^(?:for|every|to)$/.test(before)) return true;
  if (unit === 'h' && /^(?:apart|later|each|in)$/.test(after)) return true;
  if (unit === 'turn' && after === 'at') return true;
  if (unit === 'turn')
    return (
      at(tokens, i + 1) !== 'turn' ||
      /^(?:out|in|open|each|back|anticlockwise|clockwise|further)$/.test(after)
    );
  if (/^(?:h|min|week|day)$/.test(unit))
    return (
      (/^(?:for|after|it|takes|took|take|taking|wait|waited|me|us|him|her|saved|cost|needs|wants|last|lasts|lost)$/.test(
        before,
      ) &&
        !(unit === 'min' && /^(?:wait)$/.test(before))) ||
      (/^(?:it's|its|is|was)$/.test(before) && /^(?:to|of|there|away|each)$/.test(after))
    );
  if (unit === 'pounds?' && /^(?:each|apiece|ea)$/.test(after)) return true;
  if (unit === 'pounds?') return /^(?:for|was|were|cost|paid|is)$/.test(before);
  return false;
}

const paid = (tokens: readonly Token[], i: number, to: number): boolean =>
  /^(?:for|was|cost|paid|about|another|only|to|than|nearly|plus)$/.test(at(tokens, i - 1)) ||
  /^(?:each|a|for|apiece)$/.test(at(tokens, to));
