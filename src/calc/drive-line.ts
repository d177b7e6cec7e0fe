import type { Values } from './contract.ts';
import type { driveLineWrong } from './drive-line-says.ts';
import { reader, textOf } from './field-values.ts';
import { type NoTyre, nominalRoll, type Tyre, tyreOf } from './tyre.ts';

/** The forward gears by the names of their fields. */
export const GEARS = ['first', 'second', 'third', 'fourth', 'fifth', 'sixth'] as const;

/** A marking read into the values, so that its doubt travels like any other: `tyre` adds `diameter` and what it rolls. */
export function withTyre(values: Values, suffix = ''): { values: Values; tyre?: Tyre; wrong?: NoTyre } {
  const marking = textOf(values, `tyre${suffix}`);
  if (marking === undefined) return { values };
  const tyre = tyreOf(marking);
  if (typeof tyre === 'string') return { values, wrong: tyre };
  return { values: { ...values, [`diameter${suffix}`]: { si: tyre.diameter_m, pm: tyre.pm_m } }, tyre };
}

/** What the wheel rolls in a turn: measured, else from the marking; not a number without either. */
export function rollOf(values: Values, tyre: Tyre | undefined, suffix = ''): number {
  const v = reader(values);
  return v(`circumference${suffix}`, nominalRoll(v(`diameter${suffix}`), tyre?.radial ?? false));
}

/** Turns of the gearbox's output for one of the wheel, by ratio or by sprockets; 1 without either. */
export function finalOf(values: Values, suffix = ''): number {
  const v = reader(values);
  const own = (name: string) => v(name + suffix, v(name));
  const sprockets = own('axle') / own('sprocket');
  const first = v(`sprocket${suffix}`, v(`axle${suffix}`)) > 0 && suffix !== '';
  const [one, other] = first ? [sprockets, own('final')] : [own('final'), sprockets];
  return Number.isNaN(one) ? (Number.isNaN(other) ? 1 : other) : one;
}

export interface Gear {
  name: string;
  /** Turns of the engine for one of the wheel. */
  overall: number;
}

/** The gears that have a ratio, lowest speed first; without any, the drive itself is the one gear. */
export function gearsOf(values: Values, suffix = ''): Gear[] {
  const v = reader(values);
  const rest = v('primary', 1) * finalOf(values, suffix);
  const gears = GEARS.map((name) => ({ name, overall: v(name) * rest })).filter(({ overall }) => overall > 0);
  return gears.length ? gears.sort((a, b) => b.overall - a.overall) : [{ name: 'direct', overall: rest }];
}

/** A table's rows that are filled by their numbers. */
export const numbered = (rows: readonly unknown[]): { row: number }[] => rows.map((_, row) => ({ row }));

/** Sprockets as a ratio; not a number without both. */
export const sprocketsOf = (values: Values): number => reader(values)('axle') / reader(values)('sprocket');

/** What of gears and tyre is missing or contradicts itself, by field; the sentence on both ways asks for `bySprockets`. */
export function driveLineFaults(
  values: Values,
  tyre: Tyre | undefined,
): Record<string, keyof typeof driveLineWrong | false> {
  const v = reader(values);
  const lacks = (a: string, b: string) => v(b) > 0 && !(v(a) > 0) && 'teeth';
  return {
    tyre: !(rollOf(values, tyre) > 0) && 'tyreNeeded',
    axle: lacks('axle', 'sprocket'),
    sprocket: lacks('sprocket', 'axle'),
    final: Math.abs(v('final') / sprocketsOf(values) - 1) > 0.01 && 'final',
  };
}
