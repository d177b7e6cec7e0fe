/**
 * A measurement against its limits. What lies so near a limit that the doubt of the reading reaches over it is not called
 * within or outside: it cannot be told.
 */
import type { Measurement } from '../../record/types.ts';

export interface Limits {
  min?: number;
  max?: number;
}

export type Verdict =
  | { kind: 'within' }
  | { kind: 'outside'; by: string; side: 'above' | 'below' }
  | { kind: 'cannot tell' }
  | { kind: 'no limit' };

const number = (text: string | undefined): number | undefined =>
  text === undefined ? undefined : Number(text);

/** Digits after the point of the finest figure given, so that a difference shows no more than was measured. */
export function decimalsOf(...texts: (string | undefined)[]): number {
  return Math.max(0, ...texts.map((text) => text?.split('.')[1]?.length ?? 0));
}

export function limitsOf(one: Measurement): Limits {
  const fresh = number(one.asNew);
  const pm = number(one.limitPm);
  if (fresh !== undefined && pm !== undefined && one.min === undefined && one.max === undefined)
    return { min: fresh - pm, max: fresh + pm };
  const min = number(one.min);
  const max = number(one.max);
  return { ...(min !== undefined && { min }), ...(max !== undefined && { max }) };
}

/** A figure on the limit is within. `slack` takes up what binary arithmetic adds to decimal figures. */
export function judge(one: Measurement, figure: string): Verdict {
  const { min, max } = limitsOf(one);
  if (min === undefined && max === undefined) return { kind: 'no limit' };
  const value = Number(figure);
  const doubt = number(one.foundPm) ?? 0;
  const slack = 1e-9 * Math.max(1, Math.abs(value));
  const decimals = decimalsOf(figure, one.min, one.max, one.asNew, one.limitPm);
  if (max !== undefined && value - doubt > max + slack)
    return { kind: 'outside', by: (value - max).toFixed(decimals), side: 'above' };
  if (min !== undefined && value + doubt < min - slack)
    return { kind: 'outside', by: (min - value).toFixed(decimals), side: 'below' };
  const clear =
    (max === undefined || value + doubt <= max + slack) &&
    (min === undefined || value - doubt >= min - slack);
  return { kind: clear ? 'within' : 'cannot tell' };
}

/** Share of the wear allowance that is used up, in %, towards the limit on the side to which the part wears. */
export function wearUsed(one: Measurement): number | undefined {
  const fresh = number(one.asNew);
  if (fresh === undefined) return undefined;
  const worn = Number(one.found) - fresh;
  const limit = worn >= 0 ? number(one.max) : number(one.min);
  if (limit === undefined || limit === fresh || worn === 0) return undefined;
  return (worn / (limit - fresh)) * 100;
}

export interface Shape {
  /** Greatest difference between directions at one height. */
  ovality?: string;
  /** Greatest difference between heights in one direction. */
  taper?: string;
}

/**
 * Ovality and taper from readings whose positions are written "height, direction" ("top, along the crank"): the greatest
 * difference at one height, and the greatest difference in one direction.
 */
export function shapeOf(rows: readonly Measurement[]): Shape {
  const placed = rows.flatMap((row) => {
    const parts = row.position?.split(',').map((part) => part.trim()) ?? [];
    const [height, direction] = parts;
    return height && direction ? [{ height, direction, value: Number(row.found), text: row.found }] : [];
  });
  const decimals = decimalsOf(...placed.map((one) => one.text));
  const widest = (key: 'height' | 'direction'): string | undefined => {
    const spreads = [...Map.groupBy(placed, (one) => one[key]).values()]
      .filter((group) => group.length > 1)
      .map((group) => {
        const values = group.map((one) => one.value);
        return Math.max(...values) - Math.min(...values);
      });
    return spreads.length === 0 ? undefined : Math.max(...spreads).toFixed(decimals);
  };
  const ovality = widest('height');
  const taper = widest('direction');
  return { ...(ovality !== undefined && { ovality }), ...(taper !== undefined && { taper }) };
}
