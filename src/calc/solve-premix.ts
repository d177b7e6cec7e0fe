import { type Curve, chart } from './chart.ts';
import type { Answer, AnswerTable, Drawing, Output, Refusal, Values, WorkingLine } from './contract.ts';
import { reader, refusal, textOf } from './field-values.ts';
import { printer } from './print-figure.ts';
import { type Computed, spread } from './uncertainty.ts';
import { toSi, type UnitId } from './units.ts';
import { add, line, minus, over, sign, times } from './working.ts';

const litres = printer('volume', 'L', 4);
const millilitres = printer('volume', 'mL', 4);
const ratio = printer('mixture', ':1');

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
  return refusal({
    ratio: !(f > 0) && 'A ratio is needed, such as 25:1.',
    [known]: !(v(known) > 0) && 'A volume is needed here, such as 5 L.',
    tankRatio:
      v('tank') > 0 && !(v('tankRatio') > 0) && 'The ratio of what is in the tank is needed, such as 50:1.',
    tank: empty && v('added', fill) >= 0 && 'Say first how much mixture is in the tank, 0 if it is empty.',
    fill:
      fill < least * (1 - 1e-9) &&
      `${ratio(f)} cannot be reached in ${litres(fill)}: with what is in the tank it takes at least ${litres(least)}.`,
    reserve: v('reserve') >= v('capacity') && 'The reserve must be smaller than the tank.',
  });
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

const headed = (...labels: string[]) => labels.map((label) => ({ label, numeric: true }));

function tables(values: Values): AnswerTable[] {
  const v = reader(values);
  const f = v('ratio');
  const slip = v('oilError', 0);
  const cans = CANS.map(([n, unit]) => ({ can: `${n}\u00a0${unit}`, fuel: toSi(n, 'volume', unit) }));
  const found: AnswerTable[] = [
    {
      name: 'wall',
      caption: `For the wall: ${ratio(f)}, fuel to oil by volume`,
      columns: headed('Fuel', 'Oil to add', 'US', 'imperial', 'Oil if that is finished mixture'),
      rows: cans.map(({ can, fuel }) => [
        can,
        millilitres(fuel * f),
        printer('volume', 'US fl oz')(fuel * f),
        printer('volume', 'imp fl oz')(fuel * f),
        millilitres((fuel * f) / (1 + f)),
      ]),
    },
  ];
  if (slip)
    found.push({
      name: 'slips',
      caption: `What ${millilitres(slip)} too little or too much oil does`,
      columns: headed('Fuel', 'Too little', 'Too much'),
      rows: cans
        .slice(0, 5)
        .map(({ can, fuel }) => [
          can,
          f > slip / fuel ? ratio(f - slip / fuel) : 'no oil at all',
          ratio(f + slip / fuel),
        ]),
    });
  return found;
}

function notes(values: Values, out: Record<string, Output>): string[] {
  const v = reader(values);
  const target = ratio(v('ratio'));
  const said = [
    out['oilInside'] &&
      `Which is meant? ${millilitres(out['oil'])} of oil is added to ${litres(out['fuel'])} of fuel; if ${litres(out['fuel'])} is to be the finished mixture, it holds ${millilitres(out['oilInside'])}.`,
    out['made']?.pm &&
      `Measured with these errors the mixture comes out at ${ratio(out['made'])}. The smaller the can, the more a slip of the jug counts.`,
    out['blendRatio'] &&
      `The tank holds ${litres(out['blend'])} at ${ratio(out['blendRatio'])}: the volumes of oil and of fuel add up; the mean of the two ratio numbers is not the ratio.`,
    out['addOil'] && `That is short of oil: add ${millilitres(out['addOil'])} of oil for ${target}.`,
    out['addFuel'] && `That has oil to spare: add ${litres(out['addFuel'])} of plain fuel for ${target}.`,
    out['fillOil'] &&
      `To fill up to ${litres(v('fill'))}: pour in ${litres(out['fillFuel'])} of fuel and ${millilitres(out['fillOil'])} of oil.`,
    out['range'] && 'The consumption counts mixture, as it is drawn from the tank.',
  ];
  return said.filter((note) => typeof note === 'string');
}

function working(values: Values, out: Record<string, Output>): WorkingLine[] {
  const v = reader(values);
  const known = knownOf(values);
  const big = (name: string, x: number) => sign(name, x, 'volume', 'L', 5);
  const small = (name: string, x: number) => sign(name, x, 'volume', 'mL', 5);
  const n = sign('n', 1 / v('ratio'), 'count', 'n', 4);
  const [fuel, oil] = [big('F', out['fuel']?.si ?? 0), small('O', out['oil']?.si ?? 0)];
  const can = big('V', out['mixture']?.si ?? 0);
  const lines =
    known === 'fuel'
      ? [line('Oil to add', oil, over(fuel, n))]
      : known === 'oil'
        ? [line('Fuel for that oil', fuel, times(oil, n))]
        : [
            line('Oil in that can', oil, over(can, add(n, 1))),
            line('Fuel in that can', fuel, minus(can, oil)),
          ];
  const tank = tankOf(values);
  const [f, o] = [big('F_t', tank.fuel), small('O_t', tank.oil)];
  if (tank.fuel > 0 && !v('added', 0)) {
    const T = big('T', v('tank'));
    const m = sign('m', 1 / v('tankRatio'), 'count', 'n', 4);
    lines.push(line('Oil in the tank', o, over(T, add(m, 1))), line('Fuel in the tank', f, minus(T, o)));
  }
  const { addOil, addFuel } = out;
  if (addOil) lines.push(line('Oil to add to the tank', small('A', addOil.si), minus(over(f, n), o)));
  if (addFuel) lines.push(line('Fuel to add to the tank', big('A', addFuel.si), minus(times(o, n), f)));
  return lines;
}

/** Ratios in use, between which the answer is drawn. */
const USUAL = [16, 20, 25, 32, 40, 50, 100];

function oilChart(values: Values, out: Record<string, Output>): Drawing {
  const n = 1 / reader(values)('ratio');
  const [fuel, oil] = [(out['fuel']?.si ?? 0) * 1e3, (out['oil']?.si ?? 0) * 1e6];
  const most = fuel * 1.6;
  const richer = USUAL.filter((one) => one < n - 0.5).at(-1);
  const leaner = USUAL.find((one) => one > n + 0.5);
  const curve = (one: number): Curve => ({
    points: [
      [0, 0],
      [most, (most / one) * 1e3],
    ],
    label: ratio(1 / one),
  });
  const pair = `${litres(out['fuel'])} of fuel, ${millilitres(out['oil'])} of oil`;
  return chart({
    name: 'oil',
    title: `Oil for fuel at ${ratio(1 / n)}`,
    desc: `Straight lines from nothing: ${pair}.`,
    x: { label: 'fuel, L', max: most },
    y: { label: 'oil to add, mL', max: (most / (richer ?? n)) * 1050 },
    curves: [curve(n), ...[richer, leaner].flatMap((one) => (one ? [{ ...curve(one), dash: '4 3' }] : []))],
    marks: [{ at: [fuel, oil], label: millilitres(out['oil']) }],
  });
}

/**
 * Fuel and oil for a ratio, the correction of a tank, the wall table, cost and range.
 * @returns refusals in plain words; ± carried to every output
 */
export function solve(values: Values): Answer | Refusal {
  const refused = refuse(values);
  if (refused) return refused;
  const nominal = wanted(values);
  const measured: Values = {
    ...values,
    jug: { si: 0, pm: reader(values)('oilError', 0) },
    pour: { si: 0, pm: reader(values)('fuelError', 0) },
  };
  const outputs = spread((v) => compute(v, nominal), measured);
  return {
    ok: true,
    outputs,
    working: working(values, outputs),
    tables: tables(values),
    notes: notes(values, outputs),
    drawings: [oilChart(values, outputs)],
  };
}
