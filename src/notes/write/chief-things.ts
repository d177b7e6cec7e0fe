/** What a text is mostly about, for a chapter whose notes have no heading. */
import type { ReadSource } from '../read/source.ts';
import { PLACES } from '../say/vocabulary/places.ts';

/** The two or three places of the machine that are spoken of most, each by its most-said part: "Front brake, hub and wheel bearing". */
export function chiefThings(reads: readonly ReadSource[]): string | undefined {
  const counts = new Map<string, { area: string; times: number; at: number }>();
  for (const { masked } of reads)
    for (const [area, things] of Object.entries(AREAS)) {
      for (const found of masked.slice(0, 200_000).toLowerCase().matchAll(things)) {
        const thing = found[0].replace(/\s+/g, ' ');
        const known = counts.get(thing);
        if (known) known.times += 1;
        else counts.set(thing, { area, times: 1, at: found.index });
      }
    }
  const areas = new Map<string, { thing: string; most: number; all: number; at: number }>();
  for (const [thing, { area, times, at }] of counts) {
    const known = areas.get(area);
    if (!known) areas.set(area, { thing, most: times, all: times, at });
    else {
      known.all += times;
      // Of two said about as often, the fuller name says more.
      if (times > known.most || (times === known.most && thing.length > known.thing.length))
        Object.assign(known, { thing, most: times });
    }
  }
  const chief = [...areas.values()].sort((a, b) => b.all - a.all || a.at - b.at);
  const first = chief[0]?.all ?? 0;
  const named = chief
    .filter(({ all }) => all >= Math.max(2, first / 3))
    .slice(0, 3)
    .sort((a, b) => a.at - b.at)
    .map(({ thing }) => thing);
  if (named.length === 0) return undefined;
  return named.length === 1 ? named[0] : `${named.slice(0, -1).join(', ')} and ${named.at(-1)}`;
}

const AREAS = Object.fromEntries(
  Object.entries(PLACES)
    .filter(([area]) => area !== 'parts')
    .map(([area, things]) => [
      area,
      new RegExp(
        `\\b(?:${things
          .split(',')
          .map((one) => one.trim().replace(/\s+/g, '\\s+'))
          .filter((one) => one.length > 3)
          .sort((a, b) => b.length - a.length)
          .join('|')})\\b`,
        'g',
      ),
    ]),
);
