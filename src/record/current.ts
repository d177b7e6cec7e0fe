import type { Series } from './types.ts';

/**
 * The one joined record of a run, handed on through a global symbol: the site's pages are bundled apart from the program
 * that read it, so a module's own variable would not be the same in both.
 */
const KEY = Symbol.for('oilway.series');
const holder = globalThis as unknown as Record<symbol, Series | undefined>;

export function setCurrentSeries(series: Series): void {
  holder[KEY] = series;
}

/** @throws {Error} when nothing was read: a page was built outside the site's own commands. */
export function currentSeries(): Series {
  const series = holder[KEY];
  if (!series)
    throw new Error('No series has been read. Build the site with "npm run build" or "npm start".');
  return series;
}
