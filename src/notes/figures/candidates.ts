/** Every number of a text with the unit that stands on it: figures with their units, and bare numbers for the rules that look around. */
import { oneAndCoins, withArticle } from './articles.ts';
import { type Comma, digitsAt } from './digits.ts';
import { type Candidate, NONE, type Reading } from './figure.ts';
import { limitOf, roughly } from './limits.ts';
import { currencyBefore, measuresOn, withCoins } from './money.ts';
import { countsOrNames, isNaming, isPartOfName, shapeEnd } from './not-measured.ts';
import { mayBeginNumber } from './number-names.ts';
import { andPartAt } from './part-words.ts';
import { isCounted } from './rows.ts';
import { inFull, saidAt, withWords } from './said.ts';
import { at, joins, type Token } from './tokens.ts';
import { unitAfter } from './unit-at.ts';
import { formsOf } from './unit-forms.ts';
import { MONEY } from './unit-words.ts';
import { belowHundred } from './whole-words.ts';

export function candidatesOf(
  tokens: readonly Token[],
  written: (token: Token) => string,
  comma: Comma,
): Candidate[] {
  const out: Candidate[] = [];
  for (let i = 0; i < tokens.length; ) {
    const token = tokens[i];
    if (token?.kind === 'word' && !mayBeginNumber(token.text)) {
      i += 1;
      continue;
    }
    const past = shapeEnd(tokens, i);
    if (past > i) {
      i = past;
      continue;
    }
    const found = candidateAt(tokens, i, written, comma, out.at(-1));
    for (const one of found) out.push(one);
    i = Math.max(i + 1, found.at(-1)?.to ?? 0);
  }
  return out;
}

const NOTHING: Candidate[] = [];
const ARTICLE = /^(?:an?|another)$/;
const QUALIFIED = /^(?:couple|good|bare|full|clear|whole|generous|short|fiver|tenner|hundred|thousand)$/;

const mayFollowArticle = (tokens: readonly Token[], i: number): boolean => {
  const word = at(tokens, i);
  return formsOf(word).length > 0 || mayBeginNumber(word) || QUALIFIED.test(word);
};

function candidateAt(
  tokens: readonly Token[],
  i: number,
  written: (token: Token) => string,
  comma: Comma,
  last: Candidate | undefined,
): Candidate[] {
  const token = tokens[i];
  if (!token) return NOTHING;
  if (ARTICLE.test(token.text) && !mayFollowArticle(tokens, i + 1)) return NOTHING;
  if (token.kind === 'number' && isPartOfName(tokens, i)) return [];
  const digits = digitsAt(tokens, i, comma);
  const read = digits ? withWords(tokens, digits) : token.kind === 'word' ? saidAt(tokens, i) : undefined;
  if (!read) {
    const one =
      token.kind === 'word' ? (oneAndCoins(tokens, i) ?? withArticle(tokens, i, written)) : undefined;
    return one ? [marked(tokens, one)] : [];
  }
  return withUnit(tokens, signed(tokens, read), written, last);
}

/** "-4", "minus four". */
function signed(tokens: readonly Token[], read: Reading): Reading {
  const before = tokens[read.from - 1];
  if (!before || !joins(tokens, read.from, 1)) return read;
  const sign =
    /^[-−–]$/.test(before.text) &&
    joins(tokens, read.from) &&
    (read.from === 1 || !joins(tokens, read.from - 1) || at(tokens, read.from - 2) === '(') &&
    before.gap !== 3 &&
    !/^\d/.test(at(tokens, read.from - 2));
  const lined = sign && before.gap === 2;
  if ((!sign || lined) && before.text !== 'minus') return read;
  if (before.text === 'minus' && /^(?:plus|or)$/.test(at(tokens, read.from - 2))) return read;
  return { ...read, from: read.from - 1, value: -read.value, digits: `-${read.digits}` };
}

function withUnit(
  tokens: readonly Token[],
  read: Reading,
  written: (token: Token) => string,
  last: Candidate | undefined,
): Candidate[] {
  const money = currencyBefore(tokens, read.from, last);
  if (money) {
    const [only] = paired({ ...read, ...span(tokens, money.from, read.to), unit: money.unit });
    return only ? [marked(tokens, withCoins(tokens, { ...only, from: money.from }))] : [];
  }
  const dash = wholeSum(tokens, read);
  const unit = unitAfter(tokens, dash, written);
  if (!unit) {
    const bare = countsOrNames(tokens, read) ? NONE : '';
    return [marked(tokens, { ...read, ...span(tokens, read.from, read.to), unit: bare })];
  }
  if (
    /^(?:few|several|many)$/.test(at(tokens, read.from - 1)) &&
    /^(?:hundred|thousand|dozen)$/.test(at(tokens, read.from))
  )
    return [marked(tokens, { ...read, ...span(tokens, read.from, read.to), unit: NONE })];
  const numbered =
    read.word && read.value < 13 && Number.isInteger(read.value) && at(tokens, read.from - 1) === 'number';
  if (numbered) return [marked(tokens, { ...read, ...span(tokens, read.from, read.to), unit: NONE })];
  if (
    !read.word &&
    Number.isInteger(read.value) &&
    unit.to === read.to + 1 &&
    at(tokens, read.to).length === 1 &&
    !joins(tokens, read.to) &&
    isNaming(tokens, read.from, read.value)
  )
    return [marked(tokens, { ...read, ...span(tokens, read.from, read.to), unit: NONE })];
  const found = paired(
    { ...read, ...span(tokens, read.from, unit.to), to: unit.to, unit: unit.unit },
    isCounted(at(tokens, unit.to)),
  );
  const whole = found.at(-1);
  if (!whole) return [];
  const final =
    MONEY.has(whole.unit) && whole.value < 0
      ? { ...whole, value: -whole.value, digits: whole.digits.slice(1) }
      : whole;
  const split = found[0];
  if (found.length > 1 && split?.pair) {
    const { highTo } = split.pair;
    const low = lowFrom(tokens, highTo);
    const { pair: _p, ...bare } = split;
    return [
      marked(tokens, { ...bare, ...span(tokens, read.from, highTo), to: highTo }),
      marked(
        tokens,
        withCoins(tokens, withTail(tokens, { ...final, ...span(tokens, low, unit.to), from: low })),
      ),
    ];
  }
  return [marked(tokens, withCoins(tokens, withTail(tokens, final)))];
}

const lowFrom = (tokens: readonly Token[], highTo: number): number =>
  at(tokens, highTo) === '-' ? highTo + 1 : highTo;

const span = (tokens: readonly Token[], from: number, to: number): { start: number; end: number } => ({
  start: tokens[from]?.start ?? 0,
  end: tokens[to - 1]?.end ?? 0,
});

/** "119,- EUR". */
const wholeSum = (tokens: readonly Token[], read: Reading): Reading =>
  at(tokens, read.to) === ',' &&
  /^[-–—]$/.test(at(tokens, read.to + 1)) &&
  joins(tokens, read.to) &&
  joins(tokens, read.to + 1)
    ? { ...read, to: read.to + 2 }
    : read;

/** What "two fifty", "twelve ninety-five" or "fifty four oh five" comes to in its unit; two figures where it can be no one number. */
function paired(one: Candidate, counted = false): Candidate[] {
  if (!one.pair) return [one];
  const { high, low, oh } = one.pair;
  const { pair: _p, ...plain } = one;
  const two = [
    { ...plain, pair: one.pair, value: high, digits: String(high), unit: '' },
    { ...plain, value: low, digits: inFull(low) },
  ];
  const tenths = !oh && low < 10;
  const value = high + low / (tenths ? 10 : 100);
  const decimals = { ...plain, value, digits: value.toFixed(tenths ? 1 : 2), decimal: true };
  // "eleven six volts"
  if (tenths) return /^(?:V|bar)$/.test(one.unit) ? [decimals] : two;
  if (/^(?:JPY|CZK|HUF)$/.test(one.unit) && high < 10) return [plain];
  if (MONEY.has(one.unit) || /^(?:pounds|pence|cents)\?$/.test(one.unit)) return [decimals];
  // "six ten mil bolts" are six of a size
  if (high < 10 && !(counted && high > 1 && low < 20 && one.unit !== 'rpm')) return [plain];
  if (oh && /^(?:mm|mil\?|in|V|A|bar)$/.test(one.unit)) return [decimals];
  if (one.unit === 'rpm' || (oh && one.unit !== '')) return [plain];
  return two;
}

/** "three inches and a half", "a litre and three quarters". */
function withTail(tokens: readonly Token[], one: Candidate): Candidate {
  if (one.fraction || one.decimal || MONEY.has(one.unit)) return one;
  const tail = at(tokens, one.to) === 'and' ? andPartAt(tokens, one.to) : undefined;
  if (!tail) return one.unit === 'm' ? withCentimetres(tokens, one) : one;
  if (tail.size === 0) return { ...one, about: true };
  const value = one.value + tail.add;
  return {
    ...one,
    to: tail.to,
    end: tokens[tail.to - 1]?.end ?? one.end,
    value,
    digits: inFull(value),
    fraction: true,
  };
}

/** "one metre twenty". */
function withCentimetres(tokens: readonly Token[], one: Candidate): Candidate {
  const low = one.word && joins(tokens, one.to, 1) ? belowHundred(tokens, one.to) : undefined;
  if (!low || low.value < 10 || measuresOn(tokens, low.to)) return one;
  const value = one.value + low.value / 100;
  return {
    ...one,
    to: low.to,
    end: tokens[low.to - 1]?.end ?? one.end,
    value,
    digits: inFull(value),
    decimal: true,
  };
}

function marked(tokens: readonly Token[], one: Candidate): Candidate {
  const limit = limitOf(tokens, one);
  return { ...one, ...(roughly(tokens, one) ? { about: true } : {}), ...(limit ? { limit } : {}) };
}
