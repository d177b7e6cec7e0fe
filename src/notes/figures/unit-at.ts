/** The unit that is written or said behind a number. */
import type { Reading } from './figure.ts';
import { at, joins, type Token } from './tokens.ts';
import { fits } from './unit-fits.ts';
import { type Form, formsOf } from './unit-forms.ts';
import { MONEY } from './unit-words.ts';

export interface UnitFound {
  unit: string;
  to: number;
}

/** May stand between a number said in words and its unit: "two full turns", "sixty odd quid". */
const FILLER =
  /^(?:full|complete|whole|good|more|clear|solid|odd|or|so|ish|further|extra|bare|short|generous|cold|metric)$/;
const JOINER = /^[-‐‑–.·⋅*•∙]$/;

/** The unit behind the token at `i`, which is the first after the number; `text` is the source, for capitals. */
export function unitAfter(
  tokens: readonly Token[],
  read: Reading,
  text: (token: Token) => string,
): UnitFound | undefined {
  const i = read.to;
  const direct = formAt(tokens, i, read, text);
  if (direct) return direct;
  // "thirty-odd millimetres"
  const hedged = at(tokens, i) === '-' && joins(tokens, i) && /^(?:odd|ish)$/.test(at(tokens, i + 1));
  if (/^[-‐‑]$/.test(at(tokens, i)) && joins(tokens, i) && joins(tokens, i + 1) && !hedged)
    return formAt(tokens, i + 1, read, text);
  // "4.50/m eur"
  if (
    at(tokens, i) === '/' &&
    /^(?:m|kg|l|ea|pc|pr|pair|ft)$/.test(at(tokens, i + 1)) &&
    joins(tokens, i + 2, 1)
  ) {
    const money = formAt(tokens, i + 2, read, text);
    if (money && MONEY.has(money.unit)) return money;
  }
  // "eighty, that's newton metres"
  const said = at(tokens, i) === ',' ? i + 1 : i;
  if (/^(?:that's|thats)$/.test(at(tokens, said)) && joins(tokens, said + 1, 1)) {
    const named = formAt(tokens, said + 1, { ...read, word: true }, text);
    if (named && at(tokens, named.to - 1).length > 3) return named;
  }
  // "Two thousand one hundred and four. Millimetres."
  const apart =
    /^[.,]$/.test(at(tokens, i)) && tokens[i + 1]?.kind === 'word' && at(tokens, i + 1).length > 4;
  if (apart && (!joins(tokens, i + 2, 1) || /^[.,!?]$/.test(at(tokens, i + 2)))) {
    const named = formAt(tokens, i + 1, { ...read, word: true }, text);
    if (named && named.to === i + 2) return named;
  }
  if (read.fraction || read.about) {
    const of = partOf(tokens, i);
    if (of > i) return formAt(tokens, of, { ...read, word: true }, text);
  }
  if (at(tokens, i) === 'of' && /^(?:an?|our|your|their)$/.test(at(tokens, i + 1)))
    return formAt(tokens, i + 2, { ...read, word: true }, text);
  let k = hedged ? i + 2 : i;
  while (k < i + (hedged ? 3 : 2) && FILLER.test(at(tokens, k)) && joins(tokens, k, 1)) k += 1;
  const found = k > i ? formAt(tokens, k, { ...read, word: true }, text) : undefined;
  return found && at(tokens, found.to - 1).length > 1 ? found : undefined;
}

/** "half of a", "quarter of an", "half the": where the unit's own words begin. */
function partOf(tokens: readonly Token[], i: number): number {
  let k = i;
  if (at(tokens, k) === 'of') k += 1;
  if (/^(?:an?|one|the)$/.test(at(tokens, k)) && (at(tokens, k) !== 'the' || k > i)) k += 1;
  if (k > i && FILLER.test(at(tokens, k))) k += 1;
  return joins(tokens, i, 2) ? k : i;
}

export function formAt(
  tokens: readonly Token[],
  i: number,
  read: Reading,
  text: (token: Token) => string,
): UnitFound | undefined {
  const first = tokens[i];
  if (!first || !reaches(tokens, i, text)) return undefined;
  for (const form of formsOf(first.text)) {
    if (form.digits && read.word && !(form.unit === 'in' && read.fraction)) continue;
    if (form.touching && first.gap !== 0) continue;
    const to = matched(tokens, i, form);
    if (to < 0 || (form.exact !== undefined && text(first) !== form.exact)) continue;
    if (!endsWell(tokens, i, to, form) || !fits(tokens, i, to, form, read)) continue;
    return { unit: form.unit, to };
  }
  return undefined;
}

/** Short units that are no other word, so that they may begin a line. */
const SURE = /^(?:mm|cm|km|kg|ml|cc|nm|psi|rpm|mph|kph|kpa|ohm|eur|gbp|usd|czk|jpy|amp|hrs|lbs)$/;

/** A unit stands on the number's line; a long word, or a short one that is nothing else, may begin the next one. */
function reaches(tokens: readonly Token[], i: number, text: (token: Token) => string): boolean {
  const token = tokens[i];
  if (!token || token.gap < 2) return token !== undefined;
  if (token.gap === 2 && SURE.test(token.text)) return true;
  return (
    token.kind === 'word' &&
    token.text.length > 3 &&
    text(token) === token.text &&
    !/^(?:inch|feet|foot|bars?|turns?|hours?|days?|weeks?|tons?|mill?s?|mins?)$/.test(
      token.gap === 3 ? token.text : '',
    )
  );
}

function matched(tokens: readonly Token[], i: number, form: Form): number {
  let k = i;
  for (const [place, word] of form.words.entries()) {
    if (place > 0) {
      if (
        at(tokens, k) !== word &&
        JOINER.test(at(tokens, k)) &&
        joins(tokens, k, 1) &&
        joins(tokens, k + 1, 1)
      )
        k += 1;
      if (!joins(tokens, k, form.glued[place] ? 0 : 2)) return -1;
    }
    if (at(tokens, k) !== word) return -1;
    k += 1;
  }
  return k;
}

/** "5 l" but not "5 l/h", "17 A" but not "17 A/F" or "3 A-frames"; "10 m" but not "10 m8". */
function endsWell(tokens: readonly Token[], i: number, to: number, form: Form): boolean {
  const after = tokens[to];
  if (!after || after.gap > 0) return true;
  if (after.kind !== 'sign') return form.words.at(-1)?.length === 1 && !/\p{L}/u.test(form.words[0] ?? '');
  const beyond = tokens[to + 1];
  // "80W-90"
  if (after.text === '-' && beyond?.gap === 0 && beyond.kind === 'number' && at(tokens, i).length === 1)
    return false;
  // "2 g-clamps"
  if (
    after.text === '-' &&
    beyond?.gap === 0 &&
    beyond.kind === 'word' &&
    to - i === 1 &&
    at(tokens, i).length === 1 &&
    !joins(tokens, i)
  )
    return false;
  return !(
    to - i === 1 &&
    !MONEY.has(form.unit) &&
    at(tokens, i).length < 3 &&
    /^[/'’&]$/.test(after.text) &&
    beyond?.gap === 0 &&
    beyond.kind === 'word'
  );
}
