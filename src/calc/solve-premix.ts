import type { Found, FoundChart, Output, Refusal, Values } from './contract.ts';
import { reader, refusal, textOf } from './field-values.ts';
import type { Figures } from './holes.ts';
import type { wrong } from './premix-says.ts';
import { type Computed, spread } from './uncertainty.ts';
import { toSi, type UnitId } from './units.ts';

interface Mix {
  fuel: number;
  oil: number;
}

const knownOf = (values: Values) => textOf(values, 'known') ?? 'fuel';

/** Fuel and oil that are meant, from whichever is known; m³. */
function wanted(values: Values): Mix {
  const v = reader(values);
  const f = v('ratio');
  const known = knownOf(values);
  const given = v(known);
  const fuel = known === 'oil' ? given / f : known === 'can' ? given / (1 + f) : given;
  return { fuel, oil: fuel * f };
}

/** What stands in the tank once the two mixtures are together; no ratio for what is poured in means plain fuel. */
function tankOf(values: Values): Mix {
  const v = reader(values);
  const now = v('tank');
  const [g, h] = [v('tankRatio', now === 0 ? 0 : Number.NaN), v('addedRatio', 0)];
  const poured = v('added', 0);
  return { fuel: now / (1 + g) + poured / (1 + h), oil: (now * g) / (1 + g) + (poured * h) / (1 + h) };
}

/**
 * Every figure of the answer; not a number where it was not asked for.
 * `nominal` is what is measured out; `jug` and `pour` are the errors of measuring it.
 */
function compute(values: Values, nominal: Mix): Computed {
  const v = reader(values);
  const f = v('ratio');
  const known = knownOf(values);
  const { fuel, oil } = wanted(values);
  const tank = tankOf(values);
  const short = f * tank.fuel - tank.oil;
  const [fill, capacity] = [v('fill'), v('capacity')];
  const range = capacity / v('use');
  const oilCost = (capacity * f * v('oilPrice')) / (1 + f);
  const cost = (capacity * v('fuelPrice')) / (1 + f) + oilCost;
  return {
    fuel,
    oil,
    mixture: fuel + oil,
    oilInside: known === 'fuel' ? oil / (1 + f) : undefined,
    ratio: f,
    made:
      ((known === 'oil' ? oil : nominal.oil) + v('jug', 0)) /
      ((known === 'fuel' ? fuel : nominal.fuel) + v('pour', 0)),
    blendRatio: tank.oil / tank.fuel,
    blend: tank.fuel + tank.oil,
    addOil: short > 0 ? short : undefined,
    addFuel: short < 0 ? -short / f : undefined,
    fillOil: (fill * f) / (1 + f) - tank.oil,
    fillFuel: fill / (1 + f) - tank.fuel,
    cost,
    oilCost,
    range,
    rangeToReserve: (capacity - v('reserve', 0)) / v('use'),
    cost100: (cost / range) * 1e5,
  };
}

function refuse(values: Values): Refusal | undefined {
  const v = reader(values);
  const f = v('ratio');
  const known = knownOf(values);
  const [tank, fill] = [tankOf(values), v('fill')];
  const least = Math.max(tank.fuel, tank.oil / f) * (1 + f);
  const empty = Number.isNaN(v('tank'));
  return refusal<keyof typeof wrong>(
    {
      ratio: !(f > 0) && 'ratio',
      [known]: !(v(known) > 0) && 'volume',
      tankRatio: v('tank') > 0 && !(v('tankRatio') > 0) && 'tankRatio',
      tank: empty && v('added', fill) >= 0 && 'tank',
      fill: fill < least * (1 - 1e-9) && 'fill',
      reserve: v('reserve') >= v('capacity') && 'reserve',
    },
    { least },
  );
}

/** Sizes that a wall table is read for. */
const CANS: readonly [number, UnitId][] = [
  [1, 'L'],
  [2, 'L'],
  [5, 'L'],
  [10, 'L'],
  [20, 'L'],
  [1, 'US gal'],
  [5, 'US gal'],
  [1, 'imp gal'],
  [2, 'imp gal'],
  [5, 'imp gal'],
];

function tables(values: Values): Record<string, { rows: Figures[] }> {
  const v = reader(values);
  const f = v('ratio');
  const slip = v('oilError', 0);
  const wall = CANS.map(([n, unit]) => {
    const fuel = toSi(n, 'volume', unit);
    const less = f - slip / fuel;
    return {
      can: `${n}\u00a0${unit}`,
      oil: fuel * f,
      inside: (fuel * f) / (1 + f),
      less: less > 0 ? less : undefined,
      more: f + slip / fuel,
    };
  });
  return { wall: { rows: wall }, slips: { rows: slip ? wall.slice(0, 5) : [] } };
}

/** Ratios in use, between which the answer is drawn. */
const USUAL = [16, 20, 25, 32, 40, 50, 100];

function oilChart(values: Values, out: Record<string, Output>): FoundChart {
  const n = 1 / reader(values)('ratio');
  const [fuel, oil] = [(out['fuel']?.si ?? 0) * 1e3, (out['oil']?.si ?? 0) * 1e6];
  const most = fuel * 1.6;
  const richer = USUAL.filter((one) => one < n - 0.5).at(-1);
  const leaner = USUAL.find((one) => one > n + 0.5);
  const curve = (one: number) => ({
    one: 1 / one,
    points: [
      [0, 0],
      [most, (most / one) * 1e3],
    ] as const,
  });
  return {
    x: { max: most },
    y: { max: (most / (richer ?? n)) * 1050 },
    curves: [curve(n), ...[richer, leaner].flatMap((one) => (one ? [{ ...curve(one), dash: '4 3' }] : []))],
    marks: [{ at: [fuel, oil] }],
  };
}

/**
 * Fuel and oil for a ratio, the correction of a tank, the wall table, cost and range.
 * @returns refusals; ± carried to every output
 */
export function solve(values: Values): Found | Refusal {
  const refused = refuse(values);
  if (refused) return refused;
  const v = reader(values);
  const nominal = wanted(values);
  const measured: Values = {
    ...values,
    jug: { si: 0, pm: v('oilError', 0) },
    pour: { si: 0, pm: v('fuelError', 0) },
  };
  const outputs = spread((moved) => compute(moved, nominal), measured);
  const tank = tankOf(values);
  return {
    ok: true,
    outputs,
    figures: {
      known: knownOf(values),
      slips: outputs['made']?.pm,
      parts: 1 / v('ratio'),
      asStands: tank.fuel > 0 && !v('added', 0),
      tankFuel: tank.fuel,
      tankOil: tank.oil,
      tankParts: 1 / v('tankRatio'),
    },
    shown: { ...tables(values), oil: oilChart(values, outputs) },
  };
}
