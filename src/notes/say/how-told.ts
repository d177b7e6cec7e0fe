/** Whether a verb tells of work that was done, ordered or meant; or of what was feared, found or done by nobody just now. */
import { isThingWord } from './phrase.ts';
import type { TaggedWord } from './words.ts';

export type ToldAs = 'done' | 'ordered' | 'meant' | 'bare';

const list = (words: string): Set<string> => new Set(words.split(/[,\s]+/).filter(Boolean));
/** Words before a verb that say it is not done here: feared, wished, told of others or of another day. */
const NOT_DONE = list(
  "can can't cannot could would won't never not n't should shouldn't if unless until till when whenever who which has needs need wants want wanted says said supposed meant ought might may must without instead before after hate hates love like liked used able afraid",
);
const HARMED = list(
  'bend strip split crack break twist snap stretch tear scratch burn melt blow freeze seal worn round catch pinch chip dent',
);
/** What strips and splits by itself; all else is stripped by somebody. */
const THREADED =
  /^(?:threads?|bolts?|studs?|nuts?|screws?|gears?|teeth|tooth|splines?|nipples?|plugs?|it|they|that|hose|hoses|boot|boots|gaiter|case|pipe)$/;
const MEANT = list("'ll i'll we'll will let's lets gonna shall");
/** Describe a thing more often than they tell of work: "lower hose", "top end", "free play". */
const LIKE_ADJECTIVES = list('lower top free flat true square smooth thin light clear open dry level');
/** Name a thing where another noun follows: "clutch plate", "hinge pin", "stop switch". */
const LIKE_NOUNS = list(
  'block hinge trim wire dip clutch float choke screen spark dial gap plate buzz bond primer wind wing stop seal ring gear pump brake link feed begin',
);
/** Name a thing where the statement goes on to say something of it: "drain plug undone", "oil clips". */
const EITHER = list(
  'plug pack grease oil coat bolt screw pin tap drain brush wedge clip label tape paint cover spring lock switch catch run time jack file dust cut press punch drill saw strap guide start bed shim tin tow thread lap nut wheel number fuel tank',
);

/** "Hinge pin worn", "coat one looks", "lower hose fine": the word is part of a thing's name. */
export function isPartOfName(words: readonly TaggedWord[], at: number): boolean {
  const [word, next] = [words[at], words[at + 1]];
  if (!word || !next) return false;
  const before = words[at - 1]?.text ?? '';
  if (/^(?:i|we|you|to|let's|lets|'ll|then|please)$/.test(before)) return false;
  const adjective = LIKE_ADJECTIVES.has(word.text);
  const noun = LIKE_NOUNS.has(word.text);
  const either = EITHER.has(word.text);
  if (!adjective && !noun && !either) return false;
  if (next.pos === 'NUM' || /^(?:one|ones)$/.test(next.text)) return true;
  // "Tap off", "plug out": what goes where is told without a verb.
  if (/^(?:off|out|on|in|apart|back)$/.test(next.text) && (noun || either))
    return !/^(?:DET|PRON)$/.test(words[at + 2]?.pos ?? '');
  const named =
    next.pos === 'NOUN' || next.pos === 'PROPN' || (next.pos === 'VERB' && isThingWord(next.text));
  if (!named) return /^(?:AUX)$/.test(next.pos) || /^(?:is|was|are|were|looks?|feels?)$/.test(next.text);
  if (adjective || noun) return true;
  let end = at + 1;
  while (
    words[end] &&
    (/^(?:NOUN|PROPN)$/.test(words[end]?.pos ?? '') || isThingWord(words[end]?.text ?? ''))
  )
    end += 1;
  return /^(?:AUX|VERB|ADJ|ADV|NUM|ADP)$/.test(words[end]?.pos ?? '');
}

/** `verb` is the word's dictionary form. */
export function howTold(words: readonly TaggedWord[], at: number, verb: string): ToldAs | undefined {
  const word = words[at];
  if (!word) return undefined;
  const inflected = word.text !== verb;
  const before = words.slice(Math.max(0, at - 4), at);
  const last = before.at(-1);
  // "Set" and "cut" are told by who does it.
  const past =
    (inflected && !/(?:ing|s)$/.test(word.text)) ||
    (/^(?:cut|set|put|split)$/.test(word.text) &&
      /^(?:i|we|he|she|they|'ve|have|was|were|got)$/.test(last?.text ?? ''));
  const byMe = before.some(({ text }) => /^(?:i|we|i've|we've|'ve|i'd|we'd)$/.test(text));
  // "Is bent", "was cracked": a state, which nobody did just now.
  if (HARMED.has(verb) && past && !byMe && !/^(?:then|and)$/.test(last?.text ?? '')) {
    const stripped = verb === 'strip' && !before.slice(-2).some(({ text }) => THREADED.test(text));
    const to = words[/^(?:off|out|up|down)$/.test(words[at + 1]?.text ?? '') ? at + 2 : at + 1];
    if (!stripped && to?.pos !== 'DET') return undefined;
  }
  if (/^(?:came|come|comes|coming|looks?|feels?|felt)$/.test(last?.text ?? '')) return undefined;
  const tried = last?.text === 'to' && /^(?:tried|trying)$/.test(before.at(-2)?.text ?? '') && !inflected;
  if (tried) return 'done';
  if (
    before.slice(-3).some(({ text }) => NOT_DONE.has(text) || /^(?:tried|trying)$/.test(text)) &&
    !/^(?:drained|removed|cleaned|fitted)$/.test(word.text)
  )
    return undefined;
  if (
    last &&
    /^(?:the|a|an|my|this|that|to|no|some|each|very|too|bit|of|new|its)$/.test(last.text) &&
    !(
      last.text === 'to' &&
      /^(?:going|got|have|had|is|was|began|started|managed)$/.test(before.at(-2)?.text ?? '')
    )
  )
    return undefined;
  if (before.slice(-3).some(({ text }) => MEANT.has(text)) && !inflected) return 'meant';
  if (/ing$/.test(word.text) && inflected)
    return word.pos === 'VERB' &&
      (!last ||
        /^(?:'m|am|i'm|we're|'re|are|then|start|started|by|now|and|,|was)$/.test(last.text) ||
        last.pos === 'PUNCT' ||
        last.pos === 'CCONJ')
      ? 'done'
      : undefined;
  if (past)
    return word.pos === 'ADJ' && /^(?:NOUN|PROPN)$/.test(words[at + 1]?.pos ?? '') && last
      ? undefined
      : 'done';
  if (inflected) return undefined;
  // "The seal was four ninety": a thing, and no order.
  if (words[at + 1]?.pos === 'AUX') return undefined;
  // "What I did was undo the bolts."
  if (
    /^(?:was|is)$/.test(last?.text ?? '') &&
    words.slice(0, at).some(({ text }) => /^(?:did|do|job)$/.test(text))
  )
    return 'done';
  // A bare form: an order, or what "I" and "we" do.
  if (
    !last ||
    last.pos === 'PUNCT' ||
    /^(?:and|then|now|so|right|okay|ok|first|also|you|i|we|just|next|go|finally|well|please|to|there|back|done|out|off)$/.test(
      last.text,
    )
  ) {
    if (word.pos === 'NOUN' && !/^(?:DET|PRON|NUM)$/.test(words[at + 1]?.pos ?? '') && last?.pos !== 'PRON')
      return undefined;
    return 'ordered';
  }
  return undefined;
}
