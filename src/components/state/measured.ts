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
function decimalsOf(...texts: (string | undefined)[]): number {
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
