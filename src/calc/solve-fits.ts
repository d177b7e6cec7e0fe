import type { Figure, Found, FoundChart, Output, Refusal, Values } from './contract.ts';
import { reader, refusal, textOf } from './field-values.ts';
import type { wrong } from './fits-says.ts';
import { GROWTH } from './growth-table.ts';
import type { Figures } from './holes.ts';
import { limitsOf } from './limits-and-fits.ts';
import type { Point } from './svg.ts';
import { type Computed, spread } from './uncertainty.ts';

/** Sizes are true at this temperature. Source: ISO 1:2022. */
const REFERENCE = 293.15;
/** Beyond it a bearing's steel begins to change: common practice, maker's figure first. */
const BEARING_LIMIT = 393.15;

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
  const size = v('size');
  const grows = (part: 'outer' | 'inner') => Number.isNaN(growthOf(values, part).si) && 'growth';
  return refusal<keyof typeof wrong>({
    size: !(size > 0) && 'size',
    fit: !!textOf(values, 'fit') && !fitOf(values) && (size > 0.12 ? 'large' : 'fit'),
    clearance: Number.isNaN(coldOf(values)) && v('gap') >= 0 && 'clearance',
    outerGrowth: grows('outer'),
    innerGrowth: grows('inner'),
  });
}

/** Clearance, or interference, for sentences that name the one or the other. */
const clear = (name: string, x = Number.NaN): Figures => (x < 0 ? { [`${name}Tight`]: -x } : { [name]: x });

const kindOf = (tightest: number, loosest: number) =>
  tightest >= 0 ? 'a clearance' : loosest <= 0 ? 'an interference' : 'a transition';

/** What the sentences and formulas say besides the outputs. */
function said(values: Values, out: Record<string, Output>): Figures {
  const v = reader(values);
  const room = v('room', REFERENCE);
  const { tightest, loosest, cold, hot, heatTo } = out;
  return {
    kind: tightest && loosest && kindOf(tightest.si, loosest.si),
    assumed: tightest !== undefined && Number.isNaN(v('clearance')),
    ...clear('from', tightest?.si),
    ...clear('upTo', loosest?.si),
    ...(hot && clear('coldNow', cold?.si)),
    ...(cold && clear('hotNow', hot?.si)),
    seizes: hot && cold && hot.si <= 0 && cold.si > 0,
    heats: heatTo && heatTo.si > room,
    tooHot: heatTo && heatTo.si + (heatTo.pm ?? 0) > BEARING_LIMIT,
    room,
    outerExpansion: v('a'),
    innerExpansion: v('b'),
    outerMillionths: v('a') * 1e6,
    innerMillionths: v('b') * 1e6,
    outerWarmer: v('outerHot', room) - room,
    innerWarmer: v('innerHot', room) - room,
    outerGrown: out['outerGrowth']?.si ?? 0,
    innerGrown: out['innerGrowth']?.si ?? 0,
    rise: heatTo && heatTo.si - room,
  };
}

/** Clearance against the temperature of the outer part, the inner one kept as it is. */
function heatChart(
  values: Values,
  out: Record<string, Output>,
): (FoundChart & { start: number }) | undefined {
  const v = reader(values);
  const { cold, hot, innerGrowth, heatTo } = out;
  if (!cold) return undefined;
  const room = v('room', REFERENCE);
  const now = v('outerHot', room);
  const end = Math.max(now, heatTo?.si ?? 0, room + 80) + 20;
  const clearance = (t: number) => cold.si + v('size') * v('a') * (t - room) - (innerGrowth?.si ?? 0);
  const at = (t: number): Point => [t - 273.15, clearance(t) * 1e6];
  const points = [at(room), at(end)];
  const ys = [...points.map(([, y]) => y), 0];
  const span = Math.max(...ys) - Math.min(...ys);
  return {
    start: clearance(room),
    x: { min: room - 273.15, max: end - 273.15 },
    y: { min: Math.min(...ys) - span * 0.15, max: Math.max(...ys) + span * 0.05 },
    curves: [{ points }],
    marks: [
      { at: at(now), here: (hot ?? cold).si, warm: now },
      ...(heatTo && heatTo.si > room ? [{ at: at(heatTo.si), warm: heatTo.si, only: 1 }] : []),
    ],
  };
}

/**
 * Fit of two parts by table, its growth with temperature, and how far to heat the outer one so that the inner drops in.
 * @returns refusals; ± carried to every output
 */
export function solve(values: Values): Found | Refusal {
  const refused = refuse(values);
  if (refused) return refused;
  const all: Values = { ...values, a: growthOf(values, 'outer'), b: growthOf(values, 'inner') };
  const outputs = spread(compute, all);
  const { holeLeast, holeMost, shaftLeast, shaftMost, tightest } = outputs;
  const heat = heatChart(all, outputs);
  return {
    ok: true,
    outputs,
    figures: { ...said(all, outputs), start: heat?.start },
    shown: {
      limits: tightest && {
        rows: [
          { low: holeLeast, high: holeMost },
          { low: shaftLeast, high: shaftMost, shaft: 1 },
        ],
      },
      heat,
    },
  };
}
