/**
 * Drag area and rolling resistance from coast-down runs in both directions, with the doubt of each. Wind and slope are not
 * asked for: both act one way going and the other way coming back, so runs both ways tell them apart.
 */
import { levenbergMarquardt } from 'ml-levenberg-marquardt';
import { inverse, Matrix } from 'ml-matrix';
import { type Coasting, speedAfter } from './coasting.ts';
import type { Sample } from './run.ts';

export interface CoastRun {
  samples: readonly Sample[];
  direction: 'there' | 'back';
}

export interface CoastConditions {
  mass_kg: number;
  mass_pm_kg: number;
  rotating_kg: number;
  rotating_pm_kg: number;
  density_kgpm3: number;
  /** Share by which the density may be off. */
  density_pm: number;
  /** Share by which every speed may be off alike, as a speedometer is. */
  speed_pm: number;
  /** Speeds between which the runs are compared. */
  from_mps: number;
  to_mps: number;
}

export interface Doubted {
  value: number;
  /** About 95 %. */
  pm: number;
}

export type CoastAnswer =
  | {
      ok: true;
      drag_m2: Doubted;
      rolling: Doubted;
      /** Along the road, against the runs "there" positive. */
      wind_mps: number;
      slope: number;
      runs: number;
      samples: number;
      /** Typical distance of a sample from the fitted curve. */
      scatter_mps: number;
    }
  | { ok: false; reason: string };

const LEAST_SAMPLES = 10;
/** Of one run; a finer recording is thinned out, as neighbours a few hundredths of a second apart say nothing new. */
const MOST_SAMPLES = 400;
/** Of one direction; with a single run nothing says how far two runs differ. */
const LEAST_RUNS = 2;
const WIDEST_GAP_s = 3;
const SHARED = 4;

/** Student's t for 95 %, both sides, by degrees of freedom from 1. Source: standard table, from memory. */
const T95 = [12.71, 4.3, 3.18, 2.78, 2.57, 2.45, 2.36, 2.31, 2.26, 2.23, 2.2, 2.18, 2.16, 2.14, 2.13];
const student = (freedom: number) => T95[Math.max(0, freedom - 1)] ?? 2.1;

interface Cut {
  times: number[];
  speeds: number[];
  way: 1 | -1;
}

const cannot = (reason: string): CoastAnswer => ({ ok: false, reason });
const kmh = (mps: number) => `${Math.round(mps * 3.6)} km/h`;

/**
 * Fits all runs together: one drag area, one rolling resistance, one steady wind along the road and one slope, and each
 * run's own speed at the start. The ± is about 95 % and holds the scatter of samples and of runs, and the doubt of mass,
 * air and speed.
 * @returns the reason in words where the runs cannot tell
 */
export function fitCoastDown(runs: readonly CoastRun[], given: CoastConditions): CoastAnswer {
  const there = runs.filter((run) => run.direction === 'there').length;
  const back = runs.length - there;
  if (there === 0 || back === 0)
    return cannot(
      'All runs go one way. Wind and slope cannot be told from drag and rolling without runs back over the same road.',
    );
  if (there < LEAST_RUNS || back < LEAST_RUNS)
    return cannot(
      'There is a single run in one direction, and nothing says how far two runs would differ. It takes two each way at least.',
    );
  if (!(given.to_mps > given.from_mps * 1.5))
    return cannot(
      `From ${kmh(given.to_mps)} to ${kmh(given.from_mps)} the air's part hardly changes. Let it roll to two thirds of the first speed, or slower.`,
    );
  const cuts: Cut[] = [];
  for (const [at, run] of runs.entries()) {
    const cut = cutToRange(run, given);
    if (typeof cut === 'string') return cannot(`Run ${at + 1} of ${runs.length}: ${cut}`);
    cuts.push(cut);
  }
  const fitted = fitTogether(cuts, given);
  if (!fitted) return cannot('No drag area and rolling resistance were found that these runs agree with.');
  const { shared, spread, samples, scatter } = fitted;
  const [drag = 0, rolling = 0, wind = 0, slope = 0] = shared;
  const moved = given.mass_kg + given.rotating_kg;
  const t = student(runs.length - 1);
  const massPart = (given.mass_pm_kg + given.rotating_pm_kg) / moved;
  const dragPm = Math.hypot(
    t * (spread[0] ?? 0),
    drag * Math.hypot(given.speed_pm, given.density_pm, massPart),
  );
  const rotatingPart =
    (given.rotating_pm_kg + (given.mass_pm_kg * given.rotating_kg) / given.mass_kg) / moved;
  const rollingPm = Math.hypot(t * (spread[1] ?? 0), rolling * Math.hypot(given.speed_pm, rotatingPart));
  if (!(drag > 0 && rolling > 0 && dragPm < drag && rollingPm < rolling))
    return cannot(
      'The doubt is as large as the figure itself. More runs, or a wider range of speed, would tell more.',
    );
  return {
    ok: true,
    drag_m2: { value: drag, pm: dragPm },
    rolling: { value: rolling, pm: rollingPm },
    wind_mps: wind,
    slope,
    runs: runs.length,
    samples,
    scatter_mps: scatter,
  };
}

/** The stretch of one run between the speeds, or the reason why there is none. */
function cutToRange({ samples, direction }: CoastRun, given: CoastConditions): Cut | string {
  const start = samples.findLastIndex((one) => one.speed_mps > given.to_mps) + 1;
  const length = samples.slice(start).findIndex((one) => one.speed_mps < given.from_mps);
  const kept = samples.slice(start, length < 0 ? undefined : start + length);
  const [first, last] = [kept[0], kept.at(-1)];
  if (!first || !last || kept.length < LEAST_SAMPLES)
    return `it has ${kept.length} points between ${kmh(given.to_mps)} and ${kmh(given.from_mps)}; ${LEAST_SAMPLES} are needed.`;
  const span = given.to_mps - given.from_mps;
  if (first.speed_mps < given.to_mps - 0.25 * span || last.speed_mps > given.from_mps + 0.25 * span)
    return `it rolls from ${kmh(first.speed_mps)} to ${kmh(last.speed_mps)} and so covers too little of ${kmh(given.to_mps)} to ${kmh(given.from_mps)}.`;
  if (kept.some((one, at) => at > 0 && one.time_s - (kept[at - 1]?.time_s ?? 0) > WIDEST_GAP_s))
    return `it has a hole of more than ${WIDEST_GAP_s} seconds.`;
  const every = Math.ceil(kept.length / MOST_SAMPLES);
  const used = kept.filter((_, at) => at % every === 0);
  return {
    times: used.map((one) => one.time_s - first.time_s),
    speeds: used.map((one) => one.speed_mps),
    way: direction === 'there' ? 1 : -1,
  };
}

interface Fitted {
  /** Drag area, rolling resistance, wind, slope. */
  shared: number[];
  /** Standard deviation of each from the samples and the runs. */
  spread: number[];
  samples: number;
  scatter: number;
}

const STEPS = [0.01, 0.0002, 0.05, 0.0002] as const;
const START_STEP_mps = 0.01;
/** The model is nearly straight in its parameters: after this many rounds the figures no longer move. */
const ROUNDS = 8;

/** How the model's speed at a sample changes with one parameter. */
type SlopeOf = (parameters: readonly number[], column: number, at: number) => number;

function fitTogether(cuts: readonly Cut[], given: CoastConditions): Fitted | undefined {
  const owner = cuts.flatMap((cut, run) => cut.times.map(() => run));
  const times = cuts.flatMap((cut) => cut.times);
  const speeds = cuts.flatMap((cut) => cut.speeds);
  const model = (parameters: readonly number[], at: number): number => {
    const run = owner[at] ?? 0;
    const way = cuts[run]?.way ?? 1;
    return speedAfter(coastingOf(parameters, way, given), parameters[SHARED + run] ?? 0, times[at] ?? 0);
  };
  const start = [0.8, 0.015, 0, 0, ...cuts.map((cut) => cut.speeds[0] ?? 0)];
  const steps = [...STEPS, ...cuts.map(() => START_STEP_mps)];
  const slopeOf: SlopeOf = (parameters, column, at) => {
    const step = steps[column] ?? 0;
    const moved = (by: number) => parameters.map((value, i) => (i === column ? value + by : value));
    return (model(moved(step), at) - model(moved(-step), at)) / (2 * step);
  };
  const found = levenbergMarquardt(
    { x: times.map((_, at) => at), y: speeds },
    (parameters) => (at) => model(parameters, at),
    {
      initialValues: start,
      // A run's own start moves no other run, so most of the slopes are known to be nothing.
      jacobianFunction: (parameters) => (at) =>
        steps.map((_, column) =>
          column < SHARED || column === SHARED + (owner[at] ?? 0) ? slopeOf(parameters, column, at) : 0,
        ),
      damping: 1e-3,
      maxIterations: ROUNDS,
      errorTolerance: 1e-9,
    },
  ).parameterValues;
  if (!found.every(Number.isFinite)) return undefined;
  const left = speeds.map((speed, at) => speed - model(found, at));
  if (!left.every(Number.isFinite)) return undefined;
  return spreadOf(cuts, found, left, slopeOf);
}

/** Going and coming, wind and slope change sign. */
function coastingOf(parameters: readonly number[], way: 1 | -1, given: CoastConditions): Coasting {
  const [drag_m2 = 0, rolling = 0, wind = 0, slope = 0] = parameters;
  const { mass_kg, rotating_kg, density_kgpm3 } = given;
  return { mass_kg, rotating_kg, density_kgpm3, drag_m2, rolling, wind_mps: way * wind, slope: way * slope };
}

/**
 * Spread of the shared parameters: the larger of what the samples' scatter gives (widened where neighbours err alike) and
 * what leaving out one run after the other gives. Each run's own start is taken out of its slopes first.
 */
function spreadOf(
  cuts: readonly Cut[],
  found: readonly number[],
  left: readonly number[],
  slopeAt: SlopeOf,
): Fitted | undefined {
  let offset = 0;
  const parts = cuts.map((cut, run) => {
    const rows = cut.times.map((_, i) => offset + i);
    offset += rows.length;
    const own = rows.map((at) => slopeAt(found, SHARED + run, at));
    const ownLength = own.reduce((sum, one) => sum + one * one, 0);
    const without = (column: readonly number[]) => {
      const share = column.reduce((sum, one, i) => sum + one * (own[i] ?? 0), 0) / ownLength;
      return column.map((one, i) => one - share * (own[i] ?? 0));
    };
    const columns = STEPS.map((_, column) => without(rows.map((at) => slopeAt(found, column, at))));
    const rest = without(rows.map((at) => left[at] ?? 0));
    const jacobian = new Matrix(columns).transpose();
    const turned = jacobian.transpose();
    return { square: turned.mmul(jacobian), pull: turned.mmul(Matrix.columnVector(rest)), rest };
  });
  const total = parts.reduce((sum, part) => sum.add(part.square), Matrix.zeros(SHARED, SHARED));
  const squares = left.reduce((sum, one) => sum + one * one, 0);
  const freedom = left.length - found.length;
  const products = parts.reduce(
    (sum, { rest }) => sum + rest.reduce((s, one, i) => s + one * (rest[i + 1] ?? 0), 0),
    0,
  );
  const alike = Math.min(0.9, Math.max(0, products / squares));
  const variance = ((squares / freedom) * (1 + alike)) / (1 - alike);
  try {
    const bySamples = inverse(total).mul(variance);
    const moves = parts.map((part) =>
      inverse(Matrix.sub(total, part.square)).mmul(part.pull).mul(-1).to1DArray(),
    );
    const spread = STEPS.map((_, column) => {
      const own = moves.map((move) => move[column] ?? 0);
      const mean = own.reduce((sum, one) => sum + one, 0) / own.length;
      const byRuns = ((own.length - 1) / own.length) * own.reduce((sum, one) => sum + (one - mean) ** 2, 0);
      return Math.sqrt(Math.max(byRuns, bySamples.get(column, column)));
    });
    const good = spread.every(Number.isFinite);
    const scatter = Math.sqrt(squares / freedom);
    return good ? { shared: found.slice(0, SHARED), spread, samples: left.length, scatter } : undefined;
  } catch {
    // The runs leave one of the four undecided.
    return undefined;
  }
}
