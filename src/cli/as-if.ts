import { copyFile, mkdir, mkdtemp, readdir, rm, symlink, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { dirname, join, relative } from 'node:path';
import { type Reading, readSeries } from '../record/read-series.ts';

/** Texts to come, by their path in the author's folder: "faults/front-brake-drags.md". */
export type Changes = ReadonlyMap<string, string>;

/**
 * Reads and checks the series as it would be with some files changed, and touches nothing of the author's: what is unchanged
 * is linked to, in a folder that is gone afterwards. Problems name files as they would in the author's own folder.
 */
export async function readAsIf(folder: string, root: string, changes: Changes): Promise<Reading> {
  const made = await mkdtemp(join(tmpdir(), 'oilway-'));
  try {
    const content = join(made, relative(root, folder));
    await lay(folder, content, changes);
    return await readSeries(content, { root: made });
  } finally {
    await rm(made, { recursive: true, force: true });
  }
}

async function lay(from: string, to: string, changes: Changes): Promise<void> {
  await mkdir(to, { recursive: true });
  const inner = Map.groupBy(changes, ([path]) => path.split('/')[0] ?? '');
  const entries = await readdir(from, { withFileTypes: true }).catch(() => []);
  for (const entry of entries) {
    const name = entry.name;
    if (!inner.has(name)) await link(join(from, name), join(to, name), entry.isDirectory());
  }
  for (const [name, group] of inner) {
    const whole = changes.get(name);
    if (whole !== undefined) await writeFile(join(to, name), whole);
    else
      await lay(
        join(from, name),
        join(to, name),
        new Map(group.map(([path, text]) => [path.slice(name.length + 1), text])),
      );
  }
}

/** A link where the system allows one, else a copy of the file. */
async function link(from: string, to: string, folder: boolean): Promise<void> {
  try {
    await symlink(from, to, folder ? 'junction' : 'file');
  } catch (error) {
    if (folder) throw error;
    await mkdir(dirname(to), { recursive: true });
    await copyFile(from, to);
  }
}
