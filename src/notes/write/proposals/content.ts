/** Words of a text that say something: dictionary forms of its things, their state and what is done. Read when they are first asked for. */
import { taggedWords } from '../../say/words.ts';

const SPEAKS = /^(?:NOUN|PROPN|ADJ|VERB)$/;
const EMPTY =
  /^(?:be|have|do|get|go|say|see|look|think|thing|side|bit|one|time|way|little|old|new|good|bad|same)$/;

export class Content {
  readonly #words = new Set<string>();
  /** Texts that nobody has asked for yet. */
  #unread: string[];

  constructor(text: string) {
    this.#unread = [text];
  }

  /** Takes the words of another text in. */
  take(text: string): void {
    this.#unread.push(text);
  }

  get words(): ReadonlySet<string> {
    for (const text of this.#unread)
      for (const { pos, lemma } of taggedWords(text))
        if (SPEAKS.test(pos) && lemma.length > 2 && !EMPTY.test(lemma)) this.#words.add(lemma);
    this.#unread = [];
    return this.#words;
  }

  /** How many words both have. */
  shared(other: Content): number {
    const theirs = other.words;
    let count = 0;
    for (const word of this.words) if (theirs.has(word)) count += 1;
    return count;
  }
}
