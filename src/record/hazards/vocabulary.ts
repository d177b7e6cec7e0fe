/**
 * The words that rules and sayings name, and what each written form of them stands for. A form is worked out when a text first has it:
 * most forms of the vocabulary are never met.
 */
import { formsOf, possibleBasesOf } from './forms.ts';
import { isSkipped } from './language.ts';

/** The rest of a phrase that a rule names, in base words, and its atom. */
export interface Phrase {
  rest: readonly number[];
  atom: number;
}

/** What follows the first word, by the base of the second. */
type Second<T> = ReadonlyMap<number, readonly T[]>;

/** Everything that a written form can stand for. */
export interface Form {
  bases: readonly number[];
  /** Atoms that the form alone meets. */
  atoms: readonly number[];
  phrases: Second<Phrase>;
  sayings: Second<readonly number[]>;
  /** Whether it is a saying by itself. */
  isSaying: boolean;
  /** A bit for each of its bases; few bases share one, so that most pairs of words that make nothing are told apart at a glance. */
  bits: number;
  /** The bits of all that may come second. */
  phraseBits: number;
  sayingBits: number;
}

/** Words, phrases and figures that rules name are atoms, and words in their base form are bases; both are numbered as they are named. */
export class Vocabulary {
  readonly #atoms = new Map<string, number>();
  readonly #bases = new Map<string, number>();
  readonly #words: string[] = [];
  readonly #atomOfBase = new Map<number, number>();
  readonly #phrases = new Map<number, Map<number, Phrase[]>>();
  readonly #sayings = new Map<number, Map<number, (readonly number[])[]>>();
  readonly #sayingsOfOneWord = new Set<number>();
  readonly #basesOfForm = new Map<string, readonly number[]>();
  readonly #forms = new Map<string, Form | null>();

  get atomCount(): number {
    return this.#atoms.size;
  }

  /**
   * The atom of a word, a phrase or a figure ("#bar").
   * @throws {Error} where nothing, or one of several words, is left without the small words
   */
  atom(text: string): number {
    const known = this.#atoms.get(text);
    if (known !== undefined) return known;
    const atom = this.#atoms.size;
    this.#atoms.set(text, atom);
    if (text.startsWith('#')) return atom;
    const [first, ...rest] = this.#basesIn(text);
    if (rest.length === 0) this.#atomOfBase.set(first, atom);
    else add(this.#phrases, first, rest, { rest, atom });
    return atom;
  }

  /** @throws {Error} as atom() */
  addSaying(text: string): void {
    const [first, ...rest] = this.#basesIn(text);
    if (rest.length === 0) this.#sayingsOfOneWord.add(first);
    else add(this.#sayings, first, rest, rest);
  }

  /** The atom of a figure, where a rule asks for it. */
  figure(name: string): number | undefined {
    return this.#atoms.get(name);
  }

  /** What a written form stands for; null for a word that no rule and no saying names. */
  form(word: string): Form | null {
    const known = this.#forms.get(word);
    if (known !== undefined) return known;
    const form = this.#newForm(word);
    this.#forms.set(word, form);
    return form;
  }

  #newForm(word: string): Form | null {
    const bases = this.#basesOf(word);
    const joined = this.#joined(word);
    if (bases.length + joined.length === 0) return null;
    const single = bases.map((base) => this.#atomOfBase.get(base)).filter((atom) => atom !== undefined);
    const phrases = merged(this.#phrases, bases);
    const sayings = merged(this.#sayings, bases);
    return {
      bases,
      atoms: [...new Set([...single, ...joined])],
      phrases,
      sayings,
      isSaying: bases.some((base) => this.#sayingsOfOneWord.has(base)),
      bits: bitsOf(bases),
      phraseBits: bitsOf(phrases.keys()),
      sayingBits: bitsOf(sayings.keys()),
    };
  }

  #base(word: string): number {
    const known = this.#bases.get(word);
    if (known !== undefined) return known;
    const base = this.#words.push(word) - 1;
    this.#bases.set(word, base);
    return base;
  }

  #basesIn(text: string): [number, ...number[]] {
    const words = text.trim().split(/\s+/);
    const told = words.filter((word) => !isSkipped(word));
    const [first = '', ...rest] = told.length > 0 ? told : words;
    if (first === '') throw new Error(`nothing is left of "${text}"`);
    if (rest.length === 0 && words.length > 1) throw new Error(`only "${first}" is left of "${text}"`);
    return [this.#base(first), ...rest.map((word) => this.#base(word))];
  }

  #basesOf(form: string): readonly number[] {
    const known = this.#basesOfForm.get(form);
    if (known !== undefined) return known;
    const bases: number[] = [];
    for (const word of possibleBasesOf(form)) {
      const base = this.#bases.get(word);
      if (base !== undefined && !bases.includes(base) && formsOf(word).includes(form)) bases.push(base);
    }
    bases.sort((a, b) => a - b);
    this.#basesOfForm.set(form, bases);
    return bases;
  }

  /** Phrases of two words that are written as one: "axlestand". */
  #joined(form: string): number[] {
    const atoms: number[] = [];
    if (!/^[a-z]+$/.test(form)) return atoms;
    for (let length = 1; length < form.length - 1; length++) {
      const head = this.#bases.get(form.slice(0, length));
      const phrases = head === undefined ? undefined : this.#phrases.get(head);
      if (phrases === undefined) continue;
      for (const tail of this.#basesOf(form.slice(length)))
        if (/^[a-z]{2,}$/.test(this.#words[tail] ?? ''))
          for (const { rest, atom } of phrases.get(tail) ?? []) if (rest.length === 1) atoms.push(atom);
    }
    return atoms.sort((a, b) => a - b);
  }
}

function add<T>(all: Map<number, Map<number, T[]>>, first: number, rest: readonly number[], value: T): void {
  const second = rest[0] ?? -1;
  const bySecond = all.get(first);
  const list = bySecond?.get(second);
  if (bySecond === undefined) all.set(first, new Map([[second, [value]]]));
  else if (list === undefined) bySecond.set(second, [value]);
  else list.push(value);
}

/** What starts with any of several bases. */
function merged<T>(all: ReadonlyMap<number, Second<T>>, firsts: readonly number[]): Second<T> {
  const found = firsts.map((first) => all.get(first)).filter((one) => one !== undefined);
  const [only] = found;
  if (only === undefined) return new Map();
  if (found.length === 1) return only;
  const both = new Map<number, readonly T[]>();
  for (const one of found)
    for (const [second, list] of one) both.set(second, [...(both.get(second) ?? []), ...list]);
  return both;
}

function bitsOf(bases: Iterable<number>): number {
  let bits = 0;
  for (const base of bases) bits |= 1 << (base & 31);
  return bits;
}
