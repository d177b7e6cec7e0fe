import type { ChapterText } from '../chapter/chapter-text.ts';
import type { Place } from '../problem.ts';
import type { Report } from '../report-to.ts';
import { type FieldRule, fieldRule, type RuleId } from '../rules/written.ts';
import { meant, shown } from '../text/words.ts';

/** A chapter that an author may point to, whether or not its own file could be read to the end. */
export interface KnownChapter {
  id: string;
  number: number;
  held: boolean;
  text: ChapterText;
}

/** Follows names from one file to another and tells those that lead nowhere, with the nearest that exists. */
export class References {
  readonly chapters: ReadonlyMap<string, KnownChapter>;
  readonly #report: Report;

  constructor(chapters: ReadonlyMap<string, KnownChapter>, report: Report) {
    this.chapters = chapters;
    this.#report = report;
  }

  /** Whether `to` is one of `known`; tells it where it is not. `noun` is "part". */
  has(
    to: string,
    known: ReadonlySet<string> | ReadonlyMap<string, unknown>,
    noun: string,
    rule: RuleId,
    place: Place,
  ): boolean {
    if (known.has(to)) return true;
    this.#report.add(rule, place, `There is no ${noun} ${shown(to)}. ${meant(to, known.keys())}`);
    return false;
  }

  chapter(to: string, rule: RuleId, place: Place): KnownChapter | undefined {
    return this.has(to, this.chapters, 'chapter', rule, place) ? this.chapters.get(to) : undefined;
  }

  /** The chapter that a row names, under the row's own rule. */
  rowChapter(area: string, field: string, to: string, place: Place): KnownChapter | undefined {
    return this.chapter(to, fieldRule(area, field), place);
  }

  step(chapter: KnownChapter, to: string, rule: RuleId | FieldRule, place: Place): boolean {
    const ids = chapter.text.steps.map((step) => step.id);
    if (ids.includes(to)) return true;
    const none = `The chapter "${chapter.id}" has no steps.`;
    this.#report.add(
      rule,
      place,
      `There is no step ${shown(to)} in "${chapter.id}". ${meant(to, ids, none)}`,
    );
    return false;
  }

  /** "chapter" or "chapter/step", both looked up; undefined where one does not exist. */
  spot(
    written: string,
    rule: RuleId,
    place: Place,
  ): { chapter: string; step?: string; number: number } | undefined {
    const [id = '', step] = written.split('/');
    const chapter = this.chapter(id, rule, place);
    if (!chapter) return undefined;
    if (step === undefined) return { chapter: id, number: chapter.number };
    return this.step(chapter, step, rule, place) ? { chapter: id, step, number: chapter.number } : undefined;
  }
}
