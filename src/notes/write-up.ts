/** Sources to everything that a write-up puts into a chapter's folder. Pure: the command reads and writes. */
import { type Draft, draftOf, type Statement } from './draft.ts';
import type { Habits } from './figures/find.ts';
import type { ReadSource } from './read/source.ts';
import type { Called } from './write/called.ts';
import { type Around, bodyOf, frontmatter, joined, NOT_PLACED } from './write/chapter.ts';
import { compared } from './write/compared.ts';
import { keepNamesOut, namesPattern, withoutNames } from './write/consent.ts';
import { settleFlow } from './write/flow.ts';
import { placeIn } from './write/grown.ts';
import { headOf } from './write/head.ts';
import { settleHomes } from './write/homes.ts';
import { type Memory, memoryOf } from './write/memory.ts';
import { type Known, type Proposal, proposalsOf } from './write/proposals.ts';
import { type Answers, type Asked, settleUnits } from './write/questions.ts';
import { summaryOf } from './write/summary.ts';
import { Titles } from './write/titles.ts';

export interface WrittenUp {
  draft: Draft;
  chapter: string;
  proposals: Proposal[];
  called: Called[];
  memory: Memory;
}

export interface Plan extends Known {
  title: string;
  habits: Habits;
  around: Around;
  /** Names of those who have not agreed to be named. */
  unnamed?: readonly string[];
  /** What the author has answered of the chapter's questions, or said in series.yaml. */
  answers?: Answers;
  /** The sources as they were read, where that was done before. */
  draft?: Draft;
}

export interface Settled {
  /** The heading that became the chapter's title. */
  title: Statement | undefined;
  draft: Draft;
  proposals: Proposal[];
}

/** The draft with its units, names and homes settled, and what is proposed from it. */
export function settled(
  reads: readonly ReadSource[],
  plan: Plan,
  only?: (
    statements: readonly Statement[],
    answered: ReadonlyMap<Statement, ReadonlySet<Asked>>,
  ) => ReadonlySet<Statement>,
): Settled {
  const draft = plan.draft ?? draftOf(reads, plan.habits);
  const { open, answered } = settleUnits(draft, reads, plan.answers ?? {});
  keepNamesOut(draft, plan.unnamed ?? []);
  const wanted = only?.(draft.statements, answered);
  const { proposals, told } = proposalsOf(draft, plan, { reads, open, ...(wanted ? { only: wanted } : {}) });
  const title = titleHeading(reads, draft, plan.title);
  settleHomes(draft, reads, told, title);
  settleFlow(draft.statements, wanted);
  return { draft, proposals, title };
}

/** The first heading, where the chapter has its whole words for a title. */
function titleHeading(reads: readonly ReadSource[], draft: Draft, title: string): Statement | undefined {
  const first = draft.statements.find(({ kind }) => kind === 'heading');
  return first && first.text.length <= 70 && headOf(reads, '2000-01-01').title === title ? first : undefined;
}

export function writeUp(reads: readonly ReadSource[], plan: Plan): WrittenUp {
  const { draft, proposals, title: heading } = settled(reads, plan);
  const { blocks, notPlaced, called } = bodyOf(draft, aroundOf(reads, plan), new Titles(), heading);
  const pattern = namesPattern(plan.unnamed ?? []);
  const title = withoutNames(plan.title, pattern) || 'From the notes';
  const summary = summaryOf(draft, pattern);
  const rest = notPlaced.length > 0 ? `\n${NOT_PLACED}\n\n${notPlaced.join('\n')}\n` : '';
  const chapter = `${frontmatter({ title, date: plan.date, summary })}\n${joined(blocks)}${rest}`;
  const memory = memoryOf(reads, draft.statements, plan.answers ?? {});
  return { draft, chapter, proposals, called, memory };
}

/** The words of the sources alone: a caption's times and a list's marks are no prose. */
const aroundOf = (reads: readonly ReadSource[], { around }: Plan): Around => ({
  ...around,
  texts: new Map([...around.texts, ...reads.map(({ source, masked }) => [source.name, masked] as const)]),
});

export interface Grown extends WrittenUp {
  added: number;
  /** Statements whose figures got the unit that the author answered. */
  answered: number;
  /** What could not go where it belongs, and what of the notes was changed, in words. */
  notes: string[];
}

/**
 * The chapter with what is new in the notes added; what the author wrote or changed meanwhile stays as it is.
 * @throws where the chapter is no MDX that can be read
 */
export function addTo(written: string, memory: Memory, reads: readonly ReadSource[], plan: Plan): Grown {
  let news = compared([], memory);
  const answered = new Set<Statement>();
  const { draft, proposals } = settled(reads, plan, (statements, byAnswers) => {
    news = compared(statements, memory);
    for (const [one, asked] of byAnswers)
      if (news.known.has(one) && [...asked].some((each) => memory.answers?.[each] !== plan.answers?.[each]))
        answered.add(one);
    return new Set([...news.fresh, ...news.changed.keys(), ...answered]);
  });
  const full = memoryOf(reads, draft.statements, plan.answers ?? {});
  const wasAs = news.known;
  const merged: Memory = {
    ...full,
    sources: [
      ...memory.sources.filter(({ name }) => !full.sources.some((one) => one.name === name)),
      ...keptAs(full, draft.statements, wasAs, answered),
    ],
  };
  const added = news.fresh.size + news.changed.size;
  const placed =
    added + answered.size === 0
      ? { chapter: written, called: [], notes: [] }
      : placeIn(written, draft, news, answered, aroundOf(reads, plan));
  const gone = news.gone.map(
    ({ source, words }) =>
      `Gone from ${source}, and left as it is in the chapter: "${words.length > 70 ? `${words.slice(0, 70)}…` : words}"`,
  );
  const moved = news.reordered.map(
    (source) => `${source} has its notes in another order than before. The chapter keeps its own.`,
  );
  return {
    draft,
    chapter: placed.chapter,
    proposals,
    called: placed.called,
    memory: merged,
    added,
    answered: answered.size,
    notes: [...moved, ...placed.notes, ...gone],
  };
}

/** What is known is remembered as it was written then, so that it can be found again. */
function keptAs(
  full: Memory,
  statements: readonly Statement[],
  known: ReadonlyMap<Statement, { as?: string }>,
  answered: ReadonlySet<Statement>,
): Memory['sources'] {
  const bySource = Map.groupBy(statements, ({ source }) => source);
  return full.sources.map(({ name, statements: list }) => ({
    name,
    statements: list.map((one, at) => {
      const statement = bySource.get(name)?.[at];
      const as = statement && !answered.has(statement) ? known.get(statement)?.as : undefined;
      return as === undefined ? one : { ...one, as };
    }),
  }));
}
