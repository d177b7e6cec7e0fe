import { expect, test } from 'vitest';
import { airDensity } from '../../../src/calc/road-load.ts';
import { type CoastRun, fitCoastDown } from '../../../src/record/road-tests/coast-down.ts';
import { resistance, speedAfter } from '../../../src/record/road-tests/coasting.ts';
import { CONDITIONS, draws, madeRuns, normal } from './made-runs.ts';

const still = { rotating_kg: 0, wind_mps: 0, slope: 0 };

test('Rolling takes 60.8 lbf at 3040 lbf and f = 0.02 (Moran, Shapiro: problem 2.23; derived)', () => {
  const force = resistance(
    { ...still, mass_kg: 3040 * 0.45359237, drag_m2: 0, rolling: 0.02, density_kgpm3: 1.2 },
    0,
  );
  expect(force / 4.4482216152605).toBeCloseTo(60.8, 2);
});

test('The same car at 55 mph needs 10.768 hp (Moran, Shapiro: problem 2.23; derived)', () => {
  const speed = 55 * 0.44704;
  const car = {
    ...still,
    mass_kg: 3040 * 0.45359237,
    drag_m2: 6.24 * 0.25 * 0.09290304,
    rolling: 0.02,
    density_kgpm3: 0.08 * 16.01846337396014,
  };
  expect((resistance(car, speed) * speed) / 745.6998715822702).toBeCloseTo(10.768, 2);
});

test('650 kg at 80 km/h takes 6.83 kW (Gillespie ch. 4, Wong ch. 3; derived)', () => {
  const speed = 80 / 3.6;
  const car = { ...still, mass_kg: 650, drag_m2: 0.7, rolling: 0.015, density_kgpm3: 1.225 };
  expect((resistance(car, speed) * speed) / 1000).toBeCloseTo(6.83, 2);
});

test('The speed after a time agrees with small steps of the force balance, uphill, level and downhill', () => {
  for (const slope of [0.03, 0, -0.018, -0.05]) {
    const one = {
      mass_kg: 480,
      rotating_kg: 18,
      drag_m2: 1.15,
      rolling: 0.018,
      density_kgpm3: 1.21,
      wind_mps: 1,
      slope,
    };
    let speed = 12;
    for (let i = 0; i < 10_000; i++) {
      const half = speed - (0.0005 * resistance(one, speed)) / 498;
      speed -= (0.001 * resistance(one, half)) / 498;
    }
    expect(speedAfter(one, 12, 10)).toBeCloseTo(speed, 4);
  }
});

test('The fit holds the true figures within its ± in at least 90 of 100 made worlds', () => {
  const draw = draws(265);
  const WORLDS = 250;
  let drag = 0;
  let rolling = 0;
  let told = 0;
  for (let world = 0; world < WORLDS; world++) {
    const truth = {
      mass_kg: CONDITIONS.mass_kg + 4 * normal(draw),
      rotating_kg: CONDITIONS.rotating_kg + 2 * normal(draw),
      drag_m2: 0.6 + 0.9 * draw(),
      rolling: 0.012 + 0.012 * draw(),
      density_kgpm3: CONDITIONS.density_kgpm3 * (1 + 0.01 * normal(draw)),
      wind_mps: 4 * draw() - 2,
      slope: 0.012 * draw() - 0.006,
      bias: 0.06 * draw() - 0.03,
      noise_mps: 0.05 + 0.15 * draw(),
      runsEachWay: 2 + (world % 3),
    };
    const answer = fitCoastDown(madeRuns(truth, draw), CONDITIONS);
    if (!answer.ok) continue;
    told++;
    if (Math.abs(answer.drag_m2.value - truth.drag_m2) <= answer.drag_m2.pm) drag++;
    if (Math.abs(answer.rolling.value - truth.rolling) <= answer.rolling.pm) rolling++;
  }
  if (process.env['SHOW']) console.log({ told, drag: drag / told, rolling: rolling / told });
  expect(told).toBeGreaterThan(0.9 * WORLDS);
  expect(drag / told).toBeGreaterThanOrEqual(0.9);
  expect(rolling / told).toBeGreaterThanOrEqual(0.9);
}, 90_000);

const world = {
  mass_kg: 480,
  rotating_kg: 18,
  drag_m2: 1.15,
  rolling: 0.018,
  density_kgpm3: 1.21,
  wind_mps: 0.8,
  slope: 0.002,
  bias: 0,
  noise_mps: 0.05,
  runsEachWay: 3,
};
const reason = (runs: readonly CoastRun[], more = {}) => {
  const answer = fitCoastDown(runs, { ...CONDITIONS, ...more });
  return answer.ok ? 'told' : answer.reason;
};

test('The ± is no wider than it needs to be: with quiet runs it is a tenth of the figure or less', () => {
  const answer = fitCoastDown(madeRuns(world, draws(1)), CONDITIONS);
  if (!answer.ok) throw new Error(answer.reason);
  expect(answer.drag_m2.pm / answer.drag_m2.value).toBeLessThan(0.1);
  expect(answer.rolling.pm / answer.rolling.value).toBeLessThan(0.1);
  expect(answer.wind_mps).toBeCloseTo(0.8, 0);
});

test('Runs that all go one way cannot tell', () => {
  const oneWay = madeRuns(world, draws(2)).filter((run) => run.direction === 'there');
  expect(reason(oneWay)).toMatch(/^All runs go one way/);
});

test('A single run back, a narrow range, a hole and too few points cannot tell', () => {
  const runs = madeRuns(world, draws(3));
  expect(reason(runs.filter((run, at) => run.direction === 'there' || at === 1))).toMatch(/single run/);
  expect(reason(runs, { from_mps: 9 })).toMatch(/hardly changes/);
  const holed = runs.map((run) => ({
    ...run,
    samples: run.samples.filter((one) => one.time_s < 8 || one.time_s > 13),
  }));
  expect(reason(holed)).toMatch(/hole of more than 3 seconds/);
  const few = runs.map((run) => ({ ...run, samples: run.samples.filter((_, at) => at % 12 === 0) }));
  expect(reason(few)).toMatch(/points between/);
});

test('The air that runs are reckoned in is the standard one for altitude and temperature', () => {
  expect(airDensity(0, 303.15)).toBeCloseTo(1.1644, 3);
});

test('A recording of a hundred points a second is thinned out and tells the same', () => {
  const runs = madeRuns({ ...world, noise_mps: 0 }, draws(4));
  const fine = runs.map(({ samples, direction }) => ({
    direction,
    samples: samples.slice(1).flatMap((b, at) => {
      const a = samples[at] ?? b;
      return Array.from({ length: 50 }, (_, i) => ({
        time_s: a.time_s + ((b.time_s - a.time_s) * i) / 50,
        speed_mps: a.speed_mps + ((b.speed_mps - a.speed_mps) * i) / 50,
      }));
    }),
  }));
  const [one, other] = [fitCoastDown(runs, CONDITIONS), fitCoastDown(fine, CONDITIONS)];
  if (!one.ok || !other.ok) throw new Error('The runs cannot tell.');
  expect(other.samples).toBeLessThanOrEqual(6 * 400);
  expect(other.drag_m2.value).toBeCloseTo(one.drag_m2.value, 2);
  expect(other.rolling.value).toBeCloseTo(one.rolling.value, 4);
});
