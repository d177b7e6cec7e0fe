import { existsSync } from 'node:fs';
import { mkdir, readdir, rm } from 'node:fs/promises';
import { availableParallelism } from 'node:os';
import { basename, join } from 'node:path';
import { performance } from 'node:perf_hooks';
import sharp from 'sharp';
import { QUALITY, SMALL } from '../../photos/import/clean.ts';
import { findPictures } from '../../photos/import/find-pictures.ts';
import { Journal } from '../../photos/import/journal.ts';
import { takeIn } from '../../photos/import/take-in.ts';
import { inTurn } from '../../photos/in-turn.ts';
import type { Io } from '../command.ts';

const COUNT = 200;
const LONGEST_px = 2400;

async function taken(work: () => Promise<unknown>): Promise<number> {
  const started = performance.now();
  await work();
  return performance.now() - started;
}

/** Twelve-megapixel photos of noise over soft shapes, no two alike, made once. */
async function makePhotos(folder: string): Promise<string[]> {
  await mkdir(folder, { recursive: true });
  await inTurn(Array.from({ length: COUNT }), availableParallelism(), async (_, at) => {
    const path = join(folder, `${at}.jpg`);
    if (existsSync(path)) return;
    const noise = (width: number, sigma: number) =>
      sharp({
        create: {
          width,
          height: (width * 3) / 4,
          channels: 3,
          background: '#888',
          noise: { type: 'gaussian', mean: 128, sigma },
        },
      })
        .png({ compressionLevel: 1 })
        .toBuffer();
    const soft = sharp(await noise(24, 60)).resize(1008, 756);
    const grained = soft.composite([{ input: await noise(1008, 12), blend: 'soft-light' }]);
    const small = await grained.png({ compressionLevel: 1 }).toBuffer();
    const time = new Date(Date.UTC(2026, 2, 7, 10, 0, at)).toISOString().slice(0, 19);
    await sharp(small)
      .resize(4032, 3024)
      .withExif({ IFD2: { DateTimeOriginal: time.replaceAll('-', ':').replace('T', ' ') } })
      .jpeg({ quality: 88 })
      .toFile(path);
  });
  return (await findPictures(folder)).pictures;
}

/** The same two pictures of each original by sharp alone, a picture a core. */
async function sharpAlone(paths: readonly string[], out: string): Promise<void> {
  await mkdir(out, { recursive: true });
  sharp.concurrency(1);
  await inTurn(paths, availableParallelism(), async (path) => {
    const sized = (px: number) => sharp(path).autoOrient().resize({ width: px, height: px, fit: 'inside' });
    await sized(LONGEST_px)
      .jpeg({ quality: QUALITY })
      .toFile(join(out, basename(path)));
    await sized(SMALL.px)
      .jpeg({ quality: SMALL.quality })
      .toFile(join(out, `small-${basename(path)}`));
  });
}

export async function measure(io: Io) {
  const folder = join(io.root, '.oilway', 'bench', 'taken-in');
  const photos = await makePhotos(join(folder, 'camera'));
  const fresh = async (name: string) => {
    await rm(join(folder, name), { recursive: true, force: true });
    await mkdir(join(folder, name), { recursive: true });
    return join(folder, name);
  };
  const alone_ms = await taken(async () => sharpAlone(photos, await fresh('alone')));
  const chapter = await fresh('chapter');
  const scratch = await fresh('scratch');
  const run = async () =>
    takeIn(photos, {
      chapter,
      scratch,
      journal: await Journal.open(join(scratch, 'journal.jsonl'), chapter),
      longest_px: LONGEST_px,
      clock_s: 0,
    });
  const taken_ms = await taken(run);
  const again_ms = await taken(run);
  const count = (await readdir(chapter)).length;
  // The made photos stay for the next run; making them takes longer than taking them in.
  for (const name of ['alone', 'chapter', 'scratch'])
    await rm(join(folder, name), { recursive: true, force: true });
  const seconds = (ms: number) => (ms / 1000).toFixed(1);
  return {
    lines: [
      `${count} of ${photos.length} photos of 12 megapixels taken in in ${seconds(taken_ms)} s, sharp alone ${seconds(alone_ms)} s: ${(taken_ms / alone_ms).toFixed(2)} times (budget 1.3)`,
      `the same folder again ${seconds(again_ms)} s`,
    ],
  };
}
