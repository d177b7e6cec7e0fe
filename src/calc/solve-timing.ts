import type { Answer, AnswerTable, Output, Refusal, Values } from './contract.ts';
import { byFirst, reader, refusal, rowsOf, textOf } from './field-values.ts';
import { printer } from './print-figure.ts';
import {
  angleAt,
  pistonStroke,
  positiveStop,
  type SliderCrank,
  topAngle,
  travelAt,
  upstroke,
} from './slider-crank.ts';
import { advanceChart, crankDrawing, travelChart } from './timing-drawings.ts';
import { timingWorking } from './timing-working.ts';
import { type Computed, spread } from './uncertainty.ts';

const TURN = 2 * Math.PI;
/** The step that the question "how closely" is asked with. */
const TENTH = 1e-4;
/** What a hundredths dial and its fixing are good for at best, near the top. */
const DIAL_DOUBT = 2e-5;

const mm = printer('length', 'mm');
const deg = printer('angle', 'deg');

function crankOf(values: Values): SliderCrank {
  const v = reader(values);
  const offset_m = v('offset', 0);
  return {
    radius_m: v('stroke') / 2,
    rod_m: v('rod'),
    offset_m: textOf(values, 'side') === 'thrust' ? -offset_m : offset_m,
  };
}

/** What is known: "advance" (degrees), "travel", "arc" (along the rim) or "turns" (of a dial). */
const knownOf = (values: Values) => textOf(values, 'known') ?? 'advance';

/** Travel of the piston where that is what is known: as such, or from the dial of a gauge that may stand at a slant. */
function knownTravel(values: Values): number {
  const v = reader(values);
  if (knownOf(values) === 'travel') return v('travel');
  return (v('turns', 0) * v('dial', 0) + v('reading', 0)) * Math.cos(v('slant', 0));
}

/** Crank angle before top dead centre, from whichever is known. */
function knownAngle(values: Values, engine: SliderCrank): number {
  const v = reader(values);
  const known = knownOf(values);
  if (known === 'advance') return v('advance');
  return known === 'arc' ? (2 * v('arc')) / v('rim') : angleAt(engine, knownTravel(values));
}

/** Crank angle between the two marks of a positive stop. */
const between = (values: Values): number => {
  const v = reader(values);
  return v('disc', (2 * v('marks')) / v('rim'));
};

/** How much earlier each cylinder after the first fires than evenly spaced. */
const phasesOf = (values: Values): number[] =>
  reader(values)('cylinders', 1) > 1 ? rowsOf(values, 'phase').flat() : [];

/** Every figure of the answer from SI values; run again for each ± (uncertainty.ts). Not a number: not asked for. */
function compute(values: Values): Computed {
  const v = reader(values);
  const engine = crankOf(values);
  const advance = knownAngle(values, engine);
  const travel = travelAt(engine, advance);
  const gauge = travel / Math.cos(v('slant', 0));
  const rim = v('rim');
  const turn = between(values);
  const stop = positiveStop(engine, turn);
  const first = turn / 2 + stop.shift_rad;
  const phases = phasesOf(values);
  const lead = phases.length ? Math.max(0, ...phases) : Number.NaN;
  const low = Math.max(0, travel - TENTH / 2);
  const found: Record<string, number> = {
    advance,
    travel,
    arc: (advance * rim) / 2,
    chord: rim * Math.sin(Math.min(advance, Math.PI) / 2),
    gauge,
    dialTurns: gauge / v('dial'),
    perTenth: angleAt(engine, low + TENTH) - angleAt(engine, low),
    nearTop: angleAt(engine, DIAL_DOUBT),
    time: advance / v('speed'),
    stroke: pistonStroke(engine),
    topAngle: topAngle(engine),
    half: (turn * rim) / 4,
    stopDepth: stop.depth_m,
    stopShift: stop.shift_rad,
    fromFirst: (first * rim) / 2,
    fromFirstAngle: first,
    fireFromFirst: ((first - advance) * rim) / 2,
    lead,
    reset: advance - lead,
    resetTravel: travelAt(engine, advance - lead),
    resetArc: ((advance - lead) * rim) / 2,
  };
  phases.forEach((early, i) => {
    for (const [name, angle] of [
      ['', advance + early],
      ['reset', advance + early - lead],
    ] as const) {
      found[`${name}angle${i + 2}`] = angle;
      found[`${name}travel${i + 2}`] = travelAt(engine, angle);
    }
  });
  return found;
}

function refuse(values: Values): Refusal | undefined {
  const v = reader(values);
  const has = (name: string) => !Number.isNaN(v(name));
  const engine = crankOf(values);
  const { radius_m: r, rod_m: l, offset_m: e } = engine;
  const known = knownOf(values);
  const phases = rowsOf(values, 'phase').length;
  const others = v('cylinders', 1) - 1;
  const geometry = refusal({
    stroke: !(r > 0) && 'The stroke is needed: twice the crank radius.',
    rod: !(l > r) && 'The rod must be longer than half the stroke.',
    offset: l > r && Math.abs(e) >= l - r && 'The offset must be smaller than the rod less half the stroke.',
    crown:
      v('slant', 0) > 0 &&
      textOf(values, 'crown') === 'domed' &&
      'On a domed crown a slanted gauge does not tell the travel: its tip moves over the dome. Measure straight down the bore, or use a degree disc.',
    rim:
      !has('rim') &&
      (known === 'arc' || has('marks')) &&
      'The diameter of the rim is needed for its degrees.',
    dial:
      known === 'turns' &&
      !(v('dial') > 0) &&
      'The travel of one dial turn is needed, such as 0.1 in or 1 mm.',
    disc: has('marks') && has('disc') && 'Give the marks along the rim or in degrees, not both.',
    phase:
      others > 0 &&
      phases > 0 &&
      phases !== others &&
      `Give one error for each cylinder after the first: ${others}, not ${phases}.`,
  });
  if (geometry) return geometry;
  const whole = pistonStroke(engine);
  const bottom = upstroke(engine);
  return refusal({
    [known === 'turns' ? 'reading' : known]:
      known === 'travel' || known === 'turns'
        ? knownTravel(values) > whole && `The piston travels only ${mm(whole)} in all.`
        : knownAngle(values, engine) + Math.max(0, ...phasesOf(values)) > bottom &&
          `That is past bottom dead centre, which lies ${deg(bottom)} before the top.`,
    [has('disc') ? 'disc' : 'marks']:
      between(values) >= Math.PI &&
      'The marks must be less than half a turn apart: the stop stands near the top.',
  });
}

const firingInterval = (values: Values): number =>
  ((textOf(values, 'strokes') === '4' ? 2 : 1) * TURN) / reader(values)('cylinders', 1);

const headed = (...labels: string[]) => labels.map((label) => ({ label, numeric: true }));

function tables(values: Values, curve: readonly number[][], out: Record<string, Output>): AnswerTable[] {
  const engine = crankOf(values);
  const found: AnswerTable[] = [];
  const rim = reader(values)('rim');
  const round = (cell: string) => (rim > 0 ? [cell] : []);
  if (curve.length)
    found.push({
      name: 'curve',
      caption: 'Advance at each speed',
      columns: headed('Speed', 'Advance', 'Travel', ...round('Along the rim'), 'Time before the top'),
      rows: curve.map(([speed = 0, a = 0]) => [
        printer('rotation', 'rpm', 4)(speed),
        deg(a),
        mm(travelAt(engine, a)),
        ...round(mm((a * rim) / 2)),
        printer('time', 'ms')(a / speed),
      ]),
    });
  const phases = phasesOf(values);
  if (phases.length)
    found.push({
      name: 'cylinders',
      caption: 'Each cylinder, before its own top dead centre',
      columns: headed('Cylinder', 'Even firing at', 'Fires now at', 'travel', 'After resetting', 'travel'),
      rows: [
        ['advance', 'travel', 'reset', 'resetTravel'],
        ...phases.map((_, i) => [
          `angle${i + 2}`,
          `travel${i + 2}`,
          `resetangle${i + 2}`,
          `resettravel${i + 2}`,
        ]),
      ].map((names, i) => [
        String(i + 1),
        deg(i * firingInterval(values)),
        ...names.map((name, j) => (j % 2 ? mm : deg)(out[name])),
      ]),
    });
  return found;
}

function notes(values: Values, out: Record<string, Output>): string[] {
  const v = reader(values);
  const cylinders = v('cylinders', 1);
  const shift = out['stopShift']?.si;
  const said = [
    `How closely: 0.1 mm of travel is ${deg(out['perTenth'])} here. Near the top the piston hardly moves: 0.02 mm below it is already ${deg(out['nearTop'])}, so the last degrees, and top dead centre itself, cannot be set by travel. Use a positive stop.`,
    v('rim') > 0 && `1 mm along the rim is ${deg(2e-3 / v('rim'))}.`,
    shift !== undefined &&
      (v('offset', 0)
        ? `With the pin offset, true top dead centre lies ${deg(Math.abs(shift))} from half-way, towards the ${shift < 0 ? 'first' : 'second'} mark reached in the running direction.`
        : 'Without pin offset true top dead centre lies half-way between the two marks.'),
    cylinders > 1 &&
      `${cylinders} cylinders fire every ${deg(firingInterval(values))} of crank if evenly spaced; one fixed setting puts the others off by their phase error.`,
    out['reset'] &&
      `Set cylinder 1 to ${deg(out['reset'])}, ${mm(out['resetTravel'])} of travel: then no cylinder fires earlier than the figure.`,
  ];
  return said.filter((note) => typeof note === 'string');
}

/** The same doubt about a figure that lies a known step away. */
function moveBy({ si, interval, ...rest }: Output, step: number): Output {
  const moved = { ...rest, si: si + step };
  return interval ? { ...moved, interval: { low: interval.low + step, high: interval.high + step } } : moved;
}

/**
 * Spark timing from any one of travel, degrees, rim distance or dial turns to all the others.
 * @returns refusals in plain words for what the geometry does not allow; ± carried to every output
 */
export function solve(values: Values): Answer | Refusal {
  const refused = refuse(values);
  if (refused) return refused;
  const outputs = spread(compute, values);
  const { gauge, dialTurns } = outputs;
  // The whole turns are counted, so the doubt is all in the reading left over.
  if (gauge && dialTurns)
    outputs['leftOver'] = moveBy(gauge, -Math.floor(dialTurns.si + 1e-9) * reader(values)('dial'));
  const curve = rowsOf(values, 'curve').sort(byFirst);
  const engine = crankOf(values);
  return {
    ok: true,
    outputs,
    working: timingWorking(values, engine, outputs),
    tables: tables(values, curve, outputs),
    notes: notes(values, outputs),
    drawings: [
      crankDrawing(values, engine, outputs),
      travelChart(engine, outputs),
      ...(curve.length > 1 ? [advanceChart(curve)] : []),
    ],
  };
}
