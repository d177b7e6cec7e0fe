import { type Curve, chart } from './chart.ts';
import type { Answer, AnswerTable, Drawing, Output, Refusal, Values, WorkingLine } from './contract.ts';
import { driveLineFaults, type Gear, gearsOf, rollOf, withTyre } from './drive-line.ts';
import { figureOf, refusal, rowsOf } from './field-values.ts';
import { printFigure, printNumber } from './print-figure.ts';
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
import type { Quantity, UnitId } from './units.ts';
import { add, arctangent, cosine, line, num, over, power, sign, sine, times } from './working.ts';

const TURN = 2 * Math.PI;
const KMH = 1 / 3.6;
const STEPS = 80;

const slopesOf = (values: Values): number[] => rowsOf(values, 'slopes').map(([slope = 0]) => slope);

function roadOf(values: Values): Road {
  const get = (name: string, otherwise: number) => figureOf(values, name) ?? otherwise;
  return {
    mass_kg: get('mass', Number.NaN),
    drag_m2: get('drag', Number.NaN),
    rolling: get('rolling', Number.NaN),
    wind_mps: get('wind', 0),
    density_kgpm3: figureOf(values, 'air') ?? airDensity(get('altitude', 0), get('temperature', 288.15)),
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
  const share = (figureOf(values, 'efficiency') ?? 1) * (road.density_kgpm3 / STANDARD_DENSITY);
  const rows = torqueRows(values);
  return gears.map(({ overall }) =>
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
  const get = (name: string) => figureOf(values, name);
  const [from = 0, to] = [get('from'), get('to')];
  if (to === undefined) return undefined;
  const slope = get('slope') ?? 0;
  const resist = (v: number) => rollingForce(road, slope) + climbForce(road, slope) + dragForce(road, v);
  const dv = (to - from) / STEPS;
  let [v, t, gear] = [from, 0, -1];
  for (let step = 0; v < to - dv * 1e-6; step++) {
    const h = Math.min(dv, to - v);
    const middle = v + h / 2;
    let best = -1;
    for (let g = Math.max(gear, 0); g < pulls.length; g++)
      if ((pullAt(pulls[g] ?? [], v + h) ?? -1) > (best < 0 ? 0 : (pullAt(pulls[best] ?? [], v + h) ?? 0)))
        best = g;
    if (best < 0 || step > 4 * STEPS) return undefined;
    if (gear >= 0 && best !== gear) {
      const pause = get('changeTime') ?? 0;
      t += pause;
      v = Math.max(0, v - (resist(v) * pause) / road.mass_kg);
      gear = best;
      continue;
    }
    gear = best;
    const radius = roll / TURN;
    const turning = (get('inertia') ?? 0) * ((gears[best]?.overall ?? 0) / radius) ** 2;
    const mass = road.mass_kg * (1 + (get('rotating') ?? 0)) + turning;
    const rest = (pullAt(pulls[best] ?? [], middle) ?? 0) - resist(middle);
    if (rest <= 0) return undefined;
    t += (h * mass) / rest;
    v += h;
  }
  return t;
}

function compute(values: Values, tyre: Tyre | undefined): Computed {
  const road = roadOf(values);
  const [speed, slope] = [figureOf(values, 'road'), figureOf(values, 'slope') ?? 0];
  const found: Record<string, number | undefined> = { density: road.density_kgpm3 };
  if (speed !== undefined) {
    const parts = [rollingForce(road, slope), dragForce(road, speed), climbForce(road, slope)];
    const [rolling = 0, drag = 0, climb = 0] = parts;
    const force = rolling + drag + climb;
    Object.assign(found, {
      rollingForce: rolling,
      dragForce: drag,
      climbForce: climb,
      force,
      wheelPower: force * speed,
    });
  }
  const roll = rollOf(values, tyre);
  const rows = torqueRows(values);
  if (roll === undefined || rows.length < 2) return found;
  const gears = gearsOf(values);
  const pulls = pullsOf(values, gears, roll, road);
  const slopes = slopesOf(values);
  pulls.forEach((pull, g) => {
    found[`end_${g}`] = highest(pull);
    found[`steepest_${g}`] = slopeHeld(road, greatestPull(pull, road));
    for (const [s, steep] of slopes.entries()) found[`top_${g}_${s}`] = steadySpeed(pull, road, steep);
    const next = pulls[g + 1];
    if (!next) return;
    const v = changeSpeed(pull, next);
    found[`change_${g}`] = v;
    found[`changeSlope_${g}`] = slopeHeld(road, (pullAt(next, v) ?? 0) - dragForce(road, v));
  });
  const tops = pulls.flatMap((pull) => steadySpeed(pull, road, slope) ?? []);
  found['top'] = tops.length ? Math.max(...tops) : undefined;
  found['steepest'] = found['steepest_0'];
  found['time'] = timeBetween(values, gears, pulls, road, roll);
  return found;
}

const cell = (o: Output | undefined, quantity: Quantity, unit: UnitId, figures = 3) =>
  o ? printNumber(o, quantity, unit, figures) : '—';
const full = (o: Output | undefined, quantity: Quantity, unit: UnitId, figures = 3) =>
  o ? printFigure(o, quantity, unit, figures) : '—';
const slopeText = (slope: number) => full({ si: slope }, 'slope', '%', 2);

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
        slopeText(slope),
        ...gears.map((_, g) => cell(out[`top_${g}_${s}`], 'speed', 'km/h') + ended(g, s)),
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
        full(out[`steepest_${g}`], 'slope', '%'),
        cell(out[`change_${g}`], 'speed', 'km/h'),
        full(out[`changeSlope_${g}`], 'slope', '%'),
      ]),
    },
  ];
}

function pullChart(values: Values, tyre: Tyre | undefined): Drawing[] {
  const road = roadOf(values);
  const roll = rollOf(values, tyre);
  if (roll === undefined || torqueRows(values).length < 2) return [];
  const pulls = pullsOf(values, gearsOf(values), roll, road);
  const most = Math.max(...pulls.map(highest)) * 1.05;
  const force = Math.max(...pulls.flatMap((pull) => pull.map(([, f]) => f)));
  const curves: Curve[] = pulls.map((pull, g) => {
    const points = pull.map(([v, f]): Point => [v / KMH, f]);
    const peak = points.reduce((a, b) => (b[1] > a[1] ? b : a));
    return { points, label: String(g + 1), labelAt: peak, width: 2 };
  });
  for (const slope of slopesOf(values)) {
    const hold = rollingForce(road, slope) + climbForce(road, slope);
    const points = Array.from({ length: 21 }, (_, i): Point => {
      const v = (most * i) / 20;
      return [v / KMH, hold + dragForce(road, v)];
    }).filter(([, f]) => f <= force * 1.08 && f >= 0);
    if (points.length > 1) curves.push({ points, label: slopeText(slope), dash: '4 3', width: 1 });
  }
  const title = 'Driving force in each gear against the resistance of each slope';
  const desc =
    'Force at the wheels in newtons against road speed. Full lines are the gears, numbered; dashed lines are what each slope takes. Where they cross, the speed holds.';
  const svg = chart({
    title,
    desc,
    x: { label: 'km/h', min: 0, max: most / KMH },
    y: { label: 'N at the wheels', min: 0, max: force * 1.1 },
    curves,
    height: 270,
  });
  return [{ name: 'pull', title, desc, svg }];
}

function notes(values: Values, out: Record<string, Output>): string[] {
  const gears = gearsOf(values);
  const said: string[] = [];
  gears.forEach(({ name }, g) => {
    const [next, speed, slope] = [gears[g + 1]?.name, out[`change_${g}`], out[`changeSlope_${g}`]];
    if (next && speed && slope)
      said.push(
        `On slopes of more than ${full(slope, 'slope', '%', 2)} ${name} is the faster gear, on less ${next}; it turns at ${full(speed, 'speed', 'km/h')}.`,
      );
  });
  if (figureOf(values, 'to') !== undefined && !out['time'] && out['end_0'])
    said.push('The upper speed is never reached on that slope, so there is no time to it.');
  if (!out['end_0']) said.push('For speeds and slopes give the engine, the gears and the tyre as well.');
  else
    said.push(
      'Full throttle; torque straight between the rows and in proportion to air density; below the first row the clutch slips. Grip of the tyres is not looked at.',
    );
  return said;
}

function working(values: Values, out: Record<string, Output>): WorkingLine[] {
  const speed = figureOf(values, 'road');
  if (speed === undefined) return [];
  const road = roadOf(values);
  const slope = figureOf(values, 'slope') ?? 0;
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
  if (b.si) lines.unshift(line('Slope as an angle', b, arctangent(num(slope, slopeText(slope)))));
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
  const get = (name: string) => figureOf(values, name);
  const rows = [...rowsOf(values, 'torque'), ...rowsOf(values, 'power')];
  const speeds = new Set(rows.map(([w]) => w));
  const { tyre: _none, ...faults } = rows.length ? driveLineFaults(values, tyre) : {};
  const curve = rowsOf(values, 'power').length ? 'power' : 'torque';
  const refused = refusal({
    mass: !((get('mass') ?? 0) > 0) && 'The mass is needed, with driver and load.',
    ...faults,
    tyre: wrong,
    [curve]:
      rows.length === 1
        ? 'Two rows are needed at least: a speed and what the engine gives at it.'
        : speeds.size < rows.length && 'Each engine speed may stand in one row only.',
    to:
      get('to') !== undefined &&
      (get('to') ?? 0) <= (get('from') ?? 0) &&
      'The upper speed must be above the lower.',
  });
  if (refused) return refused;
  const outputs = spread((v) => compute(v, tyre), values);
  return {
    ok: true,
    outputs,
    working: working(values, outputs),
    tables: tables(values, outputs),
    notes: notes(values, outputs),
    drawings: pullChart(values, tyre),
  };
}
