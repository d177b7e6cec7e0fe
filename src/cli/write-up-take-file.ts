/** What becomes of one file when proposals are taken into it. */
import { existsSync, readdirSync } from 'node:fs';
import { readFile } from 'node:fs/promises';
import { join } from 'node:path';
import { stringify } from 'yaml';
import type { Kept } from '../notes/proposals-file.ts';
import { slug } from '../record/chapter/slug.ts';
import { TABLES } from '../record/tables.ts';
import { meant } from '../record/text/words.ts';
import { openTable } from './add-to-table.ts';
import { UsageError } from './command.ts';
import { withEntry } from './front-matter.ts';
import { withPoints } from './take-point.ts';
import { TABLE_OF, withChapter, withRow } from './write-up-rows.ts';
import type { Change } from './write-up-whole.ts';

/** The file that a proposal goes into. */
export function fileOf(folder: string, { kind, row }: Kept): string {
  const table = TABLE_OF[kind];
  if (table) return join(folder, `${table}.csv`);
  if (kind === 'road-test point') return join(folder, 'road-tests.csv');
  return join(
    folder,
    'faults',
    `${slug((kind === 'fault' ? row['file'] : row['fault']) ?? '') || 'fault'}.md`,
  );
}

export interface Into {
  changes: Change[];
  done: { one: Kept; where: string }[];
  refused: { one: Kept; why: string }[];
}

/** All of the list go into one file, as `fileOf` says. */
export async function withProposals(folder: string, chapter: string, list: readonly Kept[]): Promise<Into> {
  const [first] = list;
  const out: Into = { changes: [], done: [], refused: [] };
  if (!first) return out;
  if (first.kind === 'road-test point') {
    const { changes, where } = await withPoints(
      folder,
      chapter,
      list.map(({ row }) => row),
    );
    return { changes, done: list.map((one, at) => ({ one, where: where[at] ?? '' })), refused: [] };
  }
  const name = TABLE_OF[first.kind];
  if (!name) return intoFault(folder, list);
  const table = await openTable(folder, name, TABLES[name]);
  const was = existsSync(table.path) ? await readFile(table.path, 'utf8') : undefined;
  let text = table.written;
  for (const group of first.kind === 'thanks' ? byPerson(list) : list.map((one) => [one])) {
    const row = inOne(group);
    const known = row['add_to'] ? withChapter(text, table, row['add_to'], row['chapters'] ?? '') : undefined;
    const next = known ?? withRow(text, table, name, row);
    text = next.text;
    for (const one of group) out.done.push({ one, where: next.where });
  }
  out.changes = [{ path: table.path, was, next: text }];
  return out;
}

/** A person who did several things has one row. */
function byPerson(list: readonly Kept[]): Kept[][] {
  const groups = new Map<string, Kept[]>();
  for (const one of list) {
    const name = (one.row['name'] ?? '').toLowerCase();
    groups.set(name, [...(groups.get(name) ?? []), one]);
  }
  return [...groups.values()];
}

function inOne(group: readonly Kept[]): Record<string, string> {
  const [first, ...others] = group;
  if (!first) return {};
  if (others.length === 0) return first.row;
  const what = new Set(group.flatMap(({ row }) => (row['what'] ? [row['what']] : [])));
  return { ...first.row, what: [...what].join('; ') };
}

async function intoFault(folder: string, list: readonly Kept[]): Promise<Into> {
  const faults = join(folder, 'faults');
  const out: Into = { changes: [], done: [], refused: [] };
  const stem = fileOf(folder, list[0] as Kept).slice(faults.length + 1, -3);
  let file = stem;
  const opens = list.find(({ kind }) => kind === 'fault');
  // A new fault never goes into a file that is there.
  for (let n = 2; opens && existsSync(join(faults, `${file}.md`)); n++) file = `${stem}-${n}`;
  const path = join(faults, `${file}.md`);
  const was = existsSync(path) ? await readFile(path, 'utf8') : undefined;
  let text = was;
  const where = `faults/${file}.md`;
  for (const one of [...(opens ? [opens] : []), ...list.filter((each) => each !== opens)]) {
    try {
      if (one === opens) text = newFault(one);
      else if (text === undefined) throw new UsageError(nearest(faults, stem));
      else text = withEntry(text, 'events', eventOf(one), where);
      out.done.push({ one, where });
    } catch (error) {
      if (!(error instanceof UsageError)) throw error;
      out.refused.push({ one, why: error.message });
    }
  }
  if (text !== undefined && out.done.length > 0) out.changes = [{ path, was, next: text }];
  return out;
}

function nearest(faults: string, name: string): string {
  const names = existsSync(faults)
    ? readdirSync(faults).flatMap((one) => (one.endsWith('.md') ? [one.slice(0, -3)] : []))
    : [];
  return `There is no faults/${name}.md yet. ${meant(name, names, 'Take the fault first.')}`;
}

/** "Float; Needle": suspects by their names. */
function suspectsOf(said: string): { suspects?: { id: string; name: string }[] } {
  const names = [...new Map(said.split(';').flatMap((one) => (slug(one) ? [[slug(one), one.trim()]] : [])))];
  return names.length > 0 ? { suspects: names.map(([id = '', name = '']) => ({ id, name })) } : {};
}

const newFault = ({ row, words }: Kept): string =>
  `---\n${stringify(
    {
      title: row['title'],
      system: row['system'],
      symptom: row['symptom'],
      ...suspectsOf(row['suspects'] ?? ''),
      events: [
        {
          chapter: row['chapter'],
          date: row['date'],
          what: 'found',
          severity: row['severity'],
          text: row['text'] || words,
        },
      ],
    },
    { lineWidth: 0 },
  )}---\n`;

const eventOf = ({ kind, row }: Kept): Record<string, string> => ({
  chapter: row['chapter'] ?? '',
  date: row['date'] ?? '',
  what: kind === 'put off' ? 'put off' : row['what'] || 'tried',
  text: row['text'] ?? '',
  ...(row['severity'] ? { severity: row['severity'] } : {}),
  ...(row['review'] ? { review: row['review'] } : {}),
});
