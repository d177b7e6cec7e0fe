import { existsSync, readdirSync, readFileSync } from 'node:fs';
import { join, relative, resolve } from 'node:path';
import { parseArgs } from 'node:util';
import { readProposals } from '../notes/proposals-file.ts';
import { chapterNumbers, faultAt, TODAY } from '../record/fault-life.ts';
import { readSeries } from '../record/read-series.ts';
import { type Command, UsageError } from './command.ts';

/** What lies on the author's desk: everything begun and not yet done. */
export const command: Command = {
  name: 'desk',
  summary: 'list what is begun and not done: held chapters, open proposals, put-offs that are due',
  usage: `
npm run desk -- [--content FOLDER]

  --content   The author's folder (default content).

Lists held chapters, photos without alt text, words that a write-up could not place, open proposals, wanted parts, and
put-offs whose review date has come by the day that the series stands at. It changes nothing.`,
  async run(args, io) {
    const { values } = parseArgs({ args: [...args], options: { content: { type: 'string' } } });
    const folder = resolve(io.root, values.content ?? process.env['OILWAY_CONTENT'] ?? 'content');
    if (!existsSync(folder)) throw new UsageError(`There is no folder "${relative(io.root, folder)}".`);
    const { series, problems } = await readSeries(folder, {
      root: relative(io.root, folder).startsWith('..') ? resolve(folder, '..') : io.root,
    });
    if (!series) {
      io.err('The series cannot be read yet. Run npm run check.\n');
      return 1;
    }
    const sections: [string, string[]][] = [
      ['Held chapters', series.chapters.filter(({ held }) => held).map((one) => `${one.id}  ${one.title}`)],
      [
        'Photos without alt text',
        problems
          .filter(({ rule }) => rule === 'chapters/alt')
          .map(({ file, line }) => `${file}:${line ?? 1}`),
      ],
      [
        'Not placed',
        series.chapters.flatMap(({ path, file }) => notPlaced(readFileSync(path, 'utf8'), file)),
      ],
      ['Open proposals', openProposals(join(folder, 'chapters'))],
      [
        'Wanted parts',
        series.parts.filter(({ status }) => status === 'wanted').map((one) => `${one.id}  ${one.name}`),
      ],
      [
        'Put off, and due for a look',
        series.faults.flatMap((fault) => {
          const state = faultAt(fault, chapterNumbers(series), TODAY);
          const review = state?.open ? state.putOff?.review : undefined;
          return review !== undefined && review <= series.asOf
            ? [`${fault.id}  since ${review}: ${fault.title}`]
            : [];
        }),
      ],
    ];
    const full = sections.filter(([, list]) => list.length > 0);
    io.out(
      full.length === 0
        ? `The desk is clear, as of ${series.asOf}.\n`
        : `As of ${series.asOf}\n${full.map(([title, list]) => `\n${title} (${list.length})\n${list.map((one) => `  ${one}\n`).join('')}`).join('')}`,
    );
    return 0;
  },
};

function notPlaced(text: string, file: string): string[] {
  const lines = text.split(/\r?\n/);
  const at = lines.findIndex((line) => /^## Not placed\s*$/.test(line));
  if (at < 0) return [];
  return lines
    .slice(at + 1)
    .flatMap((line, n) => (line.startsWith('- ') ? [`${file}:${at + n + 2}  ${line.slice(2, 80)}`] : []));
}

function openProposals(chapters: string): string[] {
  return readdirSync(chapters)
    .sort()
    .flatMap((name) => {
      const path = join(chapters, name, 'proposals.yaml');
      if (!existsSync(path)) return [];
      const { kept, wrong } = readProposals(readFileSync(path, 'utf8'));
      if (wrong) return [`${name}  ${wrong}`];
      const open = kept.filter((one) => !one.done && one.accept !== 'never');
      const kinds = [...Map.groupBy(open, ({ kind }) => kind)].map(
        ([kind, list]) => `${list.length} ${kind}`,
      );
      return open.length > 0 ? [`${name}  ${kinds.join(', ')}`] : [];
    });
}
