import type { Output, Term, Values, WorkingLine } from './contract.ts';
import { reader, textOf } from './field-values.ts';
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

/** The formulas of the answer, in the order in which they are worked. */
export function timingWorking(
  values: Values,
  engine: SliderCrank,
  out: Readonly<Record<string, Output>>,
): WorkingLine[] {
  const v = reader(values);
  const known = textOf(values, 'known') ?? 'advance';
  const si = (name: string) => out[name]?.si ?? Number.NaN;
  const lines: WorkingLine[] = [];
  /** Leaves out what was not asked for. */
  const work = (says: string, is: WorkingLine['is'], formula: Term) => {
    if (Number.isFinite(is.si)) lines.push(line(says, is, formula));
  };
  const [r, l, e, x, d] = [
    length('r', engine.radius_m),
    length('l', engine.rod_m),
    length('e', engine.offset_m),
    length('x', si('travel')),
    length('d', v('rim')),
  ];
  const a = angle('α', si('advance'));
  const g = length('g', si('gauge'));
  const slant = angle('β', v('slant', 0));
  const dial = length('p', v('dial'));
  const turns = sign('n', si('dialTurns'), 'count', 'n', 4);
  const along = (of: Term) => over(times(num(Math.PI, 'π'), d, of), num(2 * Math.PI, '360°'));
  const arc = length('s', si('arc'));

  const topHeight = root(minus(power(add(r, l), 2), power(e, 2)));
  const top = angle('θ_0', topAngle(engine));
  const workTop = () => work('Crank at true top dead centre', top, arcsine(over(e, add(r, l))));

  if (known === 'turns') {
    const n = sign('n', v('turns'), 'count', 'n', 4);
    work('Gauge travel from the dial', g, add(times(n, dial), length('z', v('reading', 0))));
    if (slant.si) work('Piston travel from the slanted gauge', x, times(g, cosine(slant)));
  }
  if (known === 'arc')
    work('Degrees from the rim', a, over(times(num(2 * Math.PI, '360°'), arc), times(num(Math.PI, 'π'), d)));
  if (known === 'advance' || known === 'arc') {
    const crank = e.si ? angle('θ', top.si - a.si) : a;
    const swing = times(r, sine(crank));
    const rod = root(minus(power(l, 2), power(e.si ? minus(swing, e) : swing, 2)));
    if (e.si) {
      workTop();
      work('Crank from the bore axis', crank, minus(top, a));
    }
    work('Piston travel', x, minus(e.si ? topHeight : add(r, l), times(r, cosine(crank)), rod));
  } else {
    const height = Math.sqrt((r.si + l.si) ** 2 - e.si ** 2) - x.si;
    const h = length('h', height, 6);
    const D = length('D', Math.hypot(height, e.si), 6);
    const lean = angle('δ', Math.atan2(e.si, height));
    const phi = e.si ? angle('φ', a.si - top.si + lean.si) : a;
    if (e.si) {
      work('Height of the gudgeon pin', h, minus(topHeight, x));
      work('Crank centre to gudgeon pin', D, root(add(power(h, 2), power(e, 2))));
    } else work('Crank centre to gudgeon pin', D, minus(add(r, l), x));
    work(
      'Crank from that line',
      phi,
      arccosine(over(minus(add(power(r, 2), power(D, 2)), power(l, 2)), times(2, r, D))),
    );
    if (e.si) {
      work('That line from the bore axis', lean, arctangent(over(e, h)));
      workTop();
      work('Crank angle', a, minus(add(phi, top), lean));
    }
  }
  if (known !== 'arc') work('Distance along the rim', arc, along(a));
  if (known !== 'turns') {
    if (slant.si) work('Gauge travel in the slanted hole', g, over(x, cosine(slant)));
    work('Dial turns', turns, over(slant.si ? g : x, dial));
  }
  work(
    'Time before the top',
    sign('t', si('time'), 'time', 'ms'),
    over(a, sign('N', v('speed'), 'rotation', 'rpm')),
  );
  const half = length('h', si('half'));
  work('Half-way between the stop marks', half, over(length('g', 2 * si('half')), 2));
  if (e.si)
    work(
      'True top dead centre from the mark made coming up',
      length('u', si('fromFirst')),
      add(half, along(angle('τ', si('stopShift'), 3))),
    );
  if (si('lead')) work('Setting for cylinder 1', angle('α_1', si('reset')), minus(a, angle('ε', si('lead'))));
  return lines;
}
