import { type Moment, openFaults, TODAY } from './fault-life.ts';
import type { FaultState, Series } from './types.ts';

/** Whether the log forbids driving, limits it, or says nothing against it. Never a permission. */
export interface OffTheRoad {
  kind: 'not to be driven' | 'limited' | 'nothing recorded';
  /** The whole sentence. */
  text: string;
  /** The faults that it names, worst first. */
  faults: FaultState[];
}

/** What the open faults of a moment say about driving: exactly one of three sentences, and never more than that. */
export function offTheRoad(series: Series, moment: Moment = TODAY): OffTheRoad {
  return offTheRoadFor(openFaults(series, moment));
}

/** The same, from the faults that are open, worst first. */
export function offTheRoadFor(open: readonly FaultState[]): OffTheRoad {
  const forbid = open.filter((state) => state.severity === 'do not drive');
  if (forbid.length > 0)
    return { kind: 'not to be driven', text: `Not to be driven: ${titles(forbid)}.`, faults: forbid };
  const limit = open.filter((state) => state.severity === 'drive with care');
  if (limit.length > 0)
    return { kind: 'limited', text: `Open faults that limit driving: ${titles(limit)}.`, faults: limit };
  return {
    kind: 'nothing recorded',
    text: 'This log records no open fault that forbids driving; inspection and law decide.',
    faults: [],
  };
}

function titles(states: readonly FaultState[]): string {
  return states.map(({ fault }) => fault.title.replace(/[.\s]+$/, '')).join('; ');
}
