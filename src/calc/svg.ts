/**
 * Pieces of a drawing as SVG text: presentation attributes and classes only, currentColor for every line, so that light,
 * dark and print follow the page; lengths rounded to 0.1 so that server and browser draw the same bytes.
 * A drawing is 340 units wide, the width of a narrow telephone, with 11-unit lettering.
 */

export const WIDTH = 340;

export type Point = readonly [number, number];
export type Attributes = Readonly<Record<string, string | number>>;

/** A coordinate to 0.1, without "-0". */
export const r1 = (x: number): string => String(Math.round(x * 10) / 10 || 0);

const escaped = (text: string) =>
  text.replace(/&/g, '&amp;').replace(/</g, '&lt;').replace(/>/g, '&gt;').replace(/"/g, '&quot;');

const attributes = (all: Attributes) =>
  Object.entries(all)
    .map(([name, value]) => ` ${name}="${typeof value === 'number' ? r1(value) : escaped(value)}"`)
    .join('');

const element = (name: string, all: Attributes, inner = '') =>
  inner ? `<${name}${attributes(all)}>${inner}</${name}>` : `<${name}${attributes(all)}/>`;

/** Lettering; `anchor` is start, middle or end. */
export const lettering = (
  x: number,
  y: number,
  text: string,
  anchor = 'start',
  more: Attributes = {},
): string => element('text', { x, y, 'text-anchor': anchor, fill: 'currentColor', ...more }, escaped(text));

const STROKE: Attributes = { fill: 'none', stroke: 'currentColor' };

export const polyline = (points: readonly Point[], more: Attributes = {}): string =>
  element('path', { d: `M${points.map(([x, y]) => `${r1(x)} ${r1(y)}`).join('L')}`, ...STROKE, ...more });

export const path = (d: string, more: Attributes = {}): string => element('path', { d, ...STROKE, ...more });

export const circle = (cx: number, cy: number, r: number, more: Attributes = {}): string =>
  element('circle', { cx, cy, r, ...STROKE, ...more });

/** An arc of a circle from one angle to another; radians, clockwise from the top. */
export function arc(
  cx: number,
  cy: number,
  r: number,
  from: number,
  to: number,
  more: Attributes = {},
): string {
  const at = (a: number) => `${r1(cx + r * Math.sin(a))} ${r1(cy - r * Math.cos(a))}`;
  const large = Math.abs(to - from) > Math.PI ? 1 : 0;
  return path(`M${at(from)}A${r1(r)} ${r1(r)} 0 ${large} ${to > from ? 1 : 0} ${at(to)}`, more);
}

/** An arrowhead whose tip is at (x, y), pointing along `angle`; radians, clockwise from the top. */
export function arrowhead(x: number, y: number, angle: number, size = 7): string {
  const corner = (turn: number) =>
    `${r1(x - size * Math.sin(angle + turn))} ${r1(y + size * Math.cos(angle + turn))}`;
  return path(`M${r1(x)} ${r1(y)}L${corner(0.4)}L${corner(-0.4)}Z`, { fill: 'currentColor', stroke: 'none' });
}

/** The whole drawing; title and description are for those who cannot see it. */
export function drawing(height: number, title: string, desc: string, ...body: readonly string[]): string {
  const head = {
    xmlns: 'http://www.w3.org/2000/svg',
    viewBox: `0 0 ${WIDTH} ${r1(height)}`,
    role: 'img',
    class: 'calc-drawing',
    'font-size': 11,
    'aria-label': title,
  };
  return element(
    'svg',
    head,
    element('title', {}, escaped(title)) + element('desc', {}, escaped(desc)) + body.join(''),
  );
}
