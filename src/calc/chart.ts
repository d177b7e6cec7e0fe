import type { Drawing } from './contract.ts';
import { circle, drawing, lettering, type Point, path, polyline, r1 } from './svg.ts';

export interface Axis {
  label: string;
  /** 0 where left out. */
  min?: number;
  max: number;
}

export interface Curve {
  points: readonly Point[];
  /** Stands at the curve's end, or where `labelAt` says. */
  label?: string;
  labelAt?: Point | undefined;
  dash?: string;
}

export interface Chart {
  name: string;
  title: string;
  desc: string;
  x: Axis;
  y: Axis;
  curves: readonly Curve[];
  /** Points that the answer stands on. */
  marks?: readonly { at: Point; label: string }[];
}

const [LEFT, RIGHT, TOP, BOTTOM, HEIGHT] = [40, 330, 24, 206, 242];

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

/** A line chart: axes with units in their labels, curves told apart by dash and by the word at their end. */
export function chart({ name, title, desc, x, y, curves, marks = [] }: Chart): Drawing {
  const scale = ({ min = 0, max }: Axis, from: number, to: number) => ({
    at: (v: number) => from + ((v - min) / (max - min || 1)) * (to - from),
    ticks: ticks(min, max, 5),
  });
  const [sx, sy] = [scale(x, LEFT, RIGHT), scale(y, BOTTOM, TOP)];
  const grid = 'stroke-opacity=".2"';
  const word = (v: number) => String(v).replace('-', '−');
  /** Beside a place, on the side where there is room. */
  const beside = (at: Point, text: string, down: number) => {
    const px = sx.at(at[0]);
    const end = px > RIGHT - 80;
    return lettering(
      px + (end ? -6 : 6),
      Math.max(sy.at(at[1]) + down, TOP - 2),
      text,
      end ? 'end' : 'start',
    );
  };
  return drawing(name, HEIGHT, title, desc, [
    ...sx.ticks.map((v) => path(`M${r1(sx.at(v))} ${TOP}V${BOTTOM}`, grid)),
    ...sy.ticks.map((v) => path(`M${LEFT} ${r1(sy.at(v))}H${RIGHT}`, grid)),
    path(`M${LEFT} ${TOP}V${BOTTOM}H${RIGHT}`),
    // A curve without points is a label alone.
    ...curves
      .filter(({ points }) => points.length > 0)
      .map(({ points, dash }) =>
        polyline(
          points.map(([a, b]) => [sx.at(a), sy.at(b)]),
          dash ? `stroke-dasharray="${dash}"` : 'stroke-width="2"',
        ),
      ),
    ...marks.map(({ at: [a, b] }) => circle(sx.at(a), sy.at(b), 3.5, 'currentColor')),
    ...sx.ticks.map((v) => lettering(Math.min(sx.at(v), 322), BOTTOM + 14, word(v), 'middle')),
    ...sy.ticks.map((v) => lettering(LEFT - 5, sy.at(v) + 4, word(v), 'end')),
    lettering(RIGHT, BOTTOM + 30, x.label, 'end'),
    lettering(4, 12, y.label),
    ...curves.map(({ points, label = '', labelAt = points.at(-1) }) =>
      labelAt ? beside(labelAt, label, -4) : '',
    ),
    ...marks.map(({ at, label }) => beside(at, label, 15)),
  ]);
}
