/** Sources to everything that a write-up puts into a chapter's folder. Pure: the command reads and writes. */

import { type Draft, draftOf, type Statement } from './draft.ts';
import type { Habits } from './figures/find.ts';
import type { ReadSource } from './read/source.ts';
import { spansOf } from './spans.ts';
import { type Around, bodyOf, type Called, frontmatter, NOT_PLACED } from './write/chapter.ts';
import { type Proposal, proposalsOf } from './write/proposals.ts';

/** What was written from which words; kept beside the chapter so that grown notes add only what is new. */
export interface Memory {
  version: 1;
  sources: { name: string; statements: { words: string; home: string }[] }[];
}

export interface WrittenUp {
  draft: Draft;
  chapter: string;
  proposals: Proposal[];
  called: Called[];
  memory: Memory;
}

const MONTHS = 'jan feb mar apr may jun jul aug sep oct nov dec'.split(' ');

/** Title and day from the first heading or the file's name; a day without a year has the year of `today`. */
export function headOf(reads: readonly ReadSource[], today: string): { title: string; date: string } {
  const [read] = reads;
  const heading = read?.blocks.find((block) => block.kind === 'heading');
  const stem =
    (read?.source.name ?? 'notes')
      .split('/')
      .at(-1)
      ?.replace(/\.[^.]+$/, '')
      .replace(/[-_]+/g, ' ') ?? 'notes';
  const raw = heading ? (read?.masked.slice(heading.start, heading.end).trim() ?? stem) : stem;
  const day =
    /\b(\d{1,2})(?:st|nd|rd|th)?\s+(jan|feb|mar|apr|may|jun|jul|aug|sep|oct|nov|dec)[a-z]*\.?(?:\s+(\d{4}))?/i.exec(
      raw,
    );
  const iso = /\b(\d{4}-\d\d-\d\d)\b/.exec(raw)?.[1];
  const date =
    iso ??
    (day
      ? `${day[3] ?? today.slice(0, 4)}-${String(MONTHS.indexOf((day[2] ?? '').slice(0, 3).toLowerCase()) + 1).padStart(2, '0')}-${(day[1] ?? '').padStart(2, '0')}`
      : today);
  const title =
    raw
      .replace(/\b(?:mon|tue|wed|thu|fri|sat|sun)[a-z]*\b/gi, '')
      .replace(day?.[0] ?? '\0', '')
      .replace(iso ?? '\0', '')
      .replace(/^[\s,:–—-]+|[\s,:–—-]+$/g, '')
      .replace(/[<>{}[\]\\`*_"]/g, '')
      .replace(/\s+/g, ' ')
      .replace(/ \+ /g, ' and ')
      .trim()
      .slice(0, 70) || stem;
  return { title: title.slice(0, 1).toUpperCase() + title.slice(1), date };
}

export interface Plan {
  chapter: string;
  title: string;
  date: string;
  currency: string;
  habits: Habits;
  around: Around;
  /** Names of those who have agreed to be named: full name as in the register. */
  named?: readonly string[];
  /** Names of those who have not agreed to be named. */
  unnamed?: readonly string[];
}

export function writeUp(reads: readonly ReadSource[], plan: Plan): WrittenUp {
  const draft = draftOf(reads, plan.habits);
  keepNamesOut(draft, plan.unnamed ?? []);
  const { body, notPlaced, called } = bodyOf(draft, plan.around);
  const proposals = proposalsOf(draft, plan);
  const titles = draft.steps.map(({ title }) => title.slice(0, 1).toLowerCase() + title.slice(1));
  const summary =
    titles.length > 0
      ? `First cut from the notes: ${titles.slice(0, 3).join('; ')}${titles.length > 3 ? ' and more' : ''}.`
      : 'First cut from the notes.';
  const rest = notPlaced.length > 0 ? `\n${NOT_PLACED}\n\n${notPlaced.join('\n')}\n` : '';
  const chapter = `${frontmatter({ title: plan.title, date: plan.date, summary })}\n${body}${rest}`;
  return { draft, chapter, proposals, called, memory: memoryOf(reads, draft.statements) };
}

/** A statement that names somebody who has not agreed goes to the proposals, and nowhere else. */
function keepNamesOut(draft: Draft, names: readonly string[]): void {
  if (names.length === 0) return;
  const named = (one: Statement): boolean =>
    names.some((name) =>
      name
        .split(' ')
        .some(
          (word) =>
            word.length > 2 &&
            new RegExp(`(?<!\\p{L})${word.replace(/[^\p{L}]/gu, '.')}(?!\\p{L})`, 'iu').test(one.text),
        ),
    );
  for (const one of draft.statements) {
    if (!named(one)) continue;
    for (const step of draft.steps) step.statements = step.statements.filter((other) => other !== one);
    one.home = { kind: 'proposal' };
    one.said.set('thanks', 'named without consent');
  }
}

export function memoryOf(reads: readonly ReadSource[], statements: readonly Statement[]): Memory {
  return {
    version: 1,
    sources: reads.map(({ source }) => {
      const own = statements.filter((one) => one.source === source.name);
      const homes = spansOf(source.text, own);
      return {
        name: source.name,
        statements: own.map((one, at) => ({ words: one.text, home: homes[at]?.home ?? '' })),
      };
    }),
  };
}

export type Grown =
  | {
      ok: true;
      chapter: string;
      added: number;
      gone: string[];
      proposals: Proposal[];
      called: Called[];
      memory: Memory;
      draft: Draft;
    }
  | { ok: false; message: string };

/** The chapter with what is new in the notes added; what the author wrote or changed meanwhile stays as it is. */
export function addTo(written: string, memory: Memory, reads: readonly ReadSource[], plan: Plan): Grown {
  if (!/^---[\s\S]*?\nheld:\s*true\b[\s\S]*?\n---/m.test(written.replace(/\r\n/g, '\n')))
    return {
      ok: false,
      message:
        'The chapter is released, so nothing is added to it. Set "held: true" first, or write the new notes up as a chapter of their own.',
    };
  const draft = draftOf(reads, plan.habits);
  const full = memoryOf(reads, draft.statements);
  const known = new Map<string, number>();
  for (const { name, statements } of memory.sources)
    for (const { words } of statements)
      known.set(`${name}\n${words}`, (known.get(`${name}\n${words}`) ?? 0) + 1);
  const fresh = new Set<Statement>();
  for (const one of draft.statements) {
    const mark = `${one.source}\n${one.text}`;
    const left = known.get(mark) ?? 0;
    if (left > 0) known.set(mark, left - 1);
    else fresh.add(one);
  }
  const gone = [...known]
    .filter(([mark, left]) => left > 0 && reads.some(({ source }) => mark.startsWith(`${source.name}\n`)))
    .map(([mark]) => mark.split('\n')[1] ?? '');
  const merged: Memory = {
    version: 1,
    sources: [
      ...memory.sources.filter(({ name }) => !full.sources.some((one) => one.name === name)),
      ...full.sources,
    ],
  };
  // Words that grew into a known step come as a step or as prose of their own: the old one may have been edited.
  for (const step of draft.steps) step.statements = step.statements.filter((one) => fresh.has(one));
  const part: Draft = { statements: draft.statements.filter((one) => fresh.has(one)), steps: draft.steps };
  keepNamesOut(part, plan.unnamed ?? []);
  const taken = new Set(
    [...written.matchAll(/<Step[^>]*?\btitle="([^"]*)"/g)].map(([, title]) =>
      (title ?? '')
        .toLowerCase()
        .replace(/[^\p{L}\p{N}]+/gu, '-')
        .replace(/^-+|-+$/g, ''),
    ),
  );
  const { body, notPlaced, called } = bodyOf(part, plan.around, taken);
  const proposals = proposalsOf(part, plan);
  const add = body.trim() === '' ? '' : body;
  const at = written.search(/^## Not placed[ \t]*$/m);
  const [before, after] = at >= 0 ? [written.slice(0, at), written.slice(at)] : [written, ''];
  const already = add !== '' && written.includes(add.trim());
  const tail =
    notPlaced.length === 0
      ? after
      : `${(after || `${NOT_PLACED}\n\n`).replace(/\n*$/, '\n')}${notPlaced
          .filter((one) => !written.includes(one))
          .map((one) => `${one}\n`)
          .join('')}`;
  const chapter =
    already || (add === '' && notPlaced.length === 0)
      ? written
      : `${before.replace(/\n*$/, '\n\n')}${add}${tail === '' ? '' : `\n${tail}`}`;
  return {
    ok: true,
    chapter: fresh.size === 0 ? written : chapter,
    added: fresh.size,
    gone,
    proposals,
    called,
    memory: merged,
    draft: part,
  };
}
