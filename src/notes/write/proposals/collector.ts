/** Proposals as they come up, each under an id that stays when the notes grow. */
import { createHash } from 'node:crypto';
import type { Statement } from '../../draft.ts';
import type { Saying } from '../../say/tell.ts';
import { wordsOf } from '../prose.ts';
import type { Kind, Proposal } from './proposal.ts';

export class Collector {
  readonly proposals: Proposal[] = [];
  /** Statements of which something was proposed. */
  readonly told = new Set<Statement>();
  readonly #only: ReadonlySet<Statement> | undefined;
  /** How often a stem was taken: the same words twice are two proposals. */
  readonly #taken = new Map<string, number>();

  constructor(only: ReadonlySet<Statement> | undefined) {
    this.#only = only;
  }

  /** The proposal; undefined where its statement is not asked for. `more` tells several of one statement and kind apart. */
  add(
    one: Statement,
    kind: Kind,
    because: string,
    row: Record<string, string>,
    more = '',
  ): Proposal | undefined {
    this.told.add(one);
    const stem = createHash('sha256')
      .update(`${kind}\n${one.source}\n${one.text}\n${more}`)
      .digest('hex')
      .slice(0, 8);
    const times = (this.#taken.get(stem) ?? 0) + 1;
    this.#taken.set(stem, times);
    if (this.#only && !this.#only.has(one)) return undefined;
    const proposal = {
      id: times === 1 ? stem : `${stem}-${times}`,
      kind,
      // The line that the words for it stand on, where a statement goes over several.
      place: `${one.source}:${one.saidOn.get(kind as Saying) ?? one.line}`,
      words: wordsOf(one),
      because,
      row,
    };
    this.proposals.push(proposal);
    return proposal;
  }

  ask(one: Statement, id: string, row: Record<string, string>): void {
    this.proposals.push({
      id,
      kind: 'question',
      place: `${one.source}:${one.line}`,
      words: wordsOf(one),
      because: 'a unit that is not said',
      row,
    });
  }
}
