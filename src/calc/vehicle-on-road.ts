import type { Values } from './contract.ts';
import type { Gear } from './drive-line.ts';
import { byFirst, reader, rowsOf } from './field-values.ts';
import {
  airDensity,
  dragForce,
  holdForce,
  type Pull,
  pullAt,
  type Road,
  STANDARD_DENSITY,
} from './road-load.ts';

const TURN = 2 * Math.PI;
const STEPS = 80;

export const slopesOf = (values: Values): number[] => rowsOf(values, 'slopes').map(([slope = 0]) => slope);

export function roadOf(values: Values): Road {
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
const torqueRows = (values: Values): number[][] =>
  [...rowsOf(values, 'torque'), ...rowsOf(values, 'power').map(([w = 0, power = 0]) => [w, power / w])].sort(
    byFirst,
  );

/** Pull of each gear; the engine's torque falls with the density of the air. */
export function pullsOf(values: Values, gears: readonly Gear[], roll: number, road: Road): Pull[] {
  const radius = roll / TURN;
  const share = reader(values)('efficiency', 1) * (road.density_kgpm3 / STANDARD_DENSITY);
  const rows = torqueRows(values);
  return rows.length < 2 || !(roll > 0)
    ? []
    : gears.map(({ overall }) =>
        rows.map(([w = 0, t = 0]) => [(w * radius) / overall, (t * overall * share) / radius]),
      );
}

/** Time from one speed to the other in whichever gear pulls most, coasting through each change; undefined if never. */
export function timeBetween(
  values: Values,
  gears: readonly Gear[],
  pulls: readonly Pull[],
  road: Road,
  roll: number,
): number | undefined {
  const v = reader(values);
  const [from, to, slope, pause] = [v('from', 0), v('to'), v('slope', 0), v('changeTime', 0)];
  const hold = holdForce(road, slope);
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
