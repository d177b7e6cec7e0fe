import { mkdir, rm } from 'node:fs/promises';
import { availableParallelism } from 'node:os';
import { join } from 'node:path';
import { performance } from 'node:perf_hooks';
import sharp from 'sharp';
import { derivePhotos } from '../../photos/derive.ts';
import { inTurn } from '../../photos/in-turn.ts';
import { PUBLISHED } from '../../photos/settings.ts';
import { asPublished } from '../../record/publish.ts';
import { createReader } from '../../record/read-series.ts';
import type { Io } from '../command.ts';
import { originals } from '../site.ts';
import { median } from './timed.ts';

/** Milliseconds that some work takes. */
async function taken(work: () => Promise<unknown>): Promise<number> {
  const started = performance.now();
  await work();
  return performance.now() - started;
}

/** The same outputs by sharp alone, a picture a core: decoded for each size, as a plain script would. */
async function sharpAlone(paths: readonly string[], out: string): Promise<void> {
  await mkdir(out, { recursive: true });
  sharp.concurrency(1);
  await inTurn(paths, availableParallelism(), async (path) => {
    const name = join(out, path.replaceAll(/\W/g, '-'));
    for (const width of PUBLISHED.widths) {
      await sharp(path).autoOrient().resize({ width }).avif(PUBLISHED.avif).toFile(`${name}-${width}.avif`);
    }
    const { width, quality } = PUBLISHED.fallback;
    await sharp(path)
      .autoOrient()
      .resize({ width })
      .jpeg({ quality, mozjpeg: true })
      .toFile(`${name}-${width}.jpg`);
  });
}

const ROUNDS = 3;

export async function measure(io: Io) {
  const { series } = await createReader(join(io.root, 'content'), { root: io.root }).read();
  if (!series) return { lines: ['The demo cannot be read.'] };
  const paths = originals(asPublished(series)).map(({ path }) => path);
  const folder = join(io.root, '.oilway', 'bench', 'photos');
  const cold: number[] = [];
  const warm: number[] = [];
  const alone: number[] = [];
  for (let round = 0; round < ROUNDS; round += 1) {
    await rm(folder, { recursive: true, force: true });
    alone.push(await taken(() => sharpAlone(paths, join(folder, 'alone'))));
    cold.push(await taken(() => derivePhotos(paths, { cache: join(folder, 'cache') })));
    warm.push(await taken(() => derivePhotos(paths, { cache: join(folder, 'cache') })));
  }
  await rm(folder, { recursive: true, force: true });
  const [c, w, a] = [median(cold), median(warm), median(alone)];
  return {
    lines: [
      `${paths.length} photos, median of ${ROUNDS}: cold ${c.toFixed(0)} ms, sharp alone ${a.toFixed(0)} ms: ${(c / a).toFixed(2)} times (budget 1.3)`,
      `warm ${w.toFixed(0)} ms: ${((100 * w) / c).toFixed(1)} % of cold (budget 5 %)`,
    ],
  };
}
