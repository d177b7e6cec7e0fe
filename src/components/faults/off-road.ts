import type { FaultState } from '../../record/types.ts';

/** The one sentence about driving, never a permission. Names come apart so that a page can link them. */
export interface OffRoad {
  /** "Not to be driven", "Open faults that limit driving", or the whole sentence where no fault is named. */
  says: string;
  faults: FaultState[];
}

export const NO_FAULT_FORBIDS =
  'This log records no open fault that forbids driving; inspection and law decide.';

/** From the faults open at a moment. */
export function offRoad(open: readonly FaultState[]): OffRoad {
  const forbid = open.filter((one) => one.severity === 'do not drive');
  if (forbid.length > 0) return { says: 'Not to be driven', faults: forbid };
  const limit = open.filter((one) => one.severity === 'drive with care');
  if (limit.length > 0) return { says: 'Open faults that limit driving', faults: limit };
  return { says: NO_FAULT_FORBIDS, faults: [] };
}
