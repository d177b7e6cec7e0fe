import Big from 'big.js';
import { converted } from './quantity/counterpart.ts';
import { unitNamed } from './quantity/unit-named.ts';
import type { Measurement } from './types.ts';

/** What a figure means against its limits. `by` is in the measurement's unit, positive, digit for digit. */
export type Verdict =
  | { kind: 'within' }
  | { kind: 'outside'; beyond: 'least' | 'most'; by: string }
  /** The figure's ± reaches over the limit. */
  | { kind: 'cannot tell'; limit: 'least' | 'most' };

/** The limits in force: as written, or as new give or take the limit's ±. */
export function limitsOf({ min, max, asNew, limitPm }: Measurement): { min?: Big; max?: Big } {
  if (asNew !== undefined && limitPm !== undefined)
    return { min: new Big(asNew).minus(limitPm), max: new Big(asNew).plus(limitPm) };
  return {
    ...(min === undefined ? {} : { min: new Big(min) }),
    ...(max === undefined ? {} : { max: new Big(max) }),
  };
}

/**
 * Judges a figure as found or as left. A figure on the limit is within. With a ± it is within or outside only where the
 * whole of figure ± doubt is; the rule of ISO 14253-1 for proving either (memory). Undefined without limits or figure.
 */
export function verdict(measurement: Measurement, which: 'found' | 'left' = 'found'): Verdict | undefined {
  const text = measurement[which];
  const { min, max } = limitsOf(measurement);
  if (text === undefined || (!min && !max)) return undefined;
  const figure = new Big(text);
  const doubt = new Big(measurement.foundPm ?? '0');
  if (max && figure.minus(doubt).gt(max))
    return { kind: 'outside', beyond: 'most', by: figure.minus(max).toFixed() };
  if (min && figure.plus(doubt).lt(min))
    return { kind: 'outside', beyond: 'least', by: min.minus(figure).toFixed() };
  if (max && figure.plus(doubt).gt(max)) return { kind: 'cannot tell', limit: 'most' };
  if (min && figure.minus(doubt).lt(min)) return { kind: 'cannot tell', limit: 'least' };
  return { kind: 'within' };
}

/**
 * How much of the wear from new to the limit is used, in %: above 100 beyond it. Undefined without a figure when new and a
 * limit on the side to which it wore.
 */
export function wearUsed(measurement: Measurement, which: 'found' | 'left' = 'found'): number | undefined {
  const { asNew } = measurement;
  const text = measurement[which];
  if (asNew === undefined || text === undefined) return undefined;
  const { min, max } = limitsOf(measurement);
  const fresh = new Big(asNew);
  const worn = new Big(text).minus(fresh);
  const limit = worn.gt(0) ? max : worn.lt(0) ? min : (max ?? min);
  const room = limit?.minus(fresh);
  if (!room || room.eq(0) || (worn.gt(0) && room.lt(0)) || (worn.lt(0) && room.gt(0))) return undefined;
  return Number(worn.div(room).times(100).round(1).toString());
}

export interface Roundness {
  unit: string;
  /** Greatest difference between two directions at one height. */
  ovality?: string;
  /** Greatest difference between two heights in one direction. */
  taper?: string;
}

/**
 * Ovality and taper of a bore or journal from its readings at several positions, written "height, direction": "top, along
 * the crank". A drum's are written "number of the diameter, depth" ("1, outer depth"): there the number is the direction.
 * Readings in other units are turned into the first one's. Common practice of engine reconditioning.
 */
export function roundness(
  readings: readonly Measurement[],
  which: 'found' | 'left' = 'found',
): Roundness | undefined {
  const [first] = readings;
  if (!first) return undefined;
  const points = readings.flatMap((one) => {
    const text = one[which];
    const parts = (one.position ?? '').split(',').map((part) => part.trim().toLowerCase());
    const numbered = /^\d+$/.test(parts[0] ?? '') && !/^\d+$/.test(parts[1] ?? '');
    const [height, direction] = numbered ? [parts[1], parts[0]] : parts;
    const value = text === undefined ? undefined : inUnit(text, one.unit, first.unit);
    return value && height && direction ? [{ height, direction, value }] : [];
  });
  const ovality = widest(points, (point) => point.height);
  const taper = widest(points, (point) => point.direction);
  if (!ovality && !taper) return undefined;
  // No more places than were read, and no fewer.
  const places = readings.every((one) => one.unit === first.unit)
    ? Math.max(...readings.map((one) => one[which]?.split('.')[1]?.length ?? 0))
    : undefined;
  return {
    unit: first.unit,
    ...(ovality ? { ovality: ovality.toFixed(places) } : {}),
    ...(taper ? { taper: taper.toFixed(places) } : {}),
  };
}

interface Point {
  height: string;
  direction: string;
  value: Big;
}

function widest(points: readonly Point[], by: (point: Point) => string): Big | undefined {
  let most: Big | undefined;
  for (const group of Map.groupBy(points, by).values()) {
    if (group.length < 2) continue;
    const sorted = group.map((point) => point.value).sort((a, b) => a.cmp(b));
    const [low, high] = [sorted[0], sorted.at(-1)];
    const spread = low && high?.minus(low);
    if (spread && (!most || spread.gt(most))) most = spread;
  }
  return most;
}

function inUnit(text: string, from: string, to: string): Big | undefined {
  if (from === to) return new Big(text);
  const [own, wanted] = [unitNamed(from), unitNamed(to)];
  if (!own || !wanted || own.quantity !== wanted.quantity) return undefined;
  return new Big(converted(text, own, wanted.unit, 'nearest'));
}
