/** What the write-up does to the disk, one action at a time, and what a disk refuses, in words. */
import { existsSync } from 'node:fs';
import { link, mkdir, rename, rm, writeFile } from 'node:fs/promises';

/** The few things done to the disk; a test hands in one that fails. */
export interface Disk {
  makeFolder(path: string): Promise<void>;
  /** Makes a new file. */
  write(path: string, text: string): Promise<void>;
  /** Puts a file or folder in its place, over what is there. */
  rename(from: string, to: string): Promise<void>;
  /** Puts a file in its place, where there must be none. */
  place(from: string, to: string): Promise<void>;
  remove(path: string): Promise<void>;
}

export const DISK: Disk = {
  async makeFolder(path) {
    await mkdir(path, { recursive: true });
  },
  write: (path, text) => writeFile(path, text, { flag: 'wx' }),
  rename,
  async place(from, to) {
    try {
      await link(from, to);
    } catch (error) {
      // Some file systems know no links.
      if (codeOf(error) === 'EEXIST' || existsSync(to)) throw error;
      await rename(from, to);
      return;
    }
    await rm(from, { force: true });
  },
  remove: (path) => rm(path, { recursive: true, force: true }),
};

/** A file that could not be written, and why in words. */
export class NotWritten extends Error {
  readonly path: string;
  constructor(path: string, why: string) {
    super(why);
    this.path = path;
  }
}

export const codeOf = (error: unknown): string | undefined =>
  error instanceof Error && 'code' in error ? String(error.code) : undefined;

const WHY: Readonly<Record<string, string>> = {
  ENOSPC: 'the disk is full',
  EDQUOT: 'your share of the disk is used up',
  EROFS: 'the disk may only be read',
  EACCES: 'it may not be written to',
  EPERM: 'it may not be written to',
  EEXIST: 'another program made it meanwhile',
};

/** @throws {NotWritten} for what a disk refuses; anything else is thrown as it is. */
export async function told<T>(path: string, work: () => Promise<T>): Promise<T> {
  try {
    return await work();
  } catch (error) {
    const code = codeOf(error);
    if (code === undefined || error instanceof NotWritten) throw error;
    throw new NotWritten(path, WHY[code] ?? code);
  }
}
