/** Takes a speed that the notes tell of into a table of points, and gives that table its row in road-tests.csv. */
import { existsSync } from 'node:fs';
import { mkdir, readFile, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { SLOPES } from '../record/road-tests/points.ts';
import { ROAD_TESTS } from '../record/tables.ts';
import { either } from '../record/text/words.ts';
import { openTable, replace } from './add-to-table.ts';
import { rowLine, withLine } from './appended-row.ts';
import { swap } from './write-up.ts';

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
 * Adds the point at the end of its chapter's table of points; one table a unit.
 * @returns where it stands: "road-tests/round-the-lane-points.csv:3"
 */
export async function takePoint(folder: string, chapter: string, row: PointRow): Promise<string> {
  const { value = '', unit = '', slope = '', time = '' } = row;
  const test = `${chapter.replace(/^\d+-/, '')}-points${unit === 'mph' ? '-mph' : ''}`;
  const file = `${test}.csv`;
  const path = join(folder, 'road-tests', file);
  await mkdir(join(folder, 'road-tests'), { recursive: true });
  // Made whole or not at all: a file that is there is never touched.
  if (!existsSync(path))
    await writeFile(path, `time (m:ss),indicated speed (${unit}),slope\n`, { flag: 'wx' });
  await nameInTable(folder, { test, chapter, file });
  const written = await readFile(path, 'utf8');
  const line = `${time},${value},${slope}`;
  const lines = written.split(/\r?\n/);
  // Taken before, and the process was stopped before it could be noted.
  const before = lines.indexOf(line);
  if (before < 0) await swap(path, written, `${written.replace(/\n?$/, '\n')}${line}\n`);
  const number = before < 0 ? written.replace(/\n?$/, '\n').split('\n').length : before + 1;
  return `road-tests/${file}:${number}`;
}

/** Without a row of road-tests.csv the points would not be shown. */
async function nameInTable(
  folder: string,
  named: { test: string; chapter: string; file: string },
): Promise<void> {
  const table = await openTable(folder, 'road-tests', ROAD_TESTS);
  if (table.written.includes(named.file)) return;
  const cells = new Map(Object.entries({ ...named, kind: 'cruise', title: 'Speeds as indicated' }));
  await replace(table, withLine(table.written, rowLine(cells, table.manner), table.manner));
}
