/** "25:1", "twenty-five to one", "1 in 10": two numbers that are one ratio. */
import { type Candidate, NONE } from './figure.ts';
import { andPartAt } from './part-words.ts';
import { around, at, joins, type Token } from './tokens.ts';

const MIXED =
  / (?:mix|mixed|mixture|oil|petrol|fuel|two stroke|premix|ratio|ratios|gear|gears|geared|gearing|gearbox|compression|reduction|reduces|axle|sprocket|sprockets|epoxy|resin|hardener|thinned|thinner|thinners|diluted|dilute|acid|antifreeze|water|paint|lacquer|primer|scale|leverage|lever|turns of|steering box|worm|final drive) /;
const SLOPE =
  / (?:hill|hills|slope|climb|climbs|gradient|grad|steep|lane|bank|ramp|incline|pull|pulls|up|down) /;
const THING =
  /^(?:side|end|another|of|corner|person|thousandth|hundredth|inch|half|side's|thing|day|more|or|point)$/;

export function joinRatios(tokens: readonly Token[], all: readonly Candidate[]): Candidate[] {
  const out: Candidate[] = [];
  for (let i = 0; i < all.length; i++) {
    const [a, b] = [all[i], all[i + 1]];
    if (!a) continue;
    const ratio = b ? ratioOf(tokens, a, b) : undefined;
    if (!ratio || !b) {
      out.push(a);
      continue;
    }
    const { limit: _l, ...side } = a;
    out.push({ ...side, ...ratio, unit: 'ratio', to: b.to, end: b.end });
    i += 1;
  }
  return out;
}

function ratioOf(
  tokens: readonly Token[],
  a: Candidate,
  b: Candidate,
): { value: number; digits: string } | undefined {
  // "one part of oil to twenty-five"
  const parts =
    /^parts?$/.test(at(tokens, a.to)) &&
    /^ parts? (?:of \p{L}+ |\p{L}+ )?to $/u.test(around(tokens, a.to, b.from));
  if (parts && a.value > 0 && b.value > 0 && b.unit !== 'ratio' && Math.min(a.value, b.value) === 1)
    return a.value === 1 ? { value: b.value, digits: b.digits } : { value: a.value, digits: a.digits };
  if (b.from - a.to !== 1 && !(b.from - a.to === 3 && at(tokens, a.to) === '-')) return undefined;
  const mark = at(tokens, b.from - a.to === 3 ? a.to + 1 : a.to);
  const free = (one: Candidate): boolean => (one.unit === '' || one.unit === NONE) && one.value > 0;
  if (!free(a) || !free(b) || !joins(tokens, a.to, 1) || !joins(tokens, b.from, 1)) return undefined;
  const near = around(tokens, a.from - 12, b.to + 10);
  const first = { value: a.value, digits: a.digits };
  const second = { value: b.value, digits: b.digits };
  if (mark === ':' || mark === '∶') {
    if (b.value === 1) return first;
    if (a.value !== 1 || b.word) return undefined;
    return /^\d$/.test(b.digits) ||
      b.decimal ||
      !/^\d\d$/.test(b.digits) ||
      MIXED.test(near) ||
      SLOPE.test(near) ||
      b.value > 59
      ? second
      : undefined;
  }
  if (mark === 'to' || mark === '/' || mark === '-') {
    if (
      b.value === 1 &&
      a.value > 1 &&
      !THING.test(joins(tokens, b.to, 1) ? at(tokens, b.to) : '') &&
      !andPartAt(tokens, b.to)
    ) {
      if (mark !== 'to') return MIXED.test(near) && a.value >= 2 && mark === '-' ? first : undefined;
      return /^(?:5|10|20|25)$/.test(a.digits) && !MIXED.test(near) ? undefined : first;
    }
    return mark === 'to' && a.value === 1 && b.value >= 3 && MIXED.test(near) ? second : undefined;
  }
  if (mark === 'in' && a.value === 1 && b.value >= 3 && b.value <= 60 && Number.isInteger(b.value))
    return SLOPE.test(near.replace(/ (?:up|down) /g, ' ')) ||
      (/ (?:up|down) /.test(near) && /\b(?:gear|road|lane|brake)/.test(near))
      ? second
      : undefined;
  return undefined;
}
