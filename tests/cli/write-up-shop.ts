import {
  cpSync,
  existsSync,
  mkdirSync,
  mkdtempSync,
  readdirSync,
  readFileSync,
  rmSync,
  writeFileSync,
} from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { Readable, Writable } from 'node:stream';
import { fileURLToPath } from 'node:url';
import { main } from '../../src/cli/main.ts';
import type { Disk } from '../../src/cli/write-up-disk.ts';

const ROOT = fileURLToPath(new URL('../..', import.meta.url));
const BASE = join(ROOT, 'tests/series/_base/content');

/** An evening's notes, and the same when they have grown. */
export const NOTES =
  '# 14 march - tank\n\n- tank off, about 3 L of old petrol drained into the red can\n- tap weeps at the lever, leave it till spring\n- ordered: 2 cork seals 4.80 EUR\n- thanks to Berta for the compressor\n- measured the hose: 7.9 mm, min 7.5\n';
export const MORE = `${NOTES}- charged the battery at 2 A for six hours\n- horn dead, put off\n`;

/** A series in a folder of its own, with what a write-up needs handed in: a disk, somebody at the terminal. */
export function writeUpShop({ demo = false, notes = {} as Record<string, string> } = {}) {
  const root = mkdtempSync(join(tmpdir(), 'oilway-'));
  const content = join(root, 'content');
  cpSync(demo ? join(ROOT, 'content') : BASE, content, { recursive: true });
  mkdirSync(join(content, 'notes'), { recursive: true });
  const note = (name: string, text: string): string => {
    const path = join(content, 'notes', name);
    writeFileSync(path, text);
    return path;
  };
  const files = Object.entries(notes).map(([name, text]) => note(name, text));
  const chapters = join(content, 'chapters');
  const folder = (): string =>
    join(
      chapters,
      readdirSync(chapters).find((one) => existsSync(join(chapters, one, 'write-up.json'))) ?? 'none',
    );
  return {
    root,
    content,
    note,
    files,
    folder,
    path: (name: string) => join(folder(), name),
    read: (name: string) => readFileSync(join(folder(), name), 'utf8'),
    write: (name: string, text: string) => writeFileSync(join(folder(), name), text),
    async run(
      args: readonly string[],
      more: { disk?: Disk; terminal?: { input: Readable; output: Writable } } = {},
    ) {
      let out = '';
      let err = '';
      const code = await main(args, {
        root,
        out: (text) => {
          out += text;
        },
        err: (text) => {
          err += text;
        },
        interactive: more.terminal !== undefined,
        ...more,
      });
      return { code, out, err };
    },
    /** Every file below content/ with its text. */
    all(): Map<string, string> {
      const list = readdirSync(content, { recursive: true, withFileTypes: true }).filter((one) =>
        one.isFile(),
      );
      return new Map(
        list
          .map((one) => join(one.parentPath, one.name))
          .sort()
          .map((path) => [path.slice(content.length + 1), readFileSync(path, 'latin1')]),
      );
    },
    clear: () => rmSync(root, { recursive: true, force: true }),
  };
}

/** As the system's own error for a full disk. */
export class Full extends Error {
  readonly code = 'ENOSPC';
}

/** A disk whose nth action fails; `after` of a killed process do nothing. */
export function failing(real: Disk, at: number, how: 'full' | 'killed'): { disk: Disk; done: () => number } {
  let n = 0;
  let dead = false;
  const act =
    <A extends unknown[]>(
      work: (...args: A) => Promise<void>,
      counted: boolean,
      torn?: (...args: A) => Promise<void>,
    ) =>
    async (...args: A): Promise<void> => {
      if (dead) throw new Full('killed');
      if (counted || how === 'killed') n += 1;
      if (n === at && (counted || how === 'killed')) {
        n += 1;
        if (how === 'killed') dead = true;
        await torn?.(...args);
        throw how === 'killed' ? new Error('killed') : new Full('no space left');
      }
      await work(...args);
    };
  return {
    done: () => n,
    disk: {
      makeFolder: act(real.makeFolder, true),
      // Half of the text reaches the disk.
      write: act(real.write, true, (path, text) => real.write(path, text.slice(0, text.length / 2))),
      rename: act(real.rename, false),
      place: act(real.place, false),
      remove: act(real.remove, false),
    },
  };
}
