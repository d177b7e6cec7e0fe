/** Which place of the machine a statement is about, and the thing named there: told by the last-named thing of the place named most. */
import { hitsIn, type Phrases, phrasesOf } from './phrases.ts';
import { PLACES } from './vocabulary/places.ts';
import type { TaggedWord } from './words.ts';

export interface Place {
  /** "brakes", "front end" … */
  name: string;
  /** "wheel cylinder". */
  thing: string;
  /** Where the thing's word stands. */
  at: number;
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
      thing: words
        .slice(at, at + length)
        .map(({ text }) => text)
        .join(' '),
    });
  }
  return out;
}

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
