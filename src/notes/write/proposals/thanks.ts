/** Thanks of one text: one proposal a person, and those of the register are added to instead of written a second time. */
import type { Statement } from '../../draft.ts';
import type { TaggedWord } from '../../say/words.ts';
import { wordsOf } from '../prose.ts';
import type { Collector } from './collector.ts';
import { kindOfHelp, knownAs, personIn, type Supporter, whatOfHelp } from './person.ts';
import type { Proposal } from './proposal.ts';

export class Thanks {
  readonly #byName = new Map<string, Proposal>();
  readonly #supporters: readonly Supporter[];
  readonly #chapter: string;
  #last: Proposal | undefined;

  constructor(supporters: readonly Supporter[], chapter: string) {
    this.#supporters = supporters;
    this.#chapter = chapter;
  }

  heard(one: Statement, text: string, words: readonly TaggedWord[], out: Collector): void {
    const because = one.said.get('thanks');
    if (because === undefined) return;
    const name = personIn(text, words);
    const again =
      name === ''
        ? /\b(?:him|her|them|she|he|they)\b/i.test(text)
          ? this.#last
          : undefined
        : this.#byName.get(name.toLowerCase());
    if (again) {
      // Thanked again, or "I owe her a cake": the same row says it.
      again.words = `${again.words} … ${wordsOf(one)}`;
      out.told.add(one);
      return;
    }
    if (
      name === '' &&
      !/\b(?:thank|cheers|owe|grateful|credit|lent|lend|gave|help|named without)/i.test(`${text} ${because}`)
    )
      return;
    const known = knownAs(name, this.#supporters);
    const made = out.add(one, 'thanks', because, {
      ...(known ? { add_to: known.name } : {}),
      name: known?.name ?? name,
      consent: known ? (known.consent ? 'yes' : 'no') : '',
      kind: kindOfHelp(one.text),
      what: whatOfHelp(text.replace(/\s+/g, ' '), name),
      chapters: this.#chapter,
    });
    if (!made) return;
    if (name !== '') this.#byName.set(name.toLowerCase(), made);
    this.#last = made;
  }
}
