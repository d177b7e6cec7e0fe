/** Thanks of one text: one proposal for what somebody did, and those of the register are added to instead of written a second time. */
import type { Statement } from '../../draft.ts';
import type { TaggedWord } from '../../say/words.ts';
import { wordsOf } from '../prose.ts';
import type { Collector } from './collector.ts';
import { kindOfHelp, knownAs, personIn, type Supporter, whatOfHelp } from './person.ts';
import type { Proposal } from './proposal.ts';

/** So many statements on, "he" and "wouldn't take a penny" are still of the one thanked last, and the same name is the same help. */
const NEAR = 4;

export class Thanks {
  readonly #supporters: readonly Supporter[];
  readonly #chapter: string;
  #last: { made: Proposal; name: string; at: number } | undefined;

  constructor(supporters: readonly Supporter[], chapter: string) {
    this.#supporters = supporters;
    this.#chapter = chapter;
  }

  /** `at` is the statement's index in its text. */
  heard(one: Statement, at: number, text: string, words: readonly TaggedWord[], out: Collector): void {
    const because = one.said.get('thanks');
    if (because === undefined) return;
    const name = personIn(text, words);
    const last = this.#last;
    if (
      last &&
      at - last.at <= NEAR &&
      (name === '' ? HIM.test(text) && !OTHER.test(text) : same(name, last.name))
    ) {
      // Said on of the same help, or "I owe her a cake": the same row says it.
      const { made } = last;
      made.words = `${made.words} … ${wordsOf(one)}`;
      made.also = [...(made.also ?? []), `${one.source}:${one.saidOn.get('thanks') ?? one.line}`];
      this.#last = { made, name: last.name, at };
      out.told.add(one);
      return;
    }
    const made = out.add(one, 'thanks', because, {
      name,
      consent: '',
      kind: kindOfHelp(one.text),
      what: whatOfHelp(text.replace(/\s+/g, ' '), name),
      chapters: this.#chapter,
    });
    if (!made) return;
    this.#name(made, name);
    this.#last = { made, name, at };
  }

  #name(made: Proposal, name: string): void {
    const known = knownAs(name, this.#supporters);
    made.row = {
      ...(known ? { add_to: known.name } : {}),
      ...made.row,
      name: known?.name ?? name,
      consent: known ? (known.consent ? 'yes' : 'no') : '',
    };
  }
}

/** The one thanked last, or a word of thanks with nobody in it. */
const HIM =
  /\b(?:he|she|they|him|her|them|you)\b|^\W*(?:and |so |but )?(?:(?:would|wo)n'?t|wouldnt|no charge|thanks|thank you|cheers|ta|bless|much obliged|obliged|good of|decent of)/i;
/** Somebody else than the one thanked last. */
const OTHER =
  /^\W*(?:and |also )?(?:(?:many |my )?thanks? (?:you )?(?:also )?to|to) |\b(?:my|our|the|a|an|his|her|their|your|old|uncle|aunt) (?:\w+ )?(?:neighbour|neighbor|cousin|brother|sister|uncle|aunt|nephew|niece|father|dad|mother|mum|friend|mate|chap|lad|bloke|fellow|gentleman|lady|man|woman|husband|wife|son|daughter|boy|girl|reader|viewer|person|couple|people|shop|club|garage)\b/i;

const same = (a: string, b: string): boolean => a.toLowerCase() === b.toLowerCase();
