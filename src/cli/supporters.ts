import { existsSync } from 'node:fs';
import { readFile } from 'node:fs/promises';
import { relative, resolve } from 'node:path';
import { parseArgs } from 'node:util';
import { LineCounter, parseDocument } from 'yaml';
import type { Problem } from '../record/problem.ts';
import { readCsv } from '../record/read/csv.ts';
import { readSeries } from '../record/read-series.ts';
import { oneLine } from '../record/report.ts';
import { Report } from '../record/report-to.ts';
import {
  SUPPORTERS_FROM,
  type SupporterRow,
  type SupportersFrom,
  supportersFrom,
} from '../record/supporters-from.ts';
import { SUPPORTERS } from '../record/tables.ts';
import { Lines } from '../record/text/lines.ts';
import { count } from '../record/text/words.ts';
import { openTable, replace, rootOf, tell } from './add-to-table.ts';
import { fieldName, rowLine, withLine } from './appended-row.ts';
import { type Command, type Io, UsageError } from './command.ts';

export const command: Command = {
  name: 'supporters',
  summary: 'add supporters in bulk from any list in CSV',
  usage: `
npm run supporters -- LIST.csv [--from FILE] [--near take | leave] [--dry-run] [--content FOLDER]

  LIST.csv           any list with one supporter a row; it is only read
  --from FILE        how the list is read (default supporters-from.yaml in content/)
  --near take|leave  what to do with names that may be another spelling of one that is there (default: list them)
  --dry-run          show what would be added and write nothing
  --content FOLDER   the author's folder (default content)

supporters-from.yaml says which heading is which column, for example:

  columns: { name: Full name, kind: Sort, what: Message, from: Date, consent: May we name you }
  words:
    kind: { Spare part: gift, Hours: help }
    consent: { "Yes, gladly": yes }
  always: { chapters: 02-taking-it-down }
  days: day-month-year

Consent is no unless the list itself says one of the words under consent. Exit code 0: added. 1: a row or file is wrong, and
nothing was written. 2: wrong use of the command.`,

  async run(args, io) {
    const { values, positionals } = parseArgs({
      args: [...args],
      allowPositionals: true,
      options: {
        from: { type: 'string' },
        near: { type: 'string' },
        'dry-run': { type: 'boolean', default: false },
        content: { type: 'string', default: process.env['OILWAY_CONTENT'] ?? 'content' },
      },
    });
    const [written] = positionals;
    if (written === undefined || positionals.length > 1) throw new UsageError('Name one list.');
    if (values.near !== undefined && values.near !== 'take' && values.near !== 'leave')
      throw new UsageError(`--near is take or leave, not "${values.near}".`);
    const folder = resolve(io.root, values.content);
    const root = rootOf(folder, io);
    const mapping = await readMapping(resolve(folder, values.from ?? 'supporters-from.yaml'), root);
    if ('problem' in mapping) return failed([mapping.problem], io);
    const table = await openTable(folder, 'supporters', SUPPORTERS);
    const list = await readText(resolve(io.root, written), written);
    const taken = supportersFrom({ file: written, text: list }, mapping.from, presentRows(table.written));
    if (taken.problems.length > 0) return failed(taken.problems, io);

    const rows = [...taken.rows, ...(values.near === 'take' ? taken.near.map((one) => one.row) : [])];
    if (taken.there.length > 0) io.out(`There already: ${taken.there.join(', ')}.\n`);
    if (values.near === undefined)
      for (const { row, like } of taken.near)
        io.out(
          `${row.get('name')} may be ${like}, who is there; left out. Answer with --near take or --near leave.\n`,
        );
    tellConsent(rows, io);
    if (rows.length === 0 || values['dry-run']) {
      for (const row of rows) io.out(`${rowLine(row, table.manner)}\n`);
      io.out('Nothing was written.\n');
      return 0;
    }
    const before = await readSeries(folder, { root });
    const next = rows.reduce(
      (text, row) => withLine(text, rowLine(row, table.manner), table.manner),
      table.written,
    );
    await replace(table, next);
    io.out(`${count(rows.length, 'row')} added to ${relative(root, table.path)}.\n`);
    return tell(before.problems, (await readSeries(folder, { root })).problems, io);
  },
};

function failed(problems: readonly Problem[], io: Io): number {
  io.out(`${problems.map(oneLine).join('\n')}\n\nNothing was written.\n`);
  return 1;
}

function tellConsent(rows: readonly SupporterRow[], io: Io): void {
  const silent = rows.filter((row) => row.get('consent') !== 'yes').length;
  if (silent > 0)
    io.out(
      `${count(silent, 'supporter')} did not say that they may be named: consent is no, and their names stay out of the site.\n`,
    );
}

async function readText(path: string, written: string): Promise<string> {
  if (!existsSync(path)) throw new UsageError(`There is no file "${written}".`);
  const text = (await readFile(path, 'utf8')).replace(/^\ufeff/, '').replace(/\r\n?/g, '\n');
  if (/[\0\ufffd]/.test(text))
    throw new UsageError(
      `${written} is not UTF-8 text. Save it as UTF-8 first (in a spreadsheet: "CSV UTF-8").`,
    );
  return text;
}

async function readMapping(
  path: string,
  root: string,
): Promise<{ from: SupportersFrom } | { problem: Problem }> {
  const file = relative(root, path);
  const text = await readText(path, file);
  const counter = new LineCounter();
  const document = parseDocument(text, { lineCounter: counter });
  const problem = (message: string, offset: number): { problem: Problem } => {
    const { line, col } = counter.linePos(offset);
    return { problem: { file, line, column: col, rule: 'supporters/from', severity: 'error', message } };
  };
  const [broken] = document.errors;
  if (broken) return problem(`The file cannot be read: ${broken.message.split('\n')[0]}`, broken.pos[0]);
  // YAML's yes is a truth value to some readers; here it is the word.
  const read = SUPPORTERS_FROM.safeParse(document.toJS({ mapAsMap: false }), { reportInput: true });
  if (read.success) return { from: read.data };
  const [issue] = read.error.issues;
  const at = document.getIn(issue?.path ?? [], true) as { range?: [number, number, number] } | undefined;
  return problem(
    `${(issue?.path ?? []).join('.')}: ${issue?.message ?? 'cannot be used'}.`,
    at?.range?.[0] ?? 0,
  );
}

/** Rows of supporters.csv as they are written, by column. */
function presentRows(written: string): Map<string, string>[] {
  const text = written.replace(/^\ufeff/, '').replace(/\r\n?/g, '\n');
  const [heading, ...records] = readCsv(new Lines('', text), new Report());
  const names = heading?.cells.map((cell) => fieldName(cell.text)) ?? [];
  return records.map(
    (record) => new Map(names.map((name, at) => [name, record.cells[at]?.text.trim() ?? ''])),
  );
}
