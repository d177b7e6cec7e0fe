import type { LedgerLine, Series } from '../types.ts';
import type { Reckoning } from './reckoning.ts';

/** What came to one chapter, system, kind, supplier, currency or month. */
export interface Group {
  by: 'chapter' | 'system' | 'kind' | 'supplier' | 'currency' | 'month';
  /** Id of the chapter, else the name itself; empty for rows that name none. */
  key: string;
  label: string;
  /** Rows concerned. */
  rows: number;
  /** Home minor units, money back taken off. */
  home: bigint;
  /** For currencies: the same in minor units of that currency. */
  own?: bigint;
}

type Tally = Map<string, { rows: number; home: bigint; own: bigint }>;

/** The series' rows gathered in six ways; each way sums to the series' total. Chapters and months in time's order, others dearest first. */
export function groupsOf(
  series: Series,
  reckoning: Reckoning,
  lines: readonly LedgerLine[],
): { by: Group['by']; title: string; groups: Group[] }[] {
  const chapters = new Map(series.chapters.map((one) => [one.id, one]));
  const supplierOf = new Map(series.orders.map((one) => [one.id, one.supplier]));
  const gather = (key: (line: LedgerLine) => string): Tally => {
    const tally: Tally = new Map();
    for (const line of lines)
      add(tally, key(line), line.home.minor, line.home.minor < 0n ? -line.amount.minor : line.amount.minor);
    return tally;
  };
  const bySystem = systemTally(series, reckoning);
  const chapterOrder = (key: string) => chapters.get(key)?.number ?? Number.POSITIVE_INFINITY;
  return [
    {
      by: 'system',
      title: 'By system, at landed cost',
      groups: listed('system', bySystem, (key) => key || 'No system'),
    },
    {
      by: 'chapter',
      title: 'By chapter',
      groups: listed(
        'chapter',
        gather((line) => (chapters.has(line.chapter ?? '') ? (line.chapter ?? '') : '')),
        (key) => chapters.get(key)?.title ?? 'No chapter',
        (a, b) => chapterOrder(a.key) - chapterOrder(b.key),
      ),
    },
    {
      by: 'kind',
      title: 'By kind',
      groups: listed(
        'kind',
        gather((line) => line.kind),
        capital,
      ),
    },
    {
      by: 'month',
      title: 'By month',
      groups: listed(
        'month',
        gather((line) => line.date.slice(0, 7)),
        (key) => key,
        byKey,
      ),
    },
    {
      by: 'currency',
      title: 'By currency',
      groups: listed(
        'currency',
        gather((line) => line.amount.currency),
        (key) => key,
      ),
    },
    {
      by: 'supplier',
      title: 'By supplier',
      groups: listed(
        'supplier',
        gather((line) => line.supplier ?? supplierOf.get(line.order ?? '') ?? ''),
        (key) => key || 'No supplier named',
      ),
    },
  ];
}

/** Rows under this heading: charges on goods sent back, which no part carries any more. */
export const LOST = 'Freight, duty and fees on goods sent back';

/** By system goods count at landed cost, so that freight, duty and fees lie where the parts are that caused them. */
function systemTally(series: Series, reckoning: Reckoning): Tally {
  const systemOf = new Map(series.parts.map((one) => [one.id, one.system]));
  const tally: Tally = new Map();
  for (const one of reckoning.goods) {
    add(tally, systemOf.get(one.line.part ?? '') ?? '', one.landed, 0n);
    if (one.lost !== 0n) add(tally, LOST, one.lost, 0n);
  }
  for (const line of reckoning.apart) add(tally, systemOf.get(line.part ?? '') ?? '', line.home.minor, 0n);
  return tally;
}

function add(tally: Tally, key: string, home: bigint, own: bigint): void {
  const one = tally.get(key);
  if (!one) {
    tally.set(key, { rows: 1, home, own });
    return;
  }
  one.rows += 1;
  one.home += home;
  one.own += own;
}

const capital = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1);
const byKey = (a: Group, b: Group): number => (a.key < b.key ? -1 : 1);

function listed(
  by: Group['by'],
  tally: Tally,
  label: (key: string) => string,
  order?: (a: Group, b: Group) => number,
): Group[] {
  const groups = [...tally].map(([key, { rows, home, own }]): Group => {
    const group: Group = { by, key, label: label(key), rows, home };
    return by === 'currency' ? { ...group, own } : group;
  });
  return groups.sort((a, b) => {
    if (order) return order(a, b) || byKey(a, b);
    if ((a.key === '') !== (b.key === '')) return a.key === '' ? 1 : -1;
    return a.home === b.home ? byKey(a, b) : a.home < b.home ? 1 : -1;
  });
}
