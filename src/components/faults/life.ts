/**
 * A fault's life as far as a moment: open or cured, how bad, since when. A moment is "before chapter n" or "after chapter n",
 * so that what a chapter carried over is what stood then, not what stands today.
 */
import type { Fault, FaultEvent, FaultState, Series, Severity } from '../../record/types.ts';

const WORST_FIRST: readonly Severity[] = ['do not drive', 'drive with care', 'nuisance'];

export const bySeverity = (a: FaultState, b: FaultState): number =>
  WORST_FIRST.indexOf(a.severity) - WORST_FIRST.indexOf(b.severity) || a.since.localeCompare(b.since);

/** One run from being found (or coming back) to being cured; a fault that came back has two or more. */
export interface Life {
  events: FaultEvent[];
  /** The event that cured it; absent while it is open. */
  cured?: FaultEvent;
}

export function livesOf(fault: Fault): Life[] {
  const lives: Life[] = [];
  for (const event of fault.events) {
    const last = lives.at(-1);
    if (last === undefined || last.cured !== undefined) lives.push({ events: [event] });
    else last.events.push(event);
    const now = lives.at(-1);
    if (event.what === 'cured' && now) now.cured = event;
  }
  return lives;
}

/** The fault as its events up to a moment leave it; nothing if it had not been found by then. */
export function stateAfter(fault: Fault, happened: (event: FaultEvent) => boolean): FaultState | undefined {
  const events = fault.events.filter(happened);
  const first = events[0];
  if (first === undefined) return undefined;
  const state: FaultState = { fault, open: false, severity: 'nuisance', since: first.date, lives: 0 };
  for (const event of events) {
    if (event.severity !== undefined) state.severity = event.severity;
    if (event.what === 'cured') {
      state.open = false;
      state.lives += 1;
      delete state.putOff;
    } else {
      if (!state.open) state.since = event.date;
      state.open = true;
    }
    if (event.what === 'put off')
      state.putOff = { reason: event.text, ...(event.review !== undefined && { review: event.review }) };
  }
  return state;
}

/** Where every fault stood before (or after) the chapter of that number, open ones only, worst first. */
export function openFaultsAt(series: Series, moment: { before: number } | { after: number }): FaultState[] {
  const numbers = new Map(series.chapters.map((one) => [one.id, one.number]));
  const happened = (event: FaultEvent) => {
    const number = numbers.get(event.chapter);
    if (number === undefined) return false;
    return 'before' in moment ? number < moment.before : number <= moment.after;
  };
  return series.faults
    .map((fault) => stateAfter(fault, happened))
    .filter((state) => state?.open === true)
    .sort(bySeverity);
}
