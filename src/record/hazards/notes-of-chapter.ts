/** How each step of a chapter shows its hazards: in full, or as one line where a caution stood before. */
import { hazard } from './catalogue.ts';
import { type Hazard, rank } from './hazard.ts';

export interface StepNote {
  /** Ids that stand in full: every danger and warning, and a caution at its first step. */
  full: string[];
  /** Cautions and notices that stood in full before, each with the step to link to. */
  repeated: { hazard: Hazard; firstStep: string }[];
}

/**
 * The notes of a chapter's steps, by step id.
 * A danger or warning stands in full at every step; a caution or notice only at the first.
 */
export function notesOfChapter(
  steps: readonly { id: string; hazards: readonly string[] }[],
): Map<string, StepNote> {
  const first = new Map<string, string>();
  const notes = new Map<string, StepNote>();
  for (const step of steps) {
    const note: StepNote = { full: [], repeated: [] };
    for (const id of new Set(step.hazards)) {
      const entry = hazard(id);
      if (entry === undefined) continue;
      const before = first.get(id);
      if (before === undefined || rank(entry.signal) <= rank('WARNING')) {
        note.full.push(id);
        if (before === undefined) first.set(id, step.id);
      } else {
        note.repeated.push({ hazard: entry, firstStep: before });
      }
    }
    notes.set(step.id, note);
  }
  return notes;
}

/** Anchor of a step's note on its chapter's page. */
export const noteAnchor = (step: string): string => `${step}-safety`;
