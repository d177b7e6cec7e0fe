import type { Answer, AnswerTable, Output, Refusal, Values } from './contract.ts';
import { driveLineFaults, type Gear, gearsOf, rollOf, withTyre } from './drive-line.ts';
import { reader, refusal, rowsOf } from './field-values.ts';
import { hillsWorking } from './hills-working.ts';
import { printer } from './print-figure.ts';
import { percent, pullChart } from './pull-chart.ts';
import {
  changeSpeed,
  climbForce,
  dragForce,
  greatestPull,
  highest,
  pullAt,
  rollingForce,
  slopeHeld,
  steadySpeed,
} from './road-load.ts';
import type { Tyre } from './tyre.ts';
import { type Computed, spread } from './uncertainty.ts';
import { pullsOf, roadOf, slopesOf, timeBetween } from './vehicle-on-road.ts';

/** Every figure of the answer; those of a gear end in its number, those of a slope in a second one. */
function compute(values: Values, tyre: Tyre | undefined): Computed {
  const v = reader(values);
  const road = roadOf(values);
  const slope = v('slope', 0);
  const [rolling, drag, climb] = [
    rollingForce(road, slope),
    dragForce(road, v('road')),
    climbForce(road, slope),
  ];
  const force = rolling + drag + climb;
  const asked = v('road') >= 0 ? 1 : Number.NaN;
  const found: Record<string, number | undefined> = {
    density: road.density_kgpm3,
    rollingForce: rolling * asked,
    dragForce: drag,
    climbForce: climb * asked,
    force,
    wheelPower: force * v('road'),
  };
  const roll = rollOf(values, tyre);
  const gears = gearsOf(values);
  const pulls = pullsOf(values, gears, roll, road);
  if (!pulls.length) return found;
  pulls.forEach((pull, g) => {
    found[`end_${g}`] = highest(pull);
    found[`steepest_${g}`] = slopeHeld(road, greatestPull(pull, road));
    for (const [s, steep] of slopesOf(values).entries())
      found[`top_${g}_${s}`] = steadySpeed(pull, road, steep);
    const next = pulls[g + 1];
    if (!next) return;
    const turn = changeSpeed(pull, next);
    found[`change_${g}`] = turn;
    found[`changeSlope_${g}`] = slopeHeld(road, (pullAt(next, turn) ?? 0) - dragForce(road, turn));
  });
  found['top'] = Math.max(...pulls.flatMap((pull) => steadySpeed(pull, road, slope) ?? []));
  found['steepest'] = found['steepest_0'];
  found['time'] = timeBetween(values, gears, pulls, road, roll);
  return found;
}

const kmh = printer('speed', 'km/h');
const bareKmh = printer('speed', 'km/h', 3, true);

/** The gear with the highest steady speed on each slope; -1 where none holds it. */
const fastest = (gears: readonly Gear[], out: Record<string, Output>, s: number): number =>
  gears.reduce(
    (best, _, g) => ((out[`top_${g}_${s}`]?.si ?? 0) > (out[`top_${best}_${s}`]?.si ?? 0) ? g : best),
    -1,
  );

function tables(values: Values, out: Record<string, Output>): AnswerTable[] {
  const gears = gearsOf(values);
  if (!out['end_0']) return [];
  const numeric = (labels: string[]) => labels.map((label, i) => ({ label, numeric: i > 0 }));
  const ended = (g: number, s: number) => {
    const [top, end] = [out[`top_${g}_${s}`], out[`end_${g}`]];
    return top && end && top.si >= end.si * (1 - 1e-9) ? ' *' : '';
  };
  return [
    {
      name: 'slopes',
      caption: 'Highest steady speed, km/h (— cannot hold it; * the engine ends there, not the hill)',
      columns: numeric(['Slope', ...gears.map(({ name }) => name), 'fastest in']),
      rows: slopesOf(values).map((slope, s) => [
        percent(slope),
        ...gears.map((_, g) => bareKmh(out[`top_${g}_${s}`]) + ended(g, s)),
        gears[fastest(gears, out, s)]?.name ?? 'no gear',
      ]),
    },
    {
      name: 'gears',
      caption: 'Each gear',
      columns: numeric([
        'Gear',
        'Steepest slope held',
        'Next gear pulls more above, km/h',
        'and is faster on less than',
      ]),
      rows: gears.map(({ name }, g) => [
        name,
        percent(out[`steepest_${g}`]),
        bareKmh(out[`change_${g}`]),
        percent(out[`changeSlope_${g}`]),
      ]),
    },
  ];
}

function notes(values: Values, out: Record<string, Output>): string[] {
  const gears = gearsOf(values);
  const said: string[] = [];
  gears.forEach(({ name }, g) => {
    const [next, speed, slope] = [gears[g + 1]?.name, out[`change_${g}`], out[`changeSlope_${g}`]];
    if (next && speed && slope)
      said.push(
        `On slopes of more than ${percent(slope)} ${name} is the faster gear, on less ${next}; it turns at ${kmh(speed)}.`,
      );
  });
  if (reader(values)('to') > 0 && !out['time'] && out['end_0'])
    said.push('The upper speed is never reached on that slope, so there is no time to it.');
  if (!out['end_0']) said.push('For speeds and slopes give the engine, the gears and the tyre as well.');
  else
    said.push(
      'Full throttle; torque straight between the rows and in proportion to air density; below the first row the clutch slips. Grip of the tyres is not looked at.',
    );
  return said;
}

/**
 * Pull against resistance: steady speeds, slopes held, the gear that is faster uphill, time between two speeds.
 * @returns refusals in plain words; ± carried to every output and every cell
 */
export function solve(given: Values): Answer | Refusal {
  const { values, tyre, wrong } = withTyre(given);
  const v = reader(values);
  const rows = [...rowsOf(values, 'torque'), ...rowsOf(values, 'power')];
  const speeds = new Set(rows.map(([w]) => w));
  const { tyre: _none, ...faults } = rows.length ? driveLineFaults(values, tyre) : {};
  const curve = rowsOf(values, 'power').length ? 'power' : 'torque';
  const refused = refusal({
    mass: !(v('mass') > 0) && 'The mass is needed, with driver and load.',
    ...faults,
    tyre: wrong,
    [curve]:
      rows.length === 1
        ? 'Two rows are needed at least: a speed and what the engine gives at it.'
        : speeds.size < rows.length && 'Each engine speed may stand in one row only.',
    to: v('to') <= v('from', 0) && 'The upper speed must be above the lower.',
  });
  if (refused) return refused;
  const outputs = spread((moved) => compute(moved, tyre), values);
  return {
    ok: true,
    outputs,
    working: hillsWorking(values, outputs),
    tables: tables(values, outputs),
    notes: notes(values, outputs),
    drawings: pullChart(values, tyre),
  };
}
