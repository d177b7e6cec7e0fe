import { readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { expect, test } from 'vitest';
import { chapterNumbers, openFaults } from '../../src/record/fault-life.ts';
import { asPublished } from '../../src/record/publish.ts';
import { readSeries } from '../../src/record/read-series.ts';
import { refitOpenAt } from '../../src/record/refit-list.ts';

interface Standing {
  head: unknown[];
  foot: unknown[];
}

/** Worked out by hand from the demo's story, not from the program. */
const table: { chapters: { chapter: string; faults: Standing; refit: Standing }[] } = JSON.parse(
  readFileSync(new URL('../reference/demo-states.json', import.meta.url), 'utf8'),
);
const reading = await readSeries(fileURLToPath(new URL('../../content', import.meta.url)));

test.each(table.chapters)(
  '$chapter takes over and hands on what the hand-made table says',
  ({ chapter: id, faults, refit }) => {
    if (!reading.series) throw new Error('The demo series cannot be read.');
    const series = asPublished(reading.series);
    const chapter = series.chapters.find((one) => one.id === id);
    if (!chapter) throw new Error(`There is no chapter ${id}.`);
    const numbers = chapterNumbers(series);
    const open = (moment: Parameters<typeof openFaults>[1]) =>
      openFaults(series, moment).map((state) => [state.fault.id, state.severity]);
    const lines = (moment: Parameters<typeof openFaults>[1]) =>
      refitOpenAt(series.refit, numbers, moment)
        .map((line) => line.id)
        .sort();
    const [before, after] = [{ before: chapter.number }, { after: chapter.number }];
    expect({ head: open(before), foot: open(after) }).toEqual(faults);
    expect({ head: lines(before), foot: lines(after) }).toEqual(refit);
  },
);

test('The table covers every released chapter of the demo', () => {
  const released = reading.series?.chapters.filter((chapter) => !chapter.held).map((chapter) => chapter.id);
  expect(table.chapters.map((one) => one.chapter)).toEqual(released);
});
