import { expect, test } from 'vitest';
import { dueList } from '../../src/record/due-list.ts';
import { readSeries } from '../../src/record/read-series.ts';
import { madeSeries } from './made.ts';

/** Worked by hand: 12,040 km on 17 January, 12,400 km on 7 February; today is 7 February, 21 days after. */
test('What is due counts from its chapter to today, overdue first', async () => {
  const content = madeSeries({
    'due.csv':
      'what,after,since,done_in\nChain,300 km,01-first-look,\nOil,500 km,01-first-look,\nNuts,20 days,01-first-look,02-second-look\nBelt,40 days,01-first-look,\nPlugs,10 h,01-first-look,\n',
    'odometer.csv':
      'date,chapter,reading,unit\n2026-01-17,01-first-look,12040,km\n2026-02-07,02-second-look,12400,km\n',
  });
  const { series } = await readSeries(content);
  if (!series) throw new Error('The series cannot be read.');
  expect(
    dueList(series).map(({ item, done, used, left, overdue }) => [item.what, done, used, left, overdue]),
  ).toEqual([
    ['Chain', false, 360_000, -60_000, true],
    ['Oil', false, 360_000, 140_000, false],
    ['Belt', false, 21, 19, false],
    ['Plugs', false, undefined, undefined, false],
    ['Nuts', true, 21, -1, false],
  ]);
});
