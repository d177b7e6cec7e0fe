import { readdir } from 'node:fs/promises';
import { extname, join, relative } from 'node:path';

const ENDINGS = new Set(['.jpg', '.jpeg', '.png', '.webp', '.tif', '.tiff', '.heic', '.heif', '.avif']);

export interface Found {
  /** Absolute paths of what is named like a picture, in the order of names: "IMG_9" before "IMG_10". */
  pictures: string[];
  /** Other files, as paths from the folder; they are left alone. */
  others: string[];
}

/** Everything below a folder; hidden files and folders are passed over. */
export async function findPictures(folder: string): Promise<Found> {
  const entries = await readdir(folder, { recursive: true, withFileTypes: true });
  const paths = entries
    .filter((one) => one.isFile())
    .map((one) => join(one.parentPath, one.name))
    .filter(
      (path) =>
        !relative(folder, path)
          .split(/[\\/]/)
          .some((part) => part.startsWith('.')),
    )
    .sort(new Intl.Collator('en', { numeric: true }).compare);
  const isPicture = (path: string) => ENDINGS.has(extname(path).toLowerCase());
  return {
    pictures: paths.filter(isPicture),
    others: paths.filter((path) => !isPicture(path)).map((path) => relative(folder, path)),
  };
}
