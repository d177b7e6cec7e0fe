import type { Chapter, Order, Part, Series, Step } from '../../record/types.ts';

/** Whether rows of the ledger may be shown: what is published is the author's choice. */
export const showsLines = (series: Series): boolean =>
  series.publishLedger === 'lines' && series.ledger.length > 0;

/** Whether sums may be shown. */
export const showsTotals = (series: Series): boolean =>
  series.publishLedger !== 'nothing' && series.ledger.length > 0;

interface Finder {
  chapter(id: string | undefined): Chapter | undefined;
  part(id: string | undefined): Part | undefined;
  order(id: string | undefined): Order | undefined;
  /** Where chapters speak of a part, in their order, each place once. */
  spokenOf(part: Part): readonly Spoken[];
}

export interface Spoken {
  chapter: Chapter;
  step?: Step;
}

const finders = new WeakMap<Series, Finder>();

/** Look-ups that the tables need for every row, made once for a series. A held chapter is not found, so it is never named. */
export function finderOf(series: Series): Finder {
  const known = finders.get(series);
  if (known) return known;
  const chapters = new Map(series.chapters.map((one) => [one.id, one]));
  const parts = new Map(series.parts.map((one) => [one.id, one]));
  const orders = new Map(series.orders.map((one) => [one.id, one]));
  const spoken = spokenByPart(series);
  const made: Finder = {
    chapter: (id) => chapters.get(id ?? ''),
    part: (id) => parts.get(id ?? ''),
    order: (id) => orders.get(id ?? ''),
    spokenOf: (part) => spoken.get(part.id) ?? [],
  };
  finders.set(series, made);
  return made;
}

function spokenByPart(series: Series): Map<string, Spoken[]> {
  const spoken = new Map<string, Spoken[]>();
  for (const chapter of series.chapters)
    for (const { to, step: number } of chapter.parts) {
      const step = chapter.steps.find((one) => one.number === number);
      const known = spoken.get(to) ?? [];
      if (known.some((one) => one.chapter === chapter && one.step === step)) continue;
      spoken.set(to, [...known, { chapter, ...(step && { step }) }]);
    }
  return spoken;
}
