/** The words of a text with their stem and part of speech, by the tables and rules of wink-nlp's small web model of English. */
import { Lately } from './lately.ts';
import { newTagger, type Tagger } from './tagger.ts';

export interface TaggedWord {
  /** In small letters. */
  text: string;
  stem: string;
  /** Dictionary form: "drained" → "drain", "is" → "be". */
  lemma: string;
  /** Universal part of speech: NOUN, VERB, AUX, ADP … */
  pos: string;
  /** Offsets in the text. */
  start: number;
  end: number;
  /** Within four words behind a "no", "not" or "n't", with no stop or "but" between. */
  denied: boolean;
}

const DENIES = new Set(
  "no not n't never without nothing none isnt wasnt arent werent dont doesnt didnt neither nor".split(' '),
);
const PARTS = new Set('. , ; : ! ? but and so then because'.split(' '));

/** A title is made from pieces that are looked at more than once, and a long recording says things again. */
const lately = new Lately<readonly TaggedWord[]>(2000);

export const taggedWords = (text: string): readonly TaggedWord[] => lately.of(text, tagged);

/** Loaded when first asked for: reading a series needs no tagger. */
let tagger: Tagger | undefined;

function tagged(text: string): TaggedWord[] {
  tagger ??= newTagger();
  const { entries, starts, tags } = tagger.tag(text);
  const out: TaggedWord[] = [];
  let denial = -9;
  for (let i = 0; i < entries.length; i++) {
    const entry = entries[i];
    if (!entry) continue;
    const { value, small, stem } = entry;
    const [start = 0, tag = 0] = [starts[i], tags[i]];
    if (DENIES.has(small)) denial = i;
    else if (PARTS.has(small)) denial = -9;
    out.push({
      text: small,
      stem,
      lemma: entry.lemmaAs(tag),
      pos: tagger.nameOf(tag),
      start,
      end: start + value.length,
      denied: i > denial && i - denial <= 4,
    });
  }
  return out;
}
