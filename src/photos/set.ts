/** A picture as a page shows it. Addresses lie below the site's base: the component puts the base in front. */
export interface PhotoSet {
  /** Of the largest size made, in pixels. */
  width: number;
  height: number;
  /** Best format first, for `<source>`. */
  sources: { type: string; srcset: string; sizes?: string }[];
  fallback: { src: string; width: number; height: number };
}

const SETS = Symbol.for('oilway.photos');
const shared = globalThis as { [SETS]?: ReadonlyMap<string, PhotoSet> };

/** Hands the pictures to the pages, which are built from another copy of this module in the same process. */
export function setPhotoSets({ sets }: { sets: ReadonlyMap<string, PhotoSet> }): void {
  shared[SETS] = sets;
}

/**
 * The sizes made of an original, by its absolute path.
 * @throws {Error} nothing was made of it: its problem was listed before the pages were built.
 */
export function photoSet(path: string): PhotoSet {
  const set = shared[SETS]?.get(path);
  if (!set) throw new Error(`No sizes were made of the picture ${path}. Its problem is in the list above.`);
  return set;
}
