import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { expect, test } from 'vitest';
import { asPublished } from '../../../src/record/publish.ts';
import { readSeries } from '../../../src/record/read-series.ts';
import { timesBetween } from '../../../src/record/road-tests/between-speeds.ts';
import { distances, type Sample } from '../../../src/record/road-tests/run.ts';
import { shownStretch } from '../../../src/record/road-tests/shown-stretch.ts';
import { chapter, madeSeries } from '../made.ts';

const even = (length_m: number, speed = 10): Sample[] =>
  Array.from({ length: length_m / speed + 1 }, (_, time) => ({
    time_s: time,
    speed_mps: speed,
    height_m: time / 10,
  }));
const length = (samples: readonly Sample[]) => distances(samples).at(-1) ?? 0;
const track = (samples: Sample[]) => ({ samples, from: 'positions' as const, indicated: false });

test('Of a track of 4 km readers see a kilometre at most, from its middle', () => {
  const seen = shownStretch(track(even(4000)), false);
  expect(length(seen)).toBeLessThanOrEqual(1000);
  expect(length(seen)).toBeGreaterThan(900);
  expect(seen[0]).toEqual({ time_s: 0, speed_mps: 10, height_m: 0 });
});

test('Where the author shows the whole, both ends are still cut off', () => {
  const seen = shownStretch(track(even(4000)), true);
  expect(length(seen)).toBeGreaterThan(3000);
  expect(length(seen)).toBeLessThanOrEqual(3600);
});

test('A track that is all ends shows nothing', () => {
  expect(shownStretch(track(even(250)), true)).toEqual([]);
});

test('A kilometre of many points is drawn through 240 of them at most', () => {
  const fine = even(4000, 10).flatMap((one) =>
    [0, 1, 2, 3, 4, 5, 6, 7, 8, 9].map((i) => ({ ...one, time_s: one.time_s + i / 10 })),
  );
  expect(shownStretch(track(fine), false).length).toBeLessThanOrEqual(240);
});

test('From 0 to 36 km/h at 1 m/s² each 10 km/h take 2.78 s, upwards and downwards', () => {
  const up = Array.from({ length: 101 }, (_, i) => ({ time_s: i / 10, speed_mps: i / 10 }));
  const down = up.map((one) => ({ ...one, speed_mps: 10 - one.speed_mps }));
  for (const [samples, rising] of [
    [up, true],
    [down, false],
  ] as const)
    for (const one of timesBetween(samples, rising)) expect(one.time_s).toBeCloseTo(2.778, 2);
  expect(timesBetween(up, true).map((one) => Math.round(one.to_mps * 3.6))).toEqual([20, 30]);
});

const run = (speeds: number[]) => `time (s),speed (km/h)\n${speeds.map((v, i) => `${i},${v}`).join('\n')}\n`;
const steady = run(Array.from({ length: 30 }, () => 32.5));

test('Runs of a held chapter are not published, and no file name or folder of a run is', async () => {
  const content = madeSeries({
    'chapters/03-held/chapter.mdx': chapter('Held', '2026-05-02', 'Words.', 'held: true\n'),
    'road-tests/mill-lane.csv': steady,
    'road-tests.csv':
      'test,chapter,kind,file\nseen,01-first-look,cruise,mill-lane.csv\nunseen,03-held,cruise,mill-lane.csv\n',
  });
  const { series, problems } = await readSeries(content);
  expect(problems).toEqual([]);
  expect(series?.roadTests.map((one) => one.id)).toEqual(['seen', 'unseen']);
  if (!series) throw new Error('no series');
  const published = asPublished(series);
  expect(published.roadTests.map((one) => one.id)).toEqual(['seen']);
  expect(JSON.stringify(published.roadTests)).not.toContain('mill-lane');
});

test('A table with semicolons, decimal commas and miles an hour reads as one with commas', async () => {
  const speeds = Array.from({ length: 20 }, (_, i) => `${i},0;${String(20 + i / 10).replace('.', ',')}`);
  const content = madeSeries({
    'road-tests/a.csv': `time (s);indicated speed (mph)\n${speeds.join('\n')}\n`,
    'road-tests.csv': 'test,chapter,kind,file\na,01-first-look,acceleration,a.csv\n',
  });
  const { series, problems } = await readSeries(content);
  expect(problems).toEqual([]);
  const [read] = series?.roadTests[0]?.runs ?? [];
  expect(read?.top_mps).toBeCloseTo(21.9 * 0.44704, 6);
  expect(read?.indicated).toBe(true);
});

test('The demo’s coast-down agrees with drag area and rolling resistance on the machine’s sheet within both ±', async () => {
  const demo = fileURLToPath(new URL('../../../content', import.meta.url));
  const { series } = await readSeries(demo);
  const coasting = series?.roadTests.find((one) => one.id === 'coasting')?.coasting?.answer;
  if (!coasting?.ok) throw new Error('The demo’s runs cannot tell.');
  for (const [path, found] of [
    ['chassis.drag_area', coasting.drag_m2],
    ['chassis.rolling_resistance', coasting.rolling],
  ] as const) {
    const sheet = series?.machine.values.get(path)?.now;
    expect(Math.abs(found.value - Number(sheet?.text))).toBeLessThanOrEqual(found.pm);
    expect(found.pm).toBeLessThan(Number(sheet?.pm));
  }
});

test('The record of the demo’s track holds none of its positions', async () => {
  const demo = fileURLToPath(new URL('../../../content', import.meta.url));
  const gpx = readFileSync(join(demo, 'road-tests/round-the-lane.gpx'), 'utf8');
  const places = [...gpx.matchAll(/l(?:at|on)="([^"]+)"/g)].map((found) => found[1] ?? '');
  expect(places.length).toBeGreaterThan(500);
  const { series } = await readSeries(demo);
  const told = JSON.stringify(series?.roadTests);
  expect(places.filter((place) => told.includes(place.slice(0, 8)))).toEqual([]);
});
