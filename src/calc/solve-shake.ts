import type { Found, FoundChart, Output, Refusal, Values } from './contract.ts';
import { reader, refusal, textOf } from './field-values.ts';
import type { wrong } from './shake-says.ts';
import { firingsPerTurn } from './solve-firing-speed.ts';
import { type Computed, spread } from './uncertainty.ts';

/** The ± taken, as a share, of a shake that was given without one; twice the joint ± still fits. */
const NEAR = 0.05;

/** Part and multiple of its turns; an empty multiple is one. */
const ORDERS = 'wheel wheel2 shaft shaft2 chain link engine engine2 firing firing0.5'.split(' ');

/**
 * Turns of a wheel in a second.
 * @example
 * wheelTurns(12.32, 1.232) // => 10 Hz
 */
export const wheelTurns = (speed_ms: number, circumference_m: number): number => speed_ms / circumference_m;

/** Frequencies of all parts, Hz; not a number where a figure for one is not given. */
function compute(values: Values): Computed {
  const v = reader(values);
  const chained = textOf(values, 'drive') !== 'shaft';
  const wheel = wheelTurns(v('road'), v('circumference'));
  const shaft = wheel * (chained ? v('axle') / v('sprocket') : v('final'));
  const link = chained ? shaft * v('sprocket') : Number.NaN;
  const engine = shaft * v('gear') * v('primary', 1);
  const firing = engine * firingsPerTurn(v('cylinders'), Number(textOf(values, 'strokes') ?? 4));
  return { wheel, shaft, link, chain: link / v('links'), engine, firing };
}

/** Every order at this road speed, slowest first, beside what is felt. */
function matches(values: Values, out: Record<string, Output>) {
  const asked = reader(values)('felt');
  const felt = values['felt'];
  const doubt = typeof felt === 'object' && 'si' in felt ? (felt.pm ?? NEAR * felt.si) : 0;
  return ORDERS.flatMap((is) => {
    const [, part = '', k] = /^([a-z]+)(.*)$/.exec(is) ?? [];
    const o = out[part];
    if (!o) return [];
    const times = Number(k || 1);
    const f = o.si * times;
    const pm = Math.hypot(doubt, (o.pm ?? 0) * times);
    const fit = Math.abs(f - asked) <= 2 * pm;
    return [{ is, f, minute: f * 60, off: f / asked - 1, fit }];
  }).sort((a, b) => a.f - b.f);
}

const PARTS = ['wheel', 'shaft', 'chain', 'engine', 'firing'];

/** Frequency against road speed: a line from nothing for each part. */
function picture(values: Values, out: Record<string, Output>): FoundChart {
  const v = reader(values);
  const kmh = v('road') * 3.6;
  const most = kmh * 1.4;
  const felt = v('felt', 0);
  const top = Math.max(felt * 1.8, (out['wheel']?.si ?? 0) * 2.2);
  const shown = PARTS.filter((part) => out[part]);
  return {
    x: { max: most },
    y: { max: top },
    curves: shown.map((label, i) => {
      const f = out[label]?.si ?? Number.NaN;
      const end = Math.min(most, (top * kmh) / f);
      return {
        label,
        points: [
          [0, 0],
          [end, (f * end) / kmh],
        ],
        ...(i && { dash: `${2 + 2 * i} 3` }),
      };
    }),
    marks: felt > 0 ? [{ at: [kmh, felt] }] : [],
  };
}

/**
 * What turns at the frequency of a shake, from road speed and gearing.
 * @returns refusals; ± carried to every output
 */
export function solve(values: Values): Found | Refusal {
  const v = reader(values);
  const both = (a: string, b: string) =>
    textOf(values, 'drive') !== 'shaft' && v(b) > 0 && !(v(a) > 0) && 'teeth';
  const refused = refusal<keyof typeof wrong>({
    road: !(v('road') > 0) && 'road',
    circumference: !(v('circumference') > 0) && 'circumference',
    sprocket: both('sprocket', 'axle'),
    axle: both('axle', 'sprocket'),
    links: v('links') <= v('sprocket', 0) + v('axle', 0) / 2 && 'links',
  });
  if (refused) return refused;
  const outputs = spread(compute, values);
  const parts = matches(values, outputs);
  const nearest = [...parts].sort((a, b) => Math.abs(a.off) - Math.abs(b.off));
  const fits = nearest.filter(({ fit }) => fit);
  return {
    ok: true,
    outputs,
    figures: { several: fits.length > 1, primary: v('primary', 1) },
    lists: {
      fits,
      nearest: nearest.slice(0, 1),
      parts: PARTS.flatMap((part) => (outputs[part] ? { part } : [])),
    },
    shown: { parts: { rows: parts }, speeds: picture(values, outputs) },
  };
}
