import type { PictureMark } from '../../record/chapter/picture-marks.ts';

/** Width of the drawing in its own units; its height follows from the picture. */
export const ACROSS = 1000;
const HEAD = 34;
const HEAD_HALF_deg = 16;
/** From the shape to the middle of its figure, and from the figure to the picture's edge. */
const AWAY = 40;
const EDGE = 30;

export interface MarkShape {
  /** Ring or shaft, to be stroked. */
  line: string;
  /** Arrow's head, to be filled; a ring has none. */
  head?: string;
  /** Where the figure stands. */
  x: number;
  y: number;
}

const round = (value: number): number => Math.round(value * 10) / 10;

/** Shapes of the marks over a picture of these proportions, in order; every figure stands inside the picture. */
export function markShapes(marks: readonly PictureMark[], width: number, height: number): MarkShape[] {
  const down = (ACROSS * height) / width;
  const inside = (x: number, y: number) => ({
    x: round(Math.min(ACROSS - EDGE, Math.max(EDGE, x))),
    y: round(Math.min(down - EDGE, Math.max(EDGE, y))),
  });
  return marks.map((mark) => {
    const x = mark.x * ACROSS;
    const y = mark.y * down;
    if (mark.kind === 'circle') {
      const r = mark.radius * ACROSS;
      const line = `M${round(x - r)} ${round(y)}a${round(r)} ${round(r)} 0 1 0 ${round(2 * r)} 0a${round(r)} ${round(r)} 0 1 0 ${round(-2 * r)} 0Z`;
      // Up and to the right of the ring, or to its left where the picture ends.
      const side = x + (r + AWAY) * Math.SQRT1_2 > ACROSS - EDGE ? -1 : 1;
      const above = y - (r + AWAY) * Math.SQRT1_2 < EDGE ? -1 : 1;
      return {
        line,
        ...inside(x + side * (r + AWAY) * Math.SQRT1_2, y - above * (r + AWAY) * Math.SQRT1_2),
      };
    }
    const fromX = mark.fromX * ACROSS;
    const fromY = mark.fromY * down;
    const angle = Math.atan2(y - fromY, x - fromX);
    const wing = (turn: number) => {
      const at = angle + Math.PI + (turn * HEAD_HALF_deg * Math.PI) / 180;
      return `${round(x + HEAD * Math.cos(at))} ${round(y + HEAD * Math.sin(at))}`;
    };
    const shaftX = x - 0.8 * HEAD * Math.cos(angle);
    const shaftY = y - 0.8 * HEAD * Math.sin(angle);
    return {
      line: `M${round(fromX)} ${round(fromY)}L${round(shaftX)} ${round(shaftY)}`,
      head: `M${round(x)} ${round(y)}L${wing(1)}L${wing(-1)}Z`,
      ...inside(fromX - AWAY * Math.cos(angle), fromY - AWAY * Math.sin(angle)),
    };
  });
}
