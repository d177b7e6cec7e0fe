import type { Found, Output, Refusal, Values } from './contract.ts';
import { byFirst, reader, refusal, rowsOf, textOf } from './field-values.ts';
import type { Figures } from './holes.ts';
import {
  angleAt,
  pistonStroke,
  positiveStop,
  type SliderCrank,
  topAngle,
  travelAt,
  upstroke,
} from './slider-crank.ts';
import { advanceChart, crankPlaces, travelChart } from './timing-places.ts';
import type { wrong } from './timing-says.ts';
import { type Computed, spread } from './uncertainty.ts';

type Wrong = keyof typeof wrong;

const TURN = 2 * Math.PI;
/** The step that the question "how closely" is asked with. */
const TENTH = 1e-4;
/** What a hundredths dial and its fixing are good for at best, near the top. */
const DIAL_DOUBT = 2e-5;

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
  const geometry = refusal<Wrong>(
    {
      stroke: !(r > 0) && 'stroke',
      rod: !(l > r) && 'rod',
      offset: l > r && Math.abs(e) >= l - r && 'offset',
      crown: v('slant', 0) > 0 && textOf(values, 'crown') === 'domed' && 'crown',
      rim: !has('rim') && (known === 'arc' || has('marks')) && 'rim',
      dial: known === 'turns' && !(v('dial') > 0) && 'dial',
      disc: has('marks') && has('disc') && 'disc',
      phase: others > 0 && phases > 0 && phases !== others && 'phase',
    },
    { others, phases },
  );
  if (geometry) return geometry;
  const [whole, bottom] = [pistonStroke(engine), upstroke(engine)];
  const byTravel = known === 'travel' || known === 'turns';
  return refusal<Wrong>(
    {
      [known === 'turns' ? 'reading' : known]: byTravel
        ? knownTravel(values) > whole && 'travel'
        : knownAngle(values, engine) + Math.max(0, ...phasesOf(values)) > bottom && 'bottom',
      [has('disc') ? 'disc' : 'marks']: between(values) >= Math.PI && 'marks',
    },
    { whole, bottom },
  );
}

const firingInterval = (values: Values): number =>
  ((textOf(values, 'strokes') === '4' ? 2 : 1) * TURN) / reader(values)('cylinders', 1);

function tables(
  values: Values,
  curve: readonly number[][],
  out: Record<string, Output>,
): Record<'speeds' | 'cylinders', Figures[]> {
  const engine = crankOf(values);
  const rim = reader(values)('rim');
  const phases = phasesOf(values);
  const cylinder = (i: number, names: readonly string[]): Figures => {
    const [angle, travel, reset, resetTravel] = names.map((name) => out[name]);
    return { cylinder: i + 1, even: i * firingInterval(values), angle, travel, reset, resetTravel };
  };
  return {
    speeds: curve.map(([speed = 0, advance = 0]) => ({
      speed,
      advance,
      travel: travelAt(engine, advance),
      arc: (advance * rim) / 2,
      time: advance / speed,
    })),
    cylinders: phases.length
      ? [
          cylinder(0, ['advance', 'travel', 'reset', 'resetTravel']),
          ...phases.map((_, i) => {
            const n = i + 2;
            return cylinder(i + 1, [`angle${n}`, `travel${n}`, `resetangle${n}`, `resettravel${n}`]);
          }),
        ]
      : [],
  };
}

/** What the sentences and formulas say besides the outputs. */
function said(values: Values, engine: SliderCrank, out: Record<string, Output>): Figures {
  const v = reader(values);
  const si = (name: string) => out[name]?.si ?? Number.NaN;
  const known = knownOf(values);
  const { radius_m: r, rod_m: l, offset_m: e } = engine;
  const [top, a] = [topAngle(engine), si('advance')];
  const height = Math.sqrt((r + l) ** 2 - e ** 2) - si('travel');
  const lean = Math.atan2(e, height);
  const cylinders = v('cylinders', 1);
  const half = si('half');
  return {
    known,
    by: known === 'advance' || known === 'arc' ? 'angle' : 'travel',
    radius: r,
    rod: l,
    e,
    offset: v('offset', 0),
    toThrust: e < 0,
    slant: v('slant', 0),
    reading: v('reading', 0),
    topAngle: top,
    crank: top - a,
    height,
    line: Math.hypot(height, e),
    lean,
    fromLine: a - top + lean,
    marksApart: 2 * half,
    advances: si('lead'),
    perMillimetre: v('rim') > 0 ? 2e-3 / v('rim') : undefined,
    stopOff: Math.abs(si('stopShift')),
    stopEarly: si('stopShift') < 0,
    several: cylinders > 1 ? cylinders : undefined,
    interval: firingInterval(values),
  };
}

/** The same doubt about a figure that lies a known step away. */
function moveBy({ si, interval, ...rest }: Output, step: number): Output {
  const moved = { ...rest, si: si + step };
  return interval ? { ...moved, interval: { low: interval.low + step, high: interval.high + step } } : moved;
}

/**
 * Spark timing from any one of travel, degrees, rim distance or dial turns to all the others.
 * @returns refusals for what the geometry does not allow; ± carried to every output
 */
export function solve(values: Values): Found | Refusal {
  const refused = refuse(values);
  if (refused) return refused;
  const outputs = spread(compute, values);
  const { gauge, dialTurns } = outputs;
  // The whole turns are counted, so the doubt is all in the reading left over.
  if (gauge && dialTurns)
    outputs['leftOver'] = moveBy(gauge, -Math.floor(dialTurns.si + 1e-9) * reader(values)('dial'));
  const curve = rowsOf(values, 'curve').sort(byFirst);
  const engine = crankOf(values);
  const rows = tables(values, curve, outputs);
  return {
    ok: true,
    outputs,
    figures: said(values, engine, outputs),
    lists: { rows: rows.speeds },
    shown: {
      speeds: { rows: rows.speeds },
      cylinders: { rows: rows.cylinders },
      crank: crankPlaces(engine, outputs),
      travel: travelChart(engine, outputs),
      curve: curve.length > 1 ? advanceChart(curve) : undefined,
    },
  };
}
