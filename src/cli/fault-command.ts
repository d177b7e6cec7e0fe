import { existsSync, readdirSync } from 'node:fs';
import { readFile } from 'node:fs/promises';
import { join, relative, resolve } from 'node:path';
import { parseArgs } from 'node:util';
import { EVENT } from '../record/files/faults.ts';
import type { Problem } from '../record/problem.ts';
import { type Fields, needed } from '../record/read/field.ts';
import { name } from '../record/read/kinds.ts';
import { readSeries } from '../record/read-series.ts';
import { oneLine } from '../record/report.ts';
import { meant, shown } from '../record/text/words.ts';
import type { FaultEventKind } from '../record/types.ts';
import { complete, flagList, flagOf, optionsOf, replace, rootOf, tell } from './add-to-table.ts';
import { readAsIf } from './as-if.ts';
import { type Command, type Io, UsageError } from './command.ts';
import { withEntry } from './front-matter.ts';

/** One command that adds an event to a fault's life. */
interface Addition {
  name: string;
  summary: string;
  /** What happened; left out where the author says it. */
  what?: FaultEventKind;
  /** Fields of the event that it takes, besides fault, chapter and date. */
  fields: Fields;
  asks: readonly string[];
}

export const FAULT_NAME = needed(name, 'Fault', 'The fault: the name of its file, without ".md".');

export function faultCommand({ name, summary, what, fields: own, asks }: Addition): Command {
  const fields: Fields = { fault: FAULT_NAME, chapter: EVENT.chapter, date: EVENT.date, ...own };
  return {
    name,
    summary,
    usage: `
npm run ${name} -- [--dry-run] [flags]

${flagList(fields, 'date')}

The event is added at the end of the fault's life in content/faults/; everything else in the file stays as it is. At a
terminal, what no flag answers is asked. With an error nothing is written.`,
    async run(args, io) {
      const { folder, row, dryRun } = await asked(args, fields, ['fault', 'chapter', 'date', ...asks], io);
      if (!row) return nothing(io);
      const fault = row.get('fault') ?? '';
      const path = join(folder, 'faults', `${fault}.md`);
      if (!/^[a-z0-9.-]+$/.test(fault) || !existsSync(path))
        throw new UsageError(unknownFault(folder, fault));
      const written = await readFile(path, 'utf8');
      const file = `faults/${fault}.md`;
      const next = withEntry(written, 'events', eventOf(row, what), file);
      return write({ folder, file, written, next, dryRun }, io);
    },
  };
}

/** The event as the fault's file has it, its keys in their usual order. */
export function eventOf(row: ReadonlyMap<string, string>, what?: FaultEventKind): Record<string, string> {
  const said = new Map(row);
  if (what !== undefined) said.set('what', what);
  const order = [
    'chapter',
    'date',
    'what',
    'severity',
    'text',
    'rules_out',
    'rules_in',
    'review',
    'waits_for',
  ];
  return Object.fromEntries(order.flatMap((key) => (said.has(key) ? [[key, said.get(key) ?? '']] : [])));
}

/** What flags and questions gave; no row where the author broke off. */
export async function asked(args: readonly string[], fields: Fields, asks: readonly string[], io: Io) {
  const { values } = parseArgs({ args: [...args], options: optionsOf(fields) });
  const folder = resolve(io.root, String(values['content'] ?? process.env['OILWAY_CONTENT'] ?? 'content'));
  if (!existsSync(folder)) throw new UsageError(`There is no folder "${relative(io.root, folder)}".`);
  const given = new Map(
    Object.keys(fields).flatMap((field) => {
      const said = values[flagOf(field)];
      return typeof said === 'string' && said.trim() !== '' ? [[field, said.trim()] as const] : [];
    }),
  );
  const row = await complete(given, { asks, today: 'date' }, fields, undefined, io);
  return { folder, row, dryRun: values['dry-run'] === true };
}

function unknownFault(folder: string, fault: string): string {
  const faults = join(folder, 'faults');
  const names = existsSync(faults)
    ? readdirSync(faults).flatMap((one) => (one.endsWith('.md') ? [one.slice(0, -3)] : []))
    : [];
  return `There is no fault ${shown(fault)}. ${meant(fault, names, 'Open it with "npm run open-fault".')}`;
}

export function nothing(io: Io): number {
  io.out('Nothing was written.\n');
  return 0;
}

interface ToWrite {
  folder: string;
  /** Path in the author's folder. */
  file: string;
  written: string;
  next: string;
  dryRun: boolean;
}

/** Checks the series with the new text first; with a new error nothing is written. */
export async function write({ folder, file, written, next, dryRun }: ToWrite, io: Io): Promise<number> {
  const root = rootOf(folder, io);
  const before = await readSeries(folder, { root });
  const after = await readAsIf(folder, root, new Map([[file, next]]));
  const fresh = newOf(before.problems, after.problems).filter((one) => one.severity === 'error');
  if (fresh.length > 0) {
    io.out(`${fresh.map(oneLine).join('\n')}\nNothing was written.\n`);
    return 1;
  }
  io.out(`${relative(root, join(folder, file))}\n${addedLines(written, next)}`);
  if (dryRun) return nothing(io);
  await replace({ path: join(folder, file), written }, next);
  return tell(before.problems, after.problems, io);
}

/** Problems that the change brings; one that only moved down a line is not new. */
export function newOf(before: readonly Problem[], after: readonly Problem[]): Problem[] {
  const keyOf = ({ file, rule, message }: Problem) => [file, rule, message].join('\n');
  const known = new Set(before.map(keyOf));
  return after.filter((one) => !known.has(keyOf(one)));
}

/** Lines that were not there before, as the author will find them. */
function addedLines(written: string, next: string): string {
  const old = written.split(/\r?\n/);
  const now = next.split(/\r?\n/);
  let start = 0;
  while (start < old.length && old[start] === now[start]) start += 1;
  let end = 0;
  while (end < old.length - start && old.at(-1 - end) === now.at(-1 - end)) end += 1;
  const added = now.slice(start, now.length - end).join('\n');
  return added.trim() === '' ? '' : `${added.replace(/\n+$/, '')}\n`;
}
