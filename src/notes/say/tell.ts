/** What a statement says: wrong, put off, bought, thanked … Each finding is one word of the house and the words that told it. */
import type { Figure } from '../figures/find.ts';
import { MONEY } from '../figures/unit-words.ts';
import type { BlockKind } from '../read/source.ts';
import type { Feature } from './features.ts';
import { toldBy } from './weigh.ts';
import { findingsIn, WEIGHTS } from './weights.ts';
import type { TaggedWord } from './words.ts';

export type Saying =
  | 'fault'
  | 'put off'
  | 'tried'
  | 'cured'
  | 'part'
  | 'cost'
  | 'thanks'
  | 'refit'
  | 'measurement'
  | 'speed';

export interface Told {
  kind: BlockKind;
  text: string;
  words: readonly TaggedWord[];
  features: readonly Feature[];
  figures: readonly Figure[];
}

const MEASURES = /^(?:mm|thou|in|cm)$/;
const MEASURED =
  /\b(?:measur|found|limit|wear|oval|gauge|bore|play|clearance|float|drum|lining|thick|gap|spigot|plates?|brush|book|min|max|across|micrometer|calliper|caliper|vernier|depth|width|diameter|length)/i;

const ASKED = new Set(['[no thanks]', '[thanks lent]', '[thanks helped]', '[put off]', '[tried]', '[cured]']);

/** `lineOf` gives the line of an offset in the source. */
export function tell(
  told: Told,
  lineOf: (offset: number) => number,
): { said: Map<Saying, string>; saidOn: Map<Saying, number> } {
  const { features, words, figures, text } = told;
  const said = new Map<Saying, string>();
  const saidOn = new Map<Saying, number>();
  if (features.length === 0) return { said, saidOn };
  for (const saying of findingsIn(features, words.length)) {
    const by = toldBy(features, WEIGHTS[saying], words);
    said.set(saying, by?.text ?? 'as noted');
    if (by) saidOn.set(saying, lineOf(by.start));
  }
  const met = new Map<string, Feature>();
  for (const one of features) if (ASKED.has(one.name)) met.set(one.name, one);
  // "Thanks for watching", "thanks to the rust": nobody is thanked.
  if (met.has('[no thanks]') && !met.has('[thanks lent]') && !met.has('[thanks helped]'))
    said.delete('thanks');
  const money = figures.some(({ unit }) => MONEY.has(unit));
  // A sum is what makes a cost, however likely the words.
  if (!money) said.delete('cost');
  const by = (name: string): string | undefined => {
    const found = met.get(name);
    if (found?.at === undefined) return undefined;
    return words
      .slice(found.at, found.at + (found.length ?? 1))
      .map((word) => word.text)
      .join(' ')
      .replaceAll(" n't", "n't")
      .replaceAll(" '", "'");
  };
  const putOff = by('[put off]');
  if (putOff) said.set('put off', putOff);
  const tried = by('[tried]');
  if (tried) said.set('tried', tried);
  const cured = by('[cured]');
  if (said.has('fault') && cured) said.set('cured', cured);
  if (figures.some(({ unit }) => MEASURES.test(unit)) && MEASURED.test(text))
    said.set('measurement', 'a figure');
  if (figures.some(({ unit }) => unit === 'km/h' || unit === 'mph')) said.set('speed', 'a speed');
  return { said, saidOn };
}
