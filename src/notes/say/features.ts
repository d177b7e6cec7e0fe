/** What a statement looks like to the weights: its words, the classes of the vocabulary that it meets, its figures and its place. */
import type { Figure } from '../figures/find.ts';
import { MONEY } from '../figures/unit-words.ts';
import type { BlockKind } from '../read/source.ts';
import { besideSpec } from './beside-spec.ts';
import { grammarOf } from './grammar.ts';
import { helpersIn } from './people.ts';
import { hitsIn, type Phrases, phrasesOf } from './phrases.ts';
import { thenMended } from './then-mended.ts';
import { BUYING, NO_THANKS, NOT_PAID, THANKS } from './vocabulary/business.ts';
import { PLACES } from './vocabulary/places.ts';
import { BEGINS, DEEDS, PUT_OFF, TRIED } from './vocabulary/work.ts';
import { CURED, DOUBT, NOT_THE_MACHINE, WELL, WRONG } from './vocabulary/wrong.ts';
import type { TaggedWord } from './words.ts';

export interface Feature {
  name: string;
  /** First and last word that gave it; none for what is of the whole statement. */
  at?: number;
  length?: number;
}

const prefixed = (prefix: string, lists: Readonly<Record<string, string>>): Record<string, string> =>
  Object.fromEntries(Object.entries(lists).map(([name, list]) => [`${prefix}${name}`, list]));

let compiled: Phrases | undefined;
const vocabulary = (): Phrases => {
  compiled ??= phrasesOf({
    ...prefixed('wrong ', WRONG),
    well: WELL,
    cured: CURED,
    ...prefixed('doubt ', DOUBT),
    'not the machine': NOT_THE_MACHINE,
    ...prefixed('buying ', BUYING),
    'not paid': NOT_PAID,
    ...prefixed('thanks ', THANKS),
    'no thanks': NO_THANKS,
    deed: DEEDS,
    begins: BEGINS,
    'put off': PUT_OFF,
    tried: TRIED,
    ...prefixed('place ', PLACES),
  });
  return compiled;
};

/** What stands for a word: its stem, or "#" for a number. */
const mark = (word: TaggedWord): string =>
  word.pos === 'NUM' || /^\d/.test(word.text) ? '#' : word.text.length > 3 ? word.stem : word.text;

/** `counts` tells which lone words and pairs are wanted: all of them while learning, those with a weight while reading. */
export function featuresOf(
  words: readonly TaggedWord[],
  about: {
    kind: BlockKind;
    figures: readonly Figure[];
    text: string;
    /** Where the text stands in its source. */
    start: number;
    /** Names of people in the source. */
    names: ReadonlySet<string>;
    section?: string | undefined;
    told?: string | undefined;
  },
  counts: (name: string) => boolean = () => true,
): Feature[] {
  const out: Feature[] = [];
  const hits = hitsIn(words, vocabulary());
  const first = new Map<string, Feature>();
  for (const { name, at, length, denied } of hits) {
    const plain = name === 'place parts' ? 'part of it' : name.startsWith('place ') ? 'place' : name;
    const full = denied && name.startsWith('wrong ') ? `${plain}, denied` : plain;
    if (!first.has(full)) first.set(full, { name: `[${full}]`, at, length });
  }
  out.push(...first.values());
  const has = (name: string): boolean => first.has(name);
  const wrong = [...first.keys()].some((name) => name.startsWith('wrong ') && !name.endsWith('denied'));
  if (wrong) {
    out.push({ name: '[wrong]' });
    for (const name of [
      'doubt if',
      'doubt might',
      'doubt warned',
      'doubt another time',
      'not the machine',
      'well',
      'place',
      'cured',
      'deed',
      'put off',
    ])
      if (has(name)) out.push({ name: `[wrong + ${name}]` });
  }
  if (hits.filter(({ name }) => name.startsWith('wrong ')).length > 2) out.push({ name: '[much wrong]' });
  if (about.told) {
    out.push({ name: '[work]' }, { name: `[work ${about.told}]` });
    if (wrong) out.push({ name: '[wrong + work]' }, { name: `[wrong + work ${about.told}]` });
  }
  if (beyond(about.figures)) out.push({ name: '[beyond its limit]' });
  const beside = besideSpec(about.text, about.figures, about.start);
  if (beside) out.push({ name: `[${beside}]` });
  if (thenMended(words)) {
    out.push({ name: '[then mended]' }, { name: `[then mended, ${about.kind}]` });
    if (wrong) out.push({ name: '[wrong + then mended]' });
  }
  for (const name of helpersIn(about.text, words, about.start, about.names)) {
    out.push({ name: `[${name}]` });
    if (has('thanks thanked')) out.push({ name: `[thanked + ${name}]` });
  }
  const money = about.figures.some(({ unit }) => MONEY.has(unit));
  if (money) {
    out.push({ name: '[money]' });
    for (const name of [
      'not paid',
      'buying paid',
      'buying got',
      'buying wanted',
      'buying part',
      'buying carried',
      'buying back',
      'buying hired',
    ])
      if (has(name)) out.push({ name: `[money + ${name}]` });
  }
  for (const name of ['buying got', 'buying wanted', 'buying mine', 'buying listed'])
    if (has(name) && (has('buying part') || has('place'))) out.push({ name: `[${name} + part]` });
  if (about.figures.some(({ unit }) => !MONEY.has(unit))) out.push({ name: '[figure]' });
  if (has('thanks person') && (has('thanks lent') || has('thanks helped')))
    out.push({ name: '[person helped]' });
  if (words.some(({ pos, text }, at) => pos === 'PROPN' && at > 0 && !text.includes("'")))
    out.push({ name: '[name]' });
  const grammar = grammarOf(words);
  for (const name of grammar) {
    out.push({ name: `[${name}]` });
    if (wrong) out.push({ name: `[wrong + ${name}]` });
  }
  out.push({ name: `[kind ${about.kind}]` });
  if (about.section)
    for (const [name, words] of SECTIONS)
      if (words.test(about.section))
        out.push({ name: `[${name}]` }, { name: `[${name}, ${about.kind}${wrong ? ', wrong' : ''}]` });
  const seen = new Set<string>();
  let before = '^';
  for (const [at, word] of words.entries()) {
    if (word.pos === 'PUNCT' || word.pos === 'SPACE') {
      before = ',';
      continue;
    }
    const now = mark(word);
    for (const [name, from, length] of [
      [now, at, 1],
      [`${before} ${now}`, Math.max(0, at - 1), 2],
    ] as const)
      if (counts(name) && !seen.has(name)) {
        seen.add(name);
        out.push({ name, at: from, length });
      }
    before = now;
  }
  return out;
}

/** A figure on the wrong side of a limit in the same unit beside it. */
function beyond(figures: readonly Figure[]): boolean {
  return figures.some(
    (limit) =>
      limit.limit !== undefined &&
      figures.some(
        (one) =>
          one !== limit &&
          one.limit === undefined &&
          one.unit === limit.unit &&
          (limit.limit === 'min'
            ? one.value < limit.value
            : limit.limit === 'max' && one.value > limit.value),
      ),
  );
}

/** What a heading over a statement, or a line that stands like one, says of it. */
const SECTIONS: readonly (readonly [string, RegExp])[] = [
  ['under wanted', /want|need|looking|still|to (?:get|find|buy|order)|missing|wish/],
  ['under buying', /buy|shop|bought|order|parcel|parts|arriv|came|post|list|sent for/],
  ['under money', /cost|money|spent|paid|bill|total|price|sums|£|€/],
  ['under thanks', /thank|people|help|who/],
  ['under faults', /fault|wrong|found|broken|trouble|problem|snag|worry|bad/],
  ['under not bought', /not bought|looked at|left|turned down|offers?|asked/],
  ['under next', /next|to do|later|left over|open|tomorrow/],
];
