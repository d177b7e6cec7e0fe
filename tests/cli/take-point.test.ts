import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { lackOfPoint, takePoint } from '../../src/cli/take-point.ts';
import { takeProposals } from '../../src/cli/write-up-take.ts';
import { readSeries } from '../../src/record/read-series.ts';
import { madeSeries } from '../record/made.ts';

const CHAPTER = '02-second-look';
const read = (content: string, name: string) => readFileSync(join(content, name), 'utf8');

test('Accepted speeds become points of their chapter, and are shown', async () => {
  const content = madeSeries();
  const where = [
    await takePoint(content, CHAPTER, { value: '45', unit: 'km/h', slope: 'level', time: '0:10' }),
    await takePoint(content, CHAPTER, { value: '30.5', unit: 'km/h', standing: 'indicated' }),
  ];
  expect(where).toEqual(['road-tests/second-look-points.csv:2', 'road-tests/second-look-points.csv:3']);
  expect(read(content, 'road-tests/second-look-points.csv')).toBe(
    'time (m:ss),indicated speed (km/h),slope\n0:10,45,level\n,30.5,\n',
  );
  const { series, problems } = await readSeries(content);
  expect(problems).toEqual([]);
  expect(series?.roadTests[0]?.points[0]?.points).toEqual([
    { value: 45, unit: 'km/h', slope: 'level', time_s: 0 },
    { value: 30.5, unit: 'km/h' },
  ]);
});

test('A speed in miles an hour goes into a table of its own', async () => {
  const content = madeSeries();
  await takePoint(content, CHAPTER, { value: '45', unit: 'km/h' });
  await takePoint(content, CHAPTER, { value: '28', unit: 'mph' });
  const { series, problems } = await readSeries(content);
  expect(problems).toEqual([]);
  expect(series?.roadTests.map((one) => one.points[0]?.points)).toEqual([
    [{ value: 45, unit: 'km/h' }],
    [{ value: 28, unit: 'mph' }],
  ]);
});

test('The same point is not written twice', async () => {
  const content = madeSeries();
  const once = await takePoint(content, CHAPTER, { value: '45', unit: 'km/h' });
  expect(await takePoint(content, CHAPTER, { value: '45', unit: 'km/h' })).toBe(once);
});

test.each([
  [{ value: 'fast', unit: 'km/h' }, /no speed/],
  [{ value: '45', unit: '' }, /km\/h or mph/],
  [{ value: '45', unit: 'mph', slope: 'steep' }, /level, uphill or downhill/],
  [{ value: '45', unit: 'mph', time: 'noon' }, /minutes and seconds/],
])('%j still wants something of the author', (row, says) => {
  expect(lackOfPoint(row)).toMatch(says);
});

test('A proposal that is accepted is taken and noted as done', async () => {
  const content = madeSeries({
    [`chapters/${CHAPTER}/proposals.yaml`]:
      'proposals:\n  - id: aa\n    kind: road-test point\n    accept: yes\n    line: ride.vtt:4\n    words: forty-five on the level\n    because: a speed\n    row: { value: "45", unit: km/h, standing: indicated, slope: level }\n',
  });
  const said: string[] = [];
  const code = await takeProposals(content, CHAPTER, false, {
    root: content,
    interactive: false,
    out: (text: string) => said.push(text),
    err: (text: string) => said.push(text),
  });
  expect([code, said.join('')]).toEqual([0, expect.stringContaining('Taken: 1.')]);
  expect(read(content, 'road-tests/second-look-points.csv')).toMatch(/\n,45,level\n$/);
  expect(read(content, `chapters/${CHAPTER}/proposals.yaml`)).toContain(
    'done: road-tests/second-look-points.csv:2',
  );
});
