import { existsSync } from 'node:fs';
import { relative, resolve } from 'node:path';
import { parseArgs } from 'node:util';
import { type BenchItem, benchList } from '../record/bench-list.ts';
import { offTheRoad } from '../record/off-the-road.ts';
import { readSeries } from '../record/read-series.ts';
import type { Series } from '../record/types.ts';
import { rootOf } from './add-to-table.ts';
import { type Command, UsageError } from './command.ts';

/** The list as a sheet of text, to be printed and taken to the bench. */
export function benchSheet(series: Series): string {
  const groups = [...Map.groupBy(benchList(series), (one) => one.rank)];
  const body = groups.map(([rank, items]) => `${rank.toUpperCase()}\n${items.map(lines).join('\n')}\n`);
  const head = `Bench list, ${series.machine.name}. State of ${series.asOf}.\n${offTheRoad(series).text}\n`;
  return [head, ...(body.length > 0 ? body : ['Nothing is waiting.\n'])].join('\n');
}

const lines = ({ what, waitsFor }: BenchItem): string =>
  [`[ ] ${what}`, ...waitsFor.map((one) => `      waits for: ${one}`)].join('\n');

export const command: Command = {
  name: 'bench-list',
  summary: 'what to do next, worst first, each with what it waits for',
  usage: `
npm run bench-list -- [--content FOLDER]

  --content FOLDER   The author's folder (default content).

Prints text, held chapters and what waits for you alone included: print it, or look at /bench/ while "npm start" runs. It is
in nothing that is built.`,
  async run(args, io) {
    const { values } = parseArgs({ args: [...args], options: { content: { type: 'string' } } });
    const folder = resolve(io.root, values.content ?? process.env['OILWAY_CONTENT'] ?? 'content');
    if (!existsSync(folder)) throw new UsageError(`There is no folder "${relative(io.root, folder)}".`);
    const { series } = await readSeries(folder, { root: rootOf(folder, io) });
    if (!series) throw new UsageError('The series cannot be read. Run "npm run check" first.');
    io.out(benchSheet(series));
    return 0;
  },
};
