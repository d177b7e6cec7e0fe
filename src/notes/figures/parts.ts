/** Parts without a unit: hundredths are of a millimetre, thousandths of an inch, and "three eighths drive" is in inches. */
import type { Candidate } from './figure.ts';
import type { Leaning } from './leaning.ts';
import { at, joins, type Token } from './tokens.ts';

const INCH_THINGS =
  /^(?:pitch|bolts?|hose|pipe|spanner|drill|socket|drive|plate|chain|rod|bar|af|studs?|ball|balls|tube|copper|copper pipe|setscrews?|nuts?|screws?|washers?|square|round|bit|fuel)$/;
const OF_TENTHS = /^(?:play|slop|clearance|wear|movement|float|lift|backlash|runout|wobble|taper|ovality)$/;

export function settleParts(tokens: readonly Token[], all: readonly Candidate[], leaning: Leaning): void {
  for (const [i, one] of all.entries()) {
    if (one.unit !== '' || one.part === undefined) continue;
    one.unit = unitOf(tokens, one, all[i - 1], leaning);
  }
}

function unitOf(
  tokens: readonly Token[],
  one: Candidate,
  before: Candidate | undefined,
  { inches, metric }: Leaning,
): string {
  const part = one.part ?? 0;
  const after = joins(tokens, one.to, 1) ? at(tokens, one.to) : '';
  const thing = INCH_THINGS.test(after) || (after === '-' && INCH_THINGS.test(at(tokens, one.to + 1)));
  // A thread's or a spanner's name, as M8 is
  if (/^(?:bsf|bsw|bsp|unf|unc|whit|whitworth|npt|cycle|tpi|af)$/.test(after)) return '';
  if (part === 1000) return 'in';
  if (part === 100) return inches && !metric ? '' : 'mm';
  if (part === 10)
    return /^tenths?$/.test(at(tokens, one.to - 1)) &&
      one.value < 1 &&
      !(inches && !metric) &&
      (after !== 'of' || OF_TENTHS.test(at(tokens, one.to + 1)))
      ? 'mm'
      : '';
  if (part === 8 && inches) return 'in';
  if (part === 16 || part === 32 || part === 64 || (part >= 4 && thing)) return 'in';
  // "three turns in, then a half back"
  if (
    (part === 2 || part === 4) &&
    one.value < 4 &&
    before?.unit === 'turn' &&
    one.from - before.to < 12 &&
    /^(?:back|more|out|in|again|further|forrard|forward|forwards|on|clockwise|anticlockwise|either|richer|weaker|leaner|,|\.)?$/.test(
      after,
    )
  )
    return 'turn';
  return '';
}
