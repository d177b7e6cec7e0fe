import type { FoundChart, Values } from './contract.ts';
import { gearsOf, rollOf } from './drive-line.ts';
import { dragForce, highest, holdForce } from './road-load.ts';
import type { Point } from './svg.ts';
import type { Tyre } from './tyre.ts';
import { pullsOf, roadOf, slopesOf } from './vehicle-on-road.ts';

/** Pull of each gear and resistance of each slope against road speed; none without engine and tyre. */
export function pullChart(values: Values, tyre: Tyre | undefined): FoundChart | undefined {
  const road = roadOf(values);
  const pulls = pullsOf(values, gearsOf(values), rollOf(values, tyre), road);
  if (!pulls.length) return undefined;
  const most = Math.max(...pulls.map(highest)) * 1.05;
  const force = Math.max(...pulls.flatMap((pull) => pull.map(([, f]) => f))) * 1.1;
  const gears = pulls.map((pull, g) => {
    const points = pull.map(([v, f]): Point => [v * 3.6, f]);
    const peak = points.reduce((a, b) => (b[1] > a[1] ? b : a));
    return { points, label: g + 1, labelAt: peak };
  });
  const slopes = slopesOf(values).map((steep) => {
    const hold = holdForce(road, steep);
    const points = Array.from({ length: 21 }, (_, i): Point => {
      const v = (most * i) / 20;
      return [v * 3.6, hold + dragForce(road, v)];
    });
    return { steep, points: points.filter(([, f]) => f <= force && f >= 0), dash: '4 3' };
  });
  return {
    x: { max: most * 3.6 },
    y: { max: force },
    curves: [...gears, ...slopes.filter(({ points }) => points.length > 1)],
  };
}
