/** Takes proposals into the registers: one by one at a terminal, else those that the author marked. Rows are only ever added. */
import { existsSync, readdirSync } from 'node:fs';
import { mkdir, readFile, writeFile } from 'node:fs/promises';
import { join, relative } from 'node:path';
import { stringify } from 'yaml';
import { type Kept, markDone, readProposals } from '../notes/proposals-file.ts';
import { slug } from '../record/chapter/slug.ts';
import { readSeries } from '../record/read-series.ts';
import { TABLES, type TableName } from '../record/tables.ts';
import { openTable, replace, rootOf, tell } from './add-to-table.ts';
import { inManner, rowLine, withLine } from './appended-row.ts';
import { type Io, UsageError } from './command.ts';
import { lackOfPoint, takePoint } from './take-point.ts';
import { swap } from './write-up.ts';

const TABLE_OF: Partial<Record<Kept['kind'], TableName>> = {
  refit: 'refit',
  measurement: 'measurements',
  part: 'parts',
  cost: 'ledger',
  thanks: 'supporters',
};

export async function takeProposals(folder: string, chapter: string, all: boolean, io: Io): Promise<number> {
  const chapters = join(folder, 'chapters');
  const name = existsSync(join(chapters, chapter))
    ? chapter
    : readdirSync(chapters).find((one) => one.replace(/^\d+-/, '') === chapter);
  const path = join(chapters, name ?? '', 'proposals.yaml');
  if (name === undefined || !existsSync(path))
    throw new UsageError(`There is no "${chapter}" with a proposals.yaml among the chapters.`);
  let text = await readFile(path, 'utf8');
  const { kept, wrong } = readProposals(text);
  if (wrong) {
    io.err(`${wrong} Nothing was written.\n`);
    return 1;
  }
  const root = rootOf(folder, io);
  const before = await readSeries(folder, { root });
  let taken = 0;
  for (const one of kept) {
    if (one.done || one.accept === 'never') continue;
    if (!(await wanted(one, all, io))) {
      if (io.interactive && !all && broken) break;
      continue;
    }
    const lacking = lacks(one);
    if (lacking) {
      io.err(`${one.place} ${one.kind}: ${lacking} It stays in proposals.yaml.\n`);
      continue;
    }
    const where = await take(folder, name, one, io);
    if (where === undefined) continue;
    const next = markDone(text, one.id, where);
    await swap(path, text, next);
    text = next;
    taken += 1;
    io.out(`${one.kind}: ${relative(io.root, join(folder, where))}\n`);
  }
  if (taken === 0) {
    io.out('No proposal was taken. Mark those that you want with "accept: yes", or call with --all.\n');
    return 0;
  }
  io.out(`Taken: ${taken}.\n`);
  return tell(before.problems, (await readSeries(folder, { root })).problems, io);
}

let broken = false;

async function wanted(one: Kept, all: boolean, io: Io): Promise<boolean> {
  if (all || one.accept === 'yes') return true;
  if (!io.interactive || broken) return false;
  const { confirm, isCancel } = await import('@clack/prompts');
  const row = Object.entries(one.row)
    .map(([key, value]) => `${key}: ${value}`)
    .join(', ');
  const said = await confirm({
    message: `${one.kind} (${one.place}) "${one.words}"\n${row}`,
    initialValue: false,
  });
  if (isCancel(said)) broken = true;
  return said === true;
}

/** What a proposal still wants from the author, in words. */
function lacks({ kind, row }: Kept): string | undefined {
  if (kind === 'question') return `"${row['ask']}" is a question. Put the answer into the notes.`;
  if (kind === 'road-test point') return lackOfPoint(row);
  if (kind === 'put off' && !row['fault'])
    return 'It names no fault. Write the name of a file in faults/ behind "fault:".';
  if (kind === 'finding' && !row['fault'])
    return 'It names no fault. Write the name of a file in faults/ behind "fault:".';
  if (kind === 'thanks' && row['name'] && !row['consent'])
    return 'Ask whether they agree to be named, and write yes or no behind "consent:".';
  if (kind === 'thanks' && !row['name']) return 'No name is said. Write it behind "name:".';
  return undefined;
}

async function take(folder: string, chapter: string, one: Kept, io: Io): Promise<string | undefined> {
  if (one.kind === 'road-test point') return takePoint(folder, chapter, one.row);
  const table = TABLE_OF[one.kind];
  if (table) return takeRow(folder, table, one.row);
  if (one.kind === 'fault') return newFault(folder, one);
  return addEvent(folder, one, io);
}

async function takeRow(folder: string, name: TableName, row: Record<string, string>): Promise<string> {
  const fields = TABLES[name];
  const table = await openTable(folder, name, fields);
  const idColumn = name === 'parts' ? 'part' : name === 'refit' ? 'line' : undefined;
  const cells = new Map(
    Object.entries(row)
      .filter(([key, value]) => key in fields && value !== '')
      .map(([key, value]) => [
        key,
        (fields as Record<string, { kind: { numeric?: boolean } }>)[key]?.kind.numeric
          ? inManner(value, table.manner.mark)
          : value,
      ]),
  );
  const same = rowLine(cells, table.manner);
  const lines = table.written.split(/\r?\n/);
  // Taken before, and the process was stopped before it could be noted.
  if (lines.includes(same)) return `${name}.csv:${lines.indexOf(same) + 1}`;
  if (idColumn) {
    const stem = slug(cells.get(idColumn) ?? '') || 'part';
    let id = stem;
    for (let n = 2; lines.some((line) => line.startsWith(`${id}${table.manner.delimiter}`)); n++)
      id = `${stem}-${n}`;
    cells.set(idColumn, id);
  }
  const next = withLine(table.written, rowLine(cells, table.manner), table.manner);
  await replace(table, next);
  return `${name}.csv:${next.trimEnd().split('\n').length}`;
}

async function newFault(folder: string, { row, words }: Kept): Promise<string> {
  await mkdir(join(folder, 'faults'), { recursive: true });
  const stem = slug(row['file'] ?? '') || 'fault';
  let file = stem;
  const text = (): string =>
    `---\n${stringify({ title: row['title'], system: row['system'], symptom: row['symptom'], events: [{ chapter: row['chapter'], date: row['date'], what: 'found', severity: row['severity'], text: words }] }, { lineWidth: 0 })}---\n`;
  for (let n = 2; ; n++) {
    const path = join(folder, 'faults', `${file}.md`);
    if (existsSync(path) && (await readFile(path, 'utf8')) === text()) return `faults/${file}.md`;
    try {
      // Made whole or not at all: a file that is there is never touched.
      await writeFile(path, text(), { flag: 'wx' });
      return `faults/${file}.md`;
    } catch (error) {
      if (!(error instanceof Error && 'code' in error && error.code === 'EEXIST')) throw error;
      file = `${stem}-${n}`;
    }
  }
}

/** An event at the end of a fault's list; refused where the list is not the last key of its file. */
async function addEvent(folder: string, { kind, row }: Kept, io: Io): Promise<string | undefined> {
  const name = slug(row['fault'] ?? '');
  const path = join(folder, 'faults', `${name}.md`);
  if (!existsSync(path)) {
    io.err(`There is no faults/${name}.md yet. Take the fault first.\n`);
    return undefined;
  }
  const text = await readFile(path, 'utf8');
  const found = /^---[ \t]*\n([\s\S]*?)\n---[ \t]*(?:\n|$)/.exec(text);
  const head = found?.[1] ?? '';
  const at = head.search(/^events:/m);
  if (
    at < 0 ||
    /^\S(?<!-)/m.test(
      head
        .slice(at)
        .replace(/^events:.*\n/, '')
        .replace(/^- /gm, '  '),
    )
  ) {
    io.err(
      `faults/${name}.md: "events" is not the last key, so the event cannot be added safely. Add it by hand.\n`,
    );
    return undefined;
  }
  const event = {
    chapter: row['chapter'],
    date: row['date'],
    what: kind === 'put off' ? 'put off' : row['what'] || 'tried',
    text: row['text'],
    ...(row['review'] ? { review: row['review'] } : {}),
  };
  const indent = /\n( *)- /.exec(head.slice(at))?.[1] ?? '  ';
  const lines = stringify([event], { lineWidth: 0 }).trimEnd().replace(/^/gm, indent);
  if (head.includes(lines)) return `faults/${name}.md`;
  const end = text.indexOf(head) + head.length;
  await swap(path, text, `${text.slice(0, end)}\n${lines}${text.slice(end)}`);
  return `faults/${name}.md`;
}
