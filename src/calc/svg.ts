/**
 * Pieces of a drawing as SVG text: presentation attributes and classes only, currentColor for every line, so that light,
 * dark and print follow the page; lengths rounded to 0.1 so that server and browser draw the same bytes.
 * A drawing is 340 units wide, the width of a narrow telephone, with 11-unit lettering.
 */
import type { Drawing } from './contract.ts';

export const WIDTH = 340;

export type Point = readonly [number, number];

/** A place on a drawing, or the hole for one (holes.ts). */
export type Place = number | string;

/** A coordinate to 0.1, without "-0". */
export const r1 = (x: Place): string => (typeof x === 'string' ? x : String(Math.round(x * 10) / 10 || 0));

/** A text as it may stand in markup, between tags and in an attribute alike. */
export const escaped = (text: string) =>
  text.replace(/&/g, '&amp;').replace(/</g, '&lt;').replace(/"/g, '&quot;');

/** Lettering; `anchor` is start, middle or end. On a rim of the page's own colour, so that a line behind does not strike it out. */
export const lettering = (x: Place, y: Place, text: string, anchor = 'start'): string =>
  `<text class="calc-label" x="${r1(x)}" y="${r1(y)}" text-anchor="${anchor}" fill="currentColor" stroke="Canvas" stroke-width="3" paint-order="stroke">${escaped(text)}</text>`;

/** A path; `more` are attributes as text, such as a dash or a width. */
export const path = (d: string, more = ''): string =>
  `<path d="${d}" fill="none" stroke="currentColor" ${more}/>`;

/** Straight from point to point, as a path's data. */
export const polyPath = (points: readonly (readonly [Place, Place])[]): string =>
  `M${points.map(([x, y]) => `${r1(x)} ${r1(y)}`).join('L')}`;

export const polyline = (points: readonly (readonly [Place, Place])[], more = ''): string =>
  path(polyPath(points), more);

/** A shape filled with the line's colour. */
export const solid = (d: string): string => `<path d="${d}" fill="currentColor"/>`;

export const circle = (cx: Place, cy: Place, r: number, fill = 'none'): string =>
  `<circle cx="${r1(cx)}" cy="${r1(cy)}" r="${r1(r)}" fill="${fill}" stroke="currentColor"/>`;

/** The whole drawing; title and description are for those who cannot see it. */
export function drawing(
  name: string,
  height: number,
  title: string,
  desc: string,
  body: readonly string[],
): Drawing {
  const [t, d] = [escaped(title), escaped(desc)];
  const svg = `<svg xmlns="http://www.w3.org/2000/svg" class="calc-drawing" viewBox="0 0 ${WIDTH} ${height}" role="img" aria-label="${t}" font-size="11"><title>${t}</title><desc>${d}</desc>${body.join('')}</svg>`;
  return { name, title, desc, svg };
}
