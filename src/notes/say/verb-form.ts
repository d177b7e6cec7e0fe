/** The dictionary form of a verb of the shed, also where a tagger takes "soaked" for an adjective or leads "taped" back to "tap". */
import type { TaggedWord } from './words.ts';

/** Forms that no rule leads back. */
const FORMS: Readonly<Record<string, string>> = {
  undid: 'undo',
  undone: 'undo',
  bled: 'bleed',
  ground: 'grind',
  cut: 'cut',
  set: 'set',
  put: 'put',
  split: 'split',
  took: 'take',
  taken: 'take',
  drove: 'drive',
  driven: 'drive',
  felt: 'feel',
  drew: 'draw',
  drawn: 'draw',
  bent: 'bend',
  hung: 'hang',
  blew: 'blow',
  swept: 'sweep',
  slid: 'slide',
  stuck: 'stick',
  made: 'make',
  ran: 'run',
  wound: 'wind',
  unwound: 'unwind',
  spun: 'spin',
  "chk'd": 'check',
  chkd: 'check',
  primered: 'prime',
  rewound: 'wind',
};

/** `known` are the verbs that a form may lead back to. */
export function verbForm(word: TaggedWord, known: ReadonlySet<string>): string {
  const { text, lemma } = word;
  const form = Object.hasOwn(FORMS, text) ? FORMS[text] : undefined;
  if (form !== undefined) return form;
  const stems =
    /^(\w{2,})ed$/.test(text) && text.length > 4
      ? [text.slice(0, -1), text.slice(0, -2), text.slice(0, -3), `${text.slice(0, -3)}y`]
      : /^(\w{2,})ing$/.test(text) && text.length > 5
        ? [`${text.slice(0, -3)}e`, text.slice(0, -3), text.slice(0, -4)]
        : [];
  // "Taped" is of "tape", for "tap" would double its last letter.
  return stems.find((one, at) => known.has(one) && (at !== 2 || doubled(text))) ?? lemma;
}

const doubled = (text: string): boolean => /([bdgklmnpt])\1(?:ed|ing)$/.test(text);
