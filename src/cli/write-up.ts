import { existsSync, readdirSync, statSync } from 'node:fs';
import { mkdir, readFile, rename, rm, writeFile } from 'node:fs/promises';
import { basename, join, relative, resolve } from 'node:path';
import { parseArgs } from 'node:util';
import { parseDocument } from 'yaml';
import { proposalsText } from '../notes/proposals-file.ts';
import { openSource, readSource } from '../notes/read/read-source.ts';
import type { ReadSource } from '../notes/read/source.ts';
import { reportOf } from '../notes/spans.ts';
import { addTo, headOf, type Memory, type Plan, type WrittenUp, writeUp } from '../notes/write-up.ts';
import { slug } from '../record/chapter/slug.ts';
import { readSeries } from '../record/read-series.ts';
import { type Command, type Io, UsageError } from './command.ts';
import { takeProposals } from './write-up-take.ts';

export const command: Command = {
  name: 'write-up',
  summary: 'make a held chapter and proposals from notes, captions or a transcript',
  usage: `
npm run write-up -- FILE… [--title TEXT] [--date 2026-05-02] [--report]
npm run write-up -- --take CHAPTER [--all]

  FILE        Notes (Markdown or plain text), captions (.vtt, .srt) or a transcript with times. Named again after it has
              grown, it adds to its chapter what is new.
  --title     Title of the chapter; left out, the first heading or the file's name.
  --date      Day of the chapter; left out, the heading's day, else the day that the series stands at.
  --report    Print for each line of the source where it went.
  --take      Go through the proposals of a chapter. At a terminal each is asked; elsewhere those marked "accept: yes" are taken.
  --all       Take every proposal that is complete.
  --content   The author's folder (default content).

The chapter is held: nothing of it is published, and nothing goes into a register, until you say so.`,
  async run(args, io) {
    const { values, positionals } = parseArgs({
      args: [...args],
      allowPositionals: true,
      options: {
        title: { type: 'string' },
        date: { type: 'string' },
        report: { type: 'boolean' },
        take: { type: 'string' },
        all: { type: 'boolean' },
        content: { type: 'string' },
      },
    });
    const folder = resolve(io.root, values.content ?? process.env['OILWAY_CONTENT'] ?? 'content');
    if (!existsSync(folder)) throw new UsageError(`There is no folder "${relative(io.root, folder)}".`);
    if (values.take !== undefined) return takeProposals(folder, values.take, values.all === true, io);
    if (positionals.length === 0)
      throw new UsageError('Name at least one file of notes, captions or a transcript.');
    const reads = await readAll(positionals, folder, io);
    if (!reads) return 1;
    for (const { source, warnings } of reads) {
      for (const { line, message } of warnings.slice(0, 20))
        io.err(`${source.name}:${line} warning ${message}\n`);
      if (warnings.length > 20) io.err(`${source.name} warning ${warnings.length - 20} more of the kind.\n`);
    }
    const plan = await planFor(folder, reads, values, io);
    if (!plan) return 1;
    const chapters = join(folder, 'chapters');
    const before = await chapterOf(chapters, reads);
    try {
      return before
        ? await grow(before, reads, { ...plan, chapter: before.name }, io, values.report === true)
        : await make(chapters, reads, plan, io, values.report === true);
    } catch (error) {
      if (!(error instanceof Error) || !('code' in error)) throw error;
      const why = error.code === 'ENOSPC' ? 'the disk is full' : error.message;
      io.err(`Nothing was written: ${why}. Your notes and chapters are as they were.\n`);
      return 1;
    }
  },
};

async function readAll(names: readonly string[], folder: string, io: Io): Promise<ReadSource[] | undefined> {
  const paths = names.map((name) => resolve(io.root, name));
  const twice = names.find((_, at) => paths.indexOf(paths[at] ?? '') < at);
  if (twice) throw new UsageError(`"${twice}" is named twice. Name each file once.`);
  const reads: ReadSource[] = [];
  let wrong = 0;
  for (const [at, path] of paths.entries()) {
    const name = names[at] ?? '';
    if (!existsSync(path) || !statSync(path).isFile()) throw new UsageError(`There is no file "${name}".`);
    const inside = relative(folder, path);
    const opened = openSource(
      inside.startsWith('..') ? basename(path) : inside.replaceAll('\\', '/'),
      await readFile(path),
    );
    if (!opened.ok) {
      io.err(`${opened.message}\n`);
      wrong += 1;
      continue;
    }
    if (reads.some(({ source }) => source.name === opened.source.name))
      throw new UsageError(`Two of the files are called "${opened.source.name}". Give one another name.`);
    reads.push(readSource(opened.source));
  }
  if (wrong > 0) io.err('Nothing was written.\n');
  return wrong > 0 ? undefined : reads;
}

async function planFor(
  folder: string,
  reads: readonly ReadSource[],
  values: { title?: string | undefined; date?: string | undefined },
  io: Io,
): Promise<Plan | undefined> {
  const { series } = await readSeries(folder, {
    root: relative(io.root, folder).startsWith('..') ? resolve(folder, '..') : io.root,
  });
  const language = series?.language ?? 'en';
  if (!/^en\b/i.test(language)) {
    io.err(
      `series.yaml says that the series is written in "${language}". Notes can be read in English only so far. Nothing was written.\n`,
    );
    return undefined;
  }
  const raw = existsSync(join(folder, 'series.yaml'))
    ? parseDocument(await readFile(join(folder, 'series.yaml'), 'utf8')).get('gallon')
    : undefined;
  const head = headOf(reads, series?.asOf ?? '2000-01-01');
  const date = values.date ?? head.date;
  if (!/^\d{4}-(?:0[1-9]|1[0-2])-(?:0[1-9]|[12]\d|3[01])$/.test(date))
    throw new UsageError(`"${date}" is not a day. Write it as 2026-05-02.`);
  const title = (values.title ?? head.title).trim() || head.title;
  const numbers = existsSync(join(folder, 'chapters'))
    ? readdirSync(join(folder, 'chapters')).map((name) => Number(/^(\d+)-/.exec(name)?.[1] ?? 0))
    : [];
  const next = String(Math.max(0, ...numbers) + 1).padStart(2, '0');
  return {
    chapter: `${next}-${slug(title).slice(0, 50).replace(/-+$/, '') || 'notes'}`,
    title,
    date,
    currency: series?.homeCurrency ?? 'EUR',
    habits: raw === 'imperial' || raw === 'US' ? { gallon: raw } : {},
    around: {
      texts: new Map(reads.map(({ source }) => [source.name, source.text])),
      ...(series ? { machine: series.machine.values } : {}),
    },
    named: (series?.supporters ?? []).filter(({ consent }) => consent).map(({ name }) => name),
    unnamed: (series?.supporters ?? []).filter(({ consent }) => !consent).map(({ name }) => name),
  };
}

interface Before {
  name: string;
  path: string;
  memory: Memory;
}

/** The chapter that these sources were written up in before. */
async function chapterOf(chapters: string, reads: readonly ReadSource[]): Promise<Before | undefined> {
  for (const name of existsSync(chapters) ? readdirSync(chapters) : []) {
    const path = join(chapters, name, 'write-up.json');
    if (!existsSync(path)) continue;
    const memory = JSON.parse(await readFile(path, 'utf8')) as Memory;
    if (memory.sources.some((one) => reads.some(({ source }) => source.name === one.name)))
      return { name, path: join(chapters, name), memory };
  }
  return undefined;
}

/** The folder is made whole beside the others and then renamed: it is there with all its files, or not at all. */
async function make(
  chapters: string,
  reads: readonly ReadSource[],
  plan: Plan,
  io: Io,
  report: boolean,
): Promise<number> {
  const made = writeUp(reads, plan);
  const target = join(chapters, plan.chapter);
  const yard = resolve(chapters, '..', `.write-up-${process.pid}`);
  for (const left of readdirSync(resolve(chapters, '..')))
    if (left.startsWith('.write-up-') && !alive(Number(left.slice(10))))
      await rm(join(chapters, '..', left), { recursive: true, force: true });
  try {
    await mkdir(chapters, { recursive: true });
    await mkdir(yard);
    await writeFile(join(yard, 'chapter.mdx'), made.chapter);
    await writeFile(join(yard, 'proposals.yaml'), proposalsText(made.proposals));
    await writeFile(join(yard, 'write-up.json'), `${JSON.stringify(made.memory, null, 1)}\n`);
    await rename(yard, target);
  } finally {
    await rm(yard, { recursive: true, force: true });
  }
  io.out(`Written: ${relative(io.root, target)}/chapter.mdx, held.\n`);
  tell(made, reads, io, report, relative(io.root, target));
  return 0;
}

async function grow(
  before: Before,
  reads: readonly ReadSource[],
  plan: Plan,
  io: Io,
  report: boolean,
): Promise<number> {
  const file = join(before.path, 'chapter.mdx');
  const written = await readFile(file, 'utf8');
  const grown = addTo(written, before.memory, reads, plan);
  const shown = relative(io.root, before.path);
  if (!grown.ok) {
    io.err(`${shown}/chapter.mdx: ${grown.message} Nothing was written.\n`);
    return 1;
  }
  for (const words of grown.gone.slice(0, 12))
    io.out(`Changed or gone in the notes since, and left as it is in the chapter: "${words.slice(0, 70)}"\n`);
  if (grown.added === 0) {
    io.out(`Nothing is new in the notes. ${shown} is as it was.\n`);
    return 0;
  }
  const proposals = join(before.path, 'proposals.yaml');
  const old = existsSync(proposals) ? await readFile(proposals, 'utf8') : '';
  await swap(proposals, old, proposalsText(grown.proposals, old));
  await swap(file, written, grown.chapter);
  const memory = join(before.path, 'write-up.json');
  await swap(memory, await readFile(memory, 'utf8'), `${JSON.stringify(grown.memory, null, 1)}\n`);
  io.out(`Added to ${shown}: ${grown.added} new statements.\n`);
  tell(grown, reads, io, report, shown);
  return 0;
}

/** Writes beside and renames, unless somebody changed the file meanwhile. */
export async function swap(path: string, was: string, next: string): Promise<void> {
  if (was === next) return;
  const made = `${path}.${process.pid}.new`;
  try {
    await writeFile(made, next, { flag: 'wx' });
    if (existsSync(path) && (await readFile(path, 'utf8')) !== was)
      throw new UsageError(
        `${path} was changed by another program meanwhile. Nothing was written to it; try again.`,
      );
    await rename(made, path);
  } finally {
    await rm(made, { force: true });
  }
}

function tell(
  { draft, proposals, called }: Pick<WrittenUp, 'draft' | 'proposals' | 'called'>,
  reads: readonly ReadSource[],
  io: Io,
  report: boolean,
  chapter: string,
): void {
  const placed = draft.statements.filter((one) => one.home.kind === 'not placed').length;
  const kinds = [...Map.groupBy(proposals, ({ kind }) => kind)]
    .map(([kind, list]) => `${list.length} ${kind}`)
    .join(', ');
  io.out(
    `${draft.steps.filter(({ statements }) => statements.length > 0).length} steps, ${placed} not placed. Proposals: ${kinds || 'none'}.\n`,
  );
  for (const one of called) io.out(`  ${one.hazard}: "${one.words}" (${one.place}, step "${one.step}")\n`);
  for (const { row } of proposals.filter(({ kind }) => kind === 'question'))
    io.out(`To answer in proposals.yaml: ${row['ask']}\n`);
  if (report)
    for (const { source } of reads) {
      const own = draft.statements.filter((one) => one.source === source.name);
      const byLine = new Map<number, string[]>();
      for (const { place, kind } of proposals.filter((one) => one.place.startsWith(`${source.name}:`))) {
        const line = Number(place.slice(source.name.length + 1));
        byLine.set(line, [...(byLine.get(line) ?? []), kind]);
      }
      io.out(`\n${source.name}\n${reportOf(source.text, own, byLine)}\n`);
    }
  io.out(`Next: read ${chapter}/chapter.mdx, then npm run write-up -- --take ${basename(chapter)}\n`);
}

function alive(pid: number): boolean {
  try {
    process.kill(pid, 0);
    return true;
  } catch {
    return false;
  }
}
