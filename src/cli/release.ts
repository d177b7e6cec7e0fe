import { existsSync } from 'node:fs';
import { readFile } from 'node:fs/promises';
import { join, relative, resolve } from 'node:path';
import { parseArgs } from 'node:util';
import { parseDocument } from 'yaml';
import { readSeries } from '../record/read-series.ts';
import { figuresOf, releasedWith } from '../record/released.ts';
import { grouped } from '../record/report.ts';
import { count, meant, shown } from '../record/text/words.ts';
import type { Series } from '../record/types.ts';
import { replace, rootOf } from './add-to-table.ts';
import { readAsIf } from './as-if.ts';
import { type Command, UsageError } from './command.ts';
import { withoutKey } from './front-matter.ts';

const RELEASED = 'released.yaml';

export const command: Command = {
  name: 'release',
  summary: 'set a chapter free, and keep its figures to compare with',
  usage: `
npm run release -- CHAPTER [--dry-run] [--content FOLDER]

  CHAPTER            the chapter's folder, such as 03-front-brakes, or its number
  --dry-run          Show what would be written and write nothing.
  --content FOLDER   The author's folder (default content).

Takes the line "held: true" out of the chapter and records its torques, settings, limits, hazards and printed figures in
released.yaml: changed later without a correction, they are an error of the check. Nothing is written while the check finds
errors. A chapter that is out already, corrected since, is recorded as it now stands.`,

  async run(args, io) {
    const { values, positionals } = parseArgs({
      args: [...args],
      allowPositionals: true,
      options: { 'dry-run': { type: 'boolean' }, content: { type: 'string' } },
    });
    const folder = resolve(io.root, values.content ?? process.env['OILWAY_CONTENT'] ?? 'content');
    if (!existsSync(folder)) throw new UsageError(`There is no folder "${relative(io.root, folder)}".`);
    const root = rootOf(folder, io);
    const { series } = await readSeries(folder, { root });
    const id = chapterNamed(positionals, series);
    const file = `chapters/${id}/chapter.mdx`;
    const written = await readFile(join(folder, file), 'utf8');
    const held = series?.chapters.find((one) => one.id === id)?.held === true;
    const next = held ? withoutKey(written, 'held', file) : written;
    const reading = await readAsIf(folder, root, new Map([[file, next]]));
    if (reading.series === undefined || reading.problems.some((one) => one.severity === 'error')) {
      io.out(`${grouped(reading.problems, { root })}${id} is not released.\n`);
      return 1;
    }
    const path = join(folder, RELEASED);
    const before = existsSync(path) ? await readFile(path, 'utf8') : '';
    const { text, recorded } = record(before, id, reading.series);
    for (const one of recorded)
      io.out(`${one.id}: ${count(one.figures, 'figure')} to be kept in ${relative(root, path)}\n`);
    if (values['dry-run'] === true) {
      io.out('Nothing was written.\n');
      return 0;
    }
    // The record first: a chapter that is still held is not compared, so a break between the two leaves nothing wrong.
    await replace({ path, written: before }, text);
    if (held) await replace({ path: join(folder, file), written }, next);
    io.out(
      held
        ? `${id} is released. It is out with the next build.\n`
        : `${id} was out already; its figures are kept as they stand.\n`,
    );
    return 0;
  },
};

/** The chapter by its folder or number. */
function chapterNamed([said, ...more]: string[], series: Series | undefined): string {
  const chapters = series?.chapters ?? [];
  const held = chapters.filter((one) => one.held).map((one) => one.id);
  if (said === undefined || more.length > 0)
    throw new UsageError(
      `Name one chapter. ${held.length === 0 ? 'None is held.' : `Held: ${held.join(', ')}.`}`,
    );
  if (series === undefined) throw new UsageError('The series cannot be read. Run "npm run check" first.');
  const found = chapters.find((one) => one.id === said || one.slug === said || String(one.number) === said);
  if (!found)
    throw new UsageError(
      `There is no chapter ${shown(said)}. ${meant(
        said,
        chapters.map((one) => one.id),
      )}`,
    );
  return found.id;
}

/** The record with this chapter as it stands, and with every chapter that was set free by hand and never recorded. */
function record(before: string, id: string, series: Series) {
  let text = before;
  const recorded: { id: string; figures: number }[] = [];
  for (const chapter of series.chapters) {
    const known = parseDocument(text).has(chapter.id);
    if (chapter.held || (known && chapter.id !== id)) continue;
    text = releasedWith(text, chapter, series.measurements);
    const figures = [...figuresOf(chapter, series.measurements).values()].flat().length;
    recorded.push({ id: chapter.id, figures });
  }
  return { text, recorded };
}
