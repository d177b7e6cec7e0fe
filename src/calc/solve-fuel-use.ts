import { type Curve, chart } from './chart.ts';
import type { Answer, AnswerTable, Drawing, Output, Refusal, Values, WorkingLine } from './contract.ts';
import { reader, refusal, rowsOf, textOf } from './field-values.ts';
import { printer } from './print-figure.ts';
import type { Point } from './svg.ts';
import { type Computed, spread } from './uncertainty.ts';
import { fromSi } from './units.ts';
import { line, minus, over, sign, times } from './working.ts';

const use = printer('use', 'L/100km');
const few = printer('use', 'L/100km', 2);
const litres = printer('volume', 'L');
const km = printer('length', 'km');
/** A use as it is plotted, L/100 km. */
const plotted = (si: number) => fromSi(si, 'use', 'L/100km');

const fillsOf = (values: Values) => (textOf(values, 'known') === 'use' ? [] : rowsOf(values, 'fills'));

/**
 * Use over several fills: all the fuel over all the distance, m³/m. The mean of the single figures is another thing.
 * @example
 * joined([[100e3, 0.005], [100e3, 0.01]]) // => 7.5e-8 m³/m
 */
export function joined(fills: readonly (readonly number[])[]): number {
  const sum = (j: number) => fills.reduce((total, row) => total + (row[j] ?? 0), 0);
  return sum(1) / sum(0);
}

function compute(values: Values): Computed {
  const v = reader(values);
  const fills = fillsOf(values);
  const counted = v('odometer', 1);
  const distance = fills.reduce((total, [d = 0]) => total + d, 0) * counted;
  const fuel = fills.reduce((total, [, f = 0]) => total + f, 0);
  // What was filled short at the start was drunk on the way; what was filled short at the end was not filled in.
  const brims = v('first', 0) - v('last', 0);
  const rate = fills.length ? (fuel + brims) / distance : v('use');
  const found: Record<string, number> = {
    use: rate,
    distance: distance || Number.NaN,
    fuel: fuel || Number.NaN,
    range: v('tank') / rate,
    toReserve: (v('tank') - v('reserve', 0)) / rate,
    left: (v('now') - v('reserve', 0)) / rate,
    takes: v('trip') * rate,
  };
  for (const [i, [d = 0, f = 0]] of fills.entries()) found[`use_${i}`] = (f + brims) / (d * counted);
  return found;
}

function table(values: Values, out: Record<string, Output>): AnswerTable[] {
  const fills = fillsOf(values);
  if (!fills.length) return [];
  const heads = ['Fill', 'km', 'L', 'L/100 km', 'km/L', 'mpg (imp)', 'mpg (US)'];
  const units = ['L/100km', 'km/L', 'imp mpg', 'US mpg'] as const;
  const rates = (o: Output | undefined) => units.map((unit) => printer('use', unit, 3, true)(o));
  const bare = { km: printer('length', 'km', 4, true), L: printer('volume', 'L', 4, true) };
  return [
    {
      name: 'fills',
      caption: 'Fill by fill',
      columns: heads.map((label, i) => ({ label, numeric: i > 0 })),
      rows: [
        ...fills.map(([d, f], i) => [String(i + 1), bare.km(d), bare.L(f), ...rates(out[`use_${i}`])]),
        ['all', bare.km(out['distance']), bare.L(out['fuel']), ...rates(out['use'])],
      ],
    },
  ];
}

function notes(values: Values, out: Record<string, Output>): string[] {
  const v = reader(values);
  const singles = fillsOf(values).flatMap((_, i) => out[`use_${i}`] ?? []);
  const ends = singles.map((o) => o.si);
  const wide = Math.max(...singles.map((o) => o.pm ?? 0));
  const apart = Math.max(...ends) - Math.min(...ends);
  const said = [
    singles.length > 1 &&
      'Joined is all the fuel over all the distance; the mean of the single figures would give short trips too much weight.',
    singles.length > 1 &&
      wide > 0 &&
      (apart > 3 * wide
        ? `The fills differ by ${few(apart)}, more than filling explains: load, road, weather, or a leak. Look under it.`
        : `The fills differ by ${few(apart)}, which filling alone may explain.`),
    singles.length === 1 &&
      'One fill says little: what was not filled to the brim counts in full. Join several.',
    out['toReserve'] &&
      'Ranges are by the use above; head wind, hills and a cold engine take more. Fill up well before.',
    Number.isNaN(v('reserve')) && out['toReserve'] && 'No reserve was given: it is counted as nothing.',
  ];
  return said.filter((note) => typeof note === 'string');
}

function working(values: Values, out: Record<string, Output>): WorkingLine[] {
  const v = reader(values);
  const q = sign('q', out['use']?.si ?? 0, 'use', 'L/100km');
  const lines: WorkingLine[] = [];
  if (out['fuel'])
    lines.push(
      line(
        'Fuel used for the distance',
        q,
        over(sign('F', out['fuel'].si, 'volume', 'L'), sign('d', out['distance']?.si ?? 0, 'length', 'km')),
      ),
    );
  const reserve = sign('R', v('reserve', 0), 'volume', 'L', 3);
  for (const [says, name, from] of [
    ['Full tank to the reserve', 'toReserve', 'tank'],
    ['From now to the reserve', 'left', 'now'],
  ] as const)
    if (out[name])
      lines.push(
        line(
          says,
          sign(from === 'tank' ? 's' : 's_n', out[name].si, 'length', 'km', 3),
          over(minus(sign(from === 'tank' ? 'T' : 'N', v(from), 'volume', 'L', 3), reserve), q),
        ),
      );
  if (out['takes'])
    lines.push(
      line(
        'Fuel for the trip',
        sign('F_t', out['takes'].si, 'volume', 'L', 3),
        times(sign('D', v('trip'), 'length', 'km', 3), q),
      ),
    );
  return lines;
}

function picture(values: Values, out: Record<string, Output>): Drawing[] {
  const fills = fillsOf(values);
  const mean = plotted(out['use']?.si ?? 0);
  if (fills.length < 2) return [];
  let at = 0;
  const steps = fills.map(([d = 0], i): Curve => {
    const [from, y] = [at, plotted(out[`use_${i}`]?.si ?? 0)];
    at += d / 1e3;
    const points: Point[] = [
      [from, y],
      [at, y],
    ];
    return { points, label: String(i + 1), labelAt: [(from + at) / 2, y] };
  });
  return [
    chart({
      name: 'fills',
      title: 'Fuel use, fill by fill',
      desc: `Each fill is a level line as long as its distance; the dashed one is all together, ${use(mean / 1e8)}.`,
      x: { label: 'km', max: at },
      y: { label: 'L/100 km', max: Math.max(mean, ...steps.map(({ points }) => points[0]?.[1] ?? 0)) * 1.25 },
      curves: [
        ...steps,
        {
          points: [
            [0, mean],
            [at, mean],
          ],
          dash: '5 3',
        },
      ],
    }),
  ];
}

/**
 * Fuel used over one fill or several, in every way of saying it, and the distance to the reserve.
 * @returns refusals in plain words; ± of filling, reading and odometer carried to every output
 */
export function solve(values: Values): Answer | Refusal {
  const v = reader(values);
  const rows = textOf(values, 'known') === 'use';
  const fills = fillsOf(values);
  const odd = fills.findIndex(([d = 0, f = 0]) => !(f / d > 5e-9 && f / d < 1e-6));
  const [d = 0, f = 0] = fills[odd] ?? [];
  const over = (name: string) =>
    v(name) > v('tank') && `That is more than the tank holds, ${litres(v('tank'))}.`;
  const refused = refusal({
    [rows ? 'use' : 'fills']: rows
      ? !(v('use') > 0) && 'A figure is needed here, such as 6.5 L/100km.'
      : !fills.length
        ? 'Write one fill a line: distance, then fuel, such as 210 km 13.4 L.'
        : odd >= 0 &&
          `Row ${odd + 1}: ${litres(f)} for ${km(d)} is ${use(f / d)}. Distance comes first; a US gallon is 3.785 L, an imperial one 4.546 L, a mile 1.609 km.`,
    reserve: v('reserve') >= v('tank') && 'The reserve must be smaller than the tank.',
    now: over('now') || (v('now') < v('reserve') && 'That is below the reserve already: fill up.'),
  });
  if (refused) return refused;
  const brim = v('brim', 0);
  const filled: Values = {
    ...values,
    first: { si: 0, pm: brim },
    last: { si: 0, pm: brim },
    odometer: { si: 1, pm: v('odo', 0) },
  };
  const outputs = spread(compute, filled);
  return {
    ok: true,
    outputs,
    working: working(values, outputs),
    tables: table(values, outputs),
    notes: notes(values, outputs),
    drawings: picture(values, outputs),
  };
}
