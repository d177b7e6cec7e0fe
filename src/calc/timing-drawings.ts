import { chart } from './chart.ts';
import type { Drawing, Output, Values } from './contract.ts';
import { figureOf, textOf } from './field-values.ts';
import { printFigure } from './print-figure.ts';
import { type SliderCrank, travelAt } from './slider-crank.ts';
import { arc, arrowhead, circle, drawing, lettering, type Point, path, polyline } from './svg.ts';

const DEG = Math.PI / 180;
const deg = (si: number) => printFigure({ si }, 'angle', 'deg', 3);
const mm = (si: number) => printFigure({ si }, 'length', 'mm', 3);

/**
 * Bore, piston, rod, crank and rim seen so that the crank turns clockwise, the crank at the angle of the answer.
 * Rod and crank keep their true ratio; an offset is drawn larger than it is.
 */
export function crankDrawing(values: Values, out: Readonly<Record<string, Output>>): Drawing {
  const a = out['advance']?.si ?? 0;
  const x = out['travel']?.si ?? 0;
  const ratio = Math.min(6, (figureOf(values, 'rod') ?? 1) / ((figureOf(values, 'stroke') ?? 1) / 2));
  const offset = figureOf(values, 'offset') ?? 0;
  const thrust = textOf(values, 'side') === 'thrust';
  const [cx, cy] = [112, 222];
  const r = 168 / (1 + ratio);
  const e = offset ? (thrust ? -7 : 7) : 0;
  const top = Math.asin(e / (r * (1 + ratio)));
  const crank = top - a;
  const [px, py] = [cx + r * Math.sin(crank), cy - r * Math.cos(crank)];
  const gx = cx + e;
  const gy = py - Math.sqrt((r * ratio) ** 2 - (gx - px) ** 2);
  const gTop = cy - Math.sqrt((r * (1 + ratio)) ** 2 - e ** 2);
  const RIM = 66;
  const WALL = 34;
  const body = [
    // bore, crown at the top and now
    path(`M${cx - WALL} 16V128M${cx + WALL} 16V128`, { 'stroke-width': 2 }),
    path(`M${cx - WALL + 3} ${(gTop - 22).toFixed(1)}H205`, { 'stroke-dasharray': '3 3' }),
    path(`M${cx - WALL + 3} ${(gy - 22).toFixed(1)}h62v44h-62z`, { 'stroke-width': 1.6 }),
    path(`M${cx + WALL - 3} ${(gy - 22).toFixed(1)}H205`, { 'stroke-dasharray': '3 3' }),
    circle(gx, gy, 4),
    polyline(
      [
        [gx, gy],
        [px, py],
      ],
      { 'stroke-width': 4, 'stroke-linecap': 'round' },
    ),
    polyline(
      [
        [px, py],
        [cx, cy],
      ],
      { 'stroke-width': 2.5 },
    ),
    circle(px, py, 4, { fill: 'currentColor' }),
    circle(cx, cy, 3, { fill: 'currentColor' }),
    // bore axis through the crank centre
    path(`M${cx} 8V${cy + 78}`, { 'stroke-opacity': 0.45, 'stroke-dasharray': '10 3 2 3' }),
    // rim, fixed pointer, top-dead-centre mark
    circle(cx, cy, RIM),
    path(`M${cx} ${cy - RIM}l-5 -11h10z`, { fill: 'currentColor' }),
    mark(-a),
    mark(0),
    arc(cx, cy, RIM + 6, -a, 0),
    letter(-a, 'T'),
    letter(0.16, 'F'),
    // running direction
    arc(cx, cy, 50, 1.9, 3.0),
    arrowhead(cx + 50 * Math.sin(3.0), cy - 50 * Math.cos(3.0), 3.0 + Math.PI / 2),
    lettering(cx + 74, cy + 52, 'running direction'),
    lettering(cx - WALL - 4, 70, 'thrust', 'end'),
    lettering(cx - WALL - 4, 83, 'side', 'end'),
    lettering(210, gTop - 24, 'crown at top dead centre'),
    lettering(210, Math.max(gTop - 10, gy - 18), `now ${mm(x)} below it`),
    lettering(194, cy - 40, `${deg(a)} before top`),
    ...(out['arc'] ? [lettering(194, cy - 26, `${mm(out['arc'].si)} along the rim`)] : []),
    lettering(194, cy - 6, 'F now under the pointer: fire'),
    lettering(194, cy + 8, 'T top dead centre, still to come'),
    ...(e ? [lettering(gx + (e > 0 ? 8 : -8), gy + 40, 'pin offset', e > 0 ? 'start' : 'end')] : []),
  ];
  const offsetWords = offset
    ? ` The gudgeon pin is set ${mm(offset)} towards the ${thrust ? 'thrust side, left' : 'side away from thrust, right'}; it is drawn larger.`
    : '';
  const desc = `Crank turning clockwise, ${deg(a)} before top dead centre; the crown stands ${mm(x)} below its highest place.${offsetWords}`;
  const title = 'Crank, piston and rim at the firing point';
  return { name: 'crank', title, desc, svg: drawing(306, title, desc, ...body) };

  function on(radius: number, at: number): Point {
    return [cx + radius * Math.sin(at), cy - radius * Math.cos(at)];
  }
  function mark(at: number): string {
    return polyline([on(RIM - 7, at), on(RIM, at)], { 'stroke-width': 2 });
  }
  function letter(at: number, text: string): string {
    const [lx, ly] = on(RIM - 15, at);
    return lettering(lx, ly + 4, text, 'middle');
  }
}

/** Travel against degrees: flat near the top, which is why the last degrees cannot be set by travel. */
export function travelChart(engine: SliderCrank, out: Readonly<Record<string, Output>>): Drawing {
  const a = out['advance']?.si ?? 0;
  const most = Math.min(170, Math.max(30, Math.ceil((a / DEG) * 0.13) * 10));
  const points = Array.from({ length: 41 }, (_, i): Point => {
    const at = (most * i) / 40;
    return [at, travelAt(engine, at * DEG) * 1e3];
  });
  const x = (out['travel']?.si ?? 0) * 1e3;
  const title = 'Piston travel before top dead centre';
  const desc = `Travel in millimetres against crank degrees. At ${deg(a)} the piston is ${mm(x / 1e3)} below the top. The curve is flat near the top.`;
  const svg = chart({
    title,
    desc,
    x: { label: 'degrees before top dead centre', min: 0, max: most },
    y: { label: 'mm below the top', min: 0, max: points.at(-1)?.[1] ?? 1 },
    curves: [{ points }],
    marks: [{ at: [a / DEG, x], label: `${deg(a)}, ${mm(x / 1e3)}` }],
  });
  return { name: 'travel', title, desc, svg };
}

/** The advance curve as drawn through the rows given. */
export function advanceChart(rows: readonly (readonly number[])[]): Drawing {
  const points = rows.map(([speed = 0, a = 0]): Point => [(speed * 30) / Math.PI, a / DEG]);
  const title = 'Advance against engine speed';
  const desc = `Straight lines through ${points.map(([n, a]) => `${a.toFixed(1)}° at ${n.toFixed(0)} rev/min`).join(', ')}.`;
  const last = points.at(-1) ?? [1, 1];
  const svg = chart({
    title,
    desc,
    x: { label: 'rev/min', min: 0, max: last[0] },
    y: { label: 'degrees before top dead centre', min: 0, max: Math.max(...points.map(([, a]) => a)) * 1.15 },
    curves: [{ points }],
    marks: points.map((at) => ({ at, label: '' })),
  });
  return { name: 'curve', title, desc, svg };
}
