/** The rules of the tagger's model, by which neighbours change a word's part of speech, as a table that is walked word by word. */

/** A machine of the model as it is stored: next states by state and event, what each last state gives, and to which of its words. */
type Stored = readonly [
  unknown,
  unknown,
  Readonly<Record<string, Readonly<Record<string, number>>>>,
  Readonly<Record<string, string>>,
  Readonly<Record<string, readonly [number, number]>>,
];

/** The event of a text's end, and the one of a word for which a state has no way on. */
const END = 2_070_000;
const OTHERWISE = 2_070_003;

export class Rules {
  /** Column of each event; those that no rule knows have the first. */
  readonly #columns = new Map<number, number>();
  readonly #width: number;
  /** Next state by state and column; the state that counts where there is no way on; 0 for none. */
  readonly #next: Int16Array;
  readonly #otherwise: Int16Array;
  /** What a state gives: a part of speech, below 0 where the word need not be able to have it; and how far behind the first word. */
  readonly #gives: Int16Array;
  readonly #behind: Int16Array;
  readonly #last: Uint8Array;

  constructor(json: string) {
    const [, , ways, gives, marks] = JSON.parse(json) as Stored;
    const states = 1 + Math.max(...Object.keys({ ...ways, ...gives }).map(Number));
    for (const way of Object.values(ways))
      for (const event of Object.keys(way).map(Number))
        if (!this.#columns.has(event)) this.#columns.set(event, this.#columns.size + 1);
    this.#width = this.#columns.size + 1;
    this.#next = new Int16Array(states * this.#width);
    this.#otherwise = new Int16Array(states);
    this.#gives = new Int16Array(states);
    this.#behind = new Int16Array(states);
    this.#last = new Uint8Array(states);
    for (const [state, way] of Object.entries(ways))
      for (const [event, next] of Object.entries(way))
        if (Number(event) === OTHERWISE) this.#otherwise[Number(state)] = next;
        else this.#next[Number(state) * this.#width + this.column(Number(event))] = next;
    for (const [state, given] of Object.entries(gives)) {
      this.#last[Number(state)] = 1;
      this.#gives[Number(state)] = Number(given);
      this.#behind[Number(state)] = marks[state]?.[0] ?? 0;
    }
  }

  column(event: number): number {
    return this.#columns.get(event) ?? 0;
  }

  /**
   * Calls `give` with each word that a rule changes, and what it becomes. The longest run that meets a rule counts, and the next
   * one begins behind it.
   * @param seen column of each word's event
   */
  apply(seen: readonly number[], give: (at: number, pos: number) => void): void {
    const count = seen.length;
    const end = this.column(END);
    let state = 0;
    let first = 0;
    /** A shorter run that meets a rule, should the longer one fail. */
    let spare = 0;
    let spareAt = 0;
    const met = (by: number): void => {
      const pos = this.#gives[by] ?? 0;
      if (pos !== 0) give(first + (this.#behind[by] ?? 0), pos);
    };
    for (let from = 0; from <= count; from++) {
      for (let at = from; at <= count; at++) {
        const next = this.#next[state * this.#width + (at === count ? end : (seen[at] ?? 0))] ?? 0;
        if (state === 0 && next !== 0) first = at;
        state = next;
        if (this.#last[next] === 1) {
          met(next);
          from = at;
          state = 0;
          spare = 0;
          break;
        }
        if (next === 0) {
          if (spare !== 0) {
            met(spare);
            from = spareAt;
            spare = 0;
          }
          break;
        }
        const otherwise = this.#otherwise[next] ?? 0;
        if (otherwise !== 0) {
          spare = otherwise;
          spareAt = at;
        }
      }
    }
  }
}
