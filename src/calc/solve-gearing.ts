import { type Curve, chart } from './chart.ts';
import type { Answer, AnswerTable, Drawing, Output, Refusal, Values, WorkingLine } from './contract.ts';
import { driveLineFaults, finalOf, gearsOf, rollOf, withTyre } from './drive-line.ts';
import { reader, refusal, textOf } from './field-values.ts';
import { printer } from './print-figure.ts';
import type { Point } from './svg.ts';
import { ROLLING_RADIAL, type Tyre } from './tyre.ts';
import { type Computed, spread } from './uncertainty.ts';
import { line, num, over, sign, times } from './working.ts';

const TURN = 2 * Math.PI;
const RPM = TURN / 60;
const rpm = printer('rotation', 'rpm', 4);
const kmh = printer('speed', 'km/h');

/** One set-up or the other. */
const SETS = ['', '2'] as const;

interface Tyres {
  first: Tyre | undefined;
  other: Tyre | undefined;
}

const OTHERS = ['final2', 'sprocket2', 'axle2', 'tyre2', 'circumference2'];
const compares = (values: Values) => OTHERS.some((name) => values[name] !== undefined);

/** Every figure of the answer; those of a gear end in its number, those of the top gear stand without one as well. */
function compute(values: Values, tyres: Tyres): Computed {
  const v = reader(values);
  const found: Record<string, number> = { diameter: v('diameter'), outside: v('diameter') * Math.PI };
  for (const set of compares(values) ? SETS : SETS.slice(0, 1)) {
    const own = rollOf(values, set ? tyres.other : tyres.first, set);
    const roll = own > 0 ? own : rollOf(values, tyres.first);
    found[`roll${set}`] = roll;
    const gears = gearsOf(values, set);
    gears.forEach(({ overall }, i) => {
      const per1000 = roll / (TURN * overall);
      const next = gears[i + 1]?.overall ?? Number.NaN;
      const of = {
        overall,
        per1000,
        at: per1000 * v('speed'),
        engine: v('road') / per1000,
        atChange: per1000 * v('change'),
        drop: v('change') * (1 - next / overall),
      };
      for (const [name, x] of Object.entries(of)) found[`${name}${set}_${i}`] = found[name + set] = x;
    });
  }
  const final = textOf(values, 'speedo') === 'gearbox' ? finalOf(values) / finalOf(values, '2') : 1;
  const high = (found['roll'] ?? 0) / ((found['roll2'] ?? Number.NaN) * final);
  found['trueSpeed'] = v('indicated') / high;
  found['speedoError'] = v('indicated') > 0 ? high - 1 : Number.NaN;
  found['mostShown'] = 1.1 * v('road') + 4 / 3.6;
  found['engineChange'] = (found['per1000'] ?? 0) / (found['per10002'] ?? Number.NaN) - 1;
  return found;
}

function tables(values: Values, out: Record<string, Output>): AnswerTable[] {
  const v = reader(values);
  const [speed, road, change] = [rpm(v('speed')), kmh(v('road')), rpm(v('change'))];
  const cells: [heading: string, output: string, print: (o: Output | undefined) => string][] = [
    ['Overall', 'overall', printer('ratio', ':1', 4, true)],
    ['km/h per 1000', 'per1000', printer('speed per rev', 'km/h per 1000', 3, true)],
    ['mph per 1000', 'per1000', printer('speed per rev', 'mph per 1000', 3, true)],
    [`km/h at ${speed}`, 'at', printer('speed', 'km/h', 3, true)],
    [`mph at ${speed}`, 'at', printer('speed', 'mph', 3, true)],
    [`rev/min at ${road}`, 'engine', printer('rotation', 'rpm', 4, true)],
    [`km/h at the change, ${change}`, 'atChange', printer('speed', 'km/h', 3, true)],
    ['drop, rev/min', 'drop', printer('rotation', 'rpm', 3, true)],
  ];
  return SETS.flatMap((set): AnswerTable[] => {
    const shown = cells.filter(([, name]) => out[`${name}${set}_0`]);
    const rows = gearsOf(values, set).map(({ name }, i) => [
      name,
      ...shown.map(([, key, print]) => print(out[`${key}${set}_${i}`])),
    ]);
    const caption = !compares(values) ? 'In each gear' : set ? 'The other set-up' : 'This set-up';
    const columns = ['Gear', ...shown.map(([label]) => label)].map((label, i) => ({ label, numeric: i > 0 }));
    return shown.length ? [{ name: `gears${set}`, caption, columns, rows }] : [];
  });
}

/** Road speed across, engine speed up: each gear a line from nothing, the drop at each change upright. */
function sawTooth(values: Values, out: Record<string, Output>): Drawing[] {
  const change = reader(values)('change', reader(values)('speed'));
  if (!(change > 0)) return [];
  const top = change / RPM;
  const curves = SETS.flatMap((set): Curve[] => {
    const pers = gearsOf(values, set).flatMap((_, i) => out[`per1000${set}_${i}`]?.si ?? []);
    const from = pers.map((per, i) => (i ? (top * (pers[i - 1] ?? 0)) / per : 0));
    const points = pers.flatMap((per, i): Point[] => {
      const kmhAt = (n: number) => n * RPM * per * 3.6;
      return [
        [kmhAt(from[i] ?? 0), from[i] ?? 0],
        [kmhAt(top), top],
      ];
    });
    if (set) return points.length ? [{ points, dash: '5 3' }] : [];
    const names = pers.map((per, i): Curve => {
      const n = ((from[i] ?? 0) + top) / 2;
      return { points: [], label: String(i + 1), labelAt: [n * RPM * per * 3.6, n] };
    });
    return [{ points, label: '' }, ...names];
  });
  return [
    chart({
      name: 'saw',
      title: 'Engine speed against road speed',
      desc: `One line a gear, each changed up at ${rpm(change)}.${out['roll2'] ? ' The other set-up is dashed.' : ''}`,
      x: { label: 'km/h', max: Math.max(...curves.flatMap(({ points }) => points.map(([x]) => x))) },
      y: { label: 'rev/min', max: top * 1.1 },
      curves,
    }),
  ];
}

function working(values: Values, tyres: Tyres, out: Record<string, Output>): WorkingLine[] {
  const v = reader(values);
  const mm = (name: string, o: Output | undefined) => sign(name, o?.si ?? 0, 'length', 'mm', 5);
  const count = (name: string, x: number, figures = 4) => sign(name, x, 'count', 'n', figures);
  const [d, roll] = [mm('d', out['diameter']), mm('U', out['roll'])];
  const lines: WorkingLine[] = [];
  if (tyres.first && Number.isNaN(v('circumference')))
    lines.push(
      line('Rolled in a turn', roll, times(tyres.first.radial ? num(ROLLING_RADIAL) : num(Math.PI, 'π'), d)),
    );
  const top = gearsOf(values).at(-1);
  if (!top) return lines;
  const G = count('G', top.overall, 5);
  const chain =
    v('axle') > 0 && v('sprocket') > 0
      ? over(count('z_2', v('axle'), 2), count('z_1', v('sprocket'), 2))
      : count('f', finalOf(values));
  const parts = [count('i', v(top.name)), count('p', v('primary'))].filter(({ si }) => si > 0);
  lines.push(line(`Overall, ${top.name} gear`, G, parts.length ? times(...parts, chain) : chain));
  for (const [says, n] of [
    ['At 1000 rev/min', 1000 * RPM],
    [`At that engine speed, ${top.name} gear`, v('speed')],
  ] as const) {
    const speed = sign('v', (n * roll.si) / (TURN * top.overall), 'speed', 'km/h', 4);
    if (n > 0)
      lines.push(line(says, speed, over(times(num(n / TURN, `${(n / RPM).toFixed(0)}/min`), roll), G)));
  }
  return lines;
}

function notes(values: Values, { first }: Tyres, out: Record<string, Output>): string[] {
  const change = out['engineChange'];
  const said = [
    reader(values)('circumference') > 0
      ? 'Worked with the measured rolling circumference.'
      : first?.radial
        ? 'Worked with 3.05 × the nominal diameter, an industry guideline for radials. Round the outside it is 2.9 % more. One measured turn of the loaded wheel is better than either.'
        : 'Worked with π × the nominal diameter. A loaded cross-ply rolls some per cent less: measure one turn of the wheel.',
    first && `Nominal diameter: ${first.rule}.`,
    change &&
      `At the same road speed the other set-up turns the engine ${printer('share', '%')({ ...change, si: Math.abs(change.si) })} ${change.si < 0 ? 'slower' : 'faster'}.`,
    out['trueSpeed'] &&
      'The true speed holds if the speedometer was right before. Type approval (UN Regulation No. 39) lets one read 0 to 10 % + 4 km/h high and never low.',
  ];
  return said.filter((note) => typeof note === 'string');
}

/**
 * Road speed for engine speed in each gear and back, for one set-up or two.
 * @returns refusals in plain words; ± carried to every output and every cell
 */
export function solve(given: Values): Answer | Refusal {
  const one = withTyre(given);
  const two = withTyre(one.values, '2');
  const values = two.values;
  const tyres: Tyres = { first: one.tyre, other: two.tyre };
  const v = reader(values);
  const lacks = (a: string, b: string) =>
    v(`${b}2`) > 0 && !(v(`${a}2`, v(a)) > 0) && 'The teeth of this sprocket are needed as well.';
  const faults = driveLineFaults(values, one.tyre);
  const refused = refusal({
    ...faults,
    tyre: one.wrong ?? faults['tyre'],
    tyre2: two.wrong,
    sprocket2: lacks('sprocket', 'axle'),
    axle2: lacks('axle', 'sprocket'),
    indicated:
      v('indicated') > 0 && !compares(values) && 'Give the other tyre or sprocket whose error is wanted.',
  });
  if (refused) return refused;
  const outputs = spread((moved) => compute(moved, tyres), values);
  return {
    ok: true,
    outputs,
    working: working(values, tyres, outputs),
    tables: tables(values, outputs),
    notes: notes(values, tyres, outputs),
    drawings: sawTooth(values, outputs),
  };
}
