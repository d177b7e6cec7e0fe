import { existsSync } from 'node:fs';
import { join, relative, resolve } from 'node:path';
import { parseArgs } from 'node:util';
import { sharedDraft } from '../notes/draft-shared.ts';
import { proposalsText } from '../notes/proposals-file.ts';
import type { ReadSource } from '../notes/read/source.ts';
import { memoryText } from '../notes/write/memory.ts';
import { type Plan, writeUp } from '../notes/write-up.ts';
import { type Command, type Io, UsageError } from './command.ts';
import { DISK, NotWritten } from './write-up-disk.ts';
import { grow } from './write-up-grow.ts';
import { planFor } from './write-up-plan.ts';
import { type Before, readAll, writtenUp } from './write-up-read.ts';
import { takeProposals } from './write-up-take.ts';
import { tellOf } from './write-up-tell.ts';
import { finish, makeWhole } from './write-up-whole.ts';

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
    if (values.take === undefined && positionals.length === 0)
      throw new UsageError('Name at least one file of notes, captions or a transcript.');
    try {
      for (const path of await finish(folder, io.disk ?? DISK))
        io.out(`${path} was finished: the run before was stopped half-way.\n`);
      if (values.take !== undefined) return await takeProposals(folder, values.take, values.all === true, io);
      const reads = await readAll(positionals, folder, io);
      if (!reads) return 1;
      warn(reads, io);
      const plan = await planFor(folder, reads, values, io);
      if (!plan) return 1;
      const before = await chapterOf(join(folder, 'chapters'), reads, io);
      const read = { ...plan, draft: await sharedDraft(reads, plan.habits) };
      return before
        ? await grow(folder, before, reads, read, values.report === true, io)
        : await make(folder, reads, read, values.report === true, io);
    } catch (error) {
      if (!(error instanceof NotWritten)) throw error;
      io.err(
        `${relative(io.root, error.path)} could not be written: ${error.message}. Nothing was written: your notes and chapters are as they were.\n`,
      );
      return 1;
    }
  },
};

function warn(reads: readonly ReadSource[], io: Io): void {
  for (const { source, warnings } of reads) {
    for (const { line, message } of warnings.slice(0, 20))
      io.err(`${source.name}:${line} warning ${message}\n`);
    if (warnings.length > 20) io.err(`${source.name} warning ${warnings.length - 20} more of the kind.\n`);
  }
}

/** The chapter that these sources were written up in before. */
async function chapterOf(
  chapters: string,
  reads: readonly ReadSource[],
  io: Io,
): Promise<Before | undefined> {
  const theirs = (await writtenUp(chapters, io)).filter(({ memory }) =>
    memory.sources.some((one) => reads.some(({ source }) => source.name === one.name)),
  );
  if (theirs.length > 1)
    throw new UsageError(
      `These notes belong to ${theirs.map(({ name }) => name).join(' and ')}. Write up those of one chapter at a time.`,
    );
  return theirs[0];
}

async function make(
  folder: string,
  reads: readonly ReadSource[],
  plan: Plan,
  report: boolean,
  io: Io,
): Promise<number> {
  const made = writeUp(reads, plan);
  const target = join(folder, 'chapters', plan.chapter);
  await makeWhole(
    folder,
    target,
    {
      'chapter.mdx': made.chapter,
      'proposals.yaml': proposalsText(made.proposals),
      'write-up.json': memoryText(made.memory),
    },
    io.disk ?? DISK,
  );
  io.out(`Written: ${relative(io.root, target)}/chapter.mdx, held.\n`);
  tellOf(made, reads, relative(io.root, target), report, io);
  return 0;
}
