/** "17 mm free and it should be 18", "twelve hundredths, and the book wants six to ten": a bare number takes the unit of the figure that it is set against. */
import { type Candidate, known, NONE } from './figure.ts';
import type { NamedUnit } from './headings.ts';
import { another, countsAgain, justBefore, namedBehind, ofFluid } from './just-before.ts';
import type { Manner } from './manner.ts';
import { inFull } from './said.ts';
import { counts, isAlone, type Standing, standingOf } from './standing.ts';
import { at, joins, type Token } from './tokens.ts';

/** Units that are lent only where two figures are plainly set against each other. */
const OWN = /^(?:%|h|min|s|day|week|km|mi|kg|g|hp|W|Ah|mm2|teeth|turn|click|lb|L\/100km|mpg)$/;
/** Units that are lent. */
const LENT =
  /^(?:mm|cm|um|thou|in|m|ft|V|mV|A|mA|bar|psi|kPa|N|kgf|degC|degF|deg|rpm|km\/h|mph|N m|lbf ft|lbf in|L|gal|pt|qt|mL|cm3|kohm|%|h|min|s|day|week|km|mi|kg|g|hp|W|Ah|mm2|teeth|turn|click|ohm|lb|L\/100km|mpg)$/;

interface Source {
  unit: string;
  value: number;
  part?: number;
}

export function carryUnits(
  tokens: readonly Token[],
  all: readonly Candidate[],
  { speech, named, lineEnd }: Manner,
): void {
  let firstName = 0;
  for (const [i, one] of all.entries()) {
    if (
      one.unit !== '' ||
      (one.value === 1 &&
        one.word &&
        !one.decimal &&
        !/^(?:between|under|over|than)$/.test(at(tokens, one.from - 1)))
    )
      continue;
    while (firstName < named.length && (named[firstName]?.token ?? 0) < one.from - 80) firstName += 1;
    const run = inRun(all, i);
    const standing = run && !counts(tokens, one) ? 'against' : standingOf(tokens, one, speech);
    if (standing === 'no') continue;
    if (countsAgain(tokens, all, i)) {
      one.unit = NONE;
      continue;
    }
    const source =
      another(tokens, all, i) ??
      ofFluid(tokens, all, i) ??
      namedBehind(tokens, one) ??
      justBefore(tokens, all, i) ??
      nearest(tokens, all, i, standing, run, lineEnd) ??
      headed(tokens, named, firstName, one, standing) ??
      likeAnywhere(tokens, all, i, standing, run);
    if (!source) continue;
    take(one, source);
  }
}

function take(one: Candidate, source: Source): void {
  if (lendsPart(one, source)) {
    one.value /= source.part ?? 1;
    one.digits = inFull(one.value);
    one.part = source.part ?? 1;
  } else settlePair(one, source.value);
  one.unit = source.unit;
  one.shared = true;
  one.carried = true;
}

/** "fifty four oh five" is 54.05, "eleven six" is 11.6. */
const inDecimals = ({ high, low, oh }: NonNullable<Candidate['pair']>): number =>
  high + low / (oh || low >= 10 ? 100 : 10);

/** "fifty four oh five" beside 53.93 mm is 54.05. */
function settlePair(one: Candidate, beside: number): void {
  if (!one.pair) return;
  const decimals = inDecimals(one.pair);
  if (Math.abs(Math.log(decimals / beside)) >= Math.abs(Math.log(one.value / beside))) return;
  one.value = decimals;
  one.digits = inFull(decimals);
  one.decimal = true;
}

/** Numbers in a row, each like the next, are readings: "sixty eight seventy two eighty". */
function inRun(all: readonly Candidate[], i: number): boolean {
  const like = (a: Candidate | undefined, b: Candidate | undefined): boolean =>
    a !== undefined &&
    b !== undefined &&
    a.to === b.from &&
    !a.pair &&
    !b.pair &&
    a.value > 9 &&
    a.value / b.value < 1.6 &&
    b.value / a.value < 1.6;
  const [x, y] = [like(all[i - 1], all[i]), like(all[i], all[i + 1])];
  return x || y;
}

const REACH: Readonly<Record<Standing, number>> = { no: 0, weak: 8, reads: 26, against: 40 };

/** The figure that costs least: distance in words, stretched by unlike size. */
function nearest(
  tokens: readonly Token[],
  all: readonly Candidate[],
  i: number,
  standing: Standing,
  run: boolean,
  lineEnd: number,
): Source | undefined {
  const one = all[i];
  if (!one) return undefined;
  // A small number of one item goes less readily by the next item's unit
  const ends = lineEnd > 2 && !one.decimal && one.value < 13 ? 12 : lineEnd;
  const reach = run ? 60 : one.decimal ? 48 : REACH[standing];
  let best: { source: Candidate; cost: number } | undefined;
  for (const way of [-1, 1]) {
    let far = way < 0 ? 0 : 2;
    let edge = way < 0 ? one.from : one.to;
    for (let k = i + way, seen = 0; k >= 0 && k < all.length && seen < 14; k += way, seen++) {
      const other = all[k];
      if (!other) break;
      far +=
        way < 0 ? distance(tokens, other.to, edge, ends) : distance(tokens, edge, other.from, ends) * 1.3;
      edge = way < 0 ? other.from : other.to;
      if (far > reach) break;
      const cost = costOf(one, other, standing, far, at(tokens, one.from - 1));
      if (cost <= reach && (!best || cost < best.cost)) best = { source: other, cost };
    }
  }
  return best?.source;
}

const lendsPart = (one: Candidate, { part, value }: Source): boolean =>
  part !== undefined && part >= 10 && value < 1 && !one.decimal && !one.fraction && one.value >= 1;

/** What it costs to take a figure's unit; beyond any reach where that cannot be meant. */
function costOf(one: Candidate, other: Candidate, standing: Standing, far: number, before: string): number {
  if (!known(other) || !LENT.test(other.unit)) return Number.POSITIVE_INFINITY;
  const own = OWN.test(other.unit);
  const near = one.decimal && other.decimal && far < 14;
  if (one.fraction && one.word && one.value < 1 && !/^(?:turn|in|L|pt)$/.test(other.unit))
    return Number.POSITIVE_INFINITY;
  if (
    own &&
    ((standing !== 'against' && !near) ||
      one.pair ||
      (one.decimal !== other.decimal && /^(?:teeth|click|s|min|h|week|day)$/.test(other.unit)))
  )
    return Number.POSITIVE_INFINITY;
  const size = lendsPart(one, other) ? other.value * (other.part ?? 1) : other.value;
  const value = one.pair ? closest(one, size) : one.value;
  const unlike = Math.abs(Math.log(Math.abs(value / size)));
  const most = one.decimal
    ? near && standing === 'against'
      ? 2.4
      : 1.8
    : standing === 'against'
      ? 1.5
      : far < 6
        ? 1.25
        : 1;
  if (!(unlike <= most)) return Number.POSITIVE_INFINITY;
  if (one.pair && !one.pair.oh && one.pair.low < 10 && !(other.decimal && /^(?:V|mm|bar)$/.test(other.unit)))
    return Number.POSITIVE_INFINITY;
  const places = one.digits.split('.')[1]?.length ?? 0;
  if (one.decimal && /^(?:rpm|teeth|psi|km\/h|mph)$/.test(other.unit) && places > 1)
    return Number.POSITIVE_INFINITY;
  if (/^(?:km\/h|mph)$/.test(other.unit) && unlike > 0.9) return Number.POSITIVE_INFINITY;
  let cost = far * (0.7 + unlike);
  if (own)
    cost *= /^(?:another|or|than|took|takes|nearer|not|stamped)$/.test(before)
      ? 1
      : far < 9 && standing === 'against'
        ? 2
        : 3;
  if (/^(?:N m|lbf ft|lbf in)$/.test(other.unit)) cost *= places > 1 ? 6 : standing === 'against' ? 1.7 : 2.2;
  if (other.unit === 'in' && one.decimal && !other.decimal && places < 3) cost *= 4;
  if (/^(?:m|ft)$/.test(other.unit)) cost *= far < 8 ? 1.5 : 5;
  if (other.unit === 'L' && !one.decimal) cost *= 2.5;
  if (other.unit === 'cm') cost *= 1.3;
  if (one.decimal && other.decimal && places === (other.digits.split('.')[1]?.length ?? 0)) cost *= 0.7;
  if (other.carried) cost *= 1.3;
  return cost;
}

const closest = (one: Candidate, size: number): number => {
  const decimals = one.pair ? inDecimals(one.pair) : one.value;
  return Math.abs(Math.log(decimals / size)) < Math.abs(Math.log(one.value / size)) ? decimals : one.value;
};

/** Distance in words; stops and line ends count for more. */
function distance(tokens: readonly Token[], from: number, to: number, lineEnd: number): number {
  let far = 0;
  for (let k = from; k <= to && far < 70; k++) {
    const token = tokens[k];
    if (!token) continue;
    if (k < to) far += token.kind === 'sign' ? (/^[.!?;]$/.test(token.text) ? 5 : 0.5) : 1;
    if (token.gap >= 2) far += token.gap === 3 ? 5 : lineEnd;
  }
  return far;
}

/** Far from any figure: where all figures of nearly its size are in one unit, it is in that unit too. */
function likeAnywhere(
  tokens: readonly Token[],
  all: readonly Candidate[],
  i: number,
  standing: Standing,
  run: boolean,
): Source | undefined {
  const one = all[i];
  if (!one || one.value < 1) return undefined;
  const set = one.decimal || (standing === 'against' && one.value > 12);
  // "Thirty-eight." where 38 N m is the only 38
  if (!set && !(one.value > 12 && isAlone(tokens, one))) return undefined;
  let unit = '';
  let value = 0;
  for (let k = Math.max(0, i - 60); k < Math.min(all.length, i + 60); k++) {
    const other = all[k];
    if (!other || !known(other) || (other.carried && !one.decimal && !run) || other.fraction) continue;
    const size = one.pair ? closest(one, other.value) : one.value;
    if (Math.abs(Math.log(size / other.value)) > (one.decimal ? 0.1 : set ? 0.06 : 1e-9)) continue;
    if (OWN.test(other.unit)) continue;
    if (!LENT.test(other.unit) || (unit !== '' && unit !== other.unit)) return undefined;
    if (one.decimal && !other.decimal) continue;
    unit = other.unit;
    value = other.value;
  }
  return unit === '' ? undefined : { unit, value };
}

/** The unit of a column or a list's head, for a number that stands by itself. */
function headed(
  tokens: readonly Token[],
  named: readonly NamedUnit[],
  from: number,
  one: Candidate,
  standing: Standing,
): Source | undefined {
  const cell = /^[|:/,]?$/.test(at(tokens, one.from - 1)) || !joins(tokens, one.from, 1);
  if (!one.decimal && (standing === 'weak' || !cell)) return undefined;
  let last: NamedUnit | undefined;
  for (let k = from; k < named.length; k++) {
    const source = named[k];
    if (!source || source.token > one.from + 30) break;
    // "All mm." may stand behind the readings as well
    if (source.token < one.from || (one.decimal && last === undefined)) last = source;
  }
  return last && { unit: last.unit, value: one.value };
}
