import { existsSync } from 'node:fs';
import { chmod, mkdir, readFile, rename, rm, stat, writeFile } from 'node:fs/promises';
import { dirname, join, relative, resolve } from 'node:path';
import { parseArgs } from 'node:util';
import { parseDocument } from 'yaml';
import type { DecimalMark } from '../record/money/decimal.ts';
import type { Problem } from '../record/problem.ts';
import type { Field, Fields } from '../record/read/field.ts';
import { readSeries } from '../record/read-series.ts';
import { oneLine } from '../record/report.ts';
import { TABLES, type TableName, tableHeadings } from '../record/tables.ts';
import { fieldName, inManner, lineNumberAfter, mannerOf, rowLine, withLine } from './appended-row.ts';
import { type Command, type Io, UsageError } from './command.ts';

/** One command that adds a row to one of the author's tables. Flags, questions and checks follow from the table's fields. */
export interface Addition {
  name: string;
  table: TableName;
  /** "a row of the ledger". */
  what: string;
  /** Columns that are today unless the author says otherwise. */
  today?: string;
  /** Columns asked for at the terminal; the others are given by flag or left empty. */
  asks: readonly string[];
}

export function addCommand(addition: Addition): Command {
  const fields: Fields = TABLES[addition.table];
  return {
    name: addition.name,
    summary: `add ${addition.what}`,
    usage: usageOf(addition, fields),
    async run(args, io) {
      const { values } = parseArgs({ args: [...args], options: optionsOf(fields) });
      const folder = resolve(
        io.root,
        String(values['content'] ?? process.env['OILWAY_CONTENT'] ?? 'content'),
      );
      if (!existsSync(folder)) throw new UsageError(`There is no folder "${relative(io.root, folder)}".`);
      const table = await openTable(folder, addition.table, fields);
      const given = new Map(
        Object.keys(fields).flatMap((name) => {
          const said = values[flagOf(name)];
          return typeof said === 'string' && said.trim() !== '' ? [[name, said.trim()] as const] : [];
        }),
      );
      const row = await complete(given, addition, fields, table.manner.mark, io);
      if (!row) {
        io.out('Nothing was written.\n');
        return 0;
      }
      refuseUnknown(row, table);
      const cells = new Map(
        [...row].map(([name, said]) => [name, inTable(name, said, fields, table.manner.mark)]),
      );
      const line = rowLine(cells, table.manner);
      const shown = `${relative(rootOf(folder, io), table.path)}:${lineNumberAfter(table.written)}\n${line}\n`;
      if (values['dry-run'] === true) {
        io.out(`${shown}Nothing was written.\n`);
        return 0;
      }
      const before = await readSeries(folder, { root: rootOf(folder, io) });
      await replace(table, withLine(table.written, line, table.manner));
      io.out(shown);
      return tell(before.problems, (await readSeries(folder, { root: rootOf(folder, io) })).problems, io);
    },
  };
}

export const flagOf = (name: string): string => name.replaceAll('_', '-');

export function optionsOf(fields: Fields): Record<string, { type: 'string' | 'boolean' }> {
  const flags = Object.keys(fields).map((name) => [flagOf(name), { type: 'string' as const }]);
  return { ...Object.fromEntries(flags), 'dry-run': { type: 'boolean' }, content: { type: 'string' } };
}

function usageOf({ name, table, today }: Addition, fields: Fields): string {
  return `
npm run ${name} -- [--dry-run] [flags]

${flagList(fields, today)}

The line is added at the end of ${table}.csv in the file's own manner: its columns, separator, quotes, decimal mark and line
ends. At a terminal, what no flag answers is asked. Afterwards the series is checked.`;
}

/** Each field as a flag with its meaning, and the flags that every writing command has. */
export function flagList(fields: Fields, today?: string): string {
  const flags = Object.entries(fields).map(([column, field]: [string, Field<unknown>]) => {
    const must = column === today ? ' Left out: today.' : field.needed ? ' Needed.' : '';
    return [`--${flagOf(column)}`, `${field.help}${must}`];
  });
  const all = [
    ...flags,
    ['--dry-run', 'Show what would be written and write nothing.'],
    ['--content', "The author's folder (default content)."],
  ];
  const width = Math.max(...all.map(([flag = '']) => flag.length)) + 3;
  return all.map(([flag = '', help]) => `  ${flag.padEnd(width)}${help}`).join('\n');
}

export interface OpenTable {
  path: string;
  written: string;
  manner: ReturnType<typeof mannerOf>;
}

export async function openTable(folder: string, name: TableName, fields: Fields): Promise<OpenTable> {
  const path = join(folder, `${name}.csv`);
  const found = existsSync(path) ? await readFile(path, 'utf8') : '';
  if (/[\0\ufffd]/.test(found))
    throw new UsageError(
      `${name}.csv is not UTF-8 text. Save it as UTF-8 first (in a spreadsheet: "CSV UTF-8").`,
    );
  const written = found.trim() === '' ? `${tableHeadings()[`${name}.csv`]?.join(',')}\n` : found;
  return { path, written, manner: mannerOf(written, fields, await statedMark(folder)) };
}

export async function statedMark(folder: string): Promise<DecimalMark | undefined> {
  const path = join(folder, 'series.yaml');
  if (!existsSync(path)) return undefined;
  const stated: unknown = parseDocument(await readFile(path, 'utf8')).get('decimal');
  return stated === 'comma' ? ',' : stated === 'point' ? '.' : undefined;
}

/** The row with what was asked for added; undefined where the author broke off. */
export async function complete(
  given: Map<string, string>,
  { asks, today }: Pick<Addition, 'asks' | 'today'>,
  fields: Fields,
  mark: DecimalMark | undefined,
  io: Io,
): Promise<Map<string, string> | undefined> {
  const row = new Map(given);
  if (today !== undefined && !row.has(today) && !io.interactive)
    row.set(today, new Date().toISOString().slice(0, 10));
  const wrong = [...row].flatMap(([name, said]) => {
    const why = whyWrong(said, fields[name], mark);
    return why === undefined ? [] : [`--${flagOf(name)}: ${why}`];
  });
  if (wrong.length > 0) throw new UsageError(wrong.join('\n'));
  if (!io.interactive) {
    const missing = Object.keys(fields).filter((name) => fields[name]?.needed && !row.has(name));
    if (missing.length > 0)
      throw new UsageError(
        `${missing.map((name) => `--${flagOf(name)}`).join(', ')} ${missing.length === 1 ? 'is' : 'are'} missing, and there is nobody at the terminal to ask.`,
      );
    return row;
  }
  const { isCancel, text } = await import('@clack/prompts');
  for (const name of asks) {
    const field = fields[name];
    if (!field || row.has(name)) continue;
    const said = await text({
      message: `${field.heading}${field.needed ? '' : ' (may stay empty)'}`,
      placeholder: field.kind.says,
      ...(name === today && { initialValue: new Date().toISOString().slice(0, 10) }),
      validate: (one) => {
        const plain = one?.trim() ?? '';
        if (plain === '') return field.needed ? `${field.help}` : undefined;
        return whyWrong(plain, field, mark);
      },
    });
    if (isCancel(said)) return undefined;
    if (said?.trim()) row.set(name, said.trim());
  }
  return row;
}

/** Why a value cannot stand in its column, in the words of the check. */
function whyWrong(
  said: string,
  field: Field<unknown> | undefined,
  mark: DecimalMark | undefined,
): string | undefined {
  if (!field) return undefined;
  let why: string | undefined;
  const wrong = (message: string): undefined => {
    why ??= message;
  };
  if (field.kind.read(said, { mark, wrong }) !== undefined) return undefined;
  if (field.kind.numeric && field.kind.read(said, { mark: undefined, wrong }) !== undefined) return undefined;
  return why;
}

function refuseUnknown(row: ReadonlyMap<string, string>, { path, manner }: OpenTable): void {
  const known = new Set(manner.headings.map(fieldName));
  const lost = [...row.keys()].filter((name) => !known.has(name));
  if (lost.length > 0)
    throw new UsageError(
      `${relative(dirname(dirname(path)), path)} has no column ${lost.map((name) => `"${name}"`).join(', ')}. Add it to the heading first.`,
    );
}

/** A value as the table writes it. Rates and estimates are words to the table, and figures to those who write them. */
function inTable(name: string, said: string, fields: Fields, mark: DecimalMark | undefined): string {
  const figure = fields[name]?.kind.numeric || name === 'rate' || name === 'estimate';
  return figure ? inManner(said, mark) : said;
}

export const rootOf = (folder: string, io: Io): string =>
  relative(io.root, folder).startsWith('..') ? dirname(folder) : io.root;

/** Writes beside the file and renames, unless the file has changed since it was read. */
export async function replace(
  { path, written }: Pick<OpenTable, 'path' | 'written'>,
  next: string,
): Promise<void> {
  await mkdir(dirname(path), { recursive: true });
  const made = `${path}.${process.pid}.new`;
  try {
    await writeFile(made, next, { flag: 'wx' });
    if (existsSync(path)) {
      const now = await readFile(path, 'utf8');
      if (now !== written && now.trim() !== '')
        throw new UsageError(
          `${path} was changed by another program meanwhile. Nothing was written; try again.`,
        );
      await chmod(made, (await stat(path)).mode);
    }
    await rename(made, path);
  } finally {
    await rm(made, { force: true });
  }
}

/** Tells the problems that the new line brought, and what became of the files. */
export function tell(before: readonly Problem[], after: readonly Problem[], io: Io): number {
  const known = new Set(before.map(keyOf));
  const fresh = after.filter((problem) => !known.has(keyOf(problem)));
  if (fresh.length === 0) {
    io.out('Written, and the check finds nothing new.\n');
    return 0;
  }
  io.out(`Written. The check finds with it:\n${fresh.map(oneLine).join('\n')}\n`);
  return fresh.some((problem) => problem.severity === 'error') ? 1 : 0;
}

const keyOf = ({ file, line, column, rule, message }: Problem): string =>
  [file, line, column, rule, message].join('\n');
