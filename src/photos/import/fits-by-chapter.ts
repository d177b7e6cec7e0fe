import { readFile, stat } from 'node:fs/promises';
import { availableParallelism } from 'node:os';
import { basename } from 'node:path';
import sharp from 'sharp';
import { inTurn } from '../in-turn.ts';
import { chapterThatFits, type FitChapter } from './fitting.ts';
import { type TakenAt, takenAt } from './taken-at.ts';

export interface Fit {
  chapter: FitChapter;
  /** File names, with the day of each. */
  pictures: { original: string; takenAt: TakenAt }[];
}

/** Pictures by the chapter that their day fits, in the order of chapters. Reads no more than what the camera noted. */
export async function fitsByChapter(
  pictures: readonly string[],
  chapters: readonly FitChapter[],
  clock_s: number,
): Promise<Fit[]> {
  const times = await inTurn(pictures, availableParallelism(), async (path) => {
    const written = (await stat(path)).mtime;
    const exif = await sharp(await readFile(path))
      .metadata()
      .then(({ exif }) => exif)
      .catch(() => undefined);
    return { original: basename(path), takenAt: takenAt(exif, written, clock_s) };
  });
  const fits = new Map<string, Fit>();
  for (const picture of times) {
    const chapter = chapterThatFits(picture.takenAt.wall, chapters);
    if (!chapter) continue;
    const fit = fits.get(chapter.id) ?? { chapter, pictures: [] };
    fit.pictures.push(picture);
    fits.set(chapter.id, fit);
  }
  return [...fits.values()].sort((a, b) => a.chapter.number - b.chapter.number);
}
