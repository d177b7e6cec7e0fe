import { randomUUID } from 'node:crypto';
import { existsSync } from 'node:fs';
import { link, mkdir, readdir, rename, rm, writeFile } from 'node:fs/promises';
import { join } from 'node:path';

/** Writing as it is done to the disk; a test hands in a full one. */
export interface Disk {
  write(path: string, data: Uint8Array | string): Promise<void>;
}
export const DISK: Disk = { write: (path, data) => writeFile(path, data) };

/** Whole in a waiting place first; gives its path there. */
export async function waiting(folder: string, data: Uint8Array, disk: Disk): Promise<string> {
  await mkdir(folder, { recursive: true });
  const part = join(folder, `${randomUUID()}.part`);
  try {
    await disk.write(part, data);
  } catch (error) {
    await rm(part, { force: true });
    throw error;
  }
  return part;
}

/** Gives a waiting file its name, whole or not at all; false where the name is taken. */
export async function settle(part: string, target: string): Promise<boolean> {
  try {
    await link(part, target);
  } catch (error) {
    const code = error instanceof Error && 'code' in error ? error.code : undefined;
    if (code === 'EEXIST') return false;
    // A file system without links: rename, which is as whole, after looking.
    if (code !== 'EPERM' && code !== 'ENOTSUP' && code !== 'EXDEV') throw error;
    if (existsSync(target)) return false;
    await rename(part, target);
    return true;
  }
  await rm(part);
  return true;
}

/** Removes what a killed process left waiting. */
export async function clearWaiting(folder: string): Promise<void> {
  const names = await readdir(folder).catch(() => []);
  await Promise.all(
    names.filter((name) => name.endsWith('.part')).map((name) => rm(join(folder, name), { force: true })),
  );
}
