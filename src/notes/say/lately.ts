/** What was made of the texts that were asked for last: titles and names are looked at again and again. */
export class Lately<T> {
  readonly #kept = new Map<string, T>();
  readonly #most: number;

  constructor(most: number) {
    this.#most = most;
  }

  of(text: string, make: (text: string) => T): T {
    const known = this.#kept.get(text);
    if (known !== undefined) return known;
    const made = make(text);
    if (this.#kept.size >= this.#most) {
      const [oldest] = this.#kept.keys();
      if (oldest !== undefined) this.#kept.delete(oldest);
    }
    this.#kept.set(text, made);
    return made;
  }
}
