import { expect, test } from 'vitest';
import { runCharts } from '../../../src/components/road-tests/run-charts.ts';
import { menuOf } from '../../../src/layouts/menu.ts';
import { readSeries } from '../../../src/record/read-series.ts';
import { madeSeries } from '../made.ts';

const rows = Array.from({ length: 40 }, (_, i) => `${i},${(40 - i / 2).toFixed(1)}`).join('\n');
const files = {
  'road-tests/a.csv': `time (s),speed (km/h)\n${rows}\n`,
  'road-tests.csv':
    'test,title,chapter,kind,file,direction\na,"Out & <b>home</b>",01-first-look,hill,a.csv,there\n',
};
const read = async (made: Record<string, string>) => {
  const { series } = await readSeries(madeSeries(made));
  if (!series) throw new Error('no series');
  return series;
};

test('A series without road tests has no page of them in its menu', async () => {
  const listed = async (made: Record<string, string>) =>
    menuOf(await read(made)).some((entry) => entry.path === '/road-tests/');
  expect(await listed({})).toBe(false);
  expect(await listed(files)).toBe(true);
});

test('A run is drawn over time and over distance; without heights there is no third chart', async () => {
  const [one] = (await read(files)).roadTests;
  if (!one) throw new Error('no road test');
  expect(runCharts(one).map((drawn) => drawn.name)).toEqual(['a-time', 'a-distance']);
});

test('A title of an author never becomes markup in a chart, and a chart has no style attribute', async () => {
  const [one] = (await read(files)).roadTests;
  if (!one) throw new Error('no road test');
  for (const { svg } of runCharts(one)) {
    expect(svg).toContain('Out &amp; &lt;b>home');
    expect(svg).not.toContain('<b>');
    expect(svg).not.toMatch(/ style=/);
  }
});
