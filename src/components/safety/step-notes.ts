/** A chapter's notes, worked out once and kept while the chapter is drawn. */
import { notesOfChapter, type StepNote } from '../../record/hazards/notes-of-chapter.ts';
import type { Chapter } from '../../record/types.ts';

const made = new WeakMap<Chapter, Map<string, StepNote>>();

export function noteOfStep(chapter: Chapter, step: string): StepNote | undefined {
  let notes = made.get(chapter);
  if (notes === undefined) {
    notes = notesOfChapter(chapter.steps);
    made.set(chapter, notes);
  }
  return notes.get(step);
}
