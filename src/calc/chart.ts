import { drawn } from './answer.ts';
import { chartBlock } from './chart-block.ts';
import { chartRows } from './chart-rows.ts';
import type { Drawing } from './contract.ts';
import type { Point } from './svg.ts';

export { ticks } from './chart-rows.ts';

export interface Axis {
  label: string;
  /** 0 where left out. */
  min?: number;
  max: number;
}

export interface Curve {
  points: readonly Point[];
  /** Stands at the curve's end, or where `labelAt` says. */
  label?: string | number;
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

/** A line chart with words of its own; those of calculators are declared in says.ts and drawn by the same code. */
export function chart({ name, title, desc, x, y, curves, marks = [] }: Chart): Drawing {
  const block = chartBlock({ name, title: '{title}', desc: '{desc}', x: '{across}', y: '{up}' });
  const figures = { title, desc, across: x.label, up: y.label };
  return {
    name,
    title,
    desc,
    svg: drawn(
      block,
      figures,
      chartRows({ x, y, curves: curves.map((one) => ({ ...one })), marks: marks.map((one) => ({ ...one })) }),
    ),
  };
}
