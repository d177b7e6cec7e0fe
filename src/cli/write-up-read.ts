import { existsSync, readdirSync, statSync } from 'node:fs';
import { readFile } from 'node:fs/promises';
import { basename, join, relative, resolve } from 'node:path';
import { openSource, readSource } from '../notes/read/read-source.ts';
import type { ReadSource } from '../notes/read/source.ts';
import { type Memory, readMemory } from '../notes/write/memory.ts';
import { type Io, UsageError } from './command.ts';

/** The sources named, read; undefined where one cannot be, with every reason told. */
export async function readAll(
  names: readonly string[],
  folder: string,
  io: Io,
): Promise<ReadSource[] | undefined> {
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

/** A chapter that was written up before. */
export interface Before {
  name: string;
  path: string;
  memory: Memory;
  /** write-up.json as it stands. */
  remembered: string;
}

/** Every chapter with a memory. A damaged one is told, and passed over only where `io` hears of it. */
export async function writtenUp(chapters: string, io: Io): Promise<Before[]> {
  const out: Before[] = [];
  for (const name of existsSync(chapters) ? readdirSync(chapters).sort() : []) {
    const path = join(chapters, name);
    const file = join(path, 'write-up.json');
    if (!existsSync(file)) continue;
    const remembered = await readFile(file, 'utf8');
    const memory = readMemory(remembered);
    if (memory) out.push({ name, path, memory, remembered });
    else
      io.err(
        `${relative(io.root, file)} is damaged and is passed over. Put it back from a copy, or take it away and the notes are written up anew.\n`,
      );
  }
  return out;
}
