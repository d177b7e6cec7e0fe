import type { Found, FoundChart, Output, Refusal, Values } from './contract.ts';
import { reader, refusal, rowsOf, textOf } from './field-values.ts';
import type { wrong } from './fuel-use-says.ts';
import type { Figures } from './holes.ts';
import { type Computed, spread } from './uncertainty.ts';

/** A use as it is plotted, L/100 km. */
const plotted = (si: number) => si * 1e8;

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

function rows(values: Values, out: Record<string, Output>): Figures[] {
  const fills = fillsOf(values).map(([ridden, filled], i) => ({
    fill: i + 1,
    ridden,
    filled,
    rate: out[`use_${i}`],
  }));
  const all = { fill: 'all', ridden: out['distance'], filled: out['fuel'], rate: out['use'] };
  return fills.length ? [...fills, all] : [];
}

/** How far the fills lie apart, and whether filling alone explains it. */
function apart(singles: readonly Output[]): Figures {
  const ends = singles.map((o) => o.si);
  const wide = Math.max(...singles.map((o) => o.pm ?? 0));
  const by = Math.max(...ends) - Math.min(...ends);
  return singles.length > 1 && wide > 0 ? { [by > 3 * wide ? 'leak' : 'chance']: by } : {};
}

function picture(values: Values, out: Record<string, Output>): FoundChart | undefined {
  const fills = fillsOf(values);
  const mean = plotted(out['use']?.si ?? 0);
  if (fills.length < 2) return undefined;
  let at = 0;
  const steps = fills.map(([d = 0], i) => {
    const [from, y] = [at, plotted(out[`use_${i}`]?.si ?? 0)];
    at += d / 1e3;
    return {
      y,
      points: [
        [from, y],
        [at, y],
      ] as const,
      label: i + 1,
      labelAt: [(from + at) / 2, y] as const,
    };
  });
  return {
    x: { max: at },
    y: { max: Math.max(mean, ...steps.map(({ y }) => y)) * 1.25 },
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
  };
}

/**
 * Fuel used over one fill or several, in every way of saying it, and the distance to the reserve.
 * @returns refusals; ± of filling, reading and odometer carried to every output
 */
export function solve(values: Values): Found | Refusal {
  const v = reader(values);
  const rate = textOf(values, 'known') === 'use';
  const fills = fillsOf(values);
  const odd = fills.findIndex(([d = 0, f = 0]) => !(f / d > 5e-9 && f / d < 1e-6));
  const [oddDistance = 0, oddFuel = 0] = fills[odd] ?? [];
  const refused = refusal<keyof typeof wrong>(
    {
      [rate ? 'use' : 'fills']: rate ? !(v('use') > 0) && 'use' : !fills.length ? 'fills' : odd >= 0 && 'odd',
      reserve: v('reserve') >= v('tank') && 'reserve',
      now: (v('now') > v('tank') && 'over') || (v('now') < v('reserve') && 'low'),
    },
    { row: odd + 1, oddDistance, oddFuel, oddUse: oddFuel / oddDistance },
  );
  if (refused) return refused;
  const brim = v('brim', 0);
  const outputs = spread(compute, {
    ...values,
    first: { si: 0, pm: brim },
    last: { si: 0, pm: brim },
    odometer: { si: 1, pm: v('odo', 0) },
  });
  const singles = fills.flatMap((_, i) => outputs[`use_${i}`] ?? []);
  return {
    ok: true,
    outputs,
    figures: {
      ...apart(singles),
      several: singles.length > 1,
      single: singles.length === 1,
      reserve: v('reserve', 0),
      unreserved: Number.isNaN(v('reserve')),
    },
    shown: { table: { rows: rows(values, outputs) }, fills: picture(values, outputs) },
  };
}
