/** A chart's places: what stands where on it. How each is drawn is markup with holes, in chart-block.ts. */
import type { FoundChart } from './contract.ts';
import type { Figures } from './holes.ts';
import { type Point, polyPath } from './svg.ts';

/** The field that curves are drawn in. */
export const [LEFT, RIGHT, TOP, BOTTOM] = [40, 330, 24, 206];

/**
 * Round steps that part an axis: 1, 2 or 5 times a power of ten.
 * @example
 * ticks(0, 10, 5).length // => 6
 */
export function ticks(min: number, max: number, about: number): readonly number[] {
  const rough = (max - min) / about;
  if (!(rough > 0)) return [min];
  const ten = 10 ** Math.floor(Math.log10(rough));
  const step = ten * ([1, 2, 5].find((n) => rough / ten < n * 1.5) ?? 10);
  const first = Math.ceil(min / step - 1e-9);
  const count = Math.floor(max / step + 1e-9) - first + 1;
  return Array.from({ length: count }, (_, i) => Number(((first + i) * step).toPrecision(12)));
}

/** Grid first, then curves and points, then the words on top of them. */
export function chartRows({ x, y, curves, marks = [] }: FoundChart): Figures[] {
  const along =
    ({ min = 0, max }: FoundChart['x'], from: number, to: number) =>
    (v: number) =>
      from + ((v - min) / (max - min || 1)) * (to - from);
  const [atX, atY] = [along(x, LEFT, RIGHT), along(y, BOTTOM, TOP)];
  const steps = ({ min = 0, max }: FoundChart['x'], at: (v: number) => Figures) =>
    ticks(min, max, 5).map((v) => ({ ...at(v), tick: String(v).replace('-', '−') }));
  /** A word beside a place, on the side where there is room. */
  const beside = ([a, b]: Point, down: number) => {
    const px = atX(a);
    const end = px > RIGHT - 80;
    return {
      wordX: px + (end ? -6 : 6),
      wordY: Math.max(atY(b) + down, TOP - 2),
      anchor: end ? 'end' : 'start',
    };
  };
  return [
    ...steps(x, (v) => ({ gridX: atX(v), tickX: Math.min(atX(v), RIGHT - 8) })),
    ...steps(y, (v) => ({ gridY: atY(v), tickY: atY(v) + 4 })),
    ...curves
      // A curve without points is a label alone.
      .filter(({ points }) => points.length > 0)
      .map(({ points, dash }) => ({ curvePath: polyPath(points.map(([a, b]) => [atX(a), atY(b)])), dash })),
    ...marks.map(({ at: [a, b] }) => ({ markX: atX(a), markY: atY(b) })),
    ...curves.map(({ points, dash: _dash, label, labelAt = points.at(-1), ...figures }) => ({
      ...(figures as Figures),
      word: label,
      onCurve: 1,
      ...(labelAt && beside(labelAt, -4)),
    })),
    ...marks.map(({ at, label, ...figures }) => ({
      ...(figures as Figures),
      word: label,
      onMark: 1,
      ...beside(at, 15),
    })),
  ];
}
