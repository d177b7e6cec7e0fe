/** A bare number that another figure comes to: "28 mph, that's forty-five", "10.9 V of 12.5, so 1.6 is lost", "62 kg, half at a time (29 + 33)". Arithmetic tells its unit. */
import { type Candidate, known } from './figure.ts';
import { counts } from './standing.ts';
import { around, at, type Token } from './tokens.ts';

/** What one of a unit is in another. Lengths and masses are exact by definition; 1 psi is 0.0689476 bar, 1 lbf ft is 1.35582 N m. */
const WORTH: Readonly<Record<string, readonly (readonly [unit: string, times: number])[]>> = {
  mph: [['km/h', 1.609344]],
  mi: [['km', 1.609344]],
  in: [['mm', 25.4]],
  thou: [['mm', 0.0254]],
  ft: [['m', 0.3048]],
  yd: [['m', 0.9144]],
  lb: [['kg', 0.45359237]],
  psi: [['bar', 0.0689476]],
  'lbf ft': [['N m', 1.35582]],
  'km/h': [['mph', 1 / 1.609344]],
  km: [['mi', 1 / 1.609344]],
  mm: [
    ['thou', 1 / 0.0254],
    ['in', 1 / 25.4],
  ],
  kg: [['lb', 1 / 0.45359237]],
  bar: [['psi', 1 / 0.0689476]],
  'N m': [['lbf ft', 1 / 1.35582]],
};

const SAYS_SAME = / (?:that's|thats|that is|or|so|call it|which is|=|\() /;
const IN_OTHER_MONEY =
  / in (?:the )?(?:new|old|english|metric|proper|real|modern) (?:money|units|measure) | in (?:metric|english|inches|mm|millimetres) /;
const PARTS_THEM =
  / (?:lost|losing|loss|lose|difference|different|less|more|too|short|over|apart|gone|remaining|missing|left|between|so|under) /;
const DIFFERING =
  /^(?:mm|cm|m|km|in|thou|V|A|bar|psi|degC|degF|deg|kg|g|lb|L|mL|cm3|N m|rpm|km\/h|mph|ohm|min|h)$/;

export function settleReckoned(tokens: readonly Token[], all: readonly Candidate[]): void {
  for (const [i, one] of all.entries()) {
    if (one.unit !== '' || one.value <= 0 || one.part !== undefined) continue;
    const unit =
      converted(tokens, all, i) ||
      used(all, i) ||
      addedUp(tokens, all, i) ||
      difference(tokens, all, i) ||
      product(tokens, all, i);
    if (unit === '') continue;
    one.unit = unit;
    one.shared = true;
    one.carried = true;
  }
}

function converted(tokens: readonly Token[], all: readonly Candidate[], i: number): string {
  const one = all[i];
  for (const other of [all[i - 1], all[i + 1], all[i - 2]]) {
    if (!one || !other || !known(other) || (one.value < 1 && !one.decimal)) continue;
    const unit = sameIn(other, one.value);
    if (unit === '') continue;
    const [from, to] = other.to <= one.from ? [other.to, one.from] : [one.to, other.from];
    const named = IN_OTHER_MONEY.test(around(tokens, one.to, one.to + 5));
    if (to - from <= (named ? 12 : 5) && (named || SAYS_SAME.test(around(tokens, from, to)))) return unit;
  }
  return '';
}

/** The unit in which a figure comes to a value; empty where there is none. */
function sameIn({ unit, value: of }: Candidate, value: number): string {
  for (const [other, times] of WORTH[unit] ?? [])
    if (Math.abs(value / (of * times) - 1) < 0.025) return other;
  if (unit === 'degF' && Math.abs(value - (of - 32) / 1.8) < 1.1) return 'degC';
  return unit === 'degC' && Math.abs(value - (of * 1.8 + 32)) < 2 ? 'degF' : '';
}

/** "5.4 litres for 81 km, that's 6.7". */
function used(all: readonly Candidate[], i: number): string {
  const one = all[i];
  const before = all.slice(Math.max(0, i - 4), i).filter((other) => one && one.from - other.to < 24);
  const fuel = before.findLast(({ unit }) => unit === 'L');
  const way = before.findLast(({ unit }) => unit === 'km');
  return one && fuel && way && Math.abs((100 * fuel.value) / way.value / one.value - 1) < 0.015
    ? 'L/100km'
    : '';
}

/** "(29 + 33)" of 62 kg. */
function addedUp(tokens: readonly Token[], all: readonly Candidate[], i: number): string {
  for (const [a, b] of [
    [all[i - 1], all[i]],
    [all[i], all[i + 1]],
  ]) {
    if (!a || !b || b.from - a.to !== 1 || !/^(?:\+|and|plus)$/.test(at(tokens, a.to))) continue;
    const sum = a.value + b.value;
    if (sum < (at(tokens, a.to) === 'and' ? 20 : 6)) continue;
    for (const other of all.slice(Math.max(0, i - 5), i + 5))
      if (other !== a && other !== b && known(other) && near(other, a) && equal(other.value, sum))
        return other.unit;
  }
  return '';
}

function difference(tokens: readonly Token[], all: readonly Candidate[], i: number): string {
  const one = all[i];
  if (
    !one ||
    (one.value <= 4 && !one.decimal) ||
    counts(tokens, one) ||
    !PARTS_THEM.test(around(tokens, one.from - 4, one.to + 4))
  )
    return '';
  const told = all.slice(Math.max(0, i - 6), i + 4).filter((other) => known(other) && near(other, one));
  for (const [k, a] of told.entries())
    for (const b of told.slice(k + 1, k + 4))
      if (a.unit === b.unit && DIFFERING.test(a.unit) && equal(Math.abs(a.value - b.value), one.value))
        return a.unit;
  return '';
}

/** "eight bags, twenty kilos each, so a hundred and sixty". */
function product(tokens: readonly Token[], all: readonly Candidate[], i: number): string {
  const one = all[i];
  if (!one || one.value < 6 || !COMES_TO.test(around(tokens, one.from - 2, one.from))) return '';
  const before = all.slice(Math.max(0, i - 4), i).filter((other) => near(other, one));
  for (const a of before)
    for (const b of before)
      if (
        known(a) &&
        !known(b) &&
        b.value > 1 &&
        Number.isInteger(b.value) &&
        equal(a.value * b.value, one.value)
      )
        return a.unit;
  return '';
}

const COMES_TO = / (?:so|makes|that's|total|altogether|=|is) (?:about |just )?$/;

const near = (a: Candidate, b: Candidate): boolean => Math.abs(a.from - b.from) < 40;
const equal = (a: number, b: number): boolean => Math.abs(a - b) < 1e-6 * Math.max(1, Math.abs(a));
