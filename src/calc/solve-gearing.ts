import { type Curve, chart } from './chart.ts';
import type { Answer, AnswerTable, Drawing, Output, Refusal, Values, WorkingLine } from './contract.ts';
import { driveLineFaults, finalOf, gearsOf, rollOf, withTyre } from './drive-line.ts';
import { figureOf, refusal, textOf } from './field-values.ts';
import { printFigure, printNumber } from './print-figure.ts';
import type { Point } from './svg.ts';
import { ROLLING_RADIAL, type Tyre } from './tyre.ts';
import { type Computed, spread } from './uncertainty.ts';
import type { Quantity, UnitId } from './units.ts';
import { line, num, over, sign, times } from './working.ts';

const TURN = 2 * Math.PI;
const RPM = TURN / 60;
const KMH = 1 / 3.6;

/** One set-up or the other. */
const SETS = ['', '2'] as const;

interface Tyres {
  first: Tyre | undefined;
  other: Tyre | undefined;
}

/** What the wheels of a set-up roll; the other set-up keeps the first one's tyre unless it names its own. */
function rolls(values: Values, tyres: Tyres, suffix: string): number | undefined {
  const own = suffix ? rollOf(values, tyres.other, suffix) : undefined;
  return own ?? rollOf(values, tyres.first);
}

const OTHERS = ['final2', 'sprocket2', 'axle2', 'tyre2', 'circumference2'];
const compares = (values: Values) => OTHERS.some((name) => values[name] !== undefined);

function compute(values: Values, tyres: Tyres): Computed {
  const get = (name: string) => figureOf(values, name);
  const [speed, road, change, shown] = [get('speed'), get('road'), get('change'), get('indicated')];
  const found: Record<string, number | undefined> = {
    diameter: get('diameter'),
    outside: (get('diameter') ?? Number.NaN) * Math.PI,
  };
  for (const set of SETS) {
    const roll = rolls(values, tyres, set);
    if (roll === undefined || (set && !compares(values))) continue;
    found[`roll${set}`] = roll;
    const gears = gearsOf(values, set);
    gears.forEach(({ overall }, i) => {
      const per = roll / (TURN * overall);
      const next = gears[i + 1];
      const last = i === gears.length - 1 ? set : undefined;
      const put = (name: string, x: number | undefined) => {
        found[`${name}${set}_${i}`] = x;
        if (last !== undefined) found[name + set] = x;
      };
      put('overall', overall);
      put('per1000', per);
      put('at', speed && per * speed);
      put('engine', road && road / per);
      put('atChange', change && per * change);
      if (next && change) found[`drop${set}_${i}`] = change * (1 - next.overall / overall);
    });
  }
  const [r1, r2] = [found['roll'], found['roll2']];
  if (shown && r1 && r2) {
    const final = textOf(values, 'speedo') === 'gearbox' ? finalOf(values) / finalOf(values, '2') : 1;
    const real = (shown * r2 * final) / r1;
    found['trueSpeed'] = real;
    found['speedoError'] = shown / real - 1;
  }
  if (road) found['mostShown'] = 1.1 * road + 4 * KMH;
  const [a, b] = [found['per1000'], found['per10002']];
  if (a && b) found['engineChange'] = a / b - 1;
  return found;
}

const cell = (o: Output | undefined, quantity: Quantity, unit: UnitId, figures = 3) =>
  o ? printNumber(o, quantity, unit, figures) : '—';
const full = (o: Output | undefined, quantity: Quantity, unit: UnitId, figures = 3) =>
  o ? printFigure(o, quantity, unit, figures) : '—';

function tables(values: Values, out: Record<string, Output>): AnswerTable[] {
  const get = (name: string) => figureOf(values, name);
  const rpm = (si: number) => full({ si }, 'rotation', 'rpm', 4);
  const [speed, road, change] = [get('speed'), get('road'), get('change')];
  return SETS.flatMap((set): AnswerTable[] => {
    if (!out[`overall${set}`]) return [];
    const heads = ['Gear', 'Overall', 'km/h per 1000', 'mph per 1000'];
    if (speed) heads.push(`km/h at ${rpm(speed)}`, `mph at ${rpm(speed)}`);
    if (road) heads.push(`rev/min at ${full({ si: road }, 'speed', 'km/h')}`);
    if (change) heads.push(`km/h at the change, ${rpm(change)}`, 'drop, rev/min');
    const rows = gearsOf(values, set).map(({ name }, i) => {
      const at = (key: string) => out[`${key}${set}_${i}`];
      const row = [name, cell(at('overall'), 'ratio', ':1', 4)];
      row.push(
        cell(at('per1000'), 'speed per rev', 'km/h per 1000'),
        cell(at('per1000'), 'speed per rev', 'mph per 1000'),
      );
      if (speed) row.push(cell(at('at'), 'speed', 'km/h'), cell(at('at'), 'speed', 'mph'));
      if (road) row.push(cell(at('engine'), 'rotation', 'rpm', 4));
      if (change) row.push(cell(at('atChange'), 'speed', 'km/h'), cell(at('drop'), 'rotation', 'rpm'));
      return row;
    });
    const caption = !compares(values) ? 'In each gear' : set ? 'The other set-up' : 'This set-up';
    const columns = heads.map((label, i) => ({ label, numeric: i > 0 }));
    return [{ name: `gears${set}`, caption, columns, rows }];
  });
}

/** Road speed across, engine speed up: each gear a line from nothing, the drop at each change upright. */
function sawTooth(values: Values, out: Record<string, Output>): Drawing | undefined {
  const change = figureOf(values, 'change') ?? figureOf(values, 'speed');
  if (!change) return undefined;
  const top = change / RPM;
  const curves = SETS.flatMap((set): Curve[] => {
    const pers = gearsOf(values, set).flatMap((_, i) => out[`per1000${set}_${i}`]?.si ?? []);
    const tooth: Point[] = [[0, 0]];
    pers.forEach((per, i) => {
      const v = (per * change) / KMH;
      const next = pers[i + 1];
      tooth.push([v, top]);
      if (next) tooth.push([v, (top * per) / next]);
    });
    if (pers.length === 0) return [];
    if (set) return [{ points: tooth, dash: '5 3', width: 1.2 }];
    const names = pers.map((per, i): Curve => {
      const from = i ? (top * (pers[i - 1] ?? 0)) / per : 0;
      const n = (from + top) / 2;
      return { points: [], label: String(i + 1), labelAt: [(n * RPM * per) / KMH, n] };
    });
    return [{ points: tooth }, ...names];
  });
  const most = Math.max(...curves.flatMap(({ points }) => points.map(([v]) => v)));
  const title = 'Engine speed against road speed';
  const second = out['overall2'] ? ' The other set-up is dashed.' : '';
  const desc = `One line a gear, each changed up at ${full({ si: change }, 'rotation', 'rpm', 4)}.${second}`;
  const svg = chart({
    title,
    desc,
    x: { label: 'km/h', min: 0, max: most },
    y: { label: 'rev/min', min: 0, max: top * 1.1 },
    curves,
  });
  return { name: 'saw', title, desc, svg };
}

function working(values: Values, tyres: Tyres, out: Record<string, Output>): WorkingLine[] {
  const mm = (name: string, o: Output | undefined) => sign(name, o?.si ?? 0, 'length', 'mm', 5);
  const [d, roll] = [mm('d', out['diameter']), mm('U', out['roll'])];
  const lines: WorkingLine[] = [];
  const measured = figureOf(values, 'circumference') !== undefined;
  if (out['diameter'] && !measured)
    lines.push(
      tyres.first?.radial
        ? line('Rolled in a turn, radial', roll, times(num(ROLLING_RADIAL), d))
        : line('Rolled in a turn', roll, times(num(Math.PI, 'π'), d)),
    );
  const top = gearsOf(values).at(-1);
  if (!top) return lines;
  const G = sign('G', top.overall, 'count', 'n', 5);
  const gear = figureOf(values, top.name);
  const primary = figureOf(values, 'primary');
  const [driving, driven] = [figureOf(values, 'sprocket'), figureOf(values, 'axle')];
  const chain =
    driving && driven
      ? over(sign('z_2', driven, 'count', 'n', 3), sign('z_1', driving, 'count', 'n', 3))
      : sign('f', finalOf(values), 'count', 'n', 4);
  const parts = [
    ...(gear ? [sign('i', gear, 'count', 'n', 4)] : []),
    ...(primary ? [sign('p', primary, 'count', 'n', 4)] : []),
    chain,
  ];
  lines.push(line(`Overall, ${top.name} gear`, G, parts.length > 1 ? times(...parts) : chain));
  const speedAt = (says: string, n: number) => {
    const v = sign('v', (n * (out['roll']?.si ?? 0)) / (TURN * top.overall), 'speed', 'km/h', 4);
    return line(says, v, over(times(sign('N', n / TURN, 'count', 'n'), roll), G));
  };
  const thousand = sign('v', (out['per1000']?.si ?? 0) * 1000 * RPM, 'speed', 'km/h', 4);
  lines.push(line('At 1000 rev/min', thousand, over(times(num((1000 * RPM) / TURN, '1000/min'), roll), G)));
  const speed = figureOf(values, 'speed');
  if (speed) {
    const { is } = speedAt('', speed);
    const n = num(
      speed / TURN,
      `${printFigure({ si: speed }, 'rotation', 'rpm', 4).replace(/\D+$/, '')}/min`,
    );
    lines.push(line(`At that engine speed, ${top.name} gear`, is, over(times(n, roll), G)));
  }
  return lines;
}

function notes(values: Values, tyres: Tyres, out: Record<string, Output>): string[] {
  const said: string[] = [];
  const measured = figureOf(values, 'circumference') !== undefined;
  const { first } = tyres;
  if (measured) said.push('Worked with the measured rolling circumference.');
  else if (first)
    said.push(
      first.radial
        ? 'Worked with 3.05 × the nominal diameter, an industry guideline for radials. Round the outside it is 2.9 % more. One measured turn of the loaded wheel is better than either.'
        : 'Worked with π × the nominal diameter. A loaded cross-ply rolls some per cent less: measure one turn of the wheel.',
    );
  if (first) said.push(`Nominal diameter: ${first.rule}.`);
  const change = out['engineChange'];
  if (change)
    said.push(
      `At the same road speed the other set-up turns the engine ${full({ ...change, si: Math.abs(change.si) }, 'share', '%')} ${change.si < 0 ? 'slower' : 'faster'}.`,
    );
  if (out['trueSpeed'])
    said.push(
      'The true speed holds if the speedometer was right before. Type approval (UN Regulation No. 39) lets one read 0 to 10 % + 4 km/h high and never low.',
    );
  return said;
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
  const half = (a: string, b: string) =>
    figureOf(values, a) !== undefined &&
    (figureOf(values, b) ?? figureOf(values, b.slice(0, -1))) === undefined &&
    'The teeth of the other sprocket are needed as well.';
  const faults = driveLineFaults(values, one.tyre);
  const refused = refusal({
    ...faults,
    tyre: one.wrong ?? faults['tyre'],
    tyre2: two.wrong,
    sprocket2: half('sprocket2', 'axle2'),
    axle2: half('axle2', 'sprocket2'),
    indicated:
      figureOf(values, 'indicated') !== undefined &&
      !compares(values) &&
      'Give the other tyre or sprocket whose error is wanted.',
  });
  if (refused) return refused;
  const outputs = spread((v) => compute(v, tyres), values);
  const saw = sawTooth(values, outputs);
  return {
    ok: true,
    outputs,
    working: working(values, tyres, outputs),
    tables: tables(values, outputs),
    notes: notes(values, tyres, outputs),
    drawings: saw ? [saw] : [],
  };
}
