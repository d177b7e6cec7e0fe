/** Takes proposals into the registers: one by one at a terminal, else those that the author marked. */
import { existsSync, readdirSync } from 'node:fs';
import { readFile } from 'node:fs/promises';
import { basename, dirname, join, relative } from 'node:path';
import { type Kept, markDone, readProposals } from '../notes/proposals-file.ts';
import { openSource, readSource } from '../notes/read/read-source.ts';
import { readSeries } from '../record/read-series.ts';
import { rootOf, tell } from './add-to-table.ts';
import { type Io, UsageError } from './command.ts';
import { DISK, NotWritten } from './write-up-disk.ts';
import { grow } from './write-up-grow.ts';
import { planFor } from './write-up-plan.ts';
import { writtenUp } from './write-up-read.ts';
import { lacks } from './write-up-rows.ts';
import { fileOf, withProposals } from './write-up-take-file.ts';
import { commit } from './write-up-whole.ts';

export async function takeProposals(folder: string, chapter: string, all: boolean, io: Io): Promise<number> {
  const chapters = join(folder, 'chapters');
  const name = existsSync(join(chapters, chapter))
    ? chapter
    : readdirSync(chapters).find((one) => one.replace(/^\d+-/, '') === chapter);
  const path = join(chapters, name ?? '', 'proposals.yaml');
  if (name === undefined || !existsSync(path))
    throw new UsageError(`There is no "${chapter}" with a proposals.yaml among the chapters.`);
  const read = readProposals(await readFile(path, 'utf8'));
  const wrong = read.wrong ? [read.wrong] : read.wrongAnswers;
  if (wrong.length > 0) {
    for (const one of wrong) io.err(`${relative(io.root, path)}:${one.line}:${one.column} ${one.message}\n`);
    io.err('Nothing was written.\n');
    return 1;
  }
  if (Object.keys(read.answers).length > 0) await useAnswers(folder, name, io);
  return takeFrom(folder, path, all, io);
}

/** Answers reach the chapter through its notes, where those lie in the author's folder. */
async function useAnswers(folder: string, name: string, io: Io): Promise<void> {
  const before = (await writtenUp(join(folder, 'chapters'), io)).find((one) => one.name === name);
  const sources = before?.memory.sources.map((one) => join(folder, one.name)) ?? [];
  if (!before || sources.length === 0 || !sources.every((one) => existsSync(one))) {
    io.out('Answers are used when the notes are written up again: npm run write-up -- FILE\n');
    return;
  }
  const reads = [];
  for (const [at, one] of sources.entries()) {
    const opened = openSource(before.memory.sources[at]?.name ?? '', await readFile(one));
    if (!opened.ok) {
      io.err(`${opened.message}\n`);
      return;
    }
    reads.push(readSource(opened.source));
  }
  const plan = await planFor(folder, reads, {}, io);
  if (plan) await grow(folder, before, reads, plan, false, io);
}

async function takeFrom(folder: string, path: string, all: boolean, io: Io): Promise<number> {
  const root = rootOf(folder, io);
  const before = await readSeries(folder, { root });
  const { kept } = readProposals(await readFile(path, 'utf8'));
  const open = kept.filter(
    (one) => !one.done && one.accept !== 'never' && !(one.kind === 'question' && one.row['answer']),
  );
  let taken = 0;
  let refused = 0;
  const take = async (list: readonly Kept[]): Promise<void> => {
    const result = await takeInto(folder, path, list, io);
    taken += result.taken;
    refused += result.refused;
  };
  const ready = (one: Kept): boolean => {
    const lacking = lacks(one);
    if (lacking)
      io.err(
        `${relative(io.root, path)}:${one.line} ${one.kind} (${one.place}): ${lacking} It stays in proposals.yaml.\n`,
      );
    return lacking === undefined;
  };
  if (io.interactive && !all) {
    for (const one of open) {
      const said = one.accept === 'yes' ? 'yes' : await asked(one, io);
      if (said === 'stop') break;
      if (said === 'yes' && ready(one)) await take([one]);
    }
  } else {
    const wanted = open.filter((one) => all || one.accept === 'yes').filter(ready);
    // New faults first: what follows may be an event of one. Then one register after the other.
    const groups = [...Map.groupBy(wanted, (one) => fileOf(folder, one))].sort(
      ([, a], [, b]) => Number(b[0]?.kind === 'fault') - Number(a[0]?.kind === 'fault'),
    );
    for (const [, list] of groups) await take(list);
  }
  if (taken === 0) {
    io.out(
      refused > 0
        ? 'No proposal was taken.\n'
        : 'No proposal was taken. Mark those that you want with "accept: yes", or call with --all.\n',
    );
    return refused > 0 ? 1 : 0;
  }
  io.out(`Taken: ${taken}.${refused > 0 ? ` Not taken: ${refused}; they stay in proposals.yaml.` : ''}\n`);
  const code = tell(before.problems, (await readSeries(folder, { root })).problems, io);
  return refused > 0 ? 1 : code;
}

/** Takes proposals of one file and notes them as taken, both or neither. */
async function takeInto(
  folder: string,
  path: string,
  list: readonly Kept[],
  io: Io,
): Promise<{ taken: number; refused: number }> {
  const text = await readFile(path, 'utf8');
  const { changes, done, refused } = await withProposals(folder, basename(dirname(path)), list);
  for (const { one, why } of refused)
    io.err(`${one.place} ${one.kind}: ${why} It stays in proposals.yaml.\n`);
  if (changes.length === 0 && done.length === 0) return { taken: 0, refused: refused.length };
  const places = new Map(done.map(({ one, where }) => [one.id, where]));
  try {
    await commit(folder, [...changes, { path, was: text, next: markDone(text, places) }], io.disk ?? DISK);
  } catch (error) {
    if (!(error instanceof NotWritten)) throw error;
    const file = relative(io.root, error.path);
    io.err(
      `${file} could not be written: ${error.message}. Not taken: ${done.map(({ one }) => `${one.kind} (${one.place})`).join(', ')}.\n`,
    );
    return { taken: 0, refused: refused.length + done.length };
  }
  for (const { one, where } of done)
    io.out(`${one.kind} (${one.place}): ${relative(io.root, join(folder, where))}\n`);
  return { taken: done.length, refused: refused.length };
}

async function asked(one: Kept, io: Io): Promise<'yes' | 'no' | 'stop'> {
  if (one.kind === 'question') return 'no';
  const { confirm, isCancel } = await import('@clack/prompts');
  const row = Object.entries(one.row)
    .map(([key, value]) => `${key}: ${value}`)
    .join('\n');
  const said = await confirm({
    message: `${one.kind} (${one.place}) "${one.words}"\n${row}`,
    initialValue: false,
    ...io.terminal,
  });
  if (isCancel(said)) return 'stop';
  return said ? 'yes' : 'no';
}
