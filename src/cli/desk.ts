import { existsSync, readdirSync, readFileSync } from 'node:fs';
import { join, relative, resolve } from 'node:path';
import { parseArgs } from 'node:util';
import { type Kept, readProposals } from '../notes/proposals-file.ts';
import { chapterNumbers, faultAt, TODAY } from '../record/fault-life.ts';
import { readSeries } from '../record/read-series.ts';
import type { Series } from '../record/types.ts';
import { rootOf } from './add-to-table.ts';
import { type Command, UsageError } from './command.ts';

/** What lies on the author's desk: everything begun and not yet done. */
export const command: Command = {
  name: 'desk',
  summary: 'list what is begun and not done: held chapters, open proposals, put-offs that are due',
  usage: `
npm run desk -- [--content FOLDER]

  --content   The author's folder (default content).

Lists held chapters, photos without alt text, words that a write-up could not place, open proposals, questions without an
answer, wanted parts, and put-offs whose review date has come by the day that the series stands at. It changes nothing.`,
  async run(args, io) {
    const { values } = parseArgs({ args: [...args], options: { content: { type: 'string' } } });
    const folder = resolve(io.root, values.content ?? process.env['OILWAY_CONTENT'] ?? 'content');
    if (!existsSync(folder)) throw new UsageError(`There is no folder "${relative(io.root, folder)}".`);
    const { series, problems } = await readSeries(folder, { root: rootOf(folder, io) });
    if (!series) {
      io.err('The series cannot be read yet. Run npm run check.\n');
      return 1;
    }
    const proposals = openProposals(join(folder, 'chapters'));
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
      ['Open proposals', proposals.flatMap(counted)],
      ['Questions without an answer', proposals.flatMap(asked)],
      [
        'Wanted parts',
        series.parts.filter(({ status }) => status === 'wanted').map((one) => `${one.id}  ${one.name}`),
      ],
      ['Put off, and due for a look', dueForALook(series)],
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

/** Faults put off whose review date has come. One put off without a date waits until it is taken up. */
function dueForALook(series: Series): string[] {
  const numbers = chapterNumbers(series);
  return series.faults.flatMap((fault) => {
    const state = faultAt(fault, numbers, TODAY);
    const review = state?.open ? state.putOff?.review : undefined;
    return review !== undefined && review <= series.asOf
      ? [`${fault.id}  since ${review}: ${fault.title}`]
      : [];
  });
}

function notPlaced(text: string, file: string): string[] {
  const lines = text.split(/\r?\n/);
  const at = lines.findIndex((line) => /^## Not placed\s*$/.test(line));
  if (at < 0) return [];
  const out: string[] = [];
  for (const [n, line] of lines.slice(at + 1).entries()) {
    if (/^#{1,2} /.test(line)) break;
    if (line.startsWith('- ')) out.push(`${file}:${at + n + 2}  ${asRead(line.slice(2, 90))}`);
  }
  return out;
}

const asRead = (text: string): string =>
  text.replace(/&#(\d+);/g, (_, code: string) => String.fromCodePoint(Number(code)));

interface Open {
  chapter: string;
  open: Kept[];
  /** Set where the file cannot be read. */
  wrong?: string;
}

function openProposals(chapters: string): Open[] {
  return readdirSync(chapters)
    .sort()
    .flatMap((chapter) => {
      const path = join(chapters, chapter, 'proposals.yaml');
      if (!existsSync(path)) return [];
      const { kept, wrong } = readProposals(readFileSync(path, 'utf8'));
      if (wrong)
        return [
          { chapter, open: [], wrong: `proposals.yaml:${wrong.line}:${wrong.column} ${wrong.message}` },
        ];
      return [{ chapter, open: kept.filter((one) => !one.done && one.accept !== 'never') }];
    });
}

function counted({ chapter, open, wrong }: Open): string[] {
  if (wrong !== undefined) return [`${chapter}  ${wrong}`];
  const kinds = [
    ...Map.groupBy(
      open.filter(({ kind }) => kind !== 'question'),
      ({ kind }) => kind,
    ),
  ].map(([kind, list]) => `${list.length} ${kind}`);
  return kinds.length > 0 ? [`${chapter}  ${kinds.join(', ')}`] : [];
}

const asked = ({ chapter, open }: Open): string[] =>
  open
    .filter(({ kind, row }) => kind === 'question' && !row['answer'])
    .map(({ row }) => `${chapter}  ${row['ask'] ?? ''}`);
