import type { Place } from '../problem.ts';
import type { Row } from '../read/field.ts';
import type { Numbered, Passage, PhotoUse, Step } from '../types.ts';
import type { CHAPTER } from './frontmatter.ts';

/** Something that a chapter points to, to be looked up once everything is read. */
export interface Use {
  kind:
    | 'hazard'
    | 'ruled out'
    | 'part'
    | 'fault'
    | 'earlier'
    | 'opens'
    | 'closes'
    | 'calculator'
    | 'road test';
  to: string;
  /** The step of an earlier chapter. */
  toStep?: string;
  /** Step it stands in. */
  step?: Step;
  place: Place;
  /** Place of `toStep`. */
  stepPlace?: Place;
}

/** A figure or sum to be printed once the machine's sheet is read. */
export interface Reckoned {
  kind: 'quantity' | 'sum';
  of: string;
  to: string;
  place: Place;
}

/** A calculator as a chapter fills it in: its figures as written, by field, each with its place. */
export interface Sheet {
  calculator: string;
  figures: ReadonlyMap<string, { text: string; place: Place }>;
  place: Place;
}

/** A chapter as its own file tells it, before anything is looked up elsewhere. */
export interface ChapterText {
  head: Row<typeof CHAPTER> | undefined;
  steps: Step[];
  photos: Omit<PhotoUse, 'path' | 'width' | 'height'>[];
  figures: Numbered[];
  tables: Numbered[];
  prose: Passage[];
  words: number;
  calculators: string[];
  uses: Use[];
  reckoned: Reckoned[];
  sheets: Sheet[];
}
