import { happened, type Moment, TODAY } from './fault-life.ts';
import type { RefitLine } from './types.ts';

/** Refit lines that are open at a moment: opened by then and not yet closed. */
export function refitOpenAt(
  lines: readonly RefitLine[],
  numbers: ReadonlyMap<string, number>,
  moment: Moment = TODAY,
): RefitLine[] {
  const done = (spot: RefitLine['closed']): boolean => {
    const number = spot && numbers.get(spot.chapter);
    return number !== undefined && happened(number, moment);
  };
  return lines.filter((line) => done(line.opened) && !done(line.closed));
}
