import { expect, test } from 'vitest';
import { pointChart } from '../../../src/components/road-tests/point-chart.ts';
import { clockWords, correctionWords, rightAs } from '../../../src/components/road-tests/point-figures.ts';
import { runCharts } from '../../../src/components/road-tests/run-charts.ts';
import { asPublished } from '../../../src/record/publish.ts';
import { readSeries } from '../../../src/record/read-series.ts';
import { Report } from '../../../src/record/report-to.ts';
import { readAloud } from '../../../src/record/road-tests/read-aloud.ts';
import { putRight } from '../../../src/record/road-tests/speedometer.ts';
import { spokenSpeeds } from '../../../src/record/road-tests/spoken-speed.ts';
import { Lines } from '../../../src/record/text/lines.ts';
import { madeSeries } from '../made.ts';

const heard = (words: string) =>
  spokenSpeeds(words).map(({ value, unit, slope }) => [value, unit, slope].filter(Boolean).join(' '));

test.each([
  ['at the bottom of the hill it shows forty-five … fifty-five on the level', ['45', '55 level']],
  ['it says 45 on the level, thirty up the hill', ['45 level', '30 uphill']],
  ['At the bottom of the hill it says forty, and now uphill, thirty.', ['40', '30 uphill']],
  ['thirty, still uphill', ['30 uphill']],
  ['it shows forty-five fifty-five on the level', ['45', '55 level']],
  ['needle on forty and a half, level', ['40.5 level']],
  ['thirty-two miles an hour flat out', ['32 mph']],
  ['45 km/h, 28 mph', ['45 km/h', '28 mph']],
  ['forty-five kilometres an hour on the flat', ['45 km/h level']],
  ['we are doing fifty-two downhill', ['52 downhill']],
  ['Still twenty-two.', ['22']],
  ['Forty-four, no, forty-five, level.', ['45 level']],
  ['It shows forty-four uphill. Sorry, forty-one.', ['41 uphill']],
  ['it shows a hundred and five', ['105']],
])('"%s" is heard as %j', (words, speeds) => {
  expect(heard(words)).toEqual(speeds);
});

test.each([
  ['what a book says', 'The book says sixty.'],
  ['a limit', 'The limit here is fifty on the level.'],
  ['a wish', 'It ought to do sixty on the level.'],
  ['what it is not', "It isn't showing forty yet."],
  ['counting', 'Three, two, one.'],
  ['lengths, degrees and litres', 'twenty lengths, forty degrees, 12 litres, 45 minutes'],
  ['a time of day', 'at 12:45 by the church'],
  ['a date or a place', 'stop eighteen, round ten, gate twenty'],
  ['a gradient', 'one in ten'],
  ['revolutions', 'it shows 2,790 revs'],
  ['what the receiver says', 'the receiver says fifty-two'],
])('%s is no speed read aloud', (_, words) => {
  expect(heard(words)).toEqual([]);
});

/** As passengers say it, with and without commas; on the right what is a point: "45 level|30 uphill". */
const SAID: readonly (readonly [words: string, points: string])[] = [
  ['okay so we are on the flat now and it is showing forty five', '45 level'],
  ['fifty', '50'],
  ['just touching fifty-two', '52'],
  ['about thirty-eight up this hill', '38 uphill'],
  ['and down the other side, fifty-five, fifty-six, that is enough', '55 downhill|56'],
  ['she will not do more than forty-eight on the level', ''],
  ['speedo says 35, gps says 33', '35'],
  ['third gear, 28 mph', '28mph'],
  ['that is sixty kilometres an hour', '60km/h'],
  ['now going up the bank in second at twenty-two', '22 uphill'],
  ['needle is between forty and forty-five', ''],
  ['we have done two miles', ''],
  ['water is at eighty degrees', ''],
  ['temperature eighty', ''],
  ['oil pressure forty', ''],
  ['forty pounds of oil pressure', ''],
  ['twelve volts', ''],
  ['house number forty-five on the left', ''],
  ['there is a thirty sign', ''],
  ['we are in the thirty limit', ''],
  ['coming up to fifty', '50'],
  ['dropping to thirty on the hill', '30'],
  ['dropped to 25 by the top', '25'],
  ['held forty all the way up the hill', '40 uphill'],
  ['flat out, downhill, 62', '62 downhill'],
  ['sixty two downhill flat out', '62 downhill'],
  ['I make it forty', '40'],
  ['it is reading thirty', '30'],
  ['thirty thirty-five forty', ''],
  ['40. 42. 45.', '40|42|45'],
  ['twenty past three', ''],
  ['half past ten', ''],
  ['at ten o’clock', ''],
  ['1957', ''],
  ['she is fifty years old', ''],
  ['two hundred yards to go', ''],
  ['a hundred metres', ''],
  ['forty-five and climbing', '45'],
  ['still forty-five', '45'],
  ['steady at forty', '40'],
  ['top gear, level road, forty-three', '43 level'],
  ['between forty and forty-five on the level', ''],
  ['temperature’s gone up, it was eighty-two and now it’s ninety-six', ''],
  ['we keep it under thirty kilometres an hour', ''],
  ['the speedo says forty and the phone says thirty six', '40'],
];

test.each(SAID)('"%s" gives the points "%s"', (words, points) => {
  expect(
    heard(words)
      .join('|')
      .replace(/ (km\/h|mph)/g, '$1'),
  ).toBe(points);
});

const VTT = `WEBVTT

NOTE by the old mill at Hollowford

01:00:12.000 --> 01:00:15.000
<v Ada>Past Hollowford mill it shows
<i>forty-five</i>

01:00:24.500 --> 01:00:27.000
fifty-five on the level
`;
const SRT = VTT.replace('WEBVTT\n\nNOTE by the old mill at Hollowford\n\n', '1\n')
  .replace('\n\n01', '\n\n2\n01')
  .replaceAll(/(\d\d)\.(\d{3})/g, '$1,$2');
const TIMED = '[1:00:12] Past Hollowford mill it shows forty-five\n[1:00:24.5] fifty-five on the level\n';
const TABLE =
  'time (m:ss);indicated speed (km/h);slope;note\n60:12;45;;Hollowford mill\n60:24,5;55;level;\n'.replace(
    '60:24,5',
    '60:24.5',
  );

const row = (file: string, more = 'km/h', kind = 'hill') => ({
  'road-tests.csv': `test,title,chapter,kind,file,from,until,said_in\nneedle,The needle,01-first-look,${kind},${file},,,${more}\n`,
});
async function read(files: Record<string, string>) {
  const { series, problems } = await readSeries(madeSeries(files));
  if (!series) throw new Error('no series');
  return { series, problems, test: series.roadTests[0] };
}

test.each([
  ['WebVTT', 'ride.vtt', VTT, 'km/h'],
  ['SRT', 'ride.srt', SRT, 'km/h'],
  ['a timed transcript', 'ride.txt', TIMED, 'km/h'],
  ['a table', 'ride.csv', TABLE, ''],
])('From %s come the same two points, counted from the first', async (_, file, text, unit) => {
  const { test: one, problems } = await read({ ...row(file, unit), [`road-tests/${file}`]: text });
  expect(problems).toEqual([]);
  expect(one?.runs).toEqual([]);
  expect(one?.points[0]?.points).toEqual([
    { value: 45, unit: 'km/h', time_s: 0 },
    { value: 55, unit: 'km/h', slope: 'level', time_s: 12.5 },
  ]);
});

test('Nothing of what readers get holds words, places, the hour or the file’s name', async () => {
  const { series } = await read({ ...row('ride.vtt'), 'road-tests/ride.vtt': VTT });
  const told = JSON.stringify(asPublished(series).roadTests.map(({ place, ...rest }) => [rest, place.line]));
  expect(told).toContain('"value":45');
  for (const secret of ['Hollowford', 'mill', 'Ada', 'shows', '3612', '1:00', 'ride'])
    expect(told).not.toContain(secret);
});

test('Points are drawn as marks that nothing joins, and no curve is drawn', async () => {
  const { test: one } = await read({ ...row('ride.vtt'), 'road-tests/ride.vtt': VTT });
  if (!one) throw new Error('no test');
  expect(runCharts(one)).toEqual([]);
  const svg = pointChart(one)?.svg ?? '';
  expect(svg.match(/<circle/g)).toHaveLength(2);
  expect(svg).toContain('not said');
  expect(svg).not.toMatch(/ style=|stroke-width="2"|<polyline/);
  expect(
    [...svg.matchAll(/ d="([^"]*)" fill="none"/g)].every(([, d = '']) =>
      /^M[\d. ]+[HV][\d.]+(?:H[\d.]+)?$/.test(d),
    ),
  ).toBe(true);
});

test('A coast-down of points cannot tell, in words and as a warning', async () => {
  const { test: one, problems } = await read({
    ...row('ride.vtt', 'km/h', 'coast-down'),
    'road-tests/ride.vtt': VTT,
  });
  expect(problems.map((problem) => problem.rule)).toEqual(['road-tests/cannot-tell']);
  expect(one?.coasting?.answer).toMatchObject({ ok: false, reason: expect.stringMatching(/single points/) });
});

test('The chapter’s own captions serve by their name, cut to a stretch of the recording', async () => {
  const files = {
    'road-tests.csv':
      'test,chapter,kind,file,from,until,said_in\nneedle,01-first-look,cruise,captions.vtt,60:20,61:00,mph\n',
    'chapters/01-first-look/captions.vtt': VTT.replace('Past Hollowford mill', 'Here'),
  };
  const { test: one } = await read(files);
  expect(one?.points[0]?.points).toEqual([{ value: 55, unit: 'mph', slope: 'level', time_s: 0 }]);
});

test('A figure that is said again in one breath is one point', async () => {
  const { test: one } = await read({
    ...row('ride.txt', ''),
    'road-tests/ride.txt':
      '[0:05] it shows thirty on the level call it thirty kilometres an hour\n[0:20] nothing\n',
  });
  expect(one?.points[0]?.points).toEqual([{ value: 30, unit: 'km/h', slope: 'level', time_s: 0 }]);
});

test('A table of points may leave times out', async () => {
  const { test: one, problems } = await read({
    ...row('few.csv', ''),
    'road-tests/few.csv': 'indicated speed (mph),slope\n28,level\n31,downhill\n',
  });
  expect(problems).toEqual([]);
  expect(one?.points[0]?.points).toEqual([
    { value: 28, unit: 'mph', slope: 'level' },
    { value: 31, unit: 'mph', slope: 'downhill' },
  ]);
  expect(one && pointChart(one)).toBeUndefined();
});

/** 1 km in 72 s is 50 km/h: exact arithmetic. A dial that shows 52 then shows 4 % of the true speed too much. */
test('A measured error of the dial is taken out, and its doubt kept', () => {
  const point = { value: 52, unit: 'km/h' } as const;
  expect(putRight(point, { share: 0.04, pm: 0.01 }).value).toBeCloseTo(50, 10);
  expect(putRight(point, { share: 0.04, pm: 0.01 }).pm).toBeCloseTo(50 * (0.01 / 1.04), 10);
  expect(rightAs(point, { share: 0.04 })).toMatch(/^50\skm\/h$/);
  expect(rightAs(point, { share: 0.04, pm: 0.02 })).toMatch(/^50\.0 ± 1\.0\skm\/h$/);
  expect(correctionWords({ share: -0.01, pm: 0.024 })).toMatch(/shows 1 % too little, ± 2.4 %/);
});

test.each([
  ['measured', 0.04],
  ["maker's book", undefined],
  ['told', undefined],
])('An error of the dial that is %s counts so: %j', async (source, share) => {
  const { readFileSync } = await import('node:fs');
  const base = readFileSync(new URL('../../series/_base/content/machine.yaml', import.meta.url), 'utf8');
  const { test: one } = await read({
    ...row('ride.vtt'),
    'road-tests/ride.vtt': VTT,
    'machine.yaml': `${base.trimEnd()}\n\ninstruments:\n  speedometer_error: { label: "Shows too much", as_built: "4 %", source: ${JSON.stringify(source)} }\n`,
  });
  expect(one?.speedometer?.share).toBe(share);
});

test('Times are written as a clock, without an odd sixty', () => {
  expect([0, 12.5, 59.6, 65].map(clockWords)).toEqual(['0:00', '0:13', '1:00', '1:05']);
});

test('A million characters of speech, or of nothing like it, are read within three seconds', () => {
  for (const text of [
    `[0:01] ${'forty five '.repeat(90_000)}`,
    `[0:01] ${'and the hill goes up and the '.repeat(35_000)}`,
    `[0:01] it shows${' '.repeat(1e6)}x`,
    `[0:01] ${'4'.repeat(1e6)}`,
    `[0:01] ${'no . , '.repeat(140_000)}`,
    `WEBVTT\n\n00:01.000 --> 00:02.000\n${'<b'.repeat(500_000)}`,
    Array.from({ length: 20_000 }, () => '[0:01] it shows forty-five on the level and').join('\n'),
  ]) {
    const before = performance.now();
    readAloud(new Lines('content/road-tests/a.txt', text), new Report());
    expect(performance.now() - before, text.slice(0, 40)).toBeLessThan(3000);
  }
});
