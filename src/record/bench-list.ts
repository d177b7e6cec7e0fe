import { dueList } from './due-list.ts';
import { chapterNumbers, openFaults, TODAY } from './fault-life.ts';
import { verdict } from './measurement-verdict.ts';
import { refitOpenAt } from './refit-list.ts';
import type { Fault, FaultState, Part, Series } from './types.ts';

/** How near it is to hurting somebody, worst first. */
export const RANKS = [
  'do not drive',
  'drive with care',
  'overdue',
  'to be closed',
  'nuisance',
  'to be measured',
] as const;
export type BenchRank = (typeof RANKS)[number];

/** One thing to do next, for the author. */
export interface BenchItem {
  rank: BenchRank;
  kind: 'fault' | 'due' | 'refit' | 'measurement';
  /** Id of the fault or refit line; absent for what has none. */
  id?: string;
  what: string;
  /** What it waits for, each in words; empty where it can be done now. */
  waitsFor: string[];
}

const PART_WAITS: Record<Part['status'], string | undefined> = {
  wanted: 'to be ordered',
  ordered: 'on its way',
  arrived: undefined,
  fitted: undefined,
  returned: 'sent back: another is needed',
};

/**
 * What there is to do next, in order of severity and, within one rank, the oldest first: open faults, what is overdue, what
 * is still off or loose, and readings that say nothing yet. What waits for nothing comes before what waits.
 */
export function benchList(series: Series): BenchItem[] {
  const numbers = chapterNumbers(series);
  const partsFor = (id: string): string[] =>
    series.parts.flatMap(({ name, status, neededFor }) => {
      const waits = PART_WAITS[status];
      return waits !== undefined && neededFor?.includes(id) ? [`${name} (${waits})`] : [];
    });
  const faults = openFaults(series).map((state): BenchItem => {
    const { fault, severity } = state;
    const waitsFor = [...partsFor(fault.id), ...waitsOf(state, series.asOf)];
    return {
      rank: severity,
      kind: 'fault',
      id: fault.id,
      what: `${fault.title}${nextCheck(fault)}`,
      waitsFor,
    };
  });
  const due = dueList(series)
    .filter((one) => one.overdue)
    .map(({ item }): BenchItem => ({ rank: 'overdue', kind: 'due', what: item.what, waitsFor: [] }));
  const refit = refitOpenAt(series.refit, numbers, TODAY).map(
    ({ id, what, action }): BenchItem => ({
      rank: 'to be closed',
      kind: 'refit',
      id,
      what: `${what} (${action})`,
      waitsFor: partsFor(id),
    }),
  );
  const readings = series.measurements.flatMap((one): BenchItem[] => {
    // A reading as left speaks for the part as it is now.
    const judged = verdict(one, one.left === undefined ? 'found' : 'left');
    if (judged === undefined || judged.kind === 'within') return [];
    const where = [one.item, one.position].filter(Boolean).join(', ');
    const [says, waits] =
      judged.kind === 'outside'
        ? [`outside its limit by ${judged.by} ${one.unit}`, []]
        : ['cannot be told from the limit', ['a finer measurement']];
    return [
      { rank: 'to be measured', kind: 'measurement', what: `${where}: ${says}`, waitsFor: waits as string[] },
    ];
  });
  const all = [...faults, ...due, ...refit, ...readings];
  return all.sort(
    (a, b) =>
      RANKS.indexOf(a.rank) - RANKS.indexOf(b.rank) ||
      Math.sign(a.waitsFor.length) - Math.sign(b.waitsFor.length),
  );
}

/** What the author wrote under "waits_for" last, and the day to look again at what was put off. */
function waitsOf({ fault, putOff }: FaultState, asOf: string): string[] {
  const said = fault.events.findLast(
    (event) => event.what !== 'found' || event.waitsFor !== undefined,
  )?.waitsFor;
  const review = putOff?.review;
  return [
    ...(said === undefined ? [] : [said]),
    ...(review !== undefined && review > asOf ? [`its review on ${review}`] : []),
    ...(putOff !== undefined && review === undefined ? ['a day to look at it again'] : []),
  ];
}

/** Suspects that no event of the present life has ruled in or out: the next check is one of them. */
function nextCheck(fault: Fault): string {
  const start = fault.events.findLastIndex(({ what }) => what === 'found' || what === 'came back');
  const events = fault.events.slice(Math.max(0, start));
  const pointed = fault.suspects.filter(({ id }) => events.some((one) => one.rulesIn.includes(id)));
  const named =
    pointed.length > 0
      ? pointed
      : fault.suspects.filter(({ id }) => !events.some((one) => one.rulesOut.includes(id)));
  if (named.length === 0) return '';
  const names = named.slice(0, 3).map((one) => one.name);
  const more = named.length > 3 ? `, ${named.length - 3} more` : '';
  return `: ${pointed.length > 0 ? 'points to' : 'not yet tried'} ${names.join(', ')}${more}`;
}
