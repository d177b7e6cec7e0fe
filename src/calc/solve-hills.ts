import type { Found, Output, Refusal, Values } from './contract.ts';
import {
  driveLineFaults,
  type Gear,
  gearsOf,
  numbered,
  rollOf,
  sprocketsOf,
  withTyre,
} from './drive-line.ts';
import { reader, refusal, rowsOf } from './field-values.ts';
import type { wrong } from './hills-says.ts';
import type { Figures } from './holes.ts';
import { pullChart } from './pull-chart.ts';
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

/** The gear with the highest steady speed on each slope; -1 where none holds it. */
const fastest = (gears: readonly Gear[], out: Record<string, Output>, s: number): number =>
  gears.reduce(
    (best, _, g) => ((out[`top_${g}_${s}`]?.si ?? 0) > (out[`top_${best}_${s}`]?.si ?? 0) ? g : best),
    -1,
  );

/** What the sentences and formulas say besides the outputs. */
function said(values: Values, gears: readonly Gear[], out: Record<string, Output>): Figures {
  const v = reader(values);
  const figures: Record<string, Figures[string]> = {
    never: v('to') > 0 && !out['time'] && gears.length > 0,
    steepness: v('road') >= 0 ? Math.atan(v('slope', 0)) : undefined,
    blows: v('road') + v('wind', 0) > 0,
  };
  for (const [s, steep] of slopesOf(values).entries()) {
    figures[`steep_${s}`] = steep;
    figures[`fastest_${s}`] = gears[fastest(gears, out, s)]?.name;
  }
  for (const [g, { name }] of gears.entries()) {
    figures[`gear_${g}`] = name;
    // Marked where the engine ends before the hill does.
    for (const s of slopesOf(values).keys())
      figures[`ends_${g}_${s}`] =
        (out[`top_${g}_${s}`]?.si ?? 0) >= (out[`end_${g}`]?.si ?? 0) * (1 - 1e-9) ? ' *' : '';
  }
  return figures;
}

/**
 * Pull against resistance: steady speeds, slopes held, the gear that is faster uphill, time between two speeds.
 * @returns refusals; ± carried to every output and every cell
 */
export function solve(given: Values): Found | Refusal {
  const { values, tyre, wrong: noTyre } = withTyre(given);
  const v = reader(values);
  const rows = [...rowsOf(values, 'torque'), ...rowsOf(values, 'power')];
  const speeds = new Set(rows.map(([w]) => w));
  const { tyre: _none, ...faults } = rows.length ? driveLineFaults(values, tyre) : {};
  const curve = rowsOf(values, 'power').length ? 'power' : 'torque';
  const refused = refusal<keyof typeof wrong>(
    {
      mass: !(v('mass') > 0) && 'mass',
      ...faults,
      tyre: noTyre,
      [curve]: rows.length === 1 ? 'oneRow' : speeds.size < rows.length && 'twice',
      to: v('to') <= v('from', 0) && 'to',
    },
    { bySprockets: sprocketsOf(values).toFixed(3) },
  );
  if (refused) return refused;
  const outputs = spread((moved) => compute(moved, tyre), values);
  const gears = outputs['end_0'] ? gearsOf(values) : [];
  return {
    ok: true,
    outputs,
    figures: said(values, gears, outputs),
    shown: {
      slopes: { rows: gears.length ? numbered(slopesOf(values)) : [] },
      gears: { rows: numbered(gears) },
      pull: pullChart(values, tyre),
    },
  };
}
