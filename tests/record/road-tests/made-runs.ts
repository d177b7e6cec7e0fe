import type { CoastConditions, CoastRun } from '../../../src/record/road-tests/coast-down.ts';
import { type Coasting, resistance } from '../../../src/record/road-tests/coasting.ts';

/** Even draws from 0 to 1, the same for the same seed (mulberry32, public domain). */
export function draws(seed: number): () => number {
  let state = seed >>> 0;
  return () => {
    state = (state + 0x6d2b79f5) >>> 0;
    let t = state;
    t = Math.imul(t ^ (t >>> 15), t | 1);
    t ^= t + Math.imul(t ^ (t >>> 7), t | 61);
    return ((t ^ (t >>> 14)) >>> 0) / 4294967296;
  };
}

/** A normal draw with spread 1. */
export const normal = (draw: () => number): number =>
  Math.sqrt(-2 * Math.log(1 - draw())) * Math.cos(2 * Math.PI * draw());

export interface World extends Coasting {
  /** Share by which every recorded speed is off. */
  bias: number;
  /** Spread of a recorded speed. */
  noise_mps: number;
  runsEachWay: number;
}

/**
 * Runs of a world that the fit does not know, stepped in time by Runge and Kutta and so not by the fit's own closed form.
 * The wind differs a little from run to run.
 */
export function madeRuns(world: World, draw: () => number, from_mps = 2.5, to_mps = 12.5): CoastRun[] {
  const runs: CoastRun[] = [];
  for (let at = 0; at < world.runsEachWay * 2; at++) {
    const way = at % 2 === 0 ? 1 : -1;
    const wind = world.wind_mps + 0.1 * normal(draw);
    const one = { ...world, wind_mps: way * wind, slope: way * world.slope };
    const slow = (v: number) => -resistance(one, v) / (one.mass_kg + one.rotating_kg);
    const samples = [];
    let speed = to_mps + 0.3 + 0.5 * draw();
    for (let time = 0; speed > from_mps - 0.3 && time < 120; time += 0.5) {
      samples.push({ time_s: time, speed_mps: speed * (1 + world.bias) + world.noise_mps * normal(draw) });
      for (let step = 0; step < 5; step++) {
        const h = 0.1;
        const a = slow(speed);
        const b = slow(speed + (h / 2) * a);
        const c = slow(speed + (h / 2) * b);
        const d = slow(speed + h * c);
        speed += (h / 6) * (a + 2 * b + 2 * c + d);
      }
    }
    runs.push({ samples, direction: way === 1 ? 'there' : 'back' });
  }
  return runs;
}

export const CONDITIONS: CoastConditions = {
  mass_kg: 480,
  mass_pm_kg: 8,
  rotating_kg: 18,
  rotating_pm_kg: 4,
  density_kgpm3: 1.21,
  density_pm: 0.02,
  speed_pm: 0.03,
  from_mps: 10 / 3.6,
  to_mps: 44 / 3.6,
};
