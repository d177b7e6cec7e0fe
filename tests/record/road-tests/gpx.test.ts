import { expect, test } from 'vitest';
import { Report } from '../../../src/record/report-to.ts';
import { between, readGpx } from '../../../src/record/road-tests/gpx.ts';
import { readXml, XmlError } from '../../../src/record/road-tests/xml.ts';
import { Lines } from '../../../src/record/text/lines.ts';

const point = (second: number, lat: number, more = '') =>
  `<trkpt lat="${lat.toFixed(7)}" lon="-31.2500000">${more}<time>2026-05-02T09:30:${String(second).padStart(2, '0')}Z</time></trkpt>`;
const track = (points: string, more = '') =>
  `<?xml version="1.0" encoding="UTF-8"?>\n<gpx version="1.1" xmlns="http://www.topografix.com/GPX/1/1">${more}<trk><name>Home gate</name><trkseg>${points}</trkseg></trk></gpx>`;
const read = (text: string) => {
  const report = new Report();
  const run = readGpx(new Lines('content/road-tests/a.gpx', text), report);
  return { run, problems: report.problems };
};
/** 10 m/s due north at 47.5°: one second of latitude there is 30.885 m. */
const north = Array.from({ length: 40 }, (_, i) => point(i, 47.5 + (i * 10) / (30.885 * 3600)));

test('A second of latitude at 47.5° is 30.88 m, and of longitude 20.93 m (WGS 84 radii, worked by hand)', () => {
  const a = { lat: 47.5, lon: -31.25 };
  expect(between(a, { lat: 47.5 + 1 / 3600, lon: -31.25 })).toBeCloseTo(30.883, 2);
  expect(between(a, { lat: 47.5, lon: -31.25 + 1 / 3600 })).toBeCloseTo(20.927, 2);
  expect(between({ lat: 0, lon: 179.9999 }, { lat: 0, lon: -179.9999 })).toBeCloseTo(22.264, 2);
});

test('A track driven at 10 m/s reads as 10 m/s all along', () => {
  const { run, problems } = read(track(north.join('\n')));
  expect(problems).toEqual([]);
  for (const one of run?.samples ?? []) expect(one.speed_mps).toBeCloseTo(10, 1);
});

test('Nothing that is read holds a place, a name or an hour', () => {
  const { run } = read(track(north.join('\n')));
  const told = JSON.stringify(run);
  for (const secret of ['47.5', '31.25', 'Home', '2026', '09:30', '"lat"', '"lon"'])
    expect(told).not.toContain(secret);
  expect(run?.samples[0]?.time_s).toBe(0);
});

test('Heights count from the first one', () => {
  const high = north.map((one, i) => one.replace('<time>', `<ele>${431 + i}</ele><time>`));
  const { run } = read(track(high.join('')));
  expect(run?.samples[0]?.height_m).toBe(0);
  expect(run?.samples[39]?.height_m).toBe(39);
});

test('Prefixes, comments, CDATA, numbered characters and waypoints make no difference', () => {
  const text = track(
    `<!-- a comment --> ${north.join('')}`,
    '<metadata><name><![CDATA[a < b]]> &#233; &amp;</name></metadata><wpt lat="1" lon="1"/>',
  )
    .replaceAll('<trk', '<g:trk')
    .replaceAll('</trk', '</g:trk');
  expect(read(text).run?.samples).toHaveLength(40);
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
