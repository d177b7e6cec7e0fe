import { type Curve, chart } from './chart.ts';
import type { Answer, AnswerTable, Drawing, Output, Refusal, Values, WorkingLine } from './contract.ts';
import { figureOf, refusal, textOf } from './field-values.ts';
import { printFigure } from './print-figure.ts';
import type { Point } from './svg.ts';
import { type Computed, spread } from './uncertainty.ts';
import { fromSi, toSi, type UnitId } from './units.ts';
import { add, line, minus, num, over, sign, times } from './working.ts';

const volume = (o: Output | undefined, unit: UnitId = 'mL', figures = 4) =>
  o ? printFigure(o, 'volume', unit, figures) : '—';
const ratio = (o: Output | undefined) => (o ? printFigure(o, 'mixture', ':1', 3) : '—');

/** Fuel and oil that are meant, from whichever is known; m³. */
function wanted(values: Values): { fuel: number; oil: number } {
  const f = figureOf(values, 'ratio') ?? Number.NaN;
  const known = textOf(values, 'known') ?? 'fuel';
  const given = figureOf(values, known) ?? Number.NaN;
  const fuel = known === 'oil' ? given / f : known === 'can' ? given / (1 + f) : given;
  return { fuel, oil: known === 'oil' ? given : fuel * f };
}

/** What stands in the tank once the two mixtures are together; no ratio for what is poured in means plain fuel. */
function tankOf(values: Values): { fuel: number; oil: number } | undefined {
  const now = figureOf(values, 'tank');
  const g = figureOf(values, 'tankRatio') ?? (now === 0 ? 0 : undefined);
  if (now === undefined || g === undefined) return undefined;
  const poured = figureOf(values, 'added') ?? 0;
  const h = figureOf(values, 'addedRatio') ?? 0;
  return { fuel: now / (1 + g) + poured / (1 + h), oil: (now * g) / (1 + g) + (poured * h) / (1 + h) };
}

/**
 * Every figure of the answer. `nominal` is what is measured out; `jug` and `pour` are the errors of measuring it.
 */
function compute(values: Values, nominal: { fuel: number; oil: number }): Computed {
  const get = (name: string) => figureOf(values, name);
  const f = get('ratio') ?? Number.NaN;
  const known = textOf(values, 'known') ?? 'fuel';
  const { fuel, oil } = wanted(values);
  const tank = tankOf(values);
  const fill = get('fill');
  const short = tank && f * tank.fuel - tank.oil;
  const [capacity, use] = [get('capacity'), get('use')];
  const [fuelPrice, oilPrice] = [get('fuelPrice'), get('oilPrice')];
  const range = capacity && use ? capacity / use : undefined;
  const cost =
    capacity && fuelPrice !== undefined && oilPrice !== undefined
      ? (capacity * (fuelPrice + f * oilPrice)) / (1 + f)
      : undefined;
  return {
    fuel,
    oil,
    mixture: fuel + oil,
    oilInside: known === 'fuel' ? (fuel * f) / (1 + f) : undefined,
    ratio: f,
    made:
      ((known === 'oil' ? oil : nominal.oil) + (get('jug') ?? 0)) /
      ((known === 'fuel' ? fuel : nominal.fuel) + (get('pour') ?? 0)),
    blendRatio: tank && tank.oil / tank.fuel,
    blend: tank && tank.fuel + tank.oil,
    addOil: short !== undefined && short > 0 ? short : undefined,
    addFuel: short !== undefined && short < 0 ? -short / f : undefined,
    fillOil: tank && fill !== undefined ? (fill * f) / (1 + f) - tank.oil : undefined,
    fillFuel: tank && fill !== undefined ? fill / (1 + f) - tank.fuel : undefined,
    cost,
    oilCost: capacity && oilPrice !== undefined ? (capacity * f * oilPrice) / (1 + f) : undefined,
    range,
    rangeToReserve: capacity && use ? (capacity - (get('reserve') ?? 0)) / use : undefined,
    cost100: cost !== undefined && range ? (cost / range) * 1e5 : undefined,
  };
}

function refuse(values: Values): Refusal | undefined {
  const get = (name: string) => figureOf(values, name);
  const f = get('ratio') ?? Number.NaN;
  const known = textOf(values, 'known') ?? 'fuel';
  const tank = tankOf(values);
  const fill = get('fill');
  const least = tank && Math.max(tank.fuel, tank.oil / f) * (1 + f);
  return refusal({
    ratio: !(f > 0) && 'A ratio is needed, such as 25:1.',
    [known]: !((get(known) ?? 0) > 0) && 'A volume is needed here, such as 5 L.',
    tankRatio:
      (get('tank') ?? 0) > 0 &&
      get('tankRatio') === undefined &&
      'The ratio of what is in the tank is needed, such as 50:1.',
    tank:
      get('tank') === undefined &&
      (get('added') !== undefined || fill !== undefined) &&
      'Say first how much mixture is in the tank, 0 if it is empty.',
    fill:
      fill !== undefined &&
      least !== undefined &&
      fill < least * (1 - 1e-9) &&
      `${ratio({ si: f })} cannot be reached in ${volume({ si: fill }, 'L')}: with what is in the tank it takes at least ${volume({ si: least }, 'L')}.`,
    reserve:
      (get('reserve') ?? 0) >= (get('capacity') ?? Infinity) && 'The reserve must be smaller than the tank.',
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
  const f = figureOf(values, 'ratio') ?? Number.NaN;
  const slip = figureOf(values, 'oilError');
  const wall = CANS.map(([n, unit]) => {
    const fuel = toSi(n, 'volume', unit);
    const oil = { si: fuel * f };
    return [
      volume({ si: fuel }, unit, 2),
      volume(oil),
      volume(oil, 'US fl oz', 3),
      volume(oil, 'imp fl oz', 3),
      volume({ si: (fuel * f) / (1 + f) }),
    ];
  });
  const found: AnswerTable[] = [
    {
      name: 'wall',
      caption: `For the wall: ${ratio({ si: f })}, one part of oil to ${digitsOf(f)} of fuel by volume`,
      columns: headed('Fuel', 'Oil to add', 'US', 'imperial', 'Oil if that is finished mixture'),
      rows: wall,
    },
  ];
  if (slip)
    found.push({
      name: 'slips',
      caption: `What ${volume({ si: slip }, 'mL', 3)} too little or too much oil does`,
      columns: headed('Fuel', 'Too little', 'Too much'),
      rows: CANS.slice(0, 5).map(([n, unit]) => {
        const fuel = toSi(n, 'volume', unit);
        const lean = (fuel * f - slip) / fuel;
        return [
          volume({ si: fuel }, unit, 2),
          lean > 0 ? ratio({ si: lean }) : 'no oil at all',
          ratio({ si: f + slip / fuel }),
        ];
      }),
    });
  return found;
}

const digitsOf = (f: number) => printFigure({ si: 1 / f }, 'count', 'n', 3);

function notes(values: Values, out: Record<string, Output>): string[] {
  const known = textOf(values, 'known') ?? 'fuel';
  const f = figureOf(values, 'ratio') ?? Number.NaN;
  const said: string[] = [];
  if (known === 'fuel')
    said.push(
      `Which is meant? ${volume(out['oil'])} of oil is added to ${volume(out['fuel'], 'L')} of fuel; if ${volume(out['fuel'], 'L')} is to be the finished mixture, it holds ${volume(out['oilInside'])}.`,
    );
  if (out['made']?.pm)
    said.push(
      `Measured with these errors the mixture comes out at ${ratio(out['made'])}. The smaller the can, the more a slip of the jug counts.`,
    );
  if (out['blendRatio'])
    said.push(
      `The tank holds ${volume(out['blend'], 'L')} at ${ratio(out['blendRatio'])}: the volumes of oil and of fuel add up; the mean of the two ratio numbers is not the ratio.`,
    );
  if (out['addOil'])
    said.push(`That is short of oil: add ${volume(out['addOil'])} of oil for ${ratio({ si: f })}.`);
  if (out['addFuel'])
    said.push(
      `That has oil to spare: add ${volume(out['addFuel'], 'L')} of plain fuel for ${ratio({ si: f })}.`,
    );
  if (out['fillOil'])
    said.push(
      `To fill up to ${volume({ si: figureOf(values, 'fill') ?? 0 }, 'L')}: pour in ${volume(out['fillFuel'], 'L')} of fuel and ${volume(out['fillOil'])} of oil.`,
    );
  if (out['range']) said.push('The consumption counts mixture, as it is drawn from the tank.');
  said.push(
    'The ratio is by volume, fuel to oil. Pour the oil into part of the fuel, close and shake, then add the rest: common practice.',
  );
  return said;
}

function working(values: Values, out: Record<string, Output>): WorkingLine[] {
  const si = (name: string) => out[name]?.si ?? Number.NaN;
  const known = textOf(values, 'known') ?? 'fuel';
  const f = figureOf(values, 'ratio') ?? Number.NaN;
  const litres = (name: string, x: number) => sign(name, x, 'volume', 'L', 5);
  const n = sign('n', 1 / f, 'count', 'n', 4);
  const fuel = litres('F', si('fuel'));
  const oil = sign('O', si('oil'), 'volume', 'mL', 5);
  const lines: WorkingLine[] = [];
  if (known === 'fuel') lines.push(line('Oil to add', oil, over(fuel, n)));
  else if (known === 'oil') lines.push(line('Fuel for that oil', fuel, times(oil, n)));
  else {
    const can = litres('V', si('mixture'));
    lines.push(
      line('Oil in that can', oil, over(can, add(n, num(1)))),
      line('Fuel in that can', fuel, minus(can, oil)),
    );
  }
  const tank = tankOf(values);
  if (!tank) return lines;
  const now = { fuel: litres('F_t', tank.fuel), oil: sign('O_t', tank.oil, 'volume', 'mL', 5) };
  const m = sign(
    'm',
    figureOf(values, 'tankRatio') ? 1 / (figureOf(values, 'tankRatio') ?? 1) : 0,
    'count',
    'n',
    4,
  );
  if (!figureOf(values, 'added')) {
    const T = litres('T', figureOf(values, 'tank') ?? 0);
    lines.push(
      line('Oil in the tank', now.oil, over(T, add(m, num(1)))),
      line('Fuel in the tank', now.fuel, minus(T, now.oil)),
    );
  }
  if (out['addOil'])
    lines.push(
      line(
        'Oil to add to the tank',
        sign('A', si('addOil'), 'volume', 'mL', 5),
        minus(over(now.fuel, n), now.oil),
      ),
    );
  if (out['addFuel'])
    lines.push(
      line('Fuel to add to the tank', litres('A', si('addFuel')), minus(times(now.oil, n), now.fuel)),
    );
  return lines;
}

/** Ratios in use, between which the answer is drawn. */
const USUAL = [16, 20, 25, 32, 40, 50, 100];

function oilChart(values: Values, out: Record<string, Output>): Drawing {
  const f = figureOf(values, 'ratio') ?? Number.NaN;
  const fuel = fromSi(out['fuel']?.si ?? 0, 'volume', 'L');
  const oil = fromSi(out['oil']?.si ?? 0, 'volume', 'mL');
  const most = fuel * 1.6;
  const richer = USUAL.filter((n) => n < 1 / f - 0.5).at(-1);
  const leaner = USUAL.find((n) => n > 1 / f + 0.5);
  const lineOf = (n: number, dash?: string): Curve => {
    const points: Point[] = [
      [0, 0],
      [most, (most / n) * 1e3],
    ];
    const label = printFigure({ si: 1 / n }, 'mixture', ':1', 3);
    return dash ? { points, label, dash, width: 1 } : { points, label };
  };
  const title = `Oil for fuel at ${ratio({ si: f })}`;
  const desc = `Oil in millilitres against fuel in litres: straight lines from nothing. ${volume(out['fuel'], 'L')} of fuel takes ${volume(out['oil'])} of oil.`;
  const svg = chart({
    title,
    desc,
    x: { label: 'fuel, L', min: 0, max: most },
    y: { label: 'oil to add, mL', min: 0, max: (most / (richer ?? 1 / f)) * 1e3 * 1.05 },
    curves: [lineOf(1 / f), ...[richer, leaner].flatMap((n) => (n ? [lineOf(n, '4 3')] : []))],
    marks: [{ at: [fuel, oil], label: `${volume(out['fuel'], 'L', 3)}: ${volume(out['oil'], 'mL', 3)}` }],
  });
  return { name: 'oil', title, desc, svg };
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
    jug: { si: 0, pm: figureOf(values, 'oilError') ?? 0 },
    pour: { si: 0, pm: figureOf(values, 'fuelError') ?? 0 },
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
