import { hash } from 'node:crypto';
import { existsSync } from 'node:fs';
import { readdir, readFile, rm, stat } from 'node:fs/promises';
import { availableParallelism } from 'node:os';
import { basename, join } from 'node:path';
import sharp from 'sharp';
import { inTurn } from '../in-turn.ts';
import { inWords, openPicture } from '../open-picture.ts';
import { LIMITS } from '../settings.ts';
import { type Clean, type CleanOptions, cleanPicture } from './clean.ts';
import type { Entry, Journal } from './journal.ts';
import { difference, likeness, NEARLY } from './likeness.ts';
import { clearWaiting, DISK, type Disk, settle, waiting } from './place-file.ts';
import { nameByTime } from './taken-at.ts';

export interface TakeInOptions extends CleanOptions {
  /** The chapter's folder; originals elsewhere are only read. */
  chapter: string;
  /** Scratch for pictures that wait for their name or an answer. */
  scratch: string;
  journal: Journal;
  progress?: (done: number, of: number) => void;
  disk?: Disk;
}

export interface TakenIn {
  taken: Entry[];
  /** Same bytes as one taken in before, now or earlier. */
  same: { original: string; as: string }[];
  /** Nearly the same as another; each waits in scratch under its hash. */
  near: Entry[];
  /** One line a file that could not be taken in. */
  failed: { original: string; why: string }[];
  /** Not looked at, because the disk is full. */
  full: boolean;
}

const PICTURE = /\.(jpe?g|png|webp|tiff?|heic|heif|avif)$/i;

/** Takes pictures into a chapter's folder: clean, named by time, each once. A picture that fails is told; the rest goes on. */
export async function takeIn(pictures: readonly string[], options: TakeInOptions): Promise<TakenIn> {
  const { journal, scratch, chapter } = options;
  const disk = options.disk ?? DISK;
  const result: TakenIn = { taken: [], same: [], near: [], failed: [], full: false };
  await clearWaiting(scratch);
  const threads = sharp.concurrency();
  sharp.concurrency(1);
  try {
    const others = await alreadyThere(chapter, journal);
    let done = 0;
    let last: Promise<void> = Promise.resolve();
    await inTurn(pictures, availableParallelism(), async (path) => {
      const before = last;
      let settled: () => void = () => undefined;
      last = new Promise((resolve) => {
        settled = resolve;
      });
      const original = basename(path);
      try {
        if (result.full) return;
        const facts = await stat(path);
        const bytes = facts.size > LIMITS.bytes ? Buffer.alloc(0) : await readFile(path);
        const sum = hash('sha256', bytes);
        const known = journal.entries.get(sum);
        if (bytes.length > 0 && known) {
          if (known.state === 'near') result.near.push(known);
          else result.same.push({ original, as: known.name });
          return;
        }
        const clean = await cleanPicture(path, bytes, facts.mtime, options);
        // One after the other from here, in the order of the files: of two that are alike, the first is taken.
        await before;
        if (result.full) return;
        const twin = journal.entries.get(sum);
        if (twin) {
          result.same.push({ original, as: twin.name });
          return;
        }
        await decide(path, sum, clean, others, { ...options, disk }, result);
      } catch (error) {
        if (isFull(error)) result.full = true;
        else result.failed.push({ original, why: inWords(error) });
      } finally {
        await before;
        settled();
        done += 1;
        options.progress?.(done, pictures.length);
      }
    });
  } finally {
    sharp.concurrency(threads);
  }
  return result;
}

const isFull = (error: unknown): boolean =>
  error instanceof Error && 'code' in error && (error.code === 'ENOSPC' || error.code === 'EDQUOT');

interface Other {
  name: string;
  likeness: string;
}

async function decide(
  path: string,
  sum: string,
  clean: Clean,
  others: Other[],
  { chapter, scratch, journal, disk }: TakeInOptions & { disk: Disk },
  result: TakenIn,
): Promise<void> {
  const { jpeg, small, takenAt, width, height } = clean;
  const entry: Entry = {
    hash: sum,
    state: 'writing',
    name: freeName(chapter, nameByTime(takenAt)),
    original: basename(path),
    likeness: clean.likeness,
    takenAt,
    width,
    height,
  };
  const part = await waiting(scratch, jpeg, disk);
  try {
    await disk.write(join(scratch, `${sum}.small.jpg`), small);
    const near = others.find((one) => difference(one.likeness, clean.likeness) <= NEARLY);
    if (near) {
      await settle(part, join(scratch, `${sum}.jpg`));
      const waits: Entry = { ...entry, state: 'near', near: near.name };
      await journal.add(waits);
      result.near.push(waits);
      return;
    }
    const taken = await settleByTime(part, entry, chapter, journal);
    others.push(taken);
    result.taken.push(taken);
  } finally {
    await rm(part, { force: true });
  }
}

/** Gives a waiting file the first free name of its second. */
async function settleByTime(part: string, entry: Entry, chapter: string, journal: Journal): Promise<Entry> {
  for (;;) {
    const name = freeName(chapter, nameByTime(entry.takenAt));
    await journal.add({ ...entry, state: 'writing', name });
    if (!(await settle(part, join(chapter, name)))) continue;
    const taken: Entry = { ...entry, state: 'taken', name };
    await journal.add(taken);
    return taken;
  }
}

/** A waiting near picture: into the chapter after all, or left out for good. The original stays where it is either way. */
export async function answerNear(
  entry: Entry,
  wanted: boolean,
  { chapter, scratch, journal }: Pick<TakeInOptions, 'chapter' | 'scratch' | 'journal'>,
): Promise<Entry> {
  const part = join(scratch, `${entry.hash}.jpg`);
  if (wanted && existsSync(part)) return settleByTime(part, entry, chapter, journal);
  const left: Entry = { ...entry, state: 'left' };
  await journal.add(left);
  return left;
}

function freeName(folder: string, stem: string): string {
  for (let count = 1; ; count += 1) {
    const name = count === 1 ? `${stem}.jpg` : `${stem}-${count}.jpg`;
    if (!existsSync(join(folder, name))) return name;
  }
}

/** Pictures in the chapter's folder and how each looks, for finding those that are nearly the same. */
async function alreadyThere(folder: string, journal: Journal): Promise<Other[]> {
  const known = new Map(journal.inFolder().map((one) => [one.name, one]));
  const names = (await readdir(folder)).filter((name) => PICTURE.test(name));
  const others = await inTurn(names, availableParallelism(), async (name): Promise<Other | undefined> => {
    const entry = known.get(name);
    if (entry) return { name, likeness: entry.likeness };
    try {
      const { picture } = await openPicture(join(folder, name));
      const small = await picture
        .resize(360, 360, { fit: 'inside', withoutEnlargement: true })
        .png({ compressionLevel: 0 })
        .toBuffer();
      return { name, likeness: await likeness(sharp(small)) };
    } catch {
      return undefined; // The check tells what is wrong with it.
    }
  });
  return others.filter((one) => one !== undefined);
}
