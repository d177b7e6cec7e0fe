import { chart } from './chart.ts';
import type { Drawing, Output, Values } from './contract.ts';
import { reader } from './field-values.ts';
import { printer } from './print-figure.ts';
import { type SliderCrank, travelAt } from './slider-crank.ts';
import { circle, drawing, lettering, type Point, path, polyline, r1, solid } from './svg.ts';

const DEG = Math.PI / 180;
const deg = printer('angle', 'deg');
const mm = printer('length', 'mm');

/** Middle of the crank, radius of the rim, half the bore. */
const [CX, CY, RIM, WALL] = [86, 222, 66, 34];

/** A place on a circle about the crank; the angle counts clockwise from the top. */
const on = (radius: number, at: number): Point => [CX + radius * Math.sin(at), CY - radius * Math.cos(at)];

/**
 * Bore, piston, rod, crank and rim seen so that the crank turns clockwise, the crank at the angle of the answer.
 * Rod and crank keep their true ratio; an offset is drawn larger than it is.
 */
export function crankDrawing(
  values: Values,
  engine: SliderCrank,
  out: Readonly<Record<string, Output>>,
): Drawing {
  const [a = 0, x = 0] = [out['advance']?.si, out['travel']?.si];
  const ratio = Math.min(6, engine.rod_m / engine.radius_m);
  const e = 7 * Math.sign(engine.offset_m);
  const r = 168 / (1 + ratio);
  const [px, py] = on(r, Math.asin(e / 168) - a);
  const gx = CX + e;
  const gy = py - Math.sqrt((r * ratio) ** 2 - (gx - px) ** 2);
  const crown = gy - 22;
  const top = CY - Math.sqrt(168 ** 2 - e ** 2) - 22;
  const mark = (at: number, text: string, beside: number) => {
    const [lx, ly] = on(RIM - 15, beside);
    return (
      polyline([on(RIM - 8, at), on(RIM, at)], 'stroke-width="2"') + lettering(lx, ly + 4, text, 'middle')
    );
  };
  const [ax, ay] = on(50, 3);
  const offset = mm(reader(values)('offset', 0));
  const texts: [number, string][] = [
    [top - 4, 'crown at top dead centre'],
    [Math.max(top + 11, crown + 4), `now ${mm(x)} below it`],
    [92, e ? `pin offset ${offset} to the` : ''],
    [106, e ? (e < 0 ? 'thrust side' : 'side away from thrust') : ''],
    [168, `T comes ${deg(a)} later`],
    [182, out['arc'] ? `${mm(out['arc'].si)} along the rim` : ''],
    [208, 'F under the pointer: fire'],
    [222, 'T top dead centre'],
    [274, 'running direction'],
  ];
  const desc = `Crank turning clockwise, ${deg(a)} before top dead centre; the crown stands ${mm(x)} below its highest place. The thrust side is on the left.`;
  return drawing('crank', 300, 'Crank, piston and rim at the firing point', desc, [
    path(`M${CX - WALL} 16V128M${CX + WALL} 16V128`, 'stroke-width="2"'),
    path(`M${CX - WALL} ${r1(top)}H164M${CX + WALL} ${r1(crown)}H164`, 'stroke-dasharray="3 3"'),
    path(`M${CX - WALL + 3} ${r1(crown)}h62v44h-62z`, 'stroke-width="1.6"'),
    path(`M${CX} 8V294`, 'stroke-opacity=".45" stroke-dasharray="10 3 2 3"'),
    circle(gx, gy, 4),
    circle(CX, CY, RIM),
    polyline(
      [
        [gx, gy],
        [px, py],
        [CX, CY],
      ],
      'stroke-width="3.5" stroke-linejoin="round"',
    ),
    circle(px, py, 4, 'currentColor'),
    circle(CX, CY, 3, 'currentColor'),
    solid(`M${CX} ${CY - RIM}l-5 -11h10z`),
    mark(-a, 'T', -a),
    mark(0, 'F', 0.17),
    path(`M${on(50, 1.9).map(r1).join(' ')}A50 50 0 0 1 ${r1(ax)} ${r1(ay)}`),
    solid(`M${r1(ax - 4)} ${r1(ay)}l8 -5l1 8z`),
    lettering(4, 70, 'thrust'),
    lettering(4, 84, 'side'),
    ...texts.map(([y, text]) => lettering(168, y, text)),
  ]);
}

/** Travel against degrees: flat near the top, which is why the last degrees cannot be set by travel. */
export function travelChart(engine: SliderCrank, out: Readonly<Record<string, Output>>): Drawing {
  const [a = 0, x = 0] = [out['advance']?.si, out['travel']?.si];
  const most = Math.min(170, Math.max(30, Math.ceil((a / DEG) * 0.13) * 10));
  const points = Array.from({ length: 41 }, (_, i): Point => {
    const at = (most * i) / 40;
    return [at, travelAt(engine, at * DEG) * 1e3];
  });
  return chart({
    name: 'travel',
    title: 'Piston travel before top dead centre',
    desc: `At ${deg(a)} the piston is ${mm(x)} below the top. The curve is flat near the top.`,
    x: { label: 'degrees before top dead centre', max: most },
    y: { label: 'mm below the top', max: points.at(-1)?.[1] ?? 1 },
    curves: [{ points }],
    marks: [{ at: [a / DEG, x * 1e3], label: `${deg(a)}, ${mm(x)}` }],
  });
}

/** The advance curve as drawn through the rows given. */
export function advanceChart(rows: readonly (readonly number[])[]): Drawing {
  const points = rows.map(([speed = 0, a = 0]): Point => [(speed * 30) / Math.PI, a / DEG]);
  return chart({
    name: 'curve',
    title: 'Advance against engine speed',
    desc: `Straight lines through ${rows.map(([n, a]) => `${deg(a)} at ${printer('rotation', 'rpm', 4)(n)}`).join(', ')}.`,
    x: { label: 'rev/min', max: points.at(-1)?.[0] ?? 1 },
    y: { label: 'degrees before top dead centre', max: Math.max(...points.map(([, a]) => a)) * 1.15 },
    curves: [{ points }],
    marks: points.map((at) => ({ at, label: '' })),
  });
}
