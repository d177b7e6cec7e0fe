import type { Chapter, Day, Series } from '../../record/types.ts';
import { counted, daysBetween } from '../day-words.ts';

/**
 * How long something stood, in chapters and days. Chapters count from the one in which it was found to the one in which it
 * ended, both included; what is still open counts to the newest chapter and to the day of the series.
 */
export function ageInWords(
  series: Series,
  from: { chapter: Chapter | undefined; day: Day },
  until?: { chapter: Chapter | undefined; day: Day },
): string {
  const last = until?.chapter ?? series.chapters.at(-1);
  const chapters =
    from.chapter && last
      ? series.chapters.filter(
          (one) => one.number >= (from.chapter?.number ?? 0) && one.number <= last.number,
        ).length
      : 0;
  const days = daysBetween(from.day, until?.day ?? series.asOf);
  return [chapters > 0 && counted(chapters, 'chapter'), counted(days, 'day')].filter(Boolean).join(', ');
}
