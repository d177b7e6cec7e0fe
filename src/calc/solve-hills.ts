import { type Curve, chart } from './chart.ts';
import type { Answer, AnswerTable, Drawing, Output, Refusal, Values, WorkingLine } from './contract.ts';
import { driveLineFaults, type Gear, gearsOf, rollOf, withTyre } from './drive-line.ts';
import { reader, refusal, rowsOf } from './field-values.ts';
import { printer } from './print-figure.ts';
import {
  airDensity,
  changeSpeed,
  climbForce,
  dragForce,
  greatestPull,
  highest,
  type Pull,
  pullAt,
  type Road,
  rollingForce,
  STANDARD_DENSITY,
  slopeHeld,
  steadySpeed,
} from './road-load.ts';
import type { Point } from './svg.ts';
import type { Tyre } from './tyre.ts';
import { type Computed, spread } from './uncertainty.ts';
import { add, arctangent, cosine, line, num, over, power, sign, sine, times } from './working.ts';

const TURN = 2 * Math.PI;
const STEPS = 80;

const slopesOf = (values: Values): number[] => rowsOf(values, 'slopes').map(([slope = 0]) => slope);

function roadOf(values: Values): Road {
  const v = reader(values);
  return {
    mass_kg: v('mass'),
    drag_m2: v('drag'),
    rolling: v('rolling'),
    wind_mps: v('wind', 0),
    density_kgpm3: v('air', airDensity(v('altitude', 0), v('temperature', 288.15))),
  };
}

/** Engine speed and torque, lowest speed first, from either curve. */
function torqueRows(values: Values): [number, number][] {
  const torque = rowsOf(values, 'torque').map(([w = 0, t = 0]): [number, number] => [w, t]);
  const byPower = rowsOf(values, 'power').map(([w = 0, p = 0]): [number, number] => [w, p / w]);
  return [...torque, ...byPower].sort((a, b) => a[0] - b[0]);
}

/** Pull of each gear; the engine's torque falls with the density of the air. */
function pullsOf(values: Values, gears: readonly Gear[], roll: number, road: Road): Pull[] {
  const radius = roll / TURN;
  const share = reader(values)('efficiency', 1) * (road.density_kgpm3 / STANDARD_DENSITY);
  const rows = torqueRows(values);
  return rows.length < 2 || !(roll > 0)
    ? []
    : gears.map(({ overall }) =>
        rows.map(([w, t]) => [(w * radius) / overall, (t * overall * share) / radius]),
      );
}

/** Time from one speed to the other in whichever gear pulls most, coasting through each change; undefined if never. */
function timeBetween(
  values: Values,
  gears: readonly Gear[],
  pulls: readonly Pull[],
  road: Road,
  roll: number,
): number | undefined {
  const v = reader(values);
  const [from, to, slope, pause] = [v('from', 0), v('to'), v('slope', 0), v('changeTime', 0)];
  const hold = rollingForce(road, slope) + climbForce(road, slope);
  const dv = (to - from) / STEPS;
  let [speed, time, gear] = [from, 0, -1];
  for (let step = 0; speed < to - dv * 1e-6; step++) {
    const h = Math.min(dv, to - speed);
    const middle = speed + h / 2;
    const force = (g: number) => pullAt(pulls[g] ?? [], speed + h) ?? 0;
    const best = pulls.reduce((one, _, g) => (g >= gear && force(g) > force(one) ? g : one), gear);
    if (!(force(best) > 0) || step > 4 * STEPS) return undefined;
    const changes = gear >= 0 && best !== gear;
    gear = best;
    if (changes) {
      time += pause;
      speed = Math.max(0, speed - ((hold + dragForce(road, speed)) * pause) / road.mass_kg);
      continue;
    }
    const turning = v('inertia', 0) * (((gears[best]?.overall ?? 0) * TURN) / roll) ** 2;
    const rest = (pullAt(pulls[best] ?? [], middle) ?? 0) - hold - dragForce(road, middle);
    if (rest <= 0) return undefined;
    time += (h * (road.mass_kg * (1 + v('rotating', 0)) + turning)) / rest;
    speed += h;
  }
  return to > from ? time : undefined;
}

/** Every figure of the answer; those of a gear end in its number, those of a slope in a second one. */
function compute(values: Values, tyre: Tyre | undefined): Computed {
  const v = reader(values);
  const road = roadOf(values);
  const slope = v('slope', 0);
  const [rolling, drag, climb] = [
    rollingForce(road, slope),
    dragForce(road, v('road')),
    climbForce(road, slope),
  ];
  const force = rolling + drag + climb;
  const asked = v('road') >= 0 ? 1 : Number.NaN;
  const found: Record<string, number | undefined> = {
    density: road.density_kgpm3,
    rollingForce: rolling * asked,
    dragForce: drag,
    climbForce: climb * asked,
    force,
    wheelPower: force * v('road'),
  };
  const roll = rollOf(values, tyre);
  const gears = gearsOf(values);
  const pulls = pullsOf(values, gears, roll, road);
  if (!pulls.length) return found;
  pulls.forEach((pull, g) => {
    found[`end_${g}`] = highest(pull);
    found[`steepest_${g}`] = slopeHeld(road, greatestPull(pull, road));
    for (const [s, steep] of slopesOf(values).entries())
      found[`top_${g}_${s}`] = steadySpeed(pull, road, steep);
    const next = pulls[g + 1];
    if (!next) return;
    const turn = changeSpeed(pull, next);
    found[`change_${g}`] = turn;
    found[`changeSlope_${g}`] = slopeHeld(road, (pullAt(next, turn) ?? 0) - dragForce(road, turn));
  });
  found['top'] = Math.max(...pulls.flatMap((pull) => steadySpeed(pull, road, slope) ?? []));
  found['steepest'] = found['steepest_0'];
  found['time'] = timeBetween(values, gears, pulls, road, roll);
  return found;
}

const kmh = printer('speed', 'km/h');
const bareKmh = printer('speed', 'km/h', 3, true);
const percent = printer('slope', '%', 2);

/** The gear with the highest steady speed on each slope; -1 where none holds it. */
const fastest = (gears: readonly Gear[], out: Record<string, Output>, s: number): number =>
  gears.reduce(
    (best, _, g) => ((out[`top_${g}_${s}`]?.si ?? 0) > (out[`top_${best}_${s}`]?.si ?? 0) ? g : best),
    -1,
  );

function tables(values: Values, out: Record<string, Output>): AnswerTable[] {
  const gears = gearsOf(values);
  if (!out['end_0']) return [];
  const numeric = (labels: string[]) => labels.map((label, i) => ({ label, numeric: i > 0 }));
  const ended = (g: number, s: number) => {
    const [top, end] = [out[`top_${g}_${s}`], out[`end_${g}`]];
    return top && end && top.si >= end.si * (1 - 1e-9) ? ' *' : '';
  };
  return [
    {
      name: 'slopes',
      caption: 'Highest steady speed, km/h (— cannot hold it; * the engine ends there, not the hill)',
      columns: numeric(['Slope', ...gears.map(({ name }) => name), 'fastest in']),
      rows: slopesOf(values).map((slope, s) => [
        percent(slope),
        ...gears.map((_, g) => bareKmh(out[`top_${g}_${s}`]) + ended(g, s)),
        gears[fastest(gears, out, s)]?.name ?? 'no gear',
      ]),
    },
    {
      name: 'gears',
      caption: 'Each gear',
      columns: numeric([
        'Gear',
        'Steepest slope held',
        'Next gear pulls more above, km/h',
        'and is faster on less than',
      ]),
      rows: gears.map(({ name }, g) => [
        name,
        percent(out[`steepest_${g}`]),
        bareKmh(out[`change_${g}`]),
        percent(out[`changeSlope_${g}`]),
      ]),
    },
  ];
}

function pullChart(values: Values, tyre: Tyre | undefined): Drawing[] {
  const road = roadOf(values);
  const pulls = pullsOf(values, gearsOf(values), rollOf(values, tyre), road);
  if (!pulls.length) return [];
  const most = Math.max(...pulls.map(highest)) * 1.05;
  const force = Math.max(...pulls.flatMap((pull) => pull.map(([, f]) => f))) * 1.1;
  const gears = pulls.map((pull, g): Curve => {
    const points = pull.map(([v, f]): Point => [v * 3.6, f]);
    const peak = points.reduce((a, b) => (b[1] > a[1] ? b : a));
    return { points, label: String(g + 1), labelAt: peak };
  });
  const slopes = slopesOf(values).map((slope): Curve => {
    const hold = rollingForce(road, slope) + climbForce(road, slope);
    const points = Array.from({ length: 21 }, (_, i): Point => {
      const v = (most * i) / 20;
      return [v * 3.6, hold + dragForce(road, v)];
    });
    return { points: points.filter(([, f]) => f <= force && f >= 0), label: percent(slope), dash: '4 3' };
  });
  return [
    chart({
      name: 'pull',
      title: 'Driving force in each gear against the resistance of each slope',
      desc: 'Full lines are the gears, numbered; dashed lines are what each slope takes. Where they cross, the speed holds.',
      x: { label: 'km/h', max: most * 3.6 },
      y: { label: 'N at the wheels', max: force },
      curves: [...gears, ...slopes.filter(({ points }) => points.length > 1)],
    }),
  ];
}

function notes(values: Values, out: Record<string, Output>): string[] {
  const gears = gearsOf(values);
  const said: string[] = [];
  gears.forEach(({ name }, g) => {
    const [next, speed, slope] = [gears[g + 1]?.name, out[`change_${g}`], out[`changeSlope_${g}`]];
    if (next && speed && slope)
      said.push(
        `On slopes of more than ${percent(slope)} ${name} is the faster gear, on less ${next}; it turns at ${kmh(speed)}.`,
      );
  });
  if (reader(values)('to') > 0 && !out['time'] && out['end_0'])
    said.push('The upper speed is never reached on that slope, so there is no time to it.');
  if (!out['end_0']) said.push('For speeds and slopes give the engine, the gears and the tyre as well.');
  else
    said.push(
      'Full throttle; torque straight between the rows and in proportion to air density; below the first row the clutch slips. Grip of the tyres is not looked at.',
    );
  return said;
}

function working(values: Values, out: Record<string, Output>): WorkingLine[] {
  const read = reader(values);
  const speed = read('road');
  if (!(speed >= 0)) return [];
  const road = roadOf(values);
  const slope = read('slope', 0);
  const force = (name: string, key: string) => sign(name, out[key]?.si ?? 0, 'force', 'N', 4);
  const [R, D, S] = [force('F_r', 'rollingForce'), force('F_d', 'dragForce'), force('F_s', 'climbForce')];
  const b = sign('β', Math.atan(slope), 'angle', 'deg', 3);
  const m = sign('m', road.mass_kg, 'mass', 'kg', 4);
  const g = sign('g', 9.80665, 'acceleration', 'm/s2', 4);
  const v = sign('v', speed, 'speed', 'm/s', 4);
  const w = sign('w', road.wind_mps, 'speed', 'm/s', 3);
  const air = w.si ? add(v, w) : v;
  const c = sign('c', road.rolling, 'count', 'n', 3);
  const A = sign('A', road.drag_m2, 'area', 'm2', 3);
  const rho = sign('ρ', road.density_kgpm3, 'density', 'kg/m3', 4);
  const lines = [line('Rolling resistance', R, b.si ? times(m, g, c, cosine(b)) : times(m, g, c))];
  if (b.si) lines.unshift(line('Slope as an angle', b, arctangent(num(slope, percent(slope)))));
  if (speed + w.si > 0) lines.push(line('Drag of the air', D, times(over(1, 2), rho, A, power(air, 2))));
  if (b.si) lines.push(line('Climbing', S, times(m, g, sine(b))));
  const total = b.si ? add(R, D, S) : add(R, D);
  return [
    ...lines,
    line('Power at the wheels', sign('P', out['wheelPower']?.si ?? 0, 'power', 'kW', 4), times(total, v)),
  ];
}

/**
 * Pull against resistance: steady speeds, slopes held, the gear that is faster uphill, time between two speeds.
 * @returns refusals in plain words; ± carried to every output and every cell
 */
export function solve(given: Values): Answer | Refusal {
  const { values, tyre, wrong } = withTyre(given);
  const v = reader(values);
  const rows = [...rowsOf(values, 'torque'), ...rowsOf(values, 'power')];
  const speeds = new Set(rows.map(([w]) => w));
  const { tyre: _none, ...faults } = rows.length ? driveLineFaults(values, tyre) : {};
  const curve = rowsOf(values, 'power').length ? 'power' : 'torque';
  const refused = refusal({
    mass: !(v('mass') > 0) && 'The mass is needed, with driver and load.',
    ...faults,
    tyre: wrong,
    [curve]:
      rows.length === 1
        ? 'Two rows are needed at least: a speed and what the engine gives at it.'
        : speeds.size < rows.length && 'Each engine speed may stand in one row only.',
    to: v('to') <= v('from', 0) && 'The upper speed must be above the lower.',
  });
  if (refused) return refused;
  const outputs = spread((moved) => compute(moved, tyre), values);
  return {
    ok: true,
    outputs,
    working: working(values, outputs),
    tables: tables(values, outputs),
    notes: notes(values, outputs),
    drawings: pullChart(values, tyre),
  };
}
