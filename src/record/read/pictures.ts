import { readFileSync, statSync } from 'node:fs';
import { basename, extname, join, relative, sep } from 'node:path';
import type { Place } from '../problem.ts';
import type { Report } from '../report-to.ts';
import { meant, shown } from '../text/words.ts';

export interface Picture {
  path: string;
  /** As seen, after the orientation that the camera noted. */
  width: number;
  height: number;
}

interface Facts extends Picture {
  stamp: string;
  format: string;
  wrong?: string;
}

/** File endings by the format that the bytes show. */
const ENDINGS: Record<string, readonly string[]> = {
  jpeg: ['.jpg', '.jpeg'],
  png: ['.png'],
  webp: ['.webp'],
  heif: ['.heic', '.heif', '.avif'],
  tiff: ['.tif', '.tiff'],
  gif: ['.gif'],
  svg: ['.svg'],
};

/** Sizes of pictures, looked up again only where a file changed. */
export class PictureStore {
  readonly #maxPixels: number;
  readonly #known = new Map<string, Facts>();

  constructor(maxPixels: number) {
    this.#maxPixels = maxPixels;
  }

  /**
   * The picture that `src` of a chapter means. It must lie in the chapter's folder. Undefined, with its problem told, where
   * it is missing, is no picture, or is of another kind than its ending says.
   */
  async find(
    src: string,
    folder: string,
    names: readonly string[],
    place: Place,
    report: Report,
    drawn: boolean,
  ): Promise<Picture | undefined> {
    const no = (message: string) => report.add('chapters/picture', place, message);
    if (/^[a-z][a-z\d+.-]*:|^\/\//i.test(src))
      return no(
        `${shown(src)} is an address on the web. Put the picture beside the chapter and write "./name.jpg".`,
      );
    const path = join(folder, src.replace(/^\.\//, ''));
    const inside = relative(folder, path);
    if (src.startsWith('/') || inside.startsWith('..') || inside === '')
      return no(
        `${shown(src)} lies outside the chapter's folder. Put the picture beside the chapter and write "./name.jpg".`,
      );
    const ending = extname(path).toLowerCase();
    const right = Object.entries(ENDINGS).filter(([format]) => drawn || format !== 'svg');
    if (!right.some(([, endings]) => endings.includes(ending)))
      return no(
        `${shown(src)} does not end as a picture does. Use .jpg, .png, .webp, .heic or .avif${drawn ? ', or .svg' : ''}.`,
      );
    const facts = statSync(path, { bigint: true, throwIfNoEntry: false });
    if (!facts?.isFile()) {
      const pictures = names.filter((name) =>
        right.some(([, endings]) => endings.includes(extname(name).toLowerCase())),
      );
      return no(
        `There is no picture ${shown(src)}. ${meant(basename(src), inside.includes(sep) ? [] : pictures, 'The chapter’s folder holds none.')}`,
      );
    }
    const stamp = `${facts.mtimeNs} ${facts.size}`;
    let known = this.#known.get(path);
    if (known?.stamp !== stamp) {
      known = await this.#look(path, stamp);
      this.#known.set(path, known);
    }
    if (known.wrong !== undefined) return no(`${shown(src)} ${known.wrong}`);
    const endings = ENDINGS[known.format];
    if (!endings?.includes(ending))
      return no(
        `${shown(src)} is a picture of the kind ${known.format}, not ${ending}. Name it "${basename(src, extname(src))}${endings?.[0] ?? ''}".`,
      );
    return { path, width: known.width, height: known.height };
  }

  async #look(path: string, stamp: string): Promise<Facts> {
    const facts = { path, stamp, width: 0, height: 0, format: '' };
    if (statSync(path).size === 0) return { ...facts, wrong: 'is empty. Copy the picture again.' };
    if (path.toLowerCase().endsWith('.svg')) {
      const svg = /<svg\b/i.test(readFileSync(path, 'utf8').slice(0, 4000));
      if (svg) return { ...facts, format: 'svg' };
    }
    try {
      const { default: sharp } = await import('sharp');
      const { autoOrient, format, width, height } = await sharp(path, { limitInputPixels: false }).metadata();
      if (width * height > this.#maxPixels)
        return {
          ...facts,
          wrong: `has ${width} × ${height} pixels, more than ${this.#maxPixels}. Make it smaller.`,
        };
      return { ...facts, format, width: autoOrient.width, height: autoOrient.height };
    } catch {
      return { ...facts, wrong: 'is no picture that can be read. Export it again as JPEG.' };
    }
  }
}
