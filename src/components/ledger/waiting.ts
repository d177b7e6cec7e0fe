import { currentSeries } from '../../record/current.ts';
import type { Fault, Part, RefitLine, Series } from '../../record/types.ts';
import { faultToday } from '../record-index.ts';

/** What cannot go on without a part: open faults and refit lines that the author named, as far as they are published. */
export interface Waiting {
  faults: Fault[];
  refit: RefitLine[];
}

export function waitingFor(part: Part, series: Series, isOpen: (fault: Fault) => boolean): Waiting {
  const names = new Set(part.neededFor ?? []);
  return {
    faults: series.faults.filter((fault) => names.has(fault.id) && isOpen(fault)),
    refit: series.refit.filter((line) => names.has(line.id) && line.closed === undefined),
  };
}

/** The same for the series being built, on its day. */
export const waitingToday = (part: Part): Waiting =>
  waitingFor(part, currentSeries(), (fault) => faultToday(fault)?.open ?? false);
