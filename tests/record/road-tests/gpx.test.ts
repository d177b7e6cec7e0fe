import { BaseBuilder, buildGPX } from 'gpx-builder';
import { expect, test } from 'vitest';
import { Report } from '../../../src/record/report-to.ts';
import { between, readGpx } from '../../../src/record/road-tests/gpx.ts';
import { readXml, XmlError } from '../../../src/record/road-tests/xml.ts';
import { Lines } from '../../../src/record/text/lines.ts';

const { Metadata, Point, Segment, Track } = BaseBuilder.MODELS;

/** Metres of a second of latitude at 47.5°, by the radii of WGS 84. */
const SECOND_m = 30.883;
/** Due north at 10 m/s from open sea, a point a second. */
const north = (count: number, more: (i: number) => { ele?: number } = () => ({})) =>
  Array.from(
    { length: count },
    (_, i) =>
      new Point(47.5 + (i * 10) / (SECOND_m * 3600), -31.25, {
        time: new Date(Date.UTC(2026, 4, 2, 9, 30, i)),
        ...more(i),
      }),
  );

/** A file as gpx-builder 6 writes it (a general library for GPX 1.1, which knows nothing of the reader under test). */
function written(...segments: InstanceType<typeof Point>[][]): string {
  const file = new BaseBuilder();
  file.setMetadata(
    new Metadata({ name: 'A < B & "C"', desc: 'Home gate', time: new Date(Date.UTC(2026, 4, 2)) }),
  );
  file.setWayPoints([new Point(1, 1, { name: 'Gate' })]);
  file.setTracks([
    new Track(
      segments.map((points) => new Segment(points)),
      { name: 'Home gate' },
    ),
  ]);
  return buildGPX(file.toObject());
}
const read = (text: string) => {
  const report = new Report();
  const run = readGpx(new Lines('content/road-tests/a.gpx', text), report);
  return { run, problems: report.problems };
};
test('A second of latitude at 47.5° is 30.88 m, and of longitude 20.93 m (WGS 84 radii, worked by hand)', () => {
  const a = { lat: 47.5, lon: -31.25 };
  expect(between(a, { lat: 47.5 + 1 / 3600, lon: -31.25 })).toBeCloseTo(30.883, 2);
  expect(between(a, { lat: 47.5, lon: -31.25 + 1 / 3600 })).toBeCloseTo(20.927, 2);
  expect(between({ lat: 0, lon: 179.9999 }, { lat: 0, lon: -179.9999 })).toBeCloseTo(22.264, 2);
});

test('A track driven at 10 m/s reads as 10 m/s all along', () => {
  const { run, problems } = read(written(north(40)));
  expect(problems).toEqual([]);
  expect(run?.samples).toHaveLength(40);
  for (const one of run?.samples ?? []) expect(one.speed_mps).toBeCloseTo(10, 2);
});

test('Segments of a track follow one another', () => {
  const all = north(40);
  const { run, problems } = read(written(all.slice(0, 25), all.slice(25)));
  expect(problems).toEqual([]);
  expect(run?.samples.map((one) => one.time_s)).toEqual(all.map((_, i) => i));
});

test('Nothing that is read holds a place, a name or an hour', () => {
  const text = written(north(40));
  for (const secret of ['47.5', '31.25', 'Home', '2026', '09:30']) expect(text).toContain(secret);
  const { run } = read(text);
  const told = JSON.stringify(run);
  for (const secret of ['47.5', '31.25', 'Home', '2026', '09:30', '"lat"', '"lon"'])
    expect(told).not.toContain(secret);
  expect(run?.samples[0]?.time_s).toBe(0);
});

test('Heights count from the first one', () => {
  const { run } = read(written(north(40, (i) => ({ ele: 431 + i }))));
  expect(run?.samples[0]?.height_m).toBe(0);
  expect(run?.samples[39]?.height_m).toBe(39);
});

test('Prefixes, comments, CDATA and numbered characters make no difference', () => {
  const text = written(north(40))
    .replace('<trkseg>', '<!-- a comment --> <trkseg>')
    .replace('</metadata>', '<keywords><![CDATA[a < b]]> &#233; &amp;</keywords></metadata>')
    .replaceAll('<trk', '<g:trk')
    .replaceAll('</trk', '</g:trk');
  expect(text).toContain('<g:trkpt');
  expect(text).toContain('CDATA');
  expect(read(text).run?.samples).toHaveLength(40);
});

test('A route that was planned, and a track without times, are no run', () => {
  const planned = written(north(40))
    .replaceAll('trkpt', 'rtept')
    .replaceAll(/<\/?trkseg>/g, '')
    .replaceAll('trk>', 'rte>');
  expect(read(planned).problems[0]?.message).toMatch(/no track/);
  const timeless = written(north(40)).replaceAll(/<time>[^<]*<\/time>/g, '');
  expect(read(timeless).problems[0]?.message).toMatch(/no time/);
});

test.each([
  ['an entity that is defined in the file', '<!DOCTYPE a [<!ENTITY b "bb">]><a>&b;</a>', /document type/],
  ['an entity of HTML', '<a>&nbsp;</a>', /five named characters/],
  ['a bare ampersand', '<a>this & that</a>', /five named characters/],
  ['tags that cross', '<a><b></a></b>', /closes nothing/],
  ['an element left open', '<a><b></b>', /never closed/],
  ['an attribute twice', '<a x="1" x="2"/>', /stands twice/],
  ['text behind the end', '<a/>more', /outside/],
  ['two roots', '<a/><b/>', /second element/],
  ['a tag cut off', '<a x="1"', /not written to its end/],
  ['deep nesting', '<a>'.repeat(60), /nest deeper/],
  ['nothing', '', /no element/],
])('XML with %s is refused', (_, text, says) => {
  expect(() => readXml(text)).toThrow(XmlError);
  expect(() => readXml(text)).toThrow(says);
});

test('A million characters of hostile text are refused within a second', () => {
  const before = performance.now();
  for (const text of [
    `<a ${' '.repeat(1e6)}`,
    `<a>${'&'.repeat(1e6)}</a>`,
    '<'.repeat(1e6),
    `<a x="${'x'.repeat(1e6)}`,
  ])
    expect(() => readXml(text)).toThrow(XmlError);
  expect(performance.now() - before).toBeLessThan(1000);
});
