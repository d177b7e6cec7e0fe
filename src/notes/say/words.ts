/** The words of a text with their stem and part of speech, by a tagger for English (wink-nlp with its small web model). */
import model from 'wink-eng-lite-web-model';
import winkNLP from 'wink-nlp';

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

let tagger: ReturnType<typeof winkNLP> | undefined;

/** Loaded when first asked for: reading a series needs no tagger. */
const nlp = (): ReturnType<typeof winkNLP> => {
  tagger ??= winkNLP(model, ['pos']);
  return tagger;
};

const DENIES =
  /^(?:no|not|n't|never|without|nothing|none|isnt|wasnt|arent|werent|dont|doesnt|didnt|neither|nor)$/;
const PARTS = /^(?:[.,;:!?]|but|and|so|then|because)$/;

/** What depends on a word alone: a long source has few words that it has not used before. */
interface Form {
  small: string;
  stem: string;
  denies: boolean;
  parts: boolean;
}
const forms = new Map<string, Form>();

/** Texts tagged last: a title is made from pieces that are looked at more than once. */
const lately = new Map<string, readonly TaggedWord[]>();
const LATELY = 64;

export function taggedWords(text: string): readonly TaggedWord[] {
  const known = lately.get(text);
  if (known) return known;
  const words = tagged(text);
  if (lately.size >= LATELY) {
    const [oldest] = lately.keys();
    if (oldest !== undefined) lately.delete(oldest);
  }
  lately.set(text, words);
  return words;
}

function tagged(text: string): TaggedWord[] {
  const { its, readDoc } = nlp();
  // A line's end is a blank like any other.
  const tokens = readDoc(text.replace(/\s/g, ' ')).tokens();
  // Stem and lemma need the model's tables, which the declared type leaves out.
  const stem = its.stem as unknown as typeof its.value;
  const values = tokens.out() as string[];
  const lemmas = tokens.out(its.lemma as unknown as typeof its.value) as unknown as string[];
  const tags = tokens.out(its.pos) as string[];
  let denial = -9;
  const out: TaggedWord[] = [];
  let at = 0;
  for (let i = 0; i < values.length; i++) {
    const value = values[i] ?? '';
    const found = text.indexOf(value, at);
    // The tagger may change a quote or a dash: such a word has the place of what follows the one before it.
    const start = found < 0 || found > at + 400 ? at : found;
    at = start + value.length;
    let form = forms.get(value);
    if (form === undefined) {
      const small = value.toLowerCase().replaceAll('’', "'");
      form = {
        small,
        stem: String(tokens.itemAt(i).out(stem)),
        denies: DENIES.test(small),
        parts: PARTS.test(small),
      };
      forms.set(value, form);
    }
    if (form.denies) denial = i;
    else if (form.parts) denial = -9;
    out.push({
      text: form.small,
      stem: form.stem,
      lemma: (lemmas[i] ?? '').toLowerCase(),
      pos: tags[i] ?? '',
      start,
      end: at,
      denied: i > denial && i - denial <= 4,
    });
  }
  return out;
}
