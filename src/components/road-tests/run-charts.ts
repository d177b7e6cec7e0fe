import { chart } from '../../calc/chart.ts';
import type { Drawing } from '../../calc/contract.ts';
import type { Point } from '../../calc/svg.ts';
import type { RoadRun, RoadTest } from '../../record/road-tests/road-test.ts';
import { distances } from '../../record/road-tests/run.ts';

const kmh = (mps: number) => mps * 3.6;
/** Runs back are dashed, so that the two ways are told apart without colour. */
const dashOf = (run: RoadRun) => (run.direction === 'back' ? { dash: '4 3' } : {});

function curves(test: RoadTest, pointOf: (run: RoadRun) => Point[]) {
  const seen = new Set<string>();
  return test.runs.flatMap((run) => {
    const points = pointOf(run);
    if (points.length < 2) return [];
    const label = run.direction !== undefined && !seen.has(run.direction) ? run.direction : '';
    seen.add(run.direction ?? '');
    return [{ points, label, ...dashOf(run) }];
  });
}

const extent = (points: readonly Point[], axis: 0 | 1) => points.map((point) => point[axis]);

/** The charts of a test: speed over time, speed over distance, and height over distance where heights are known. */
export function runCharts(test: RoadTest): Drawing[] {
  const along = new Map(test.runs.map((run) => [run, distances(run.stretch)]));
  const overTime = curves(test, (run) => run.stretch.map((one) => [one.time_s, kmh(one.speed_mps)]));
  const overRoad = curves(test, (run) =>
    run.stretch.map((one, at) => [along.get(run)?.[at] ?? 0, kmh(one.speed_mps)]),
  );
  const heights = curves(test, (run) =>
    run.stretch.flatMap((one, at): Point[] =>
      one.height_m === undefined ? [] : [[along.get(run)?.[at] ?? 0, one.height_m]],
    ),
  );
  const draw = (name: string, title: string, x: string, y: string, drawn: typeof overTime): Drawing[] => {
    const points = drawn.flatMap((one) => one.points);
    if (points.length === 0) return [];
    const [low, high] = [Math.min(0, ...extent(points, 1)), Math.max(...extent(points, 1))];
    return [
      chart({
        name: `${test.id}-${name}`,
        title: `${title}: ${test.title}`,
        desc: `${title}. ${y} from ${Math.round(low)} to ${Math.round(high)}, ${x} to ${Math.round(Math.max(...extent(points, 0)))}. The tables hold the figures.`,
        x: { label: x, max: Math.max(...extent(points, 0)) },
        y: { label: y, min: low, max: high > low ? high * 1.05 : low + 1 },
        curves: drawn,
      }),
    ];
  };
  return [
    ...draw('time', 'Speed against time', 'seconds', 'km/h', overTime),
    ...draw('distance', 'Speed against distance', 'metres', 'km/h', overRoad),
    ...draw('height', 'Height against distance', 'metres', 'metres above the start of the stretch', heights),
  ];
}
