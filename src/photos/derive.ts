import { hash } from 'node:crypto';
import { readFile, stat } from 'node:fs/promises';
import { availableParallelism } from 'node:os';
import { join, relative, sep } from 'node:path';
import sharp from 'sharp';
import type { Problem } from '../record/problem.ts';
import { type Made, PhotoCache } from './cache.ts';
import { inTurn } from './in-turn.ts';
import type { Mask } from './mask.ts';
import { inWords, openPicture } from './open-picture.ts';
import type { PhotoSet } from './set.ts';
import { LIMITS, PUBLISHED } from './settings.ts';

export interface Original {
  /** Absolute. */
  path: string;
  /** Burnt into every size. */
  masks?: readonly Mask[];
}

export interface DerivedPhotos {
  /** By the original's absolute path; a picture with a problem has none. */
  sets: Map<string, PhotoSet>;
  /** What pages point at: the file in the cache, absolute, and its path below the site's root. */
  files: { file: string; path: string }[];
  /** One for each picture of which nothing could be made; the others were made all the same. */
  problems: Problem[];
  /** Pictures made now, and pictures found ready. */
  made: number;
  kept: number;
}

export interface DeriveOptions {
  /** Folder of pictures made before; absolute. */
  cache: string;
  /** Problems name files from here. */
  root?: string;
  /** Called after each picture. */
  progress?: (done: number, of: number) => void;
}

/** Half a key of SHA-256: 64 bits tell a million pictures apart. */
const keyOf = (original: string, masks: readonly Mask[]): string =>
  hash('sha256', JSON.stringify([original, masks, PUBLISHED])).slice(0, 16);

/**
 * Makes the published pictures of the originals: AVIF in the settings' widths and one JPEG, upright, sRGB, without any of
 * the original's metadata. Never larger than the original; originals are only read.
 */
export async function derivePhotos(
  originals: readonly (string | Original)[],
  { cache: folder, root = process.cwd(), progress }: DeriveOptions,
): Promise<DerivedPhotos> {
  const cache = await PhotoCache.open(folder);
  const wanted = together(originals);
  const sets = new Map<string, PhotoSet>();
  const files = new Set<string>();
  const problems: Problem[] = [];
  let kept = 0;
  let done = 0;
  const threads = sharp.concurrency();
  // One thread a picture and a picture a core: less waiting than one picture spread over all cores.
  sharp.concurrency(1);
  try {
    await inTurn(wanted, availableParallelism(), async ({ path, masks }) => {
      try {
        const { made, found } = await oneOriginal(path, masks, cache);
        if (found) kept += 1;
        sets.set(path, asSet(made));
        for (const { name } of made) files.add(name);
      } catch (error) {
        problems.push({
          file: relative(root, path).split(sep).join('/'),
          rule: 'chapters/picture',
          severity: 'error',
          message: `The picture ${inWords(error)}`,
        });
      }
      done += 1;
      progress?.(done, wanted.length);
    });
  } finally {
    sharp.concurrency(threads);
  }
  await cache.save();
  const copies = [...files].sort().map((name) => ({ file: join(folder, name), path: `photos/${name}` }));
  return { sets, files: copies, problems, made: sets.size - kept, kept };
}

/** One entry a file: where a picture is used twice with different masks, both are burnt in everywhere. */
function together(originals: readonly (string | Original)[]): { path: string; masks: Mask[] }[] {
  const byPath = new Map<string, Mask[]>();
  for (const one of originals) {
    const { path, masks = [] } = typeof one === 'string' ? { path: one } : one;
    byPath.set(path, [...(byPath.get(path) ?? []), ...masks]);
  }
  return [...byPath].map(([path, masks]) => ({ path, masks }));
}

async function oneOriginal(
  path: string,
  masks: readonly Mask[],
  cache: PhotoCache,
): Promise<{ made: Made[]; found: boolean }> {
  const facts = await stat(path);
  let original = cache.known(path, facts);
  let bytes: Buffer | undefined;
  if (original === undefined) {
    if (facts.size > 0 && facts.size <= LIMITS.bytes) bytes = await readFile(path);
    original = bytes ? hash('sha256', bytes) : '';
    if (bytes) cache.remember(path, facts, original);
  }
  const key = keyOf(original, masks);
  const found = await cache.find(key);
  if (found) return { made: found, found: true };
  const made = await encode(path, masks, bytes, key, cache);
  await cache.close(key, made);
  return { made, found: false };
}

async function encode(
  path: string,
  masks: readonly Mask[],
  bytes: Buffer | undefined,
  key: string,
  cache: PhotoCache,
): Promise<Made[]> {
  const { picture, width } = await openPicture(path, { masks, ...(bytes && { bytes }) });
  const widest = Math.min(width, Math.max(...PUBLISHED.widths));
  // Decoded once; every size is made from the largest one.
  const { data, info } = await picture
    .resize({ width: widest })
    .toColourspace('srgb')
    .raw()
    .toBuffer({ resolveWithObject: true });
  const raw = { width: info.width, height: info.height, channels: info.channels };
  const sized = (to: number) => {
    const from = sharp(data, { raw });
    return to < info.width ? from.resize({ width: to }) : from;
  };
  const made: Made[] = [];
  const keep = async (type: Made['type'], to: number, from: ReturnType<typeof sized>) => {
    const out = await from.toBuffer({ resolveWithObject: true });
    const name = `${key}-${to}.${type === 'image/avif' ? 'avif' : 'jpg'}`;
    await cache.keep(name, out.data);
    made.push({ name, type, width: out.info.width, height: out.info.height });
  };
  const widths = [...PUBLISHED.widths.filter((to) => to < widest), widest];
  for (const to of widths) await keep('image/avif', to, sized(to).avif(PUBLISHED.avif));
  const to = Math.min(PUBLISHED.fallback.width, widest);
  await keep('image/jpeg', to, sized(to).jpeg({ quality: PUBLISHED.fallback.quality, mozjpeg: true }));
  return made;
}

function asSet(made: readonly Made[]): PhotoSet {
  const avif = made.filter(({ type }) => type === 'image/avif');
  const largest = avif.at(-1);
  const jpeg = made.find(({ type }) => type === 'image/jpeg');
  if (!largest || !jpeg) throw new Error('A picture was made without its sizes; delete .oilway/photos.');
  return {
    width: largest.width,
    height: largest.height,
    sources: [
      {
        type: 'image/avif',
        srcset: avif.map(({ name, width }) => `photos/${name} ${width}w`).join(', '),
      },
    ],
    fallback: { src: `photos/${jpeg.name}`, width: jpeg.width, height: jpeg.height },
  };
}

/** The file in the cache that an address of the site means; undefined where it means no picture of ours. */
export function photoFile(address: string, { cache }: { cache: string }): string | undefined {
  const name = /(?:^|\/)photos\/([\da-f]{16}-\d{1,5}\.(?:avif|jpg))$/.exec(address)?.[1];
  return name === undefined ? undefined : join(cache, name);
}
