/** Which place of the machine a statement is about, and the thing named there: told by the last-named thing of the place named most. */
import { hitsIn, type Phrases, phrasesOf } from './phrases.ts';
import { PLACES } from './vocabulary/places.ts';
import type { TaggedWord } from './words.ts';

export interface Place {
  /** "brakes", "front end" … */
  name: string;
  /** "wheel cylinder". */
  thing: string;
  /** With the words that tell it from its like: "near side wheel cylinder". */
  full: string;
  /** Where the thing's word stands. */
  at: number;
  /** Named as a tool, a place or a source: "with the old cover", "from the tank". */
  aside: boolean;
}

let compiled: Phrases | undefined;

/** Every thing named in a statement, in order; a longer name wins over a shorter one within it. */
export function placesIn(words: readonly TaggedWord[]): Place[] {
  compiled ??= phrasesOf(PLACES, 'as written');
  const hits = hitsIn(words, compiled).sort((a, b) => a.at - b.at || b.length - a.length);
  const out: Place[] = [];
  let until = 0;
  for (const { name, at, length } of hits) {
    if (at < until) continue;
    until = at + length;
    out.push({
      name,
      at,
      thing: said(words, at, at + length),
      ...namedIn(words, at, at + length),
    });
  }
  return out;
}

const said = (words: readonly TaggedWord[], from: number, to: number): string =>
  words
    .slice(from, to)
    .map(({ text }) => text)
    .join(' ');

/** Words that a name is made of, before its last. */
const IN_NAME = /^(?:NOUN|PROPN|ADJ)$/;
const NO_NAME =
  /^(?:next|first|last|same|other|new|old|again|good|bad|whole|little|bit|side|lovely|fine|right|own|sure|ready|um|uh|er|okay|ok|tight|loose|only|single|wrong|clean|dirty|nice|top|evening|today|now|mm|mm2|cm|m|mil|thou|inch|watt|volt|amp|millimetre|litre|third|fourth|half|full|stone|empty|dry|wet|cold|hot)$/;
const SIDE = /^(?:left|right|front|rear|near|off|inner|outer|upper|lower|top|bottom|nearside|offside|back)$/;

/** The thing with its neighbours: what stands before it as part of the name, and a noun that goes on with it. */
function namedIn(words: readonly TaggedWord[], at: number, end: number): { full: string; aside: boolean } {
  let from = at;
  while (from > 0 && at - from < 2) {
    const word = words[from - 1];
    if (!word || !/^[a-z][a-z-]+$/.test(word.text)) break;
    if (word.text === 'side' && /^(?:near|off|left|right)$/.test(words[from - 2]?.text ?? '')) {
      from -= 2;
      break;
    }
    const gear = words[at]?.text === 'gear' && /^(?:first|second|third|top|reverse)$/.test(word.text);
    const side = gear || (SIDE.test(word.text) && words[from - 2]?.text !== "'s");
    if (!side && (!IN_NAME.test(word.pos) || NO_NAME.test(word.text) || /ed$|ing$/.test(word.text))) break;
    from -= 1;
  }
  let to = end;
  const next = words[to];
  if (next && /^(?:NOUN|PROPN)$/.test(next.pos) && /^[a-z-]{3,}$/.test(next.text) && PART_OF.test(next.text))
    to += 1;
  let lead = from;
  while (
    lead > 0 &&
    /^(?:DET|NUM)$|^PRON$/.test(words[lead - 1]?.pos ?? '') &&
    words[lead - 1]?.text !== 'it'
  )
    lead -= 1;
  const aside =
    /^(?:with|by|from|of|in|into|like|under|behind|near|for|w|off|on|at|over|through|against|to|past|round|inside|between|beneath|onto)$/.test(
      words[lead - 1]?.text ?? '',
    );
  return { full: said(words, from, to), aside };
}

/** A noun behind a thing that tells which part of it. */
const PART_OF =
  /^(?:ends?|caps?|covers?|plates?|bodys?|pins?|bolts?|nuts?|studs?|screws?|springs?|seals?|gaskets?|holders?|brackets?|mounts?|housings?|leads?|pipes?|hoses?|levers?|rods?|clips?|flanges?|cases?|rubbers?|stays?|seams?|necks?|faces?|bush|bushes|bearings?|rings?|shafts?|cables?|linings?|springs?|threads?|elbow)$/;

/** The place that a statement is about: named most often, and of equals the first. Parts found anywhere are no place. */
export function placeOf(things: readonly Place[]): Place | undefined {
  const places = things.filter(({ name }) => name !== 'parts');
  const counts = new Map<string, number>();
  for (const { name } of places) counts.set(name, (counts.get(name) ?? 0) + 1);
  return places.reduce<Place | undefined>(
    (best, one) => (best && (counts.get(best.name) ?? 0) >= (counts.get(one.name) ?? 0) ? best : one),
    undefined,
  );
}
