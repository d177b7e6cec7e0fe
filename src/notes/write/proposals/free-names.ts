/** Names of files that are taken, and the next that is free beside them. */
export class FreeNames {
  readonly #taken: Set<string>;
  /** The number to try next for a name that is asked for again: a long recording asks a thousand times. */
  readonly #next = new Map<string, number>();

  constructor(taken: Iterable<string> = []) {
    this.#taken = new Set(taken);
  }

  /** The name, with a number behind it where it is taken. */
  take(stem: string): string {
    let name = stem;
    let n = this.#next.get(stem) ?? 2;
    for (; this.#taken.has(name); n++) name = `${stem}-${n}`;
    this.#next.set(stem, n);
    this.#taken.add(name);
    return name;
  }
}
