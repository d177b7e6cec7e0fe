import type { Found, FoundChart, Output, Refusal, Values } from './contract.ts';
import { driveLineFaults, finalOf, gearsOf, numbered, rollOf, sprocketsOf, withTyre } from './drive-line.ts';
import { reader, refusal, textOf } from './field-values.ts';
import type { wrong } from './gearing-says.ts';
import type { Figures } from './holes.ts';
import type { Point } from './svg.ts';
import type { Tyre } from './tyre.ts';
import { type Computed, spread } from './uncertainty.ts';

const TURN = 2 * Math.PI;
const RPM = TURN / 60;

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

/** Road speed across, engine speed up: each gear a line from nothing, the drop at each change upright. */
function sawTooth(values: Values, out: Record<string, Output>, top: number): FoundChart | undefined {
  if (!(top > 0)) return undefined;
  const curves = SETS.flatMap((set): FoundChart['curves'] => {
    const pers = gearsOf(values, set).flatMap((_, i) => out[`per1000${set}_${i}`]?.si ?? []);
    const from = pers.map((per, i) => (i ? (top * (pers[i - 1] ?? 0)) / per : 0));
    const at = (per: number, n: number): Point => [n * RPM * per * 3.6, n];
    const points = pers.flatMap((per, i) => [at(per, from[i] ?? 0), at(per, top)]);
    if (set) return points.length ? [{ points, dash: '5 3' }] : [];
    const numbers = pers.map((per, i) => ({
      points: [],
      label: i + 1,
      labelAt: at(per, ((from[i] ?? 0) + top) / 2),
    }));
    return [{ points, label: '' }, ...numbers];
  });
  return {
    x: { max: Math.max(...curves.flatMap(({ points }) => points.map(([x]) => x))) },
    y: { max: top * 1.1 },
    curves,
  };
}

/** What the sentences and formulas say besides the outputs. */
function said(values: Values, tyre: Tyre | undefined, out: Record<string, Output>): Figures {
  const v = reader(values);
  const names = SETS.flatMap((set) => gearsOf(values, set).map(({ name }, i) => [`gear${set}_${i}`, name]));
  const topGear = gearsOf(values).at(-1)?.name ?? '';
  const { engineChange, per1000 } = out;
  return {
    ...Object.fromEntries(names),
    topGear,
    gearRatio: v(topGear),
    chained: v('axle') > 0 && v('sprocket') > 0,
    drive: finalOf(values),
    radial: tyre?.radial,
    rule: tyre?.rule,
    ...(engineChange && {
      [engineChange.si < 0 ? 'slower' : 'faster']: { ...engineChange, si: Math.abs(engineChange.si) },
    }),
    at1000: (per1000?.si ?? Number.NaN) * 1000 * RPM,
    turns: v('speed') / TURN,
  };
}

/**
 * Road speed for engine speed in each gear and back, for one set-up or two.
 * @returns refusals; ± carried to every output and every cell
 */
export function solve(given: Values): Found | Refusal {
  const one = withTyre(given);
  const two = withTyre(one.values, '2');
  const values = two.values;
  const tyres: Tyres = { first: one.tyre, other: two.tyre };
  const v = reader(values);
  const lacks = (a: string, b: string) => v(`${b}2`) > 0 && !(v(`${a}2`, v(a)) > 0) && 'teeth';
  const faults = driveLineFaults(values, one.tyre);
  const refused = refusal<keyof typeof wrong>(
    {
      ...faults,
      tyre: one.wrong ?? faults['tyre'],
      tyre2: two.wrong,
      sprocket2: lacks('sprocket', 'axle'),
      axle2: lacks('axle', 'sprocket'),
      indicated: v('indicated') > 0 && !compares(values) && 'other',
    },
    { bySprockets: sprocketsOf(values).toFixed(3) },
  );
  if (refused) return refused;
  const outputs = spread((moved) => compute(moved, tyres), values);
  return {
    ok: true,
    outputs,
    figures: said(values, one.tyre, outputs),
    shown: {
      gears: { rows: numbered(gearsOf(values)) },
      gears2: { rows: compares(values) ? numbered(gearsOf(values, '2')) : [] },
      saw: sawTooth(values, outputs, v('change', v('speed')) / RPM),
    },
  };
}
