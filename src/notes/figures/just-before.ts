/** What a bare number goes on with, where the figure just before it leaves no doubt; and where what was just before was counted. */
import { type Candidate, known, NONE } from './figure.ts';
import { counts, isAlone } from './standing.ts';
import { around, at, type Token } from './tokens.ts';
import { MONEY } from './unit-words.ts';

export type Measure = Pick<Candidate, 'unit' | 'value'>;

/** "35 mm off the rod, then another 5": more of what was measured last. */
export function another(tokens: readonly Token[], all: readonly Candidate[], i: number): Measure | undefined {
  const one = all[i];
  if (!one || at(tokens, one.from - 1) !== 'another') return undefined;
  const before = all.slice(Math.max(0, i - 3), i).findLast(known);
  if (!before || one.from - before.to > 16 || MONEY.has(before.unit)) return undefined;
  const ratio = one.value / Math.abs(before.value);
  return ratio < 10 && ratio > 0.02 ? { unit: before.unit, value: before.value } : undefined;
}

/** "Twenty-one kilos. Twenty-one. Twenty.": a number by itself goes on with what was read just before it. */
export function justBefore(
  tokens: readonly Token[],
  all: readonly Candidate[],
  i: number,
): Candidate | undefined {
  const [before, one] = [all[i - 1], all[i]];
  if (!before || !one || !known(before) || MONEY.has(before.unit) || one.pair) return undefined;
  if (one.from - before.to > 8 || !isAlone(tokens, one) || before.part !== undefined) return undefined;
  const ratio = one.value / before.value;
  return ratio < 1.6 && ratio > 0.6 ? before : undefined;
}

const FLUID = /^(?:oil|petrol|fuel|water|fluid|coolant|antifreeze|paraffin|acid)$/;
const VOLUME = /^(?:L|mL|cm3|gal|pt|qt|fl oz|oz)$/;

/** "ten litres, and 0.4 of oil": of a fluid there is a volume. */
export function ofFluid(tokens: readonly Token[], all: readonly Candidate[], i: number): Measure | undefined {
  const one = all[i];
  if (!one?.decimal || at(tokens, one.to) !== 'of' || !FLUID.test(at(tokens, one.to + 1))) return undefined;
  const before = all.slice(Math.max(0, i - 8), i).findLast(({ unit }) => VOLUME.test(unit));
  return before && one.from - before.to < 40 ? { unit: before.unit, value: before.value } : undefined;
}

const NAMED: Readonly<Record<string, string>> = {
  mm: 'mm',
  millimetres: 'mm',
  cm: 'cm',
  centimetres: 'cm',
  kg: 'kg',
  kilos: 'kg',
  volts: 'V',
  thou: 'thou',
  inches: 'in',
  bar: 'bar',
  psi: 'psi',
};

/** "front 140, rear 255, in kilos": the unit of a row is named behind it. */
export function namedBehind(tokens: readonly Token[], one: Candidate): Measure | undefined {
  for (let k = one.to; k < one.to + 6; k++) {
    if (/^[.;!?]$/.test(at(tokens, k)) || (tokens[k]?.gap ?? 3) === 3) return undefined;
    if (at(tokens, k) !== 'in' || !/^[,(]$|^(?:all|both|everything)$/.test(at(tokens, k - 1))) continue;
    const unit = NAMED[at(tokens, k + 1)];
    return unit && tokens[k + 2]?.kind !== 'word' ? { unit, value: one.value } : undefined;
  }
  return undefined;
}

/** "5 hoops, should be 6", "9 torn out of 28": set against what was counted. */
export function countsAgain(tokens: readonly Token[], all: readonly Candidate[], i: number): boolean {
  const [before, one] = [all[i - 1], all[i]];
  if (!before || !one || one.decimal || known(before) || one.from - before.to > 7) return false;
  const between = around(tokens, before.to, one.from);
  if (before.unit === NONE && /^ (?:or|to|-|–) $| (?:had|instead of|fitted) $/.test(between)) return true;
  return counts(tokens, before)
    ? / (?:be|of|was|want|wants|need|needs|allowed|allows|book|says|limit) $/.test(between)
    : / out of $/.test(between);
}
