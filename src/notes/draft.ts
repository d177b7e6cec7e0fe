/** From sources to a draft: every statement with its figures, what it says, and the step that it belongs to. */
import { type Figure, findFigures, type Habits } from './figures/find.ts';
import { MONEY } from './figures/unit-words.ts';
import { lineFinder, type ReadSource } from './read/source.ts';
import { isChatter } from './say/chatter.ts';
import { type Clause, clausesOf } from './say/clauses.ts';
import { type Deed, deedIn } from './say/deed.ts';
import { type Feature, featuresOf } from './say/features.ts';
import { Lately } from './say/lately.ts';
import { namesIn } from './say/names.ts';
import { placeOf, placesIn } from './say/place.ts';
import { type Saying, tell } from './say/tell.ts';
import { weighed } from './say/weights.ts';
import type { TaggedWord } from './say/words.ts';
import { stepsOf } from './steps.ts';

export interface Statement extends Clause {
  source: string;
  figures: (Figure & { line: number })[];
  said: Map<Saying, string>;
  /** The line on which the words for it stand, of a statement over several. */
  saidOn: Map<Saying, number>;
  /** Place of the machine that it is about: "brakes". */
  area?: string;
  /** The things of the machine that it names, in order, each with the index of its word: "wheel cylinder". */
  things?: readonly { thing: string; full: string; at: number; aside: boolean }[];
  /** Title of the work that it tells of, in the imperative. */
  deed?: string;
  work?: Deed;
  /** Classes of the vocabulary that it meets, of those that part a text: "begins", "put off" … */
  marks: readonly string[];
  /** Talk to those who watch or read, with nothing of the work in it. */
  chatter: boolean;
  /** How it joins its neighbours in prose: whether a sentence begins with it, what it ends with where the next goes on, and a last word that the next says again. */
  flow?: { begins?: boolean; ends?: string; without?: string };
  home:
    | { kind: 'step'; step: number }
    | { kind: 'prose' }
    | { kind: 'proposal' }
    | { kind: 'not placed' }
    | { kind: 'heading' };
}

export interface DraftStep {
  title: string;
  at?: number;
  line: number;
  source: string;
  statements: Statement[];
}

export interface Draft {
  statements: Statement[];
  steps: DraftStep[];
}

export function draftOf(reads: readonly ReadSource[], habits: Habits): Draft {
  return inSteps(reads.flatMap((read) => statementsOf(read, habits)));
}

export const inSteps = (statements: Statement[]): Draft => ({ statements, steps: stepsOf(statements) });

/** What is read over a whole source: what it says in one place tells what it means in another. */
export interface Overview {
  figures: readonly Figure[];
  names: ReturnType<typeof namesIn>;
  /** The heading that stands over the first block, in small letters. */
  section?: string;
}

export const overviewOf = ({ masked }: ReadSource, habits: Habits): Overview => ({
  figures: findFigures(masked, habits),
  names: namesIn(masked),
});

const MARKS = new Set(
  [
    'begins',
    'put off',
    'tried',
    'cured',
    'wrong',
    'well',
    'money',
    'place',
    'doubt if',
    'doubt warned',
    'doubt another time',
    'thanks thanked',
    'person helped',
    'buying got',
    'buying wanted',
    'asked',
    'ordered',
    'done, without who',
    'i do',
    'you do',
    'no verb',
    'what it should be',
    'a thing is so',
    'a thing is a thing',
    'a thing is something',
    'a thing does not',
  ].map((name) => `[${name}]`),
);

/** `watch` is shown each statement's features: for measuring and learning. */
export const statementsOf = (
  read: ReadSource,
  habits: Habits,
  watch?: (one: Statement, features: readonly Feature[]) => void,
): Statement[] => statementsIn(read, overviewOf(read, habits), watch);

/** The statements of a source's blocks, which may be some of the source's alone. */
export function statementsIn(
  read: ReadSource,
  { figures, names, section: under }: Overview,
  watch?: (one: Statement, features: readonly Feature[]) => void,
): Statement[] {
  const lineOf = lineFinder(read.source.text);
  const out: Statement[] = [];
  let section = under;
  const lately = new Lately<Judged>(KEPT);
  const seen: (readonly Feature[])[] = [];
  let next = 0;
  for (const { block, pieces } of inBlocks(read)) {
    const first = pieces[0]?.clause;
    if (!first) continue;
    section = headingIn(pieces) ?? section;
    for (const { clause, words } of pieces) {
      const own: Statement['figures'] = [];
      for (; next < figures.length && (figures[next]?.start ?? 0) < clause.end; next++) {
        const figure = figures[next];
        if (figure && figure.start >= block.start) own.push({ ...figure, line: lineOf(figure.end - 1) });
      }
      const judged = watch
        ? judge(clause, words, own, names, section, (features) => seen.push(features))
        : lately.of(keyOf(read.masked, clause, words, own, section), () =>
            judge(clause, words, own, names, section),
          );
      const one: Statement = {
        ...clause,
        ...judged.as,
        source: read.source.name,
        figures: own,
        said: new Map(judged.said),
        saidOn: new Map(judged.saidAt.map(([saying, at]) => [saying, lineOf(clause.start + at)])),
        home: { kind: 'prose' },
      };
      watch?.(one, seen.pop() ?? []);
      out.push(one);
    }
  }
  return out;
}

/** A heading over what was seen and not bought. */
const LEFT = /\bnot bought|looked at and|turned down|did(?:n't| not) buy|too dear\b/;

/** What is made of a statement's words alone, wherever they stand. */
interface Judged {
  as: Pick<Statement, 'marks' | 'chatter'> & Partial<Pick<Statement, 'area' | 'things' | 'deed' | 'work'>>;
  said: readonly (readonly [Saying, string])[];
  /** Offsets from the statement's start. */
  saidAt: readonly (readonly [Saying, number])[];
}

/** People say the same things again, and a long recording is made of what was said before. */
const KEPT = 20_000;

/** All that a judgement goes by: the words as they stand, how they were tagged in their block, and the figures among them. */
const keyOf = (
  masked: string,
  { kind, start, end }: Clause,
  words: readonly TaggedWord[],
  figures: Statement['figures'],
  section: string | undefined,
): string =>
  `${kind}\n${section ?? ''}\n${masked.slice(start, end)}\n${words.map(({ pos, denied }) => (denied ? `${pos}!` : pos)).join(' ')}\n${figures
    .map((one) => `${one.start - start} ${one.end - start} ${one.unit} ${one.value} ${one.limit ?? ''}`)
    .join(';')}`;

function judge(
  clause: Clause,
  words: readonly TaggedWord[],
  figures: Statement['figures'],
  names: Overview['names'],
  section: string | undefined,
  watch?: (features: readonly Feature[]) => void,
): Judged {
  const { kind, text, start } = clause;
  const places = placesIn(words);
  const place = placeOf(places);
  const work = kind === 'task' || kind === 'row' || kind === 'heading' ? undefined : deedIn(words);
  const features =
    kind === 'heading' || kind === 'other'
      ? []
      : featuresOf(
          words,
          { kind, figures, text, start, names, section, told: work?.told },
          watch ? undefined : weighed,
        );
  watch?.(features);
  const { said, saidOn } = tell({ kind, text, words, features, figures }, (offset) => offset - start);
  if (section !== undefined && LEFT.test(section)) {
    said.delete('cost');
    said.delete('part');
  }
  return {
    as: {
      ...(place ? { area: place.name } : {}),
      ...(places[0]
        ? { things: places.map(({ thing, full, at, aside }) => ({ thing, full, at, aside })) }
        : {}),
      ...(work ? { deed: work.title, work } : {}),
      marks: [
        ...new Set(features.filter(({ name }) => MARKS.has(name)).map(({ name }) => name.slice(1, -1))),
      ],
      chatter:
        features.length > 0 &&
        isChatter(text, work !== undefined || figures.length > 0 || place !== undefined),
    },
    said: [...said],
    saidAt: [...saidOn],
  };
}

/** "Still to find" on a line of its own, over a list. */
const standsLikeHeading = ({ kind, opens, text }: Clause): boolean =>
  kind === 'prose' && opens && !/[.!?,\d]/.test(text) && text.split(' ').length <= 5;

/** The heading that a block is, in small letters. */
const headingIn = (pieces: readonly Piece[]): string | undefined => {
  const first = pieces[0]?.clause;
  return first && (first.kind === 'heading' || (pieces.length === 1 && standsLikeHeading(first)))
    ? first.text.toLowerCase()
    : undefined;
};

/** The last heading of a source's blocks, in small letters. */
export function lastHeadingOf(read: ReadSource): string | undefined {
  let last: string | undefined;
  for (const { pieces } of inBlocks(read)) last = headingIn(pieces) ?? last;
  return last;
}

type Piece = ReturnType<typeof clausesOf> extends Generator<infer One> ? One : never;

/** Clauses of a block together, with the block's extent. */
function* inBlocks(read: ReadSource): Generator<{ block: { start: number; end: number }; pieces: Piece[] }> {
  let pieces: Piece[] = [];
  const done = (): { block: { start: number; end: number }; pieces: Piece[] } => ({
    block: { start: pieces[0]?.clause.start ?? 0, end: pieces.at(-1)?.clause.end ?? 0 },
    pieces,
  });
  for (const piece of clausesOf(read)) {
    if (pieces[0] && pieces[0].clause.block !== piece.clause.block) {
      yield done();
      pieces = [];
    }
    pieces.push(piece);
  }
  if (pieces.length > 0) yield done();
}

export const isMoney = (unit: string): boolean => MONEY.has(unit);
