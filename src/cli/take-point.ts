/** Takes a speed that the notes tell of into a table of points, and gives that table its row in road-tests.csv. */
import { existsSync } from 'node:fs';
import { readFile } from 'node:fs/promises';
import { join } from 'node:path';
import { SLOPES } from '../record/road-tests/points.ts';
import { ROAD_TESTS } from '../record/tables.ts';
import { either } from '../record/text/words.ts';
import { openTable } from './add-to-table.ts';
import { rowLine, withLine } from './appended-row.ts';
import { DISK } from './write-up-disk.ts';
import { type Change, commit } from './write-up-whole.ts';

type PointRow = Readonly<Record<string, string>>;

/** What a point still wants from the author, in words; undefined where it is complete. */
export function lackOfPoint({ value = '', unit = '', slope = '', time = '' }: PointRow): string | undefined {
  if (!/^\d{1,3}(?:\.\d+)?$/.test(value)) return 'Its value is no speed. Write digits, such as 45.';
  if (unit !== 'km/h' && unit !== 'mph') return 'Write km/h or mph, as the dial has it, behind "unit:".';
  if (slope !== '' && !SLOPES.some((one) => one === slope))
    return `Write ${either(SLOPES)} behind "slope:", or leave it out.`;
  if (time !== '' && !/^\d{1,3}:[0-5]\d$/.test(time))
    return 'Write minutes and seconds behind "time:", such as 1:05, or leave it out.';
  return undefined;
}

/**
 * Points at the end of their chapter's tables, one table a unit, and the tables' rows in road-tests.csv, as changes to be made
 * together. `where` tells for each point where it stands: "road-tests/round-the-lane-points.csv:3".
 */
export async function withPoints(
  folder: string,
  chapter: string,
  rows: readonly PointRow[],
): Promise<{ changes: Change[]; where: string[] }> {
  const texts = new Map<string, Change>();
  const table = await openTable(folder, 'road-tests', ROAD_TESTS);
  const tests: Change = { path: table.path, was: await textOf(table.path), next: table.written };
  const where: string[] = [];
  for (const { value = '', unit = '', slope = '', time = '' } of rows) {
    const test = `${chapter.replace(/^\d+-/, '')}-points${unit === 'mph' ? '-mph' : ''}`;
    const file = `${test}.csv`;
    const path = join(folder, 'road-tests', file);
    const was = await textOf(path);
    const heading = `time (m:ss),indicated speed (${unit}),slope\n`;
    const change = texts.get(file) ?? { path, was, next: (was ?? heading).replace(/\n?$/, '\n') };
    texts.set(file, change);
    if (!tests.next.includes(file)) {
      const cells = new Map(
        Object.entries({ test, chapter, file, kind: 'cruise', title: 'Speeds as indicated' }),
      );
      tests.next = withLine(tests.next, rowLine(cells, table.manner), table.manner);
    }
    const line = `${time},${value},${slope}`;
    const before = change.next.split(/\r?\n/).indexOf(line);
    if (before < 0) change.next += `${line}\n`;
    const number = before < 0 ? change.next.split('\n').length - 1 : before + 1;
    where.push(`road-tests/${file}:${number}`);
  }
  return { changes: tests.next === table.written ? [...texts.values()] : [...texts.values(), tests], where };
}

/** Adds one point. @returns where it stands */
export async function takePoint(folder: string, chapter: string, row: PointRow): Promise<string> {
  const { changes, where } = await withPoints(folder, chapter, [row]);
  await commit(folder, changes, DISK);
  return where[0] ?? '';
}

const textOf = async (path: string): Promise<string | undefined> =>
  existsSync(path) ? readFile(path, 'utf8') : undefined;
