import { currentSeries } from '../../record/current.ts';
import type { FaultEvent } from '../../record/types.ts';
import { atChapter } from '../address.ts';
import { dayInWords } from '../day-words.ts';
import { type Markup, markup } from '../markup.ts';
import { chapterById } from '../record-index.ts';

/** "tried in chapter 4, 28 March 2026, drive with care" */
export function eventWords(event: FaultEvent): Markup {
  const { language } = currentSeries();
  const day = (date: string) => dayInWords(date, language);
  const chapter = chapterById(event.chapter);
  const where = chapter && markup` in <a href="${atChapter(chapter)}">chapter ${chapter.number}</a>`;
  const when = markup`<time datetime="${event.date}">${day(event.date)}</time>`;
  const severity = event.severity !== undefined && `, ${event.severity}`;
  const review = event.review !== undefined && `, to be looked at again on ${day(event.review)}`;
  return markup`<b>${event.what}</b>${where}, ${when}${severity}${review}`;
}
