/**
 * What has to be done again after the refit, and how far along it is on the day of the series: by distance or running hours
 * from the odometer's readings, or by days.
 */
import type { Chapter, DueItem, OdometerReading, Series } from '../../record/types.ts';
import { daysBetween } from '../day-words.ts';

export interface DueStanding {
  item: DueItem;
  since: Chapter;
  done?: Chapter;
  /** In the item's own measure (metres, seconds, days) since it began to count; absent where no reading tells. */
  used?: number;
  /** `used` has reached what the item allows, and nobody has ticked it off. */
  overdue: boolean;
}

const SIZE: Record<OdometerReading['unit'], number> = { km: 1000, mi: 1609.344, h: 3600 };

/** Readings of one measure in metres or seconds, in order of date. */
function readings(series: Series, per: DueItem['after']['per']): { date: string; at: number }[] {
  return series.odometer
    .filter((one) => (one.unit === 'h') === (per === 'hours') && one.date <= series.asOf)
    .map((one) => ({ date: one.date, at: Number(one.reading) * SIZE[one.unit] }))
    .sort((a, b) => a.date.localeCompare(b.date) || a.at - b.at);
}

function usedSince(series: Series, item: DueItem, since: Chapter): number | undefined {
  if (item.after.per === 'days') return daysBetween(since.date, series.asOf);
  const known = readings(series, item.after.per);
  const newest = known.at(-1);
  const start = known.findLast((one) => one.date <= since.date) ?? known[0];
  return newest && start && newest.at - start.at;
}

const made = new WeakMap<Series, DueStanding[]>();

/** Every due item whose chapter is out; overdue ones first. */
export function dueOf(series: Series): readonly DueStanding[] {
  const known = made.get(series);
  if (known) return known;
  const chapters = new Map(series.chapters.map((one) => [one.id, one]));
  const standings = series.due.flatMap((item): DueStanding[] => {
    const since = chapters.get(item.since);
    if (since === undefined) return [];
    const done = item.doneIn === undefined ? undefined : chapters.get(item.doneIn);
    const used = usedSince(series, item, since);
    const overdue = done === undefined && used !== undefined && used >= item.after.size;
    return [{ item, since, ...(done && { done }), ...(used !== undefined && { used }), overdue }];
  });
  const rank = (one: DueStanding) => (one.overdue ? 0 : one.done ? 2 : 1);
  standings.sort((a, b) => rank(a) - rank(b));
  made.set(series, standings);
  return standings;
}

/** "120 km", "3.5 h", "41 days". */
export function usedInWords(used: number, per: DueItem['after']['per'], miles: boolean): string {
  if (per === 'days') return `${Math.round(used)} days`;
  if (per === 'hours') return `${(used / 3600).toFixed(1)} h`;
  return miles ? `${Math.round(used / 1609.344)} mi` : `${Math.round(used / 1000)} km`;
}
