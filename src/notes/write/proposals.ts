/** What the notes say that belongs in a register: proposed, each with its line, and taken only when the author says so. */
import type { Draft, Statement } from '../draft.ts';
import type { ReadSource } from '../read/source.ts';
import { NAMED } from './consent.ts';
import { fromBoughtRow } from './proposals/bought-row.ts';
import { Collector } from './proposals/collector.ts';
import { costRow, sumsOf } from './proposals/cost.ts';
import { Faults, type KnownFault, type TextFault } from './proposals/faults.ts';
import { measuredIn } from './proposals/measured.ts';
import type { Noun } from './proposals/nouns.ts';
import { tagged } from './proposals/nouns.ts';
import { partsIn } from './proposals/parts.ts';
import { PartsTold } from './proposals/parts-told.ts';
import type { Supporter } from './proposals/person.ts';
import type { Proposal } from './proposals/proposal.ts';
import { putOffIn } from './proposals/put-off.ts';
import { Refits } from './proposals/refits.ts';
import { Suspects } from './proposals/suspects.ts';
import { Telling } from './proposals/telling.ts';
import { Thanks } from './proposals/thanks.ts';
import { afterwards, faultAs, fromRow } from './proposals/told-of-faults.ts';
import { wordsOf } from './prose.ts';
import { type Asked, QUESTIONS } from './questions.ts';

export type { Kind, Proposal } from './proposals/proposal.ts';

export interface Known {
  chapter: string;
  date: string;
  currency: string;
  /** Open faults of the register. */
  faults?: readonly KnownFault[];
  supporters?: readonly Supporter[];
}

export interface Wanted {
  reads: readonly ReadSource[];
  /** Questions that are open, with the statements that raise them. */
  open?: ReadonlyMap<Asked, readonly Statement[]>;
  /** Only what these tell of is proposed; left out, everything. */
  only?: ReadonlySet<Statement>;
}

export function proposalsOf(
  draft: Draft,
  to: Known,
  { reads, open = new Map(), only }: Wanted,
): { proposals: Proposal[]; told: Set<Statement> } {
  const out = new Collector(only);
  const base = { chapter: to.chapter, date: to.date };
  const faults = new Faults(to.faults ?? []);
  const thanks = new Thanks(to.supporters ?? [], to.chapter);
  const masked = new Map(reads.map((read) => [read.source.name, read.masked]));
  const refits = new Refits(to.chapter);
  const suspects = new Suspects();
  const parts = new PartsTold();
  /** The thing last named, for "it"; and the statement whose things were named before, where it names any. */
  let thing = '';
  let before: Telling | undefined;
  let head: readonly string[] | undefined;
  for (const [at, one] of draft.statements.entries()) {
    const { said, area } = one;
    // A heading or a row that names somebody waits here as well, for it may stand nowhere else.
    if ((one.kind === 'row' || one.kind === 'heading') && said.get('thanks') === NAMED)
      thanks.heard(one, at, one.text, tagged(one.text), out);
    if (one.kind === 'row') {
      if (one.head) head = one.cells;
      else {
        fromRow(one, head, base, out, faults, at);
        fromBoughtRow(one, head, base, out, parts);
      }
      continue;
    }
    head = undefined;
    if (one.kind === 'heading') {
      thing = '';
      before = undefined;
      continue;
    }
    const system = area ?? 'whole machine';
    const telling = new Telling(one, masked.get(one.source));
    const fault = said.get('fault');
    let of: TextFault | undefined;
    if (fault) {
      const told = faults.told(one, fault, at, thing);
      of = told.fault;
      suspects.opened(told.fault, faultAs(one, told, { because: fault, system, base }, out), at);
      afterwards(one, told.fault, base, out);
    } else if (putOffIn(one) !== undefined || said.has('tried')) {
      const near = faults.nearest(one, at);
      if (near) afterwards(one, near, base, out);
      else if (putOffIn(one) !== undefined)
        out.add(one, 'put off', putOffIn(one) ?? '', {
          fault: '',
          ...base,
          text: wordsOf(one),
          review: '',
        });
    }
    suspects.heard(one.text, thing, at, () => of ?? faults.nearest(one, at));
    refits.heard(one, system, out);
    if (said.has('measurement') || (!said.has('cost') && decimals(one) > 1))
      for (const [n, row] of measuredIn(one, telling.text, telling.words, thing).entries())
        out.add(one, 'measurement', 'a figure', { ...base, ...row }, String(n));
    const sums = said.has('cost')
      ? sumsOf(one, telling.text, telling.words, meantBy(before?.nouns ?? [], thing))
      : [];
    if (said.has('part'))
      for (const [n, part] of partsIn(one, telling.text, telling.words, sums, thing).entries())
        parts.add(one, part, said.get('part') ?? '', out, String(n));
    for (const sum of sums) out.add(one, 'cost', said.get('cost') ?? '', costRow(sum, base), String(sum.at));
    if (said.has('thanks')) thanks.heard(one, at, telling.text, telling.words, out);
    for (const { unit, value, start } of one.figures)
      if (unit === 'km/h' || unit === 'mph')
        out.add(
          one,
          'road-test point',
          'a speed',
          { value: String(Math.round(value * 1e6) / 1e6), unit, standing: 'indicated' },
          String(start - one.start),
        );
    const solids = (one.things ?? []).filter((each) => !FLOWS.test(each.thing));
    const named = solids.find(({ aside }) => !aside) ?? solids[0];
    if (telling.tells) before = telling;
    else if (named) before = undefined;
    thing = named?.full ?? telling.nouns[0]?.text.toLowerCase() ?? thing;
  }
  for (const [asked, statements] of open) {
    const [one] = statements;
    if (one)
      out.ask(one, QUESTIONS[asked].id, {
        ask: QUESTIONS[asked].ask,
        asked_in: placesOf(statements),
        answer: '',
      });
  }
  return { proposals: out.proposals, told: out.told };
}

/** What flows is seldom what "it" stands for. */
const FLOWS = /^(?:petrol|fuel|mixture|coolant|oil|brake fluid|paint|primer|spark|timing|voltage)$/;

/** What "one" or "them" stands for comes first: the thing named last, in the fullest words that it was named in. */
function meantBy(before: readonly Noun[], thing: string): { text: string }[] {
  const full = before.find(({ text }) => thing !== '' && text.toLowerCase().includes(thing));
  const first = full ?? (thing === '' ? before.at(-1) : { text: thing });
  return first ? [first, ...before.filter((one) => one !== first)] : [];
}

const placesOf = (statements: readonly Statement[]): string =>
  statements
    .slice(0, 12)
    .map(({ source, line }) => `${source}:${line}`)
    .join(', ');

/** Dimensions with a decimal, as a gauge shows them. */
const decimals = (one: Statement): number =>
  one.figures.filter(({ unit, digits }) => /^(?:mm|in|thou)$/.test(unit) && digits.includes('.')).length;
