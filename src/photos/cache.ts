/** The folder of pictures made before: a picture is made again only where its original, its masks or the settings changed. */
import { randomUUID } from 'node:crypto';
import { mkdir, readdir, readFile, rename, rm, stat, writeFile } from 'node:fs/promises';
import { join } from 'node:path';

/** One made file. */
export interface Made {
  /** "3f9c21d08a41b7e6-800.avif" */
  name: string;
  type: 'image/avif' | 'image/jpeg';
  width: number;
  height: number;
}

interface Seen {
  size: number;
  changed_ms: number;
  hash: string;
}

const INDEX = 'index.json';
const STALE_ms = 10 * 60_000;

/** Writes beside the target and renames, so that a killed process leaves no half file under a real name. */
export async function writeWhole(path: string, data: string | Uint8Array): Promise<void> {
  const part = `${path}.${randomUUID().slice(0, 8)}.part`;
  try {
    await writeFile(part, data);
    await rename(part, path);
  } catch (error) {
    await rm(part, { force: true });
    throw error;
  }
}

export class PhotoCache {
  readonly folder: string;
  readonly #names: Set<string>;
  readonly #seen: Map<string, Seen>;
  #changed = false;

  private constructor(folder: string, names: Set<string>, seen: Map<string, Seen>) {
    this.folder = folder;
    this.#names = names;
    this.#seen = seen;
  }

  static async open(folder: string): Promise<PhotoCache> {
    await mkdir(folder, { recursive: true });
    const names = new Set(await readdir(folder));
    await Promise.all([...names].filter((name) => name.endsWith('.part')).map((name) => sweep(folder, name)));
    let seen: [string, Seen][] = [];
    try {
      seen = JSON.parse(await readFile(join(folder, INDEX), 'utf8'));
    } catch {
      // No index, or a broken one: every original is read again, which costs time and nothing else.
    }
    return new PhotoCache(folder, names, new Map(Array.isArray(seen) ? seen : []));
  }

  /** The original's hash, if the file looks untouched since it was last read. */
  known(path: string, facts: { size: number; mtimeMs: number }): string | undefined {
    const seen = this.#seen.get(path);
    return seen?.size === facts.size && seen.changed_ms === facts.mtimeMs ? seen.hash : undefined;
  }

  remember(path: string, facts: { size: number; mtimeMs: number }, hash: string): void {
    this.#seen.set(path, { size: facts.size, changed_ms: facts.mtimeMs, hash });
    this.#changed = true;
  }

  /** What was made under this key, if its list and all of its files are there. */
  async find(key: string): Promise<Made[] | undefined> {
    const list = `${key}.json`;
    if (!this.#names.has(list)) return undefined;
    try {
      const made: Made[] = JSON.parse(await readFile(join(this.folder, list), 'utf8'));
      return made.length > 0 && made.every(({ name }) => this.#names.has(name)) ? made : undefined;
    } catch {
      return undefined;
    }
  }

  async keep(name: string, data: Uint8Array): Promise<void> {
    await writeWhole(join(this.folder, name), data);
    this.#names.add(name);
  }

  /** Last of a picture's files: from now on it counts as made. */
  async close(key: string, made: readonly Made[]): Promise<void> {
    await this.keep(`${key}.json`, Buffer.from(JSON.stringify(made)));
  }

  async save(): Promise<void> {
    if (this.#changed) await writeWhole(join(this.folder, INDEX), JSON.stringify([...this.#seen]));
  }
}

/** Parts left by a process that was killed; a younger one may belong to a process at work. */
async function sweep(folder: string, name: string): Promise<void> {
  const path = join(folder, name);
  const facts = await stat(path).catch(() => undefined);
  if (facts && Date.now() - facts.mtimeMs > STALE_ms) await rm(path, { force: true });
}
