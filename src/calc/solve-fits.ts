import { chart } from './chart.ts';
import type {
  Answer,
  AnswerTable,
  Drawing,
  Figure,
  Output,
  Refusal,
  Values,
  WorkingLine,
} from './contract.ts';
import { reader, refusal, textOf } from './field-values.ts';
import { HOLES, limitsOf, SHAFTS } from './limits-and-fits.ts';
import { printer } from './print-figure.ts';
import type { Point } from './svg.ts';
import { type Computed, spread } from './uncertainty.ts';
import { add, line, minus, over, sign, times } from './working.ts';

const mm = printer('length', 'mm', 5);
const um = printer('length', 'um', 3);
const celsius = printer('temperature', 'degC');
/** Sizes are true at this temperature. Source: ISO 1:2022. */
const REFERENCE = 293.15;
/** Beyond it a bearing's steel begins to change: common practice, maker's figure first. */
const BEARING_LIMIT = 393.15;

/** Millionths a kelvin, with what alloys of the name differ by; 20 to 150 °C. Handbook figures, from memory. */
const GROWTH: Readonly<Record<string, readonly [number, number]>> = {
  steel: [11.7, 0.6],
  iron: [10.5, 0.6],
  aluminium: [22.5, 1.5],
  piston: [20, 1.5],
  brass: [19, 1],
  bronze: [18, 0.7],
  magnesium: [26, 1],
};

/** Growth of a part a kelvin, with its ±. */
function growthOf(values: Values, part: 'outer' | 'inner'): Figure {
  const own = values[`${part}Growth`];
  if (typeof own === 'object' && 'si' in own)
    return own.pm ? { si: own.si * 1e-6, pm: own.pm * 1e-6 } : { si: own.si * 1e-6 };
  const [si, pm] = GROWTH[textOf(values, part) ?? ''] ?? [Number.NaN, 0];
  return { si: si * 1e-6, pm: pm * 1e-6 };
}

interface Fit {
  hole: readonly [number, number];
  shaft: readonly [number, number];
}

function fitOf(values: Values): Fit | undefined {
  const [, hole = '', shaft = ''] =
    /^([A-Z]\d+)\s*\/?\s*([a-z]+\d+)$/.exec((textOf(values, 'fit') ?? '').trim()) ?? [];
  const size = reader(values)('size');
  const [h, s] = [limitsOf(hole, size), limitsOf(shaft, size)];
  return h && s && /^[A-Z]/.test(hole) ? { hole: h, shaft: s } : undefined;
}

/** As measured, else the tightest that the fit allows. */
const coldOf = (values: Values) => {
  const fit = fitOf(values);
  return reader(values)('clearance', fit ? fit.hole[0] - fit.shaft[1] : Number.NaN);
};

function compute(values: Values): Computed {
  const v = reader(values);
  const [size, room] = [v('size'), v('room', REFERENCE)];
  const grows = (part: string, to: number) => size * v(part) * (to - room);
  const [outer, inner] = [grows('a', v('outerHot', room)), grows('b', v('innerHot', room))];
  const cold = coldOf(values);
  const fit = fitOf(values);
  const want = v('gap') - cold + inner;
  return {
    outerGrowth: Number.isNaN(v('outerHot')) ? undefined : outer,
    innerGrowth: Number.isNaN(v('innerHot')) ? undefined : inner,
    cold,
    hot: Number.isNaN(v('outerHot', v('innerHot'))) ? undefined : cold + outer - inner,
    heatTo: room + want / (size * v('a')),
    heatBy: want / (size * v('a')),
    holeLeast: fit && size + fit.hole[0],
    holeMost: fit && size + fit.hole[1],
    shaftLeast: fit && size + fit.shaft[0],
    shaftMost: fit && size + fit.shaft[1],
    tightest: fit && fit.hole[0] - fit.shaft[1],
    loosest: fit && fit.hole[1] - fit.shaft[0],
  };
}

function refuse(values: Values): Refusal | undefined {
  const v = reader(values);
  const text = textOf(values, 'fit');
  const size = v('size');
  const cold = coldOf(values);
  return refusal({
    size: !(size > 0) && 'The size is needed.',
    fit:
      !!text &&
      !fitOf(values) &&
      (size > 0.12
        ? 'The table ends at 120 mm.'
        : `Write hole and shaft, such as H7/k6: holes ${HOLES.join(', ')}; shafts ${SHAFTS.join(', ')}.`),
    clearance:
      Number.isNaN(cold) &&
      v('gap') >= 0 &&
      'The fit, or the clearance cold, is needed; minus for interference.',
    outerGrowth: Number.isNaN(growthOf(values, 'outer').si) && 'Its growth is needed.',
    innerGrowth: Number.isNaN(growthOf(values, 'inner').si) && 'Its growth is needed.',
  });
}

const clear = (x: number) => (x < 0 ? `${um(-x)} of interference` : `${um(x)} of clearance`);

function notes(values: Values, out: Record<string, Output>): string[] {
  const v = reader(values);
  const { tightest, loosest, cold, hot, heatTo } = out;
  const kind =
    (tightest?.si ?? 0) >= 0 ? 'clearance' : (loosest?.si ?? 0) <= 0 ? 'interference' : 'transition';
  const said = [
    tightest &&
      loosest &&
      `${textOf(values, 'fit')} at ${mm(v('size'))} is ${kind[0] === 'i' ? 'an' : 'a'} ${kind} fit: from ${clear(tightest.si)} to ${clear(loosest.si)}.`,
    tightest &&
      Number.isNaN(v('clearance')) &&
      'What follows takes the tightest pair that the fit allows; measured parts tell better.',
    tightest &&
      'A bearing’s own rings are made to the bearing standard, not to these classes: take its measured size.',
    cold && hot && `Cold ${clear(cold.si)}, at these temperatures ${clear(hot.si)}.`,
    hot && cold && hot.si <= 0 && cold.si > 0 && 'It would seize: the clearance is used up.',
    heatTo &&
      (heatTo.si <= v('room', REFERENCE)
        ? 'It goes in cold.'
        : `Heat the outer part right through to ${celsius(heatTo)}: the inner drops in with ${um(v('gap'))} to spare, for as long as both keep their temperatures.`),
    heatTo &&
      heatTo.si + (heatTo.pm ?? 0) > BEARING_LIMIT &&
      'That is above about 120 °C, where bearings and hardened alloys begin to change (common practice): ask the maker, chill the inner part, or press it.',
    'A piston is not one temperature: its crown grows most, so pistons are turned tapered and oval. The maker’s clearance comes first.',
  ];
  return said.filter((note) => typeof note === 'string');
}

function working(values: Values, out: Record<string, Output>): WorkingLine[] {
  const v = reader(values);
  const size = sign('D', v('size'), 'length', 'mm', 5);
  const alpha = (name: string, si: number) => ({
    ...sign(name, si, 'count', 'n'),
    figure: `${(si * 1e6).toFixed(1)}\u00a0×\u00a010⁻⁶/K`,
  });
  const kelvin = (name: string, to: string) =>
    sign(name, v(to, v('room', REFERENCE)) - v('room', REFERENCE), 'temperature step', 'K');
  const u = (name: string, si: number) => sign(name, si, 'length', 'um', 4);
  const [a, b] = [alpha('α_o', v('a')), alpha('α_i', v('b'))];
  const [go, gi] = [u('g_o', out['outerGrowth']?.si ?? 0), u('g_i', out['innerGrowth']?.si ?? 0)];
  const lines = [
    line('Outer part grows', go, times(size, a, kelvin('ΔT_o', 'outerHot'))),
    line('Inner part grows', gi, times(size, b, kelvin('ΔT_i', 'innerHot'))),
  ];
  const { cold, hot, heatTo } = out;
  if (cold) {
    const c = u('c', cold.si);
    if (hot) lines.push(line('Clearance then', u('c_h', hot.si), minus(add(c, go), gi)));
    if (heatTo) {
      const rise = sign('ΔT', heatTo.si - v('room', REFERENCE), 'temperature step', 'K');
      lines.push(
        line('To heat the outer part by', rise, over(minus(add(u('s', v('gap')), gi), c), times(size, a))),
      );
    }
  }
  return lines;
}

function tables(out: Record<string, Output>): AnswerTable[] {
  if (!out['tightest']) return [];
  const row = (name: string, least: string, most: string) => [name, mm(out[least]), mm(out[most])];
  const caption = 'Limits by table, at 20 °C';
  const columns = ['Part', 'Least', 'Most'].map((label, i) => ({ label, numeric: i > 0 }));
  return [
    {
      name: 'limits',
      caption,
      columns,
      rows: [row('Hole', 'holeLeast', 'holeMost'), row('Shaft', 'shaftLeast', 'shaftMost')],
    },
  ];
}

/** Clearance against the temperature of the outer part, the inner one kept as it is. */
function heatChart(values: Values, out: Record<string, Output>): Drawing[] {
  const v = reader(values);
  const { cold, hot, innerGrowth, heatTo } = out;
  if (!cold) return [];
  const room = v('room', REFERENCE);
  const now = v('outerHot', room);
  const end = Math.max(now, heatTo?.si ?? 0, room + 80) + 20;
  const at = (t: number): Point => [
    t - 273.15,
    (cold.si + v('size') * v('a') * (t - room) - (innerGrowth?.si ?? 0)) * 1e6,
  ];
  const points = [at(room), at(end)];
  const ys = [...points.map(([, y]) => y), 0];
  const span = Math.max(...ys) - Math.min(...ys);
  const marks = [{ at: at(now), label: `${um((hot ?? cold).si)} at ${celsius(now)}` }];
  if (heatTo && heatTo.si > room) marks.push({ at: at(heatTo.si), label: celsius(heatTo.si) });
  return [
    chart({
      name: 'heat',
      title: 'Clearance against the temperature of the outer part',
      desc: `Rises straight from ${um(points[0]?.[1] === undefined ? cold.si : points[0][1] * 1e-6)} at ${celsius(room)}.`,
      x: { label: 'outer part, °C', min: room - 273.15, max: end - 273.15 },
      y: { label: 'µm of clearance', min: Math.min(...ys) - span * 0.15, max: Math.max(...ys) + span * 0.05 },
      curves: [{ points }],
      marks,
    }),
  ];
}

/**
 * Fit of two parts by table, its growth with temperature, and how far to heat the outer one so that the inner drops in.
 * @returns refusals in plain words; ± carried to every output
 */
export function solve(values: Values): Answer | Refusal {
  const refused = refuse(values);
  if (refused) return refused;
  const all: Values = { ...values, a: growthOf(values, 'outer'), b: growthOf(values, 'inner') };
  const outputs = spread(compute, all);
  return {
    ok: true,
    outputs,
    working: working(all, outputs),
    tables: tables(outputs),
    notes: notes(values, outputs),
    drawings: heatChart(all, outputs),
  };
}
