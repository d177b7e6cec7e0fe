/** Several files changed together or not at all, also when the process is killed half-way. */
import { createHash } from 'node:crypto';
import { existsSync, readdirSync } from 'node:fs';
import { chmod, readFile, stat } from 'node:fs/promises';
import { dirname, join, relative } from 'node:path';
import { codeOf, type Disk, NotWritten, told } from './write-up-disk.ts';

export interface Change {
  path: string;
  /** What the file held when it was read; undefined where there was none. */
  was: string | undefined;
  next: string;
}

/** The name tells the process: what a dead one left is known by it. */
let yards = 0;
const yardOf = (content: string): string => join(content, `.write-up-${process.pid}-${++yards}`);
const JOURNAL = 'to-do.json';

interface Entry {
  /** File in the yard, and where it goes, both seen from the author's folder. */
  made: string;
  path: string;
  /** Mark of what it replaces; empty for a new file. */
  was: string;
}

const markOf = (text: string): string => createHash('sha256').update(text).digest('hex');

/**
 * Writes all, or nothing: every file is made in a folder of its own, a list of what goes where is put down, and then each is
 * put in its place. What a dead process left with such a list is finished by `finish`.
 * @throws {NotWritten} with nothing changed, unless a file could not be put in its place: then the next run does it
 */
export async function commit(content: string, changes: readonly Change[], disk: Disk): Promise<void> {
  const real = changes.filter(({ was, next }) => was !== next);
  if (real.length === 0) return;
  const yard = yardOf(content);
  const entries: Entry[] = [];
  let listed = false;
  try {
    await told(yard, () => disk.makeFolder(yard));
    for (const [at, { path, was, next }] of real.entries()) {
      const made = join(yard, String(at));
      await told(path, () => disk.write(made, next));
      if ((await textOf(path)) !== was) throw new NotWritten(path, 'another program changed it meanwhile');
      // Whatever may need room on the disk comes before the list.
      if (was === undefined) await told(path, () => disk.makeFolder(dirname(path)));
      else await chmod(made, (await stat(path)).mode);
      entries.push({
        made: relative(content, made),
        path: relative(content, path),
        was: was === undefined ? '' : markOf(was),
      });
    }
    const first = real[0]?.path ?? yard;
    await told(first, () => disk.write(join(yard, 'list'), JSON.stringify(entries)));
    await told(first, () => disk.rename(join(yard, 'list'), join(yard, JOURNAL)));
    listed = true;
    for (const entry of entries) await put(content, entry, disk);
    await disk.remove(yard);
  } catch (error) {
    if (!listed) await disk.remove(yard);
    throw error;
  }
}

async function put(content: string, { made, path, was }: Entry, disk: Disk): Promise<void> {
  const [from, to] = [join(content, made), join(content, path)];
  await told(to, () => (was === '' ? disk.place(from, to) : disk.rename(from, to)));
}

const textOf = async (path: string): Promise<string | undefined> =>
  existsSync(path) ? readFile(path, 'utf8') : undefined;

/** Finishes or clears away what a process that is gone left behind; returns the files that were put in their place. */
export async function finish(content: string, disk: Disk): Promise<string[]> {
  const done: string[] = [];
  for (const name of readdirSync(content)) {
    const pid = /^\.write-up-(\d+)-\d+$/.exec(name)?.[1];
    if (pid === undefined || (Number(pid) !== process.pid && alive(Number(pid)))) continue;
    const journal = join(content, name, JOURNAL);
    if (existsSync(journal)) {
      const entries = JSON.parse(await readFile(journal, 'utf8')) as Entry[];
      for (const entry of entries) {
        const to = join(content, entry.path);
        const [made, now] = [await textOf(join(content, entry.made)), await textOf(to)];
        // In its place already; killed right then, it may have its name in the yard as well.
        if (made === undefined || made === now) continue;
        // Changed by the author since: then the author's text stands, and what is left of the list is dropped.
        if ((now === undefined ? '' : markOf(now)) !== entry.was) break;
        await put(content, entry, disk);
        done.push(entry.path);
      }
    }
    await told(join(content, name), () => disk.remove(join(content, name)));
  }
  return done;
}

function alive(pid: number): boolean {
  try {
    process.kill(pid, 0);
    return true;
  } catch (error) {
    return codeOf(error) === 'EPERM';
  }
}

/** A new folder with its files, whole or not at all. */
export async function makeWhole(
  content: string,
  target: string,
  files: Readonly<Record<string, string>>,
  disk: Disk,
): Promise<void> {
  const yard = yardOf(content);
  try {
    await told(target, () => disk.makeFolder(join(yard, 'made')));
    for (const [name, text] of Object.entries(files))
      await told(join(target, name), () => disk.write(join(yard, 'made', name), text));
    await told(target, () => disk.makeFolder(dirname(target)));
    if (existsSync(target)) throw new NotWritten(target, 'another program made it meanwhile');
    await told(target, () => disk.rename(join(yard, 'made'), target));
  } finally {
    await disk.remove(yard);
  }
}
