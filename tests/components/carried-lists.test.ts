/** What each chapter of the demo takes over and hands on, against a table worked out by hand from the story. */
import { readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { beforeAll, describe, expect, test } from 'vitest';
import { type Standing, standingOf } from '../../src/components/record-index.ts';
import { currentSeries, setCurrentSeries } from '../../src/record/current.ts';
import { asPublished } from '../../src/record/publish.ts';
import { readSeries } from '../../src/record/read-series.ts';

interface ByHand {
  chapters: {
    chapter: string;
    faults: { head: [string, string][]; foot: [string, string][] };
    refit: { head: string[]; foot: string[] };
  }[];
}

const byHand = JSON.parse(
  readFileSync(new URL('../reference/demo-states.json', import.meta.url), 'utf8'),
) as ByHand;

beforeAll(async () => {
  const { series } = await readSeries(fileURLToPath(new URL('../../content', import.meta.url)));
  if (!series) throw new Error('The demo series cannot be read.');
  setCurrentSeries(asPublished(series));
});

const faultsOf = (standing: Standing) => standing.faults.map((one) => [one.fault.id, one.severity]);
const refitOf = (standing: Standing) => standing.refit.map((one) => one.id).sort();

test('the table covers every released chapter', () => {
  expect(byHand.chapters.map((one) => one.chapter)).toEqual(currentSeries().chapters.map((one) => one.id));
});

describe.each(byHand.chapters)('$chapter', ({ chapter: id, faults, refit }) => {
  const standing = () => {
    const chapter = currentSeries().chapters.find((one) => one.id === id);
    if (!chapter) throw new Error(`There is no chapter ${id}.`);
    return standingOf(chapter);
  };
  test('takes over the faults that were open then, worst first', () => {
    expect(faultsOf(standing().before)).toEqual(faults.head);
  });
  test('hands on the faults that it leaves open', () => {
    expect(faultsOf(standing().after)).toEqual(faults.foot);
  });
  test('takes over and hands on the refit lines that are open', () => {
    expect(refitOf(standing().before)).toEqual(refit.head);
    expect(refitOf(standing().after)).toEqual(refit.foot);
  });
});
