import { daysBetween } from './day.ts';
import { chapterNumbers } from './fault-life.ts';
import type { DueItem, OdometerReading, Series } from './types.ts';

/** One thing to do again, as it stands on the series' day. */
export interface DueState {
  item: DueItem;
  done: boolean;
  /** Metres, seconds or days since it began to count; undefined where no reading tells. */
  used?: number;
  /** What is left of the interval in the same measure; negative when overdue. */
  left?: number;
  overdue: boolean;
}

const SIZE: Record<OdometerReading['unit'], number> = { km: 1000, mi: 1609.344, h: 3600 };

/**
 * What is due, overdue first, then by what is left of the interval. Distances and hours count from the last reading on or
 * before the chapter's day (else the first one after it) to the newest reading.
 */
export function dueList(series: Series): DueState[] {
  const numbers = chapterNumbers(series);
  const days = new Map(series.chapters.map((chapter) => [chapter.id, chapter.date]));
  const states = series.due.flatMap((item): DueState[] => {
    const since = days.get(item.since);
    if (since === undefined) return [];
    const done = item.doneIn !== undefined && numbers.has(item.doneIn);
    const used = item.after.per === 'days' ? daysBetween(since, series.asOf) : travelled(series, item, since);
    if (used === undefined) return [{ item, done, overdue: false }];
    const left = item.after.size - used;
    return [{ item, done, used, left, overdue: !done && left <= 0 }];
  });
  const rank = (state: DueState) => (state.overdue ? 0 : state.done ? 2 : 1);
  const share = (state: DueState) => (state.left ?? Number.POSITIVE_INFINITY) / state.item.after.size;
  return states.sort((a, b) => rank(a) - rank(b) || share(a) - share(b));
}

function travelled({ odometer, asOf }: Series, item: DueItem, since: string): number | undefined {
  const hours = item.after.per === 'hours';
  const readings = odometer
    .filter((one) => (one.unit === 'h') === hours && one.date <= asOf)
    .map((one) => ({ date: one.date, at: Number(one.reading) * SIZE[one.unit] }))
    .sort((a, b) => (a.date < b.date ? -1 : a.date > b.date ? 1 : a.at - b.at));
  const start = readings.findLast((one) => one.date <= since) ?? readings[0];
  const end = readings.at(-1);
  return start && end && end.at - start.at;
}
