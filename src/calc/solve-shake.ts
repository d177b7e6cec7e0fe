import { chart } from './chart.ts';
import type { Answer, AnswerTable, Drawing, Output, Refusal, Values, WorkingLine } from './contract.ts';
import { reader, refusal, textOf } from './field-values.ts';
import { printer } from './print-figure.ts';
import { firingsPerTurn } from './solve-firing-speed.ts';
import { type Computed, spread } from './uncertainty.ts';
import { line, over, sign, times } from './working.ts';

const hertz = printer('frequency', 'Hz');

/** The ± taken, as a share, of a shake that was given without one; twice the joint ± still fits. */
const NEAR = 0.05;

/** Part, multiple, how it is called. Multiples that a fault of such a part commonly makes. */
const ORDERS = [
  ['wheel', 1, 'wheel, once a turn'],
  ['wheel', 2, 'wheel, twice a turn'],
  ['shaft', 1, 'shaft before the final drive, once a turn'],
  ['shaft', 2, 'that shaft, twice a turn'],
  ['chain', 1, 'chain, once round'],
  ['link', 1, 'chain links on the sprocket'],
  ['engine', 1, 'engine, once a turn'],
  ['engine', 2, 'engine, twice a turn'],
  ['firing', 1, 'engine, every firing'],
  ['firing', 0.5, 'engine, every second firing'],
] as const;

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

interface Match {
  says: string;
  f: number;
  /** Apart from what is felt, as a share of it. */
  off: number;
  fits: boolean;
}

function matches(values: Values, out: Record<string, Output>): Match[] {
  const v = reader(values);
  const felt = values['felt'];
  const doubt = typeof felt === 'object' && 'si' in felt ? (felt.pm ?? NEAR * felt.si) : 0;
  return ORDERS.flatMap(([part, k, says]) => {
    const o = out[part];
    if (!o) return [];
    const f = o.si * k;
    const pm = Math.hypot(doubt, (o.pm ?? 0) * k);
    return [{ says, f, off: f / v('felt') - 1, fits: Math.abs(f - v('felt')) <= 2 * pm }];
  }).sort((a, b) => a.f - b.f);
}

function table(found: readonly Match[], felt: number): AnswerTable {
  const asks = felt > 0;
  const heads = ['What turns', 'Hz', 'a minute', ...(asks ? ['against what is felt', 'fits'] : [])];
  return {
    name: 'parts',
    caption: 'What turns how often at this road speed',
    columns: heads.map((label, i) => ({ label, numeric: i > 0 && i < 4 })),
    rows: found.map(({ says, f, off, fits }) => [
      says,
      printer('frequency', 'Hz', 3, true)(f),
      printer('count', 'n', 3)(f * 60),
      ...(asks ? [printer('share', '%', 2)(off), fits ? 'yes' : ''] : []),
    ]),
  };
}

function working(values: Values, out: Record<string, Output>): WorkingLine[] {
  const v = reader(values);
  const Hz = (name: string, key: string) => sign(name, out[key]?.si ?? 0, 'frequency', 'Hz');
  const count = (name: string, x: number) => sign(name, x, 'count', 'n');
  const [w, s, e] = [Hz('f_w', 'wheel'), Hz('f_s', 'shaft'), Hz('f_e', 'engine')];
  const lines = [
    line(
      'Wheel',
      w,
      over(sign('v', v('road'), 'speed', 'm/s'), sign('U', v('circumference'), 'length', 'm')),
    ),
  ];
  if (out['link'])
    lines.push(
      line('Gearbox sprocket', s, times(w, over(count('z_2', v('axle')), count('z_1', v('sprocket'))))),
      line('Chain links', Hz('f_l', 'link'), times(s, count('z_1', v('sprocket')))),
    );
  else if (out['shaft'])
    lines.push(line('Shaft before the final drive', s, times(w, count('i', v('final')))));
  if (out['chain'])
    lines.push(
      line('Chain, once round', Hz('f_c', 'chain'), over(Hz('f_l', 'link'), count('m', v('links')))),
    );
  if (out['engine'])
    lines.push(line('Engine', e, times(s, count('g', v('gear')), count('p', v('primary', 1)))));
  return lines;
}

function picture(values: Values, out: Record<string, Output>): Drawing {
  const v = reader(values);
  const kmh = v('road') * 3.6;
  const most = kmh * 1.4;
  const felt = v('felt');
  const names = { wheel: 'wheel', shaft: 'shaft', chain: 'chain', engine: 'engine', firing: 'firing' };
  const lines = Object.entries(names).flatMap(([key, label]) => {
    const f = out[key]?.si ?? Number.NaN;
    return f > 0 ? [{ f, label }] : [];
  });
  const top = Math.max(felt > 0 ? felt * 1.8 : 0, (out['wheel']?.si ?? 0) * 2.2);
  return chart({
    name: 'speeds',
    title: 'What turns how often against road speed',
    desc: `Lines from nothing for ${lines.map(({ label }) => label).join(', ')}${felt > 0 ? `; the point is the shake of ${hertz(felt)}` : ''}.`,
    x: { label: 'km/h', max: most },
    y: { label: 'Hz', max: top },
    curves: lines.map(({ f, label }, i) => {
      const end = Math.min(most, (top * kmh) / f);
      return {
        points: [
          [0, 0],
          [end, (f * end) / kmh],
        ] as const,
        label,
        ...(i ? { dash: `${2 + 2 * i} 3` } : {}),
      };
    }),
    marks: felt > 0 ? [{ at: [kmh, felt], label: hertz(felt) }] : [],
  });
}

/**
 * What turns at the frequency of a shake, from road speed and gearing.
 * @returns refusals in plain words; ± carried to every output
 */
export function solve(values: Values): Answer | Refusal {
  const v = reader(values);
  const both = (a: string, b: string) =>
    textOf(values, 'drive') !== 'shaft' &&
    v(b) > 0 &&
    !(v(a) > 0) &&
    'The teeth of both sprockets are needed.';
  const refused = refusal({
    road: !(v('road') > 0) && 'The road speed is needed.',
    circumference:
      !(v('circumference') > 0) && 'The rolling circumference is needed: roll the wheel one turn.',
    sprocket: both('sprocket', 'axle'),
    axle: both('axle', 'sprocket'),
    links:
      v('links') <= v('sprocket', 0) + v('axle', 0) / 2 &&
      'A chain with so few links does not reach round these sprockets.',
  });
  if (refused) return refused;
  const outputs = spread(compute, values);
  const found = matches(values, outputs);
  const fits = found.filter((m) => m.fits).sort((a, b) => Math.abs(a.off) - Math.abs(b.off));
  const nearest = [...found].sort((a, b) => Math.abs(a.off) - Math.abs(b.off))[0];
  const felt = v('felt');
  const verdict = fits.length
    ? `A shake of ${hertz(felt)} fits: ${fits.map((m) => `${m.says} (${hertz(m.f)})`).join('; ')}.`
    : `Nothing that is counted here turns at ${hertz(felt)}; nearest is ${nearest?.says ?? 'nothing'} (${hertz(nearest?.f)}).`;
  return {
    ok: true,
    outputs,
    working: working(values, outputs),
    tables: [table(found, felt)],
    notes: [
      ...(felt > 0 ? [verdict] : ['Give the frequency of the shake to see what fits it.']),
      ...(fits.length > 1
        ? [
            'Several fit: try another road speed, another gear at the same speed, and coasting with the clutch out. What stays with the road speed is wheel or chain; what follows the engine is engine.',
          ]
        : []),
      'The figures name what turns, not what is wrong. A part may also shake at a frequency of its own, whatever turns.',
    ],
    drawings: [picture(values, outputs)],
  };
}
