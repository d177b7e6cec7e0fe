import { circle, drawing, lettering, type Point, path, polyline, WIDTH } from './svg.ts';

export interface Axis {
  label: string;
  min: number;
  max: number;
}

export interface Curve {
  points: readonly Point[];
  /** Stands at the curve's end, or where `labelAt` says. */
  label?: string;
  labelAt?: Point;
  dash?: string;
  width?: number;
}

export interface Chart {
  title: string;
  desc: string;
  x: Axis;
  y: Axis;
  curves: readonly Curve[];
  /** Points that the answer stands on. */
  marks?: readonly { at: Point; label: string }[];
  height?: number;
}

const LEFT = 40;
const RIGHT = 10;
const TOP = 24;
const BOTTOM = 36;

/**
 * Round steps that part an axis: 1, 2 or 5 times a power of ten.
 * @example
 * ticks(0, 10, 5).length // => 6
 */
export function ticks(min: number, max: number, about: number): readonly number[] {
  const rough = (max - min) / about;
  if (!(rough > 0)) return [min];
  const ten = 10 ** Math.floor(Math.log10(rough));
  const step = ten * (rough / ten < 1.5 ? 1 : rough / ten < 3.5 ? 2 : rough / ten < 7.5 ? 5 : 10);
  const first = Math.ceil(min / step - 1e-9);
  const last = Math.floor(max / step + 1e-9);
  return Array.from({ length: last - first + 1 }, (_, i) => Number(((first + i) * step).toPrecision(12)));
}

/** A number of an axis: as many places as its steps need, true minus. */
const tickText = (x: number) => String(x).replace('-', '\u2212');

/** A line chart: axes with units in their labels, curves told apart by dash and by the word at their end. */
export function chart({ title, desc, x, y, curves, marks = [], height = 230 }: Chart): string {
  const right = WIDTH - RIGHT;
  const bottom = height - BOTTOM;
  const spanX = x.max - x.min || 1;
  const spanY = y.max - y.min || 1;
  const px = (v: number) => LEFT + ((v - x.min) / spanX) * (right - LEFT);
  const py = (v: number) => bottom - ((v - y.min) / spanY) * (bottom - TOP);
  const body: string[] = [];
  for (const v of ticks(x.min, x.max, 5)) {
    body.push(path(`M${px(v).toFixed(1)} ${TOP}V${bottom}`, { 'stroke-opacity': 0.2, class: 'calc-grid' }));
    body.push(lettering(px(v), bottom + 14, tickText(v), 'middle'));
  }
  for (const v of ticks(y.min, y.max, 5)) {
    body.push(path(`M${LEFT} ${py(v).toFixed(1)}H${right}`, { 'stroke-opacity': 0.2, class: 'calc-grid' }));
    body.push(lettering(LEFT - 5, py(v) + 4, tickText(v), 'end'));
  }
  body.push(path(`M${LEFT} ${TOP}V${bottom}H${right}`, { class: 'calc-axis' }));
  body.push(lettering(right, bottom + 30, x.label, 'end'), lettering(4, 12, y.label));
  for (const { points, label, labelAt, dash, width = 1.6 } of curves) {
    const drawn = points.map(([a, b]): Point => [px(a), py(b)]);
    const more = { 'stroke-width': width, class: 'calc-curve', 'stroke-linejoin': 'round' };
    if (drawn.length > 1) body.push(polyline(drawn, dash ? { ...more, 'stroke-dasharray': dash } : more));
    const end = labelAt ?? points.at(-1);
    if (label && end) body.push(halo(px(end[0]), py(end[1]) - 4, label, right, px(end[0]) > right - 60));
  }
  for (const { at, label } of marks) {
    body.push(circle(px(at[0]), py(at[1]), 3.5, { fill: 'currentColor', class: 'calc-mark' }));
    body.push(halo(px(at[0]) + 7, py(at[1]) + 13, label, right, px(at[0]) > right - 90));
  }
  return drawing(height, title, desc, ...body);
}

/** Lettering over a line of the page's own colour, so that a curve behind it does not cross the word out. */
function halo(x: number, y: number, label: string, right: number, end: boolean): string {
  const at = end ? Math.min(x - 4, right) : x;
  const anchor = end ? 'end' : 'start';
  const around = { class: 'calc-label', 'paint-order': 'stroke', stroke: 'Canvas', 'stroke-width': 3 };
  return lettering(at, Math.max(y, TOP - 2), label, anchor, around);
}
