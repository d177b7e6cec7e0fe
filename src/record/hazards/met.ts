/** What the text at hand has of the rules' words. One is kept for all texts, since making it anew would cost more than the reading. */
import type { Token } from './language.ts';
import type { Rules } from './rules.ts';

export class Met {
  readonly #rules: Rules;
  /** Number of the text at hand. What was noted with the number of another counts for nothing. */
  #text = 0;
  #tokens: readonly Token[] = [];
  /** Terms met that begin a rule, in the order in which the text meets them. */
  #begun: number[] = [];
  readonly #textOfAtom: Uint32Array;
  /** 1 for each term that the text has. */
  readonly #terms: Uint8Array;
  /** Where an atom stands, as a chain: its first and its last note, and of each note the token and the next one. */
  readonly #firstNote: Int32Array;
  readonly #lastNote: Int32Array;
  #notedAt: number[] = [];
  #nextNote: number[] = [];
  /** Where a term stands, once a rule has asked. */
  #places = new Map<number, readonly number[]>();

  constructor(rules: Rules) {
    this.#rules = rules;
    this.#textOfAtom = new Uint32Array(rules.termsOfAtom.starts.length - 1);
    this.#firstNote = new Int32Array(this.#textOfAtom.length);
    this.#lastNote = new Int32Array(this.#textOfAtom.length);
    this.#terms = new Uint8Array(rules.beginsAt.length - 1);
  }

  startText(tokens: readonly Token[]): void {
    this.#text += 1;
    this.#tokens = tokens;
    this.#begun = [];
    this.#notedAt = [];
    this.#nextNote = [];
    this.#places.clear();
    this.#terms.fill(0);
  }

  get begun(): readonly number[] {
    return this.#begun;
  }

  /** Notes that an atom stands at token i. */
  note(atom: number, i: number): void {
    const note = this.#notedAt.push(i) - 1;
    this.#nextNote.push(-1);
    const isKnown = this.#textOfAtom[atom] === this.#text;
    if (isKnown) this.#nextNote[this.#lastNote[atom] ?? 0] = note;
    this.#lastNote[atom] = note;
    if (isKnown) return;
    this.#textOfAtom[atom] = this.#text;
    this.#firstNote[atom] = note;
    const { firstsOfAtom, termsOfAtom } = this.#rules;
    const firsts = firstsOfAtom.starts[atom + 1] ?? 0;
    for (let k = firstsOfAtom.starts[atom] ?? firsts; k < firsts; k++) {
      const term = firstsOfAtom.numbers[k] ?? 0;
      if (this.#terms[term] === 0) this.#begun.push(term);
      this.#terms[term] = 1;
    }
    const end = termsOfAtom.starts[atom + 1] ?? 0;
    for (let k = termsOfAtom.starts[atom] ?? end; k < end; k++) this.#terms[termsOfAtom.numbers[k] ?? 0] = 1;
  }

  /** Whether all that a rule needs stands in the text, near or far. */
  hasNeedsOf(rule: number): boolean {
    const { starts, numbers } = this.#rules.needsOfRule;
    const end = starts[rule + 1] ?? 0;
    for (let k = starts[rule] ?? end; k < end; k++) if (this.#terms[numbers[k] ?? 0] === 0) return false;
    return true;
  }

  /** Tokens at which a term stands, rising. */
  placesOf(term: number): readonly number[] {
    const known = this.#places.get(term);
    if (known !== undefined) return known;
    const places: number[] = [];
    let atomsMet = 0;
    const { starts, numbers } = this.#rules.atomsOfTerm;
    const end = starts[term + 1] ?? 0;
    for (let k = starts[term] ?? end; k < end; k++) {
      const atom = numbers[k] ?? 0;
      if (this.#textOfAtom[atom] !== this.#text) continue;
      atomsMet += 1;
      for (let note = this.#firstNote[atom] ?? -1; note >= 0; note = this.#nextNote[note] ?? -1)
        places.push(this.#notedAt[note] ?? 0);
    }
    if (atomsMet > 1) places.sort((a, b) => a - b);
    this.#places.set(term, places);
    return places;
  }

  /** The token nearest to token i at which a term stands, within the window and other than i; -1 where there is none. */
  nearest(term: number, i: number, window: number): number {
    const here = this.#tokens[i]?.at ?? 0;
    let best = -1;
    let gap = window + 1;
    for (const j of this.placesOf(term)) {
      const apart = Math.abs((this.#tokens[j]?.at ?? 0) - here);
      if (j !== i && apart < gap) {
        best = j;
        gap = apart;
      }
    }
    return best;
  }
}
