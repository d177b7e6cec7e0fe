/**
 * Look-ups that pages and components need again and again, made once for a series: no page walks the whole record.
 */
import { currentSeries } from '../record/current.ts';
import { chapterNumbers, faultAt, TODAY, worstFirst } from '../record/fault-life.ts';
import type {
  Chapter,
  Correction,
  Fault,
  FaultEvent,
  FaultState,
  Part,
  RefitLine,
  Series,
  Step,
} from '../record/types.ts';

interface SeriesIndex {
  chapters: Map<string, Chapter>;
  numbers: Map<string, number>;
  /** Place of each chapter in the order of numbers, from 0. */
  places: Map<string, number>;
  parts: Map<string, Part>;
  faults: Map<string, Fault>;
  /** By chapter id, in order of date. */
  corrections: Map<string, Correction[]>;
  /** By "chapter/step". */
  refitOpened: Map<string, RefitLine[]>;
  refitClosed: Map<string, RefitLine[]>;
  today: Map<string, FaultState>;
  /** By chapter id, in the order in which they happened. */
  faultEvents: Map<string, ChapterFaultEvent[]>;
  standings: Map<string, ChapterStanding>;
  /** By fault id, each place once. */
  spokenOf: Map<string, SpokenOf[]>;
}

/** What a chapter took over, or handed on: faults open then, worst first, and refit lines not yet closed then. */
export interface Standing {
  faults: FaultState[];
  refit: RefitLine[];
}

export interface ChapterStanding {
  before: Standing;
  after: Standing;
}

/** One event of a fault, seen from the chapter in which it happened. */
export interface ChapterFaultEvent {
  fault: Fault;
  event: FaultEvent;
}

/** Where a chapter speaks of something: in a step, or between steps. */
export interface SpokenOf {
  chapter: Chapter;
  step?: Step;
}

const made = new WeakMap<Series, SeriesIndex>();

function indexOf(series: Series): SeriesIndex {
  const known = made.get(series);
  if (known) return known;
  const index: SeriesIndex = {
    chapters: new Map(series.chapters.map((one) => [one.id, one])),
    places: new Map(series.chapters.map((one, place) => [one.id, place])),
    numbers: chapterNumbers(series),
    parts: new Map(series.parts.map((one) => [one.id, one])),
    faults: new Map(series.faults.map((one) => [one.id, one])),
    corrections: Map.groupBy(
      series.corrections.toSorted((a, b) => a.date.localeCompare(b.date)),
      (one) => one.chapter,
    ),
    refitOpened: Map.groupBy(series.refit, (one) => `${one.opened.chapter}/${one.opened.step ?? ''}`),
    refitClosed: Map.groupBy(series.refit, (one) => `${one.closed?.chapter ?? ''}/${one.closed?.step ?? ''}`),
    today: new Map(),
    faultEvents: Map.groupBy(
      series.faults.flatMap((fault) => fault.events.map((event) => ({ fault, event }))),
      ({ event }) => event.chapter,
    ),
    standings: new Map(),
    spokenOf: new Map(),
  };
  for (const fault of series.faults) {
    const state = faultAt(fault, index.numbers, TODAY);

    if (state) index.today.set(fault.id, state);
  }
  for (const chapter of series.chapters) {
    const seen = new Set<string>();
    for (const mention of chapter.faultLinks) {
      const key = `${mention.to} ${mention.step ?? ''}`;
      if (seen.has(key)) continue;
      seen.add(key);
      const step = chapter.steps.find((one) => one.number === mention.step);
      const places = index.spokenOf.get(mention.to) ?? [];
      places.push({ chapter, ...(step && { step }) });
      index.spokenOf.set(mention.to, places);
    }
  }
  index.standings = standingsOf(series, index);
  made.set(series, index);
  return index;
}

const index = () => indexOf(currentSeries());

export const chapterById = (id: string): Chapter | undefined => index().chapters.get(id);
export const partById = (id: string): Part | undefined => index().parts.get(id);
export const faultById = (id: string): Fault | undefined => index().faults.get(id);
export const correctionsOf = (chapterId: string): readonly Correction[] =>
  index().corrections.get(chapterId) ?? [];

export const faultEventsOf = (chapterId: string): readonly ChapterFaultEvent[] =>
  index().faultEvents.get(chapterId) ?? [];

export const mentionsOfFault = (id: string): readonly SpokenOf[] => index().spokenOf.get(id) ?? [];

export const refitOpenedAt = (chapterId: string, stepId: string): readonly RefitLine[] =>
  index().refitOpened.get(`${chapterId}/${stepId}`) ?? [];
export const refitClosedAt = (chapterId: string, stepId: string): readonly RefitLine[] =>
  index().refitClosed.get(`${chapterId}/${stepId}`) ?? [];

/** Where a fault stands on the day of the series; absent if no released chapter has found it. */
export const faultToday = (fault: Fault): FaultState | undefined => index().today.get(fault.id);

export const openToday = (): FaultState[] =>
  [...index().today.values()].filter((one) => one.open).sort(worstFirst);

export function standingOf(chapter: Chapter): ChapterStanding {
  const { standings } = index();
  const standing = standings.get(chapter.id);
  if (!standing) throw new Error(`The series has no chapter ${chapter.id}.`);
  return standing;
}

/** The chapters before and after, in order of number. */
export function neighboursOf(chapter: Chapter): { previous?: Chapter; next?: Chapter } {
  const { places } = index();
  const { chapters } = currentSeries();
  const place = places.get(chapter.id) ?? -1;
  const previous = chapters[place - 1];
  const next = chapters[place + 1];
  return { ...(previous && { previous }), ...(next && { next }) };
}

/** All chapters in one pass: a chapter changes only the faults and lines that it speaks of. */
function standingsOf(series: Series, { numbers, faultEvents }: SeriesIndex): Map<string, ChapterStanding> {
  const standings = new Map<string, ChapterStanding>();
  const states = new Map<string, FaultState>();
  const opened = Map.groupBy(series.refit, (line) => line.opened.chapter);
  const closed = Map.groupBy(series.refit, (line) => line.closed?.chapter);
  const lines = new Set<RefitLine>();
  let before: Standing = { faults: [], refit: [] };
  for (const chapter of series.chapters) {
    const moment = { after: chapter.number };
    for (const fault of new Set(faultEvents.get(chapter.id)?.map((one) => one.fault))) {
      const state = faultAt(fault, numbers, moment);
      if (state?.open) states.set(fault.id, state);
      else states.delete(fault.id);
    }
    for (const line of opened.get(chapter.id) ?? []) lines.add(line);
    for (const line of closed.get(chapter.id) ?? []) lines.delete(line);
    const after = {
      faults: [...states.values()].sort(worstFirst),
      refit: [...lines],
    };
    standings.set(chapter.id, { before, after });
    before = after;
  }
  return standings;
}
