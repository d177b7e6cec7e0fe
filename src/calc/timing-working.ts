import type { Output, Values, WorkingLine } from './contract.ts';
import { figureOf, textOf } from './field-values.ts';
import { type SliderCrank, topAngle } from './slider-crank.ts';
import {
  add,
  arccosine,
  arcsine,
  arctangent,
  cosine,
  line,
  minus,
  num,
  over,
  power,
  root,
  sign,
  sine,
  times,
} from './working.ts';

const length = (name: string, si: number, figures = 4) => sign(name, si, 'length', 'mm', figures);
const angle = (name: string, si: number, figures = 4) => sign(name, si, 'angle', 'deg', figures);
const FULL = num(2 * Math.PI, '360°');

/** The formulas of the answer, in the order in which they are worked. */
export function timingWorking(
  values: Values,
  engine: SliderCrank,
  out: Readonly<Record<string, Output>>,
): WorkingLine[] {
  const known = textOf(values, 'known') ?? 'advance';
  const si = (name: string) => out[name]?.si ?? Number.NaN;
  const r = length('r', engine.radius_m);
  const l = length('l', engine.rod_m);
  const e = length('e', engine.offset_m);
  const x = length('x', si('travel'));
  const a = angle('α', si('advance'));
  const rim = figureOf(values, 'rim');
  const d = length('d', rim ?? 0);
  const lines: WorkingLine[] = [];
  const gauge = length('g', si('gauge'));
  const slant = angle('β', figureOf(values, 'slant') ?? 0);
  const dial = length('p', figureOf(values, 'dial') ?? 0);
  if (known === 'turns') {
    const n = sign('n', figureOf(values, 'turns') ?? 0, 'count', 'n', 4);
    const left = length('z', figureOf(values, 'reading') ?? 0);
    lines.push(line('Gauge travel from the dial', gauge, add(times(n, dial), left)));
    if (slant.si) lines.push(line('Piston travel from the slanted gauge', x, times(gauge, cosine(slant))));
  }
  if (known === 'arc')
    lines.push(
      line('Degrees from the rim', a, over(times(FULL, length('s', si('arc'))), times(num(Math.PI, 'π'), d))),
    );
  if (known === 'advance' || known === 'arc') lines.push(...travelLines());
  else lines.push(...angleLines());
  if (rim && known !== 'arc')
    lines.push(
      line('Distance along the rim', length('s', si('arc')), over(times(num(Math.PI, 'π'), d, a), FULL)),
    );
  if (known !== 'turns') {
    if (slant.si) lines.push(line('Gauge travel in the slanted hole', gauge, over(x, cosine(slant))));
    if (dial.si)
      lines.push(
        line('Dial turns', sign('n', si('dialTurns'), 'count', 'n', 4), over(slant.si ? gauge : x, dial)),
      );
  }
  const speed = figureOf(values, 'speed');
  if (speed)
    lines.push(
      line(
        'Time before the top',
        sign('t', si('time'), 'time', 'ms', 4),
        over(a, sign('N', speed, 'rotation', 'rpm', 5)),
      ),
    );
  const g = figureOf(values, 'marks');
  if (g !== undefined && out['half']) {
    const half = length('h', si('half'));
    lines.push(line('Half-way between the stop marks', half, over(length('g', g), 2)));
    const shift = sign('τ', si('stopShift'), 'angle', 'deg', 3);
    if (e.si && rim)
      lines.push(
        line(
          'True top dead centre from the mark made coming up',
          length('u', si('fromFirst')),
          add(half, over(times(num(Math.PI, 'π'), d, shift), FULL)),
        ),
      );
  }
  if (out['reset'] && si('lead'))
    lines.push(line('Setting for cylinder 1', angle('α_1', si('reset')), minus(a, angle('ε', si('lead')))));
  return lines;

  function travelLines(): WorkingLine[] {
    const rodTerm = (swing: ReturnType<typeof sine>) => root(minus(power(l, 2), power(swing, 2)));
    if (!e.si)
      return [line('Piston travel', x, minus(add(r, l), times(r, cosine(a)), rodTerm(times(r, sine(a)))))];
    const top = angle('θ_0', topAngle(engine));
    const crank = angle('θ', top.si - a.si);
    return [
      line('Crank at true top dead centre', top, arcsine(over(e, add(r, l)))),
      line('Crank from the bore axis', crank, minus(top, a)),
      line(
        'Piston travel',
        x,
        minus(
          root(minus(power(add(r, l), 2), power(e, 2))),
          times(r, cosine(crank)),
          rodTerm(minus(times(r, sine(crank)), e)),
        ),
      ),
    ];
  }

  function angleLines(): WorkingLine[] {
    const triangle = (D: ReturnType<typeof length>) =>
      arccosine(over(minus(add(power(r, 2), power(D, 2)), power(l, 2)), times(2, r, D)));
    if (!e.si) {
      const D = length('D', r.si + l.si - x.si, 6);
      return [
        line('Crank centre to gudgeon pin', D, minus(add(r, l), x)),
        line('Crank angle', a, triangle(D)),
      ];
    }
    const h = length('h', Math.sqrt((r.si + l.si) ** 2 - e.si ** 2) - x.si, 6);
    const D = length('D', Math.hypot(h.si, e.si), 6);
    const top = angle('θ_0', topAngle(engine));
    const lean = angle('δ', Math.atan2(e.si, h.si));
    const phi = angle('φ', a.si - top.si + lean.si);
    return [
      line('Height of the gudgeon pin', h, minus(root(minus(power(add(r, l), 2), power(e, 2))), x)),
      line('Crank centre to gudgeon pin', D, root(add(power(h, 2), power(e, 2)))),
      line('Crank from that line', phi, triangle(D)),
      line('That line from the bore axis', lean, arctangent(over(e, h))),
      line('Crank at true top dead centre', top, arcsine(over(e, add(r, l)))),
      line('Crank angle', a, minus(add(phi, top), lean)),
    ];
  }
}
