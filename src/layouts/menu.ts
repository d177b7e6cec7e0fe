/** The site's pages, as the running head and the index at the foot list them. A page without data is in neither. */
import type { Series } from '../record/types.ts';

export interface MenuEntry {
  path: `/${string}`;
  title: string;
  /** Stands in the running head; the others only in the index at the foot. */
  head: boolean;
  /** Left out of the running head on a phone, where the index at the foot serves. */
  aside?: boolean;
}

const menus = new WeakMap<Series, readonly MenuEntry[]>();

export function menuOf(series: Series): readonly MenuEntry[] {
  const known = menus.get(series);
  if (known) return known;
  const bought = series.publishLedger !== 'nothing' && series.ledger.length > 0;
  const entries: (MenuEntry | false)[] = [
    { path: '/series/', title: 'Chapters', head: true },
    series.faults.length > 0 && { path: '/faults/', title: 'Faults', head: true },
    series.parts.length > 0 && { path: '/parts/', title: 'Parts', head: true, aside: true },
    bought && { path: '/costs/', title: 'Costs', head: true, aside: true },
    { path: '/machine/', title: 'Machine', head: true, aside: true },
    { path: '/calculators/', title: 'Calculators', head: true },
    { path: '/hazards/', title: 'Safety', head: true, aside: true },
    { path: '/suspects/', title: 'Suspects', head: false },
    series.measurements.length > 0 && { path: '/measurements/', title: 'Measurements', head: false },
    series.refit.length > 0 && { path: '/refit/', title: 'Refit list', head: false },
    series.due.length > 0 && { path: '/due/', title: 'To do again', head: false },
    (series.aims.length > 0 || series.chapters.some((one) => one.hours !== undefined)) && {
      path: '/outcome/',
      title: 'Outcome',
      head: false,
    },
    series.corrections.length > 0 && { path: '/corrections/', title: 'Corrections', head: false },
    series.roadTests.length > 0 && { path: '/road-tests/', title: 'Road tests', head: false },
    (series.supporters.length > 0 || series.unnamedSupporters > 0) && {
      path: '/thanks/',
      title: 'Thanks',
      head: false,
    },
    { path: '/about/', title: 'About this log', head: false },
  ];
  const menu = entries.filter((one) => one !== false);
  menus.set(series, menu);
  return menu;
}
