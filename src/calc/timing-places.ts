/** Where the parts of the timing's drawings stand; what is drawn there is declared in timing-drawings.ts. */
import type { FoundChart, FoundRows, Output } from './contract.ts';
import { type SliderCrank, travelAt } from './slider-crank.ts';
import { type Point, polyPath } from './svg.ts';

const DEG = Math.PI / 180;

/** Middle of the crank, radius of the rim, rod and crank in line. */
const [CX, CY, RIM, LONG] = [86, 222, 66, 168];

/** A place on a circle about the crank; the angle counts clockwise from the top. */
const on = (radius: number, at: number): Point => [CX + radius * Math.sin(at), CY - radius * Math.cos(at)];

const at = (out: Readonly<Record<string, Output>>): readonly [advance: number, travel: number] => [
  out['advance']?.si ?? 0,
  out['travel']?.si ?? 0,
];

/** Rod and crank in their true ratio; an offset larger than it is. */
export function crankPlaces(engine: SliderCrank, out: Readonly<Record<string, Output>>): FoundRows {
  const [a] = at(out);
  const ratio = Math.min(6, engine.rod_m / engine.radius_m);
  const e = 7 * Math.sign(engine.offset_m);
  const r = LONG / (1 + ratio);
  const [px, py] = on(r, Math.asin(e / LONG) - a);
  const gx = CX + e;
  const gy = py - Math.sqrt((r * ratio) ** 2 - (gx - px) ** 2);
  const crown = gy - 22;
  const top = CY - Math.sqrt(LONG ** 2 - e ** 2) - 22;
  const [tx, ty] = on(RIM - 15, -a);
  return {
    at: {
      px,
      py,
      gx,
      gy,
      crown,
      top,
      mark: polyPath([on(RIM - 8, -a), on(RIM, -a)]),
      tx,
      ty: ty + 4,
      topWords: top - 4,
      nowWords: Math.max(top + 11, crown + 4),
    },
  };
}

/** Travel against degrees, to a little beyond the answer. */
export function travelChart(engine: SliderCrank, out: Readonly<Record<string, Output>>): FoundChart {
  const [a, x] = at(out);
  const most = Math.min(170, Math.max(30, Math.ceil((a / DEG) * 0.13) * 10));
  const points = Array.from({ length: 41 }, (_, i): Point => {
    const before = (most * i) / 40;
    return [before, travelAt(engine, before * DEG) * 1e3];
  });
  return {
    x: { max: most },
    y: { max: points.at(-1)?.[1] ?? 1 },
    curves: [{ points }],
    marks: [{ at: [a / DEG, x * 1e3] }],
  };
}

/** The advance curve through the rows given. */
export function advanceChart(rows: readonly (readonly number[])[]): FoundChart {
  const points = rows.map(([speed = 0, a = 0]): Point => [(speed * 30) / Math.PI, a / DEG]);
  return {
    x: { max: points.at(-1)?.[0] ?? 1 },
    y: { max: Math.max(...points.map(([, a]) => a)) * 1.15 },
    curves: [{ points }],
    marks: points.map((point) => ({ at: point })),
  };
}
