/** What the notes say that belongs in a register: proposed, each with its line, and taken only when the author says so. */
import { slug } from '../../record/chapter/slug.ts';
import type { Draft, Statement } from '../draft.ts';
import type { ReadSource } from '../read/source.ts';
import { Collector } from './proposals/collector.ts';
import { sumsOf } from './proposals/cost.ts';
import { Faults, type KnownFault, severityOf, type TextFault } from './proposals/faults.ts';
import { beyond, measuredIn, measuredRow } from './proposals/measured.ts';
import { type Noun, nounsIn, solid, tagged } from './proposals/nouns.ts';
import { partsIn } from './proposals/parts.ts';
import type { Supporter } from './proposals/person.ts';
import type { Proposal } from './proposals/proposal.ts';
import { closes, type RefitLine, refitIn } from './proposals/refit.ts';
import { Thanks } from './proposals/thanks.ts';
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
  const refit: { line: RefitLine; row: Record<string, string> }[] = [];
  const parts = new Set<string>();
  /** The thing last named, for "it"; and all named in the statement before. */
  let thing = '';
  let before: Noun[] = [];
  let head: readonly string[] | undefined;
  for (const [at, one] of draft.statements.entries()) {
    const { said, area } = one;
    if (one.kind === 'row') {
      if (one.head) head = one.cells;
      else fromRow(one, head, base, out, faults, at);
      continue;
    }
    head = undefined;
    if (one.kind === 'heading') {
      thing = '';
      continue;
    }
    const system = area ?? 'whole machine';
    const text = (masked.get(one.source) ?? one.text).slice(one.start, one.end).replace(/\s/g, ' ');
    const telling = said.size > 0 || one.figures.length > 0;
    const words = telling ? tagged(text) : [];
    const fault = said.get('fault');
    if (fault) {
      const told = faults.told(one, fault, at, thing);
      faultAs(one, told, { because: fault, system, base }, out);
      afterwards(one, told.fault, base, out);
    } else if (said.has('put off') || said.has('tried')) {
      const near = faults.nearest(one, at);
      if (near) afterwards(one, near, base, out);
      else if (said.has('put off'))
        out.add(one, 'put off', said.get('put off') ?? '', {
          fault: '',
          ...base,
          text: wordsOf(one),
          review: '',
        });
    }
    for (const { line, row } of refit) {
      const how = row['closed_in'] ? undefined : closes(one, line);
      if (how) Object.assign(row, { closed_in: to.chapter, how });
    }
    const off = refitIn(one);
    if (off && !refit.some(({ line }) => line.what === off.what && line.action === off.action)) {
      const row = {
        line: slug(off.what) || 'part',
        what: off.what,
        action: off.action,
        system,
        removed_in: to.chapter,
      };
      if (out.add(one, 'refit', one.deed ?? '', row)) refit.push({ line: off, row });
    }
    if (said.has('measurement') || (!said.has('cost') && decimals(one) > 1))
      for (const [n, { item, position, found, min, max, unit }] of measuredIn(
        one,
        text,
        words,
        thing,
      ).entries())
        out.add(
          one,
          'measurement',
          'a figure',
          { ...base, item, position, found, ...(min ? { min } : {}), ...(max ? { max } : {}), unit },
          String(n),
        );
    const sums = said.has('cost') ? sumsOf(one, text, words, meantBy(before, thing)) : [];
    if (said.has('part'))
      for (const [n, { name, qty, status }] of partsIn(one, text, words, sums, thing).entries()) {
        if (parts.has(name.toLowerCase())) continue;
        parts.add(name.toLowerCase());
        out.add(
          one,
          'part',
          said.get('part') ?? '',
          { part: slug(name) || 'part', name, system, status, qty: String(qty) },
          String(n),
        );
      }
    for (const { kind, item, qty, amount, currency, supplier, at: n } of sums)
      out.add(
        one,
        'cost',
        said.get('cost') ?? '',
        {
          date: to.date,
          kind,
          item,
          ...(qty ? { qty: String(qty) } : {}),
          amount,
          currency,
          ...(supplier ? { supplier } : {}),
          chapter: to.chapter,
        },
        String(n),
      );
    thanks.heard(one, at, text, words, out);
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
    if (telling) before = solid(nounsIn(words, text));
    else if (named) before = [];
    thing = named?.full ?? (telling ? before[0]?.text.toLowerCase() : undefined) ?? thing;
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

/** A new fault, or a finding of one that is known. */
function faultAs(
  one: Statement,
  { fault, fresh }: { fault: TextFault; fresh: boolean },
  { because, system, base }: { because: string; system: string; base: Record<string, string> },
  out: Collector,
): void {
  const text = wordsOf(one);
  if (fresh)
    out.add(one, 'fault', because, {
      file: fault.file,
      title: fault.title,
      system,
      symptom: text,
      severity: severityOf(one.text, one.area),
      ...base,
    });
  else if (!one.said.has('put off') && !one.said.has('cured'))
    out.add(one, 'finding', because, { fault: fault.file, what: 'tried', ...base, text });
}

/** What a statement says of a fault besides that it is there: put off, cured, or tried. */
function afterwards(one: Statement, fault: TextFault, base: Record<string, string>, out: Collector): void {
  const { said } = one;
  const text = wordsOf(one);
  if (fault.cured) return;
  if (said.has('put off'))
    out.add(one, 'put off', said.get('put off') ?? '', { fault: fault.file, ...base, text, review: '' });
  else if (said.has('cured')) {
    fault.cured = true;
    out.add(one, 'finding', said.get('cured') ?? '', { fault: fault.file, what: 'cured', ...base, text });
  } else if (said.has('tried'))
    out.add(one, 'finding', said.get('tried') ?? '', { fault: fault.file, what: 'tried', ...base, text });
}

/** A row of a table is a measurement, and a fault where that lies beyond its limit. */
function fromRow(
  one: Statement,
  head: readonly string[] | undefined,
  base: Record<string, string>,
  out: Collector,
  faults: Faults,
  at: number,
): void {
  const row = measuredRow(one, head);
  if (!row) return;
  const { item, found, min, max, unit } = row;
  out.add(one, 'measurement', 'a row of a table', {
    ...base,
    item,
    found,
    ...(min ? { min } : {}),
    ...(max ? { max } : {}),
    unit,
  });
  if (!one.said.has('fault') || !beyond(row)) return;
  const symptom = `${item}: ${found} ${unit} found, ${min ? `at least ${min}` : `at most ${max}`} ${unit} allowed.`;
  const told = faults.told({ ...one, text: `${item} beyond its limit` }, '', at, '');
  if (told.fresh)
    out.add(one, 'fault', 'beyond its limit', {
      file: told.fault.file,
      title: `${item} beyond its limit`,
      system: one.area ?? 'whole machine',
      symptom,
      severity: severityOf(one.text, one.area),
      ...base,
    });
}
