/** Somebody else's list of supporters becomes rows of supporters.csv. Nobody is taken to have agreed to be named. */
import { z } from 'zod';
import { readDay } from './day.ts';
import type { Problem } from './problem.ts';
import { readCsv } from './read/csv.ts';
import { Report } from './report-to.ts';
import { SUPPORTERS } from './tables.ts';
import { Lines } from './text/lines.ts';
import { either } from './text/words.ts';

const COLUMNS = Object.keys(SUPPORTERS) as (keyof typeof SUPPORTERS)[];
type Column = (typeof COLUMNS)[number];
const column = z.enum(COLUMNS as [Column, ...Column[]]);

/** content/supporters-from.yaml: how the other list is read. */
export const SUPPORTERS_FROM = z.strictObject({
  /** Column of supporters.csv: heading of the other list. */
  columns: z.partialRecord(column, z.string()).refine((all) => all.name !== undefined, 'columns needs name'),
  /** Column of supporters.csv: their word and ours. Consent is yes only where one of these words stands. */
  words: z.partialRecord(column, z.record(z.string(), z.string())).default({}),
  /** What stands in every row. Consent cannot: each one gives it for themselves. */
  always: z
    .partialRecord(column, z.string())
    .refine(
      (all) => all.consent === undefined,
      'consent cannot stand under always: each one gives it for themselves',
    )
    .default({}),
  /** How the other list writes days. */
  days: z.enum(['year-month-day', 'day-month-year', 'month-day-year']).default('year-month-day'),
});
export type SupportersFrom = z.infer<typeof SUPPORTERS_FROM>;

export type SupporterRow = Map<Column, string>;

export interface Taken {
  rows: SupporterRow[];
  /** Names in supporters.csv already, with the same gift and day. */
  there: string[];
  /** Names that may be another spelling of one that is there. */
  near: { row: SupporterRow; like: string }[];
  problems: Problem[];
}

/** A name as it is compared: without marks, capitals, points and the order of its words. */
const folded = (name: string): string =>
  name
    .normalize('NFKD')
    .replace(/\p{M}/gu, '')
    .toLowerCase()
    .replace(/[^\p{L}\p{N}]+/gu, ' ')
    .trim()
    .split(' ')
    .sort()
    .join(' ');

const keyOf = (row: ReadonlyMap<string, string>): string =>
  [folded(row.get('name') ?? ''), row.get('kind'), row.get('what'), row.get('from') ?? ''].join('\n');

/**
 * Rows for supporters.csv from another list.
 * @param present rows of supporters.csv, by column
 */
export function supportersFrom(
  list: { file: string; text: string },
  from: SupportersFrom,
  present: readonly ReadonlyMap<string, string>[],
): Taken {
  const report = new Report();
  const lines = new Lines(list.file, list.text);
  const [heading, ...records] = readCsv(lines, report);
  const taken: Taken = { rows: [], there: [], near: [], problems: report.problems };
  const wrong = (place: { file: string; line?: number; column?: number }, rule: string, message: string) => {
    taken.problems.push({ ...place, rule, severity: 'error', message });
  };
  const headings = heading?.cells.map((cell) => cell.text.trim()) ?? [];
  const at = new Map<Column, number>();
  for (const [name, theirs] of Object.entries(from.columns) as [Column, string][]) {
    const index = headings.indexOf(theirs.trim());
    if (index < 0)
      wrong(
        heading?.place ?? { file: list.file },
        'supporters/from',
        `There is no column "${theirs}" for ${name}. The list has ${either(
          headings.map((one) => `"${one}"`),
          'and',
        )}.`,
      );
    else at.set(name, index);
  }
  if (taken.problems.length > 0) return taken;

  const known = new Map(present.map((row) => [keyOf(row), true]));
  const names = new Map(present.map((row) => [folded(row.get('name') ?? ''), row.get('name') ?? '']));
  for (const record of records) {
    const row: SupporterRow = new Map();
    const before = taken.problems.length;
    for (const name of COLUMNS) {
      const cell = record.cells[at.get(name) ?? -1];
      const said = cell?.text.replace(/\s+/g, ' ').trim() ?? '';
      const place = cell?.place ?? record.place;
      const value = cellValue(name, said, from, (message) => wrong(place, `supporters/${name}`, message));
      if (value !== undefined && value !== '') row.set(name, value);
    }
    for (const name of ['name', 'kind', 'what'] as const)
      if (!row.has(name) && taken.problems.length === before)
        wrong(
          record.place,
          `supporters/${name}`,
          `The row has no ${name}. Fill it in the list, or say what it is under always in supporters-from.yaml.`,
        );
    if (taken.problems.length > before) continue;
    const own = row.get('name') ?? '';
    if (known.has(keyOf(row))) taken.there.push(own);
    else {
      const like = spelledLike(folded(own), names);
      if (like === undefined) taken.rows.push(row);
      else taken.near.push({ row, like });
    }
    known.set(keyOf(row), true);
    if (!names.has(folded(own))) names.set(folded(own), own);
  }
  return taken;
}

function cellValue(
  name: Column,
  said: string,
  from: SupportersFrom,
  wrong: (message: string) => void,
): string | undefined {
  const words = Object.entries(from.words[name] ?? {});
  const ours = words.find(([theirs]) => theirs.trim().toLowerCase() === said.toLowerCase())?.[1];
  // Silence, "ok" or a tick in another program's box is no consent; only the words that the author listed are.
  if (name === 'consent') return said !== '' && ours === 'yes' ? 'yes' : 'no';
  const value = ours ?? (said === '' ? from.always[name] : said);
  if (value === undefined) return undefined;
  if (/^[=+@\t\r]|^-\D/.test(value)) {
    wrong(`"${value}" begins like a formula, which a spreadsheet would run. Write it as words.`);
    return undefined;
  }
  if (name === 'from' || name === 'until') return dayOf(value, from.days, wrong);
  let why: string | undefined;
  const read = SUPPORTERS[name].kind.read(value, {
    mark: undefined,
    wrong: (message: string): undefined => {
      why ??= message;
    },
  });
  if (read !== undefined) return value;
  const hint = name === 'kind' ? ' Or give the word its meaning under words in supporters-from.yaml.' : '';
  wrong(`${why ?? `"${value}" does not fit.`}${hint}`);
  return undefined;
}

/** A day, perhaps with a time behind it, in the list's own order. */
function dayOf(
  written: string,
  order: SupportersFrom['days'],
  wrong: (message: string) => void,
): string | undefined {
  const [, a = '', b = '', c = ''] =
    /^(\d{1,4})[-/. ]+(\d{1,2})[-/. ]+(\d{1,4})(?:[ T].*)?$/.exec(written) ?? [];
  const [year, month, day] =
    order === 'year-month-day' ? [a, b, c] : order === 'day-month-year' ? [c, b, a] : [c, a, b];
  const plain = year.length === 4 ? `${year}-${month.padStart(2, '0')}-${day.padStart(2, '0')}` : written;
  const read = readDay(plain);
  if ('day' in read) return read.day;
  wrong(`"${written}" is not a day written as ${order}. Look at "days" in supporters-from.yaml.`);
  return undefined;
}

/** A known name that differs in one letter; undefined where the name itself is known or nothing is like it. */
function spelledLike(name: string, names: ReadonlyMap<string, string>): string | undefined {
  if (names.has(name) || name.length < 5) return undefined;
  for (const [other, written] of names) if (oneChange(name, other)) return written;
  return undefined;
}

/** Whether one letter added, dropped or changed makes one of the other. */
function oneChange(one: string, other: string): boolean {
  const [short, long] = one.length <= other.length ? [one, other] : [other, one];
  if (long.length - short.length > 1) return false;
  let at = 0;
  while (at < short.length && short[at] === long[at]) at += 1;
  return short.slice(short.length === long.length ? at + 1 : at) === long.slice(at + 1);
}
