import { existsSync } from 'node:fs';
import { readFile } from 'node:fs/promises';
import { join, relative } from 'node:path';
import { proposalsText, readProposals, settleRows } from '../notes/proposals-file.ts';
import type { ReadSource } from '../notes/read/source.ts';
import { memoryText } from '../notes/write/memory.ts';
import { addTo, type Grown, type Plan } from '../notes/write-up.ts';
import type { Io } from './command.ts';
import { DISK } from './write-up-disk.ts';
import type { Before } from './write-up-read.ts';
import { tellOf } from './write-up-tell.ts';
import { commit } from './write-up-whole.ts';

/** Adds to a chapter what is new in its notes, and puts answers to use. */
export async function grow(
  folder: string,
  before: Before,
  reads: readonly ReadSource[],
  plan: Plan,
  report: boolean,
  io: Io,
): Promise<number> {
  const shown = relative(io.root, before.path);
  const refuse = (message: string): number => {
    io.err(`${message} Nothing was written.\n`);
    return 1;
  };
  const file = join(before.path, 'chapter.mdx');
  if (!existsSync(file))
    return refuse(
      `${shown}/chapter.mdx is not there. Put it back, or take ${shown}/write-up.json away and the notes are written up anew.`,
    );
  const written = await readFile(file, 'utf8');
  if (!/^\ufeff?---[\s\S]*?\nheld:[ \t]*true\b[\s\S]*?\n---/.test(written.replace(/\r\n/g, '\n')))
    return refuse(
      `${shown}/chapter.mdx: The chapter is released, so nothing is added to it. Set "held: true" first, or write the new notes up as a chapter of their own.`,
    );
  const proposals = join(before.path, 'proposals.yaml');
  const old = existsSync(proposals) ? await readFile(proposals, 'utf8') : undefined;
  const read = readProposals(old ?? '');
  const wrong = read.wrong ? [read.wrong] : read.wrongAnswers;
  if (wrong.length > 0)
    return refuse(
      wrong.map((one) => `${shown}/proposals.yaml:${one.line}:${one.column} ${one.message}`).join('\n'),
    );
  const answers = { ...plan.answers, ...before.memory.answers, ...read.answers };
  let grown: Grown;
  try {
    grown = addTo(written, before.memory, reads, { ...plan, chapter: before.name, answers });
  } catch (error) {
    const message = error instanceof Error ? error.message : String(error);
    if (!/^\d+:\d+: /.test(message)) throw error;
    return refuse(
      `${shown}/chapter.mdx cannot be read, so nothing can be added to it. Run npm run check and put it right.`,
    );
  }
  for (const note of grown.notes.slice(0, 20)) io.out(`${note}\n`);
  if (grown.notes.length > 20) io.out(`… and ${grown.notes.length - 20} more.\n`);
  const settledRows = grown.answered > 0 && old !== undefined ? settleRows(old, grown.proposals) : old;
  await commit(
    folder,
    [
      { path: file, was: written, next: grown.chapter },
      { path: proposals, was: old, next: proposalsText(grown.proposals, settledRows ?? '') },
      {
        path: join(before.path, 'write-up.json'),
        was: before.remembered,
        next: memoryText(grown.memory),
      },
    ],
    io.disk ?? DISK,
  );
  if (grown.answered > 0)
    io.out(
      `Your answers were used in ${grown.answered} ${grown.answered === 1 ? 'statement' : 'statements'} of ${shown}.\n`,
    );
  if (grown.added === 0) {
    if (grown.answered === 0) io.out(`Nothing is new in the notes. ${shown} is as it was.\n`);
    return 0;
  }
  io.out(`Added to ${shown}: ${grown.added} new ${grown.added === 1 ? 'statement' : 'statements'}.\n`);
  tellOf(grown, reads, shown, report, io);
  return 0;
}
