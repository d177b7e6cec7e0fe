/** A bare number whose kind the words around tell: "ticks over at nine hundred", "the battery reads twelve point six". Never between two units of a kind. */
import { type Candidate, NONE } from './figure.ts';
import type { Leaning } from './leaning.ts';
import { speedOf } from './speeds.ts';
import { counts, type Standing, standingOf } from './standing.ts';
import { around, at, joins, type Token } from './tokens.ts';

interface Topic {
  words: RegExp;
  reach: number;
  /** The nearest words are enough, whatever figures stand further off. */
  close?: true;
  unit: (one: Candidate, leaning: Leaning, near: string) => string;
}

const whole = (one: Candidate): boolean => Number.isInteger(one.value);
const between = (one: Candidate, low: number, high: number): boolean => one.value >= low && one.value <= high;
const MEASURING =
  / (?:gauge|gauges|feeler|feelers|micrometer|mike|mic|bore|bores|drum|drums|diameter|across|calliper|callipers|caliper|calipers|vernier|journal|journals|clearance|end float|endfloat|run out|run - out|runout|wear|worn|thickness|thick|spigot|ring gap|gudgeon|skirt|lining|linings|shim|shims|squish|oval|ovality|taper|backlash|dti|dial|protrusion|measured|measure|measures|gap|gaps|gapped|bore's|pitch|pitches|clock it|clocked) /;

const TOPICS: readonly Topic[] = [
  {
    words:
      / (?:idle|idles|idling|tick over|ticks over|ticked over|ticking over|tickover|ticks|revs|revving|rev|tacho|rev counter|r p m|screams|redline|slow running|runs at|running at) /,
    reach: 16,
    close: true,
    unit: (one) => (whole(one) && between(one, 300, 9000) && one.value % 10 === 0 ? 'rpm' : ''),
  },
  {
    words:
      / (?:battery|batteries|cell|charging|charge|charges|dynamo|regulator|voltmeter|multimeter|voltage|volts|cut out|cuts in|cranking|terminals) /,
    reach: 9,
    close: true,
    unit: (one) => (one.decimal && between(one, 3, 16) ? 'V' : ''),
  },
  {
    words: / (?:fuse|fuses|amp) /,
    reach: 7,
    close: true,
    unit: (one, { amps }) => (amps && /^(?:3|5|8|10|15|16|20|25|30)$/.test(String(one.value)) ? 'A' : ''),
  },
  {
    words: / (?:loss|losing|loses|drop|dropping) /,
    reach: 5,
    close: true,
    unit: (one, { volts }) => (volts && one.decimal && between(one, 0.02, 3) ? 'V' : ''),
  },
  {
    words:
      / (?:tyre|tyres|tire|tires|pumped|inflated|beads|bead|let down|pressures|tyre's|for the back|for the front|for the rear|for the rears|for the fronts) /,
    reach: 9,
    close: true,
    unit: (one, { psi, pressure }, near) =>
      (one.decimal || (pressure === 'bar' && / pumped /.test(near))) && between(one, 0.7, 4)
        ? 'bar'
        : psi && whole(one) && between(one, 8, 60)
          ? 'psi'
          : '',
  },
  {
    words: / (?:torque|torqued|torque wrench|wrench set|done up|tightened|tighten|nipped) /,
    reach: 8,
    unit: (one, leaning) => (whole(one) && between(one, 4, 200) ? leaning.torque : ''),
  },
  {
    words: / (?:compression|compressions) /,
    reach: 10,
    close: true,
    unit: (one, { pressure }) =>
      pressure === 'psi' && between(one, 40, 200)
        ? 'psi'
        : pressure === 'bar' && between(one, 3, 14)
          ? 'bar'
          : '',
  },
  {
    words:
      / (?:water at|water's at|water is at|water was at|water now at|water up to|water went to|water got to|thermometer|temperature|temperature's|temperatures|temp|oven|header|coolant|thermostat|stat) /,
    reach: 14,
    close: true,
    unit: (one, { heat }) => (whole(one) && between(one, 15, 250) ? heat : ''),
  },
  {
    words: / (?:resistance|resistances|ohmmeter|secondary|primary|winding|windings|sender|ohms) /,
    reach: 12,
    unit: (one, { ohms }) => (ohms && (one.value >= 40 || one.decimal) ? 'ohm' : ''),
  },
  { words: MEASURING, reach: 12, unit: lengthOf },
  {
    words: / (?:max|min|limit|scrap) /,
    reach: 8,
    unit: (one, { metric, inches }) =>
      one.decimal && between(one, 20, 400) && metric && !inches ? 'mm' : '',
  },
  { words: / /, reach: 12, unit: bareDecimal },
];

/** Below one, in a text of millimetres alone, with nothing near that is measured otherwise. */
function bareDecimal(one: Candidate, { metric, inches, fine }: Leaning, near: string): string {
  const other =
    / (?:volts?|v|amps?|ohms?|bar|litres?|l|ml|gravity|acid|kilos?|kg|per|percent|%|ratio|milliamps?|pounds?|euros?|seconds?|inch|psi|grade|bolts?|drop|battery|each|post|postage|cost|paid|version) /.test(
      near,
    );
  return one.decimal && one.value >= 0.02 && one.value < 1 && (fine || (metric && !inches)) && !other
    ? 'mm'
    : '';
}

function lengthOf(one: Candidate, { metric, inches, fine }: Leaning, near: string): string {
  if (
    !one.decimal ||
    one.part !== undefined ||
    / (?:bolt|bolts|grade|class|volts|battery|compression|bar|ratio|litres?|acid|hydrometer|gravity) /.test(
      near,
    )
  )
    return '';
  const places = one.digits.split('.')[1]?.length ?? 0;
  if (one.value < 0.1 && places === 3 && !metric) return 'in';
  if (one.value >= 1 && one.value < 400 && !inches && metric) return 'mm';
  return one.value < 1 && places <= 2 && (fine || (metric && !inches))
    ? 'mm'
    : one.value > 5 && places <= 2 && !inches
      ? 'mm'
      : '';
}

/** `close` looks at the nearest words alone: what they tell goes before any figure further off. */
export function settleTopics(
  tokens: readonly Token[],
  all: readonly Candidate[],
  leaning: Leaning,
  close: boolean,
): boolean {
  let any = false;
  for (const one of all) {
    if (one.unit !== '' || (one.word && one.value === 1)) continue;
    const unit = bareUnit(tokens, one, leaning, close);
    if (unit === '') continue;
    one.unit = unit;
    one.shared = true;
    one.carried = true;
    any = true;
  }
  return any;
}

/** What the words that touch it tell: heat, a speed, a length. */
function aloneUnit(tokens: readonly Token[], one: Candidate, leaning: Leaning): string {
  if (
    one.value < 0 &&
    one.word &&
    whole(one) &&
    one.value > -40 &&
    leaning.heat !== 'degF' &&
    /^ (?:it's|its|was|is|at|of|to|about|down to|nearly|hit|showed|said|,) $/.test(
      around(tokens, one.from - 1, one.from),
    )
  )
    return 'degC';
  // A speed whose unit nobody said takes no other figure's unit
  if (whole(one) && between(one, 5, 120) && speedOf(tokens, one, leaning.driven))
    return leaning.speed || NONE;
  const beside = lengthBeside(tokens, one);
  if (
    beside &&
    between(one, 0.01, 3000) &&
    ((leaning.metric && !leaning.inches) || (leaning.fine && one.value < 1))
  )
    return 'mm';
  return '';
}

function bareUnit(tokens: readonly Token[], one: Candidate, leaning: Leaning, close: boolean): string {
  if (one.fraction || one.part !== undefined) return '';
  const alone = close ? aloneUnit(tokens, one, leaning) : '';
  if (alone !== '') return alone;
  if (!close && !one.word && /^0\.0\d\d$/.test(one.digits) && !leaning.metric) return 'in';
  let standing: Standing | undefined;
  for (const topic of TOPICS) {
    if (close && !topic.close) continue;
    // The words around can but speak against what the value allows
    if (topic.unit(one, leaning, ' pumped ') === '') continue;
    standing ??= standingOf(tokens, one, true);
    if (standing === 'no') return '';
    const reach = close ? Math.min(7, topic.reach) : topic.reach;
    const near = around(tokens, one.from - reach, one.to + (close ? 3 : Math.ceil(reach / 2)));
    if (!topic.words.test(near)) continue;
    const unit = topic.unit(one, leaning, near);
    if (unit !== '') return unit;
  }
  return '';
}

const ACROSS =
  /^(?:long|wide|thick|deep|tall|high|across|apart|outside|inside|diameter|dia|bore|proud|below|feeler|od|id|o\/d|i\/d)$/;
const LENGTH =
  /^(?:measures|measured|measuring|plate|sheet|eye|shim|shims|id|od|dia|gap|gaps|diag|diags|diagonal|diagonals|span|centres|play|travel|clearance|sag|stroke|bore|diameter|width|length|height|depth|thickness|lift|float|wear|step|protrusion|stickout|squish|bore's|gap's|spot|dent|pit|lip|bow|warp|hollow|ridge|feeler)$/;

/** "240 long", "the gap is five": a length is said beside it. */
function lengthBeside(tokens: readonly Token[], one: Candidate): boolean {
  const after = joins(tokens, one.to, one.word ? 2 : 1) ? at(tokens, one.to) : '';
  if (ACROSS.test(after) && !(one.word && one.value <= 4) && !counts(tokens, one))
    return !/^(?:bolts?|the|of)$/.test(at(tokens, one.to + 1)) || after === 'across';
  const small = one.word && one.value <= 4 && Number.isInteger(one.value);
  if (small || counts(tokens, one)) return false;
  let k = one.from - 1;
  for (
    let steps = 0;
    steps < 3 && /^(?:is|of|was|now|at|about|=|:|to|just|only|the|'s|nearly|it|set)$/.test(at(tokens, k));
    steps++
  )
    k -= 1;
  // "end float .. 0.9"
  if (at(tokens, k) === '.' && at(tokens, k - 1) === '.') k -= 2;
  return LENGTH.test(at(tokens, k)) && joins(tokens, one.from, 1);
}
