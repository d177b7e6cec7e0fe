/** A statement as the registers read it: its words tagged by themselves, and the things that it names, each when it is first asked for. */
import type { Statement } from '../../draft.ts';
import type { TaggedWord } from '../../say/words.ts';
import { type Noun, nounsIn, solid, tagged } from './nouns.ts';

export class Telling {
  /** As long as the statement stands in its source, with blanks for line ends. */
  readonly text: string;
  /** Whether it says anything that a register holds. Of what does not, the words are not looked at. */
  readonly tells: boolean;
  #words: readonly TaggedWord[] | undefined;
  #nouns: readonly Noun[] | undefined;

  constructor({ start, end, text, said, figures }: Statement, masked: string | undefined) {
    this.text = (masked ?? text).slice(start, end).replace(/\s/g, ' ');
    this.tells = said.size > 0 || figures.length > 0;
  }

  get words(): readonly TaggedWord[] {
    this.#words ??= this.tells ? tagged(this.text) : [];
    return this.#words;
  }

  get nouns(): readonly Noun[] {
    this.#nouns ??= solid(nounsIn(this.words, this.text));
    return this.#nouns;
  }
}
