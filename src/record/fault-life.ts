import type { Chapter, Fault, FaultEvent, FaultState, Series, Severity } from './types.ts';

/**
 * A moment of the series: before everything of a chapter, or after it. Order is by the chapters' numbers; two chapters of
 * one day keep it.
 */
export type Moment = { before: number } | { after: number };

/** After the last chapter that the series has. */
export const TODAY: Moment = { after: Number.POSITIVE_INFINITY };

const WORST_FIRST: readonly Severity[] = ['do not drive', 'drive with care', 'nuisance'];

/** Worst first; of one severity the oldest first, then by id. */
export function worstFirst(a: FaultState, b: FaultState): number {
  const bySeverity = WORST_FIRST.indexOf(a.severity) - WORST_FIRST.indexOf(b.severity);
  if (bySeverity !== 0) return bySeverity;
  if (a.since !== b.since) return a.since < b.since ? -1 : 1;
  return a.fault.id < b.fault.id ? -1 : 1;
}

/** Whether something in the chapter of that number has happened by the moment. */
export function happened(number: number, moment: Moment): boolean {
  return 'before' in moment ? number < moment.before : number <= moment.after;
}

/** Numbers of the series' chapters by id. */
export function chapterNumbers(series: {
  chapters: readonly Pick<Chapter, 'id' | 'number'>[];
}): Map<string, number> {
  return new Map(series.chapters.map((chapter) => [chapter.id, chapter.number]));
}

/** The fault as the events up to a moment leave it; undefined if nothing had found it by then. */
export function faultAt(
  fault: Fault,
  numbers: ReadonlyMap<string, number>,
  moment: Moment,
): FaultState | undefined {
  let state: FaultState | undefined;
  for (const event of fault.events) {
    const number = numbers.get(event.chapter);
    if (number !== undefined && happened(number, moment)) state = after(state, fault, event);
  }
  return state;
}

function after(before: FaultState | undefined, fault: Fault, event: FaultEvent): FaultState {
  const state: FaultState = before
    ? { ...before }
    : { fault, open: true, severity: 'do not drive', since: event.date, lives: 0 };
  if (event.severity) state.severity = event.severity;
  switch (event.what) {
    case 'found':
    case 'came back':
      state.open = true;
      state.since = event.date;
      break;
    case 'cured':
      state.open = false;
      state.lives += 1;
      delete state.putOff;
      break;
    case 'put off':
      state.putOff = { reason: event.text, ...(event.review === undefined ? {} : { review: event.review }) };
      break;
    case 'tried':
    case 'worse':
    case 'better':
      delete state.putOff;
      break;
    default:
      event.what satisfies never;
  }
  return state;
}

/** Open faults at a moment, worst first: at `{ before: n }` what chapter n took over, at `{ after: n }` what it handed on. */
export function openFaults(series: Series, moment: Moment = TODAY): FaultState[] {
  const numbers = chapterNumbers(series);
  return series.faults
    .flatMap((fault) => faultAt(fault, numbers, moment) ?? [])
    .filter((state) => state.open)
    .sort(worstFirst);
}

/** One run from being found, or coming back, to being cured. A fault that came back has several. */
export interface Life {
  events: FaultEvent[];
  cured: boolean;
}

export function livesOf(fault: Fault): Life[] {
  const lives: Life[] = [];
  for (const event of fault.events) {
    let life = lives.at(-1);
    if (!life || event.what === 'came back' || (life.cured && event.what === 'found')) {
      life = { events: [], cured: false };
      lives.push(life);
    }
    life.events.push(event);
    if (event.what === 'cured') life.cured = true;
  }
  return lives;
}
