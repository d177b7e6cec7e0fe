/** Lines of the list of what was taken off, as one text opens and closes them. */
import { slug } from '../../../record/chapter/slug.ts';
import type { Statement } from '../../draft.ts';
import type { Collector } from './collector.ts';
import { closes, headOf, type RefitLine, refitIn } from './refit.ts';

interface Open {
  line: RefitLine;
  row: Record<string, string>;
}

export class Refits {
  readonly #chapter: string;
  /** What was taken off in this text, closed or not. */
  readonly #off = new Set<string>();
  /** What is still off, by the last word of its name. */
  readonly #open = new Map<string, Open[]>();

  constructor(chapter: string) {
    this.#chapter = chapter;
  }

  heard(one: Statement, system: string, out: Collector): void {
    this.#close(one);
    const off = refitIn(one);
    if (!off) return;
    const key = `${off.action} ${off.what}`;
    if (this.#off.has(key)) return;
    const row = {
      line: slug(off.what) || 'part',
      what: off.what,
      action: off.action,
      system,
      removed_in: this.#chapter,
    };
    if (!out.add(one, 'refit', one.deed ?? '', row)) return;
    this.#off.add(key);
    const head = headOf(off.what);
    const list = this.#open.get(head) ?? [];
    this.#open.set(head, [...list, { line: off, row }]);
  }

  #close(one: Statement): void {
    const head = one.work ? headOf(one.work.object) : '';
    const list = this.#open.get(head);
    if (!list) return;
    const left = list.filter(({ line, row }) => {
      const how = closes(one, line);
      if (how) Object.assign(row, { closed_in: this.#chapter, how });
      return how === undefined;
    });
    this.#open.set(head, left);
  }
}
