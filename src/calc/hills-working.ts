import type { Output, Values, WorkingLine } from './contract.ts';
import { reader } from './field-values.ts';
import { percent } from './pull-chart.ts';
import { roadOf } from './vehicle-on-road.ts';
import { add, arctangent, cosine, line, num, over, power, sign, sine, times } from './working.ts';

/** The formulas of the forces at one speed on one slope; none where no speed is asked. */
export function hillsWorking(values: Values, out: Record<string, Output>): WorkingLine[] {
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
