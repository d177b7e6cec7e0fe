import { ticks } from '../../calc/chart.ts';
import type { Drawing } from '../../calc/contract.ts';
import { circle, drawing, lettering, path, r1, solid } from '../../calc/svg.ts';
import type { Slope, SpeedPoint } from '../../record/road-tests/points.ts';
import type { RoadTest } from '../../record/road-tests/road-test.ts';

const [LEFT, RIGHT, TOP, BOTTOM, HEIGHT] = [40, 330, 24, 206, 264];

/** Marks differ by shape, so that they are told apart without colour. */
const MARKS: Record<Slope | 'not said', (x: number, y: number) => string> = {
  uphill: (x, y) => solid(`M${r1(x)} ${r1(y - 5)}l5 8.5h-10z`),
  downhill: (x, y) => solid(`M${r1(x)} ${r1(y + 5)}l5 -8.5h-10z`),
  level: (x, y) => solid(`M${r1(x - 4)} ${r1(y - 4)}h8v8h-8z`),
  'not said': (x, y) => circle(x, y, 3.5, 'Canvas'),
};
const markOf = (point: SpeedPoint) => point.slope ?? 'not said';

/** Single points over time, never joined; undefined where fewer than two have a time. */
export function pointChart(test: RoadTest): Drawing | undefined {
  const timed = test.points.flatMap((run) =>
    run.points.flatMap((point) => (point.time_s === undefined ? [] : [{ point, time: point.time_s }])),
  );
  const unit = timed[0]?.point.unit;
  const drawn = timed.filter(({ point }) => point.unit === unit);
  if (unit === undefined || drawn.length < 2) return undefined;
  const longest = Math.max(...drawn.map(({ time }) => time), 1);
  const minutes = longest > 180;
  const [endX, endY] = [
    (minutes ? longest / 60 : longest) * 1.04,
    Math.max(...drawn.map(({ point }) => point.value)) * 1.1,
  ];
  const sx = (time: number) => LEFT + ((minutes ? time / 60 : time) / endX) * (RIGHT - LEFT);
  const sy = (speed: number) => BOTTOM - (speed / endY) * (BOTTOM - TOP);
  const kinds = (Object.keys(MARKS) as (keyof typeof MARKS)[]).filter((kind) =>
    drawn.some(({ point }) => markOf(point) === kind),
  );
  const grid = 'stroke-opacity=".2"';
  const title = `Points as indicated: ${test.title}`;
  const desc = `${drawn.length} single points, ${unit} as indicated, over ${Math.round(longest)} seconds. Nothing is known between them. The table holds the figures.`;
  return drawing(`${test.id}-points`, HEIGHT, title, desc, [
    ...ticks(0, endX, 5).map((v) => {
      const x = LEFT + (v / endX) * (RIGHT - LEFT);
      return (
        path(`M${r1(x)} ${TOP}V${BOTTOM}`, grid) +
        lettering(Math.min(x, 322), BOTTOM + 14, String(v), 'middle')
      );
    }),
    ...ticks(0, endY, 5).map(
      (v) => path(`M${LEFT} ${r1(sy(v))}H${RIGHT}`, grid) + lettering(LEFT - 5, sy(v) + 4, String(v), 'end'),
    ),
    path(`M${LEFT} ${TOP}V${BOTTOM}H${RIGHT}`),
    ...drawn.map(({ point, time }) => MARKS[markOf(point)](sx(time), sy(point.value))),
    lettering(RIGHT, BOTTOM + 30, minutes ? 'minutes' : 'seconds', 'end'),
    lettering(4, 12, `${unit}, indicated`),
    ...kinds.map((kind, i) => {
      const x = LEFT + 6 + kinds.slice(0, i).reduce((sum, one) => sum + 30 + one.length * 6, 0);
      return MARKS[kind](x, 250) + lettering(x + 9, 254, kind);
    }),
  ]);
}
