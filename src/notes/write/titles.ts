/** Titles that a chapter has, and new ones told apart from them. */

/** How a title is told from others: its letters and figures alone, as in an address. */
export const keyOf = (title: string): string =>
  title
    .toLowerCase()
    .replace(/[^\p{L}\p{N}]+/gu, '-')
    .replace(/^-+|-+$/g, '');

export class Titles {
  readonly #taken = new Set<string>();
  /** The number to try next for a title that is asked for again: a long recording asks a thousand times. */
  readonly #next = new Map<string, number>();

  constructor(taken: Iterable<string> = []) {
    for (const title of taken) this.#taken.add(keyOf(title));
  }

  /** The title, with a number behind it where it is taken. */
  unique(title: string): string {
    let one = title;
    let n = this.#next.get(keyOf(title)) ?? 2;
    for (; this.#taken.has(keyOf(one)); n++) one = `${title} (${n})`;
    this.#next.set(keyOf(title), n);
    this.#taken.add(keyOf(one));
    return one;
  }
}
