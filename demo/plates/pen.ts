/** A sheet of paper and the strokes of a workshop manual's plates: outlines, hatching, centre lines, leaders, dimensions. */
import { letter } from './letters.ts';

export type Point = readonly [x: number, y: number];
/** Widths in units of a sheet 1600 long: outline, detail, and lines that are not part of the thing. */
export const HEAVY = 6;
export const MEDIUM = 3.6;
export const THIN = 2;
export const PAPER = '#fbfaf6';
export const INK = '#1d1f21';
const LETTER = 46;

export interface Stroke {
  /** Line width; 0 for none. */
  w?: number;
  /** "paper" hides what lies behind, "ink" is solid, a grey as a tint. */
  fill?: 'paper' | 'ink' | 'none' | string;
  dash?: string;
  /** Colour of the line; ink unless told. */
  ink?: string;
}

export const polar = (cx: number, cy: number, r: number, deg: number): Point => [
  cx + r * Math.cos((deg * Math.PI) / 180),
  cy + r * Math.sin((deg * Math.PI) / 180),
];
const n = (value: number): string => String(Math.round(value * 100) / 100);
export const along = (points: readonly Point[], close = false): string =>
  `M${points.map(([x, y]) => `${n(x)} ${n(y)}`).join('L')}${close ? 'Z' : ''}`;
export const box = (x: number, y: number, w: number, h: number, r = 0): string =>
  r === 0
    ? `M${n(x)} ${n(y)}h${n(w)}v${n(h)}h${n(-w)}Z`
    : `M${n(x + r)} ${n(y)}h${n(w - 2 * r)}a${r} ${r} 0 0 1 ${r} ${r}v${n(h - 2 * r)}a${r} ${r} 0 0 1 ${-r} ${r}h${n(2 * r - w)}a${r} ${r} 0 0 1 ${-r} ${-r}v${n(2 * r - h)}a${r} ${r} 0 0 1 ${r} ${-r}Z`;
export const ring = (cx: number, cy: number, r: number): string =>
  `M${n(cx - r)} ${n(cy)}a${n(r)} ${n(r)} 0 1 0 ${n(2 * r)} 0a${n(r)} ${n(r)} 0 1 0 ${n(-2 * r)} 0Z`;
export const sweep = (cx: number, cy: number, r: number, from: number, to: number): string => {
  const [x0, y0] = polar(cx, cy, r, from);
  const [x1, y1] = polar(cx, cy, r, to);
  return `M${n(x0)} ${n(y0)}A${n(r)} ${n(r)} 0 ${Math.abs(to - from) > 180 ? 1 : 0} ${to > from ? 1 : 0} ${n(x1)} ${n(y1)}`;
};

export class Sheet {
  readonly width: number;
  readonly height: number;
  readonly #marks: string[] = [];
  #clips = 0;

  constructor(shape: 'landscape' | 'portrait') {
    [this.width, this.height] = shape === 'landscape' ? [1600, 1200] : [1200, 1600];
  }

  path(d: string, { w = MEDIUM, fill = 'none', dash, ink = INK }: Stroke = {}): this {
    const colour = fill === 'paper' ? PAPER : fill === 'ink' ? INK : fill;
    this.#marks.push(
      `<path d="${d}" fill="${colour}" stroke="${w === 0 ? 'none' : ink}" stroke-width="${w}"${dash === undefined ? '' : ` stroke-dasharray="${dash}"`}/>`,
    );
    return this;
  }
  line(x0: number, y0: number, x1: number, y1: number, w = MEDIUM, dash?: string): this {
    return this.path(
      along([
        [x0, y0],
        [x1, y1],
      ]),
      dash === undefined ? { w } : { w, dash },
    );
  }
  poly(points: readonly Point[], stroke: Stroke = {}): this {
    return this.path(along(points, true), stroke);
  }
  circle(cx: number, cy: number, r: number, stroke: Stroke = {}): this {
    return this.path(ring(cx, cy, r), stroke);
  }
  box(x: number, y: number, w: number, h: number, stroke: Stroke & { r?: number } = {}): this {
    return this.path(box(x, y, w, h, stroke.r ?? 0), stroke);
  }
  /** Chain-dotted, past both ends as a centre line is drawn. */
  centre(x0: number, y0: number, x1: number, y1: number): this {
    return this.line(x0, y0, x1, y1, THIN, '34 9 7 9');
  }
  /** Cut metal: paper, hatching inside the outline, outline on top. Several sub-paths cut holes (even-odd). */
  cut(
    d: string,
    { angle = 45, gap = 13, w = MEDIUM }: { angle?: number; gap?: number; w?: number } = {},
  ): this {
    const id = `c${this.#clips++}`;
    const far = 2400;
    const lines: string[] = [];
    for (let at = -far; at <= far; at += gap) lines.push(`M${-far} ${at}H${far}`);
    this.#marks.push(
      `<clipPath id="${id}"><path d="${d}" clip-rule="evenodd"/></clipPath>`,
      `<path d="${d}" fill="${PAPER}" fill-rule="evenodd"/>`,
      `<g clip-path="url(#${id})"><path d="${lines.join('')}" transform="translate(${this.width / 2} ${this.height / 2}) rotate(${-angle})" stroke="${INK}" stroke-width="1.7" fill="none"/></g>`,
      `<path d="${d}" fill="none" stroke="${INK}" stroke-width="${w}"/>`,
    );
    return this;
  }
  /** Anything drawn by `draw`, seen only inside the outline. */
  within(d: string, draw: () => void): this {
    const id = `c${this.#clips++}`;
    this.#marks.push(`<clipPath id="${id}"><path d="${d}"/></clipPath><g clip-path="url(#${id})">`);
    draw();
    this.#marks.push('</g>');
    return this;
  }
  /** Anything drawn by `draw`, moved and turned. */
  placed(x: number, y: number, deg: number, draw: () => void, scale = 1): this {
    this.#marks.push(`<g transform="translate(${n(x)} ${n(y)}) rotate(${deg}) scale(${scale})">`);
    draw();
    this.#marks.push('</g>');
    return this;
  }
  letter(char: string, x: number, y: number, size = LETTER): this {
    this.#marks.push(letter(char, x, y, size));
    return this;
  }
  /** A thin line from the thing to its letter, with a dot on the thing and a pale edge so that it reads over hatching. */
  leader(char: string, from: Point, to: Point): this {
    const length = Math.hypot(to[0] - from[0], to[1] - from[1]) || 1;
    const stop: Point = [
      to[0] - ((to[0] - from[0]) / length) * 36,
      to[1] - ((to[1] - from[1]) / length) * 36,
    ];
    this.#marks.push(
      `<path d="${along([from, stop])}" stroke="${PAPER}" stroke-width="8" fill="none"/>`,
      `<path d="${along([from, stop])}" stroke="${INK}" stroke-width="${THIN}" fill="none"/>`,
      `<circle cx="${n(from[0])}" cy="${n(from[1])}" r="6.5" fill="${INK}" stroke="${PAPER}" stroke-width="2"/>`,
    );
    return this.letter(char, to[0], to[1]);
  }
  /** A filled head with its tip at (x, y), pointing along `deg`. */
  head(x: number, y: number, deg: number, size = 24): this {
    const a = polar(x, y, size, deg + 180 - 14);
    const b = polar(x, y, size, deg + 180 + 14);
    return this.poly([[x, y], a, b], { fill: 'ink', w: 0 });
  }
  arrow(x0: number, y0: number, x1: number, y1: number, w = MEDIUM): this {
    const deg = (Math.atan2(y1 - y0, x1 - x0) * 180) / Math.PI;
    const stop = polar(x1, y1, 18, deg + 180);
    return this.line(x0, y0, stop[0], stop[1], w).head(x1, y1, deg);
  }
  /** An arc with a head: the way something turns. */
  turn(cx: number, cy: number, r: number, from: number, to: number, w = MEDIUM): this {
    const way = to > from ? 1 : -1;
    const trim = ((18 / r) * 180) / Math.PI;
    const [x, y] = polar(cx, cy, r, to);
    return this.path(sweep(cx, cy, r, from, to - way * trim), { w }).head(x, y, to + way * (90 - trim / 2));
  }
  /** Dimension between two points, its line moved sideways by `offset`; extension lines leave a gap at the thing. */
  dim(char: string, a: Point, b: Point, offset: number, room = 30): this {
    const length = Math.hypot(b[0] - a[0], b[1] - a[1]) || 1;
    const [ux, uy] = [(b[0] - a[0]) / length, (b[1] - a[1]) / length];
    const [nx, ny] = [-uy, ux];
    const way = Math.sign(offset) || 1;
    const [p, q]: Point[] = [a, b].map(([x, y]): Point => [x + nx * offset, y + ny * offset]) as [
      Point,
      Point,
    ];
    if (p === undefined || q === undefined) return this;
    for (const [from, to] of [
      [a, p],
      [b, q],
    ] as const)
      this.line(
        from[0] + nx * 8 * way,
        from[1] + ny * 8 * way,
        to[0] + nx * 14 * way,
        to[1] + ny * 14 * way,
        THIN,
      );
    const deg = (Math.atan2(uy, ux) * 180) / Math.PI;
    if (length > 130) {
      const mid: Point = [(p[0] + q[0]) / 2, (p[1] + q[1]) / 2];
      this.line(p[0], p[1], mid[0] - ux * room, mid[1] - uy * room, THIN);
      this.line(mid[0] + ux * room, mid[1] + uy * room, q[0], q[1], THIN);
      return this.head(p[0], p[1], deg + 180)
        .head(q[0], q[1], deg)
        .letter(char, mid[0], mid[1], 42);
    }
    this.line(p[0] - ux * 60, p[1] - uy * 60, p[0], p[1], THIN).head(p[0], p[1], deg);
    this.line(q[0] + ux * 90, q[1] + uy * 90, q[0], q[1], THIN).head(q[0], q[1], deg + 180);
    return this.letter(char, q[0] + ux * 118, q[1] + uy * 118, 42);
  }
  svg(width: number, height: number): string {
    return `<svg xmlns="http://www.w3.org/2000/svg" width="${width}" height="${height}" viewBox="0 0 ${this.width} ${this.height}"><style>path{stroke-linejoin:round;stroke-linecap:round}.letter{fill:none;stroke:${INK};stroke-width:1.15}</style><rect width="100%" height="100%" fill="${PAPER}"/>${this.#marks.join('\n')}</svg>`;
  }
}
