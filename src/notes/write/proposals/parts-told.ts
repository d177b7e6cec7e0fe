/** Parts of one text: one proposal a part, however often it is named; what is said last tells whether it has come. */
import { slug } from '../../../record/chapter/slug.ts';
import type { Statement } from '../../draft.ts';
import { wordsOf } from '../prose.ts';
import type { Collector } from './collector.ts';
import type { Part } from './parts.ts';
import type { Proposal } from './proposal.ts';

export class PartsTold {
  readonly #byName = new Map<string, Proposal>();

  /** `more` tells several parts of one statement apart. */
  add(one: Statement, { name, qty, status }: Part, because: string, out: Collector, more = ''): void {
    const again = this.#byName.get(name.toLowerCase());
    if (again) {
      const place = `${one.source}:${one.saidOn.get('part') ?? one.line}`;
      const also = again.also ?? [];
      if (again.place !== place && also.length < MOST && !also.includes(place)) again.also = [...also, place];
      if (RANK[status] > RANK[again.row['status'] as Part['status']]) again.row = { ...again.row, status };
      // Words that stand nowhere else stay with the proposal that they bear out.
      if (one.home.kind === 'proposal' && !again.words.includes(wordsOf(one)))
        again.words = `${again.words} … ${wordsOf(one)}`;
      out.told.add(one);
      return;
    }
    const row = {
      part: slug(name) || 'part',
      name,
      system: one.area ?? 'whole machine',
      status,
      qty: String(qty),
    };
    const made = out.add(one, 'part', because, row, more);
    if (made) this.#byName.set(name.toLowerCase(), made);
  }
}

/** So many more places are named: who looks for a part that comes up in every minute finds it. */
const MOST = 12;

const RANK: Readonly<Record<Part['status'], number>> = { wanted: 0, ordered: 1, arrived: 2 };
