/** Things as they are named in a statement: "the two old bleed screws" is "old bleed screws", of which there are two. */
import { Lately } from '../../say/lately.ts';
import { placesIn } from '../../say/place.ts';
import { type TaggedWord, taggedWords } from '../../say/words.ts';

export interface Noun {
  /** Without article and count: "cork seals". */
  text: string;
  /** Last word's dictionary form: "seal". */
  head: string;
  count?: number;
  /** Indices of its first word and behind its last. */
  from: number;
  to: number;
  /** Offsets in the text. */
  start: number;
  end: number;
}

const COUNTS = new Map(
  'one two three four five six seven eight nine ten eleven twelve'
    .split(' ')
    .map((word, at) => [word, at + 1] as const),
);
const MONEY =
  /^(?:eur|gbp|usd|czk|jpy|chf|sek|euros?|pounds?|yen|crowns?|dollars?|quid|pence|cents?|koruna)$/;
const UNITS =
  /^(?:x|mm2|mm|cm|m|in|thou|inch|inches|millimetres?|hundredths?|tenths?|half|quarter|volts?|v|amps?|a|bar|nm|newton|metres?|km|litres?|l|ml|kg|kilos?|g|degrees?|rpm|turns?|days?|weeks?|hours?|minutes?|mins?|hrs?)$/;
/** Nouns that name no thing. */
const VAGUE =
  /^(?:one|two|bit|lot|way|time|thing|something|nothing|anything|everything|somebody|day|week|year|month|evening|morning|tonight|today|tomorrow|next|rest|other|others|side|money|price|cost|bill|each|ea|post|postage|freight|carriage|duty|fee|thanks|cheers|course|sort|kind|point|place|look|end|hand|use|job|work|please|right|half|plus|moment|size|reading|book|limit|side|order|parcel|list|min|max|minimum|maximum|w|x|abt|id|od|left|all|years?|weeks?|days?|hours?|fingers?|cakes?|shore|new|upper|lower|inner|outer|oval|ps|squeaks?|brother|sister|daughter|son|father|mother|dad|mum|wife|husband|neighbour|man|woman|friend|money|monday|tuesday|wednesday|thursday|friday|saturday|sunday|hundredths?|tenths?|japan|sae|\w+teen|(?:twen|thir|for|fif|six|seven|eigh|nine)ty|hundred|thousand|penny|answer|fortnight|question|plan|idea|bin|pie|shopping|stuff|quote|sum|trip|percent|pieces?|things|middle|jumble|basket|parts?|tracks|village|town|penny|pair|pocket|score|shelf|rear|second|mine|figures?|pennies|fella|asking|millilit(?:re|er)s?|centimet(?:re|er)s?|kettle|rummage|gravy|thumbnail|turner|jan(?:uary)?|february|march|april|june|july|august|september|october|november|december|spring of|um|uh|er|erm|hmm|cat|dog|papa|mama|gran|tonight)$/;

/** Names of things come again all through a text. */
const lately = new Lately<TaggedWord[]>(4000);

/** Words with the trade's own names told as nouns, where the tagger takes "tap" or "bleed" for a verb. */
export const tagged = (text: string): TaggedWord[] => lately.of(text, newlyTagged);

function newlyTagged(text: string): TaggedWord[] {
  const words = taggedWords(text);
  const noun = new Set<number>();
  for (const { at, thing } of placesIn(words)) {
    const length = thing.split(' ').length;
    for (let k = at; k < at + length; k++)
      if (words[k]?.pos === 'VERB' || words[k]?.pos === 'ADJ') noun.add(k);
  }
  return words.map((word, at) => {
    const before = words[at - 1]?.pos;
    const after = words[at + 1]?.pos;
    const between =
      word.pos === 'VERB' &&
      word.text === word.lemma &&
      (before === 'DET' || before === 'NUM' || before === 'ADJ' || (before === 'NOUN' && after === 'VERB')) &&
      (after === 'NOUN' || after === 'AUX' || after === 'VERB');
    return noun.has(at) || between ? { ...word, pos: 'NOUN' } : word;
  });
}

const joinsIn = (word: TaggedWord): boolean =>
  word.pos === 'NOUN' ||
  word.pos === 'PROPN' ||
  word.pos === 'ADJ' ||
  (word.pos === 'VERB' && /(?:ed|en|ing)$/.test(word.text));

export function nounsIn(words: readonly TaggedWord[], text: string): Noun[] {
  const out: Noun[] = [];
  for (let at = 0; at < words.length; ) {
    let from = at;
    while (
      words[from] &&
      (words[from]?.pos === 'DET' || /^(?:my|his|her|our|your|its|their)$/.test(words[from]?.text ?? ''))
    )
      from += 1;
    const number = words[from];
    let count: number | undefined;
    if (number?.pos === 'NUM' || COUNTS.has(number?.text ?? '')) {
      count =
        COUNTS.get(number?.text ?? '') ??
        (/^\d{1,4}$/.test(number?.text ?? '') ? Number(number?.text) : undefined);
      if (count !== undefined) from += 1;
      if (/^(?:x|×|off)$/.test(words[from]?.text ?? '')) from += 1;
    }
    let to = from;
    let last = -1;
    for (; to < words.length && to - from < 6; to++) {
      const word = words[to];
      if (!word || !joinsIn(word) || MONEY.test(word.text) || UNITS.test(word.text)) break;
      if (!/^[\p{L}][\p{L}\d'/.-]*$/u.test(word.text)) break;
      // "new bearings fitted": what was done with a thing is no part of its name.
      if (word.pos === 'VERB' && last >= 0 && words[to + 1]?.pos !== 'NOUN') break;
      if (word.pos === 'NOUN' || word.pos === 'PROPN') last = to;
    }
    const [first, end] = [words[from], words[last]];
    if (last < 0 || !first || !end || VAGUE.test(end.text)) {
      at = Math.max(at + 1, last + 1, from);
      continue;
    }
    out.push({
      text: text.slice(first.start, end.end).replace(/\s+/g, ' '),
      head: end.lemma,
      ...(count === undefined ? {} : { count }),
      from,
      to: last + 1,
      start: first.start,
      end: end.end,
    });
    at = last + 1;
  }
  return out.filter(({ text: one }) => /\p{L}{2}/u.test(one));
}

/** "Pair of clips" is clips: words for a quantity are no name. */
const MEASURES_OF =
  /^(?:pair|set|box|bag|tin|bottle|tube|roll|can|packet|pack|length|litre|piece|kit|sheet|couple|handful|lot|metre|load|strip|bit)s?$/;

/** The thing that a name stands for, a quantity's word put aside: "a box of ring terminals" is ring terminals. */
export function solid(nouns: readonly Noun[]): Noun[] {
  return nouns.filter((one, at) => {
    const next = nouns[at + 1];
    return !(MEASURES_OF.test(one.head) && one.from === one.to - 1 && next && next.from - one.to <= 3);
  });
}

export const isMeasureWord = (head: string): boolean => MEASURES_OF.test(head);

export const capital = (text: string): string => text.slice(0, 1).toUpperCase() + text.slice(1);
export { COUNTS };
