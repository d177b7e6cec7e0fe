import { type Curve, chart } from './chart.ts';
import type { Drawing, Values } from './contract.ts';
import { gearsOf, rollOf } from './drive-line.ts';
import { printer } from './print-figure.ts';
import { dragForce, highest, holdForce } from './road-load.ts';
import type { Point } from './svg.ts';
import type { Tyre } from './tyre.ts';
import { pullsOf, roadOf, slopesOf } from './vehicle-on-road.ts';

/** A slope as road signs have it. */
export const percent = printer('slope', '%', 2);

/** Pull of each gear and resistance of each slope against road speed; none without engine and tyre. */
export function pullChart(values: Values, tyre: Tyre | undefined): Drawing[] {
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
    const hold = holdForce(road, slope);
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
