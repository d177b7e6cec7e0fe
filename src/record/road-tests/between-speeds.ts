import { distances, type Sample } from './run.ts';

export interface Between {
  from_mps: number;
  to_mps: number;
  time_s: number;
}

const STEP_mps = 10 / 3.6;
/** A speed that was passed within a longer gap was passed at an unknown time. */
const WIDEST_GAP_s = 6;

/** Time from each round speed to the next, rising or falling, where a run passes both without turning back. */
export function timesBetween(samples: readonly Sample[], rising: boolean): Between[] {
  const top = Math.max(...samples.map((one) => one.speed_mps));
  const crossings = Array.from({ length: Math.floor(top / STEP_mps) + 1 }, (_, i) => ({
    speed: i * STEP_mps,
    time: crossing(samples, i * STEP_mps, rising),
  })).filter((one) => one.time !== undefined);
  if (!rising) crossings.reverse();
  return crossings.slice(1).flatMap(({ speed, time = 0 }, at) => {
    const before = crossings[at];
    if (!before || !(time > (before.time ?? 0))) return [];
    return [{ from_mps: before.speed, to_mps: speed, time_s: time - (before.time ?? 0) }];
  });
}

function crossing(samples: readonly Sample[], speed: number, rising: boolean): number | undefined {
  const beyond = (one: Sample) => (rising ? one.speed_mps >= speed : one.speed_mps <= speed);
  const at = samples.findIndex((one, i) => i > 0 && beyond(one) && !beyond(samples[i - 1] ?? one));
  const [a, b] = [samples[at - 1], samples[at]];
  if (!a || !b || b.time_s - a.time_s > WIDEST_GAP_s) return undefined;
  return a.time_s + ((b.time_s - a.time_s) * (speed - a.speed_mps)) / (b.speed_mps - a.speed_mps);
}

export interface BySlope {
  /** Rise over run; the bounds of the class. */
  from: number;
  to: number;
  mean_mps: number;
  top_mps: number;
}

const BOUNDS = [-0.3, -0.06, -0.02, 0.02, 0.06, 0.3] as const;
const STRETCH_m = 60;

/** Mean and greatest speed of each class of slope; the slope over 60 m, since single heights jump. */
export function speedsBySlope(samples: readonly Sample[]): BySlope[] {
  const along = distances(samples);
  const classes = BOUNDS.slice(1).map((to, i) => ({
    from: BOUNDS[i] ?? 0,
    to,
    distance: 0,
    time: 0,
    top: 0,
  }));
  let start = 0;
  for (let at = 1; at < samples.length; at++) {
    const length = (along[at] ?? 0) - (along[start] ?? 0);
    const [a, b] = [samples[start], samples[at]];
    if (length < STRETCH_m || !a || !b) continue;
    const top = Math.max(...samples.slice(start, at + 1).map((one) => one.speed_mps));
    start = at;
    if (a.height_m === undefined || b.height_m === undefined) continue;
    const slope = (b.height_m - a.height_m) / length;
    const one = classes.find(({ from, to }) => slope >= from && slope < to);
    if (!one) continue;
    one.distance += length;
    one.time += b.time_s - a.time_s;
    one.top = Math.max(one.top, top);
  }
  return classes
    .filter((one) => one.time > 0)
    .map(({ from, to, distance, time, top }) => ({ from, to, mean_mps: distance / time, top_mps: top }));
}
