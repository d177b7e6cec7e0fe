/** What the feeds announce: chapters as they come out, and corrections, newest first. */
import { noteHtml, noteText } from '../../record/hazards/note-text.ts';
import type { Day, Series } from '../../record/types.ts';
import { atChapter } from '../address.ts';
import { chapterById } from '../record-index.ts';

export interface FeedEntry {
  /** Rooted address with the base path. */
  path: string;
  /** Permanent, also where two entries share an address. */
  id: string;
  title: string;
  summary: string;
  date: Day;
  /** The safety note of the chapter's hazards, for readers who never open the page; empty where it has none. */
  safety: { html: string; text: string };
}

const NO_NOTE = { html: '', text: '' };

/** Entries of a feed; readers keep the older ones themselves. */
const NEWEST = 50;

export function feedEntries(series: Series): FeedEntry[] {
  const chapters = series.chapters
    .filter((one) => !one.held)
    .map((one) => ({
      path: atChapter(one),
      id: atChapter(one),
      title: `${one.number}. ${one.title}`,
      summary: one.summary,
      date: one.date,
      safety: { html: noteHtml(one.hazards), text: noteText(one.hazards) },
    }));
  const corrections = series.corrections.flatMap((one, place) => {
    const chapter = chapterById(one.chapter);
    if (chapter === undefined || chapter.held) return [];
    const step = chapter.steps.find((candidate) => candidate.id === one.step);
    const where = step ? `step ${chapter.number}.${step.number}` : `chapter ${chapter.number}`;
    const path = atChapter(chapter, step?.id);
    return [
      {
        path,
        id: `${atChapter(chapter)}#correction-${place + 1}`,
        title: `Corrected in ${where}${one.canHurt ? ': the old words can hurt' : ''}`,
        summary: `Was: ${one.was}. Now: ${one.now}. ${one.why}`,
        date: one.date,
        safety: NO_NOTE,
      },
    ];
  });
  return [...chapters, ...corrections].sort((a, b) => b.date.localeCompare(a.date)).slice(0, NEWEST);
}
