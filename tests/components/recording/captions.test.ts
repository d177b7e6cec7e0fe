import { expect, test } from 'vitest';
import { atMoment, recordingName } from '../../../src/components/recording/addresses.ts';
import { captionsFile } from '../../../src/components/recording/captions.ts';
import { Report } from '../../../src/record/report-to.ts';
import { Lines } from '../../../src/record/text/lines.ts';
import { passages, readTranscript } from '../../../src/record/transcript.ts';

const VTT = `WEBVTT

NOTE the gate code is PLANTED-4711

STYLE
::cue { color: red }

first
00:00:00.500 --> 00:00:02.000 align:start
<v Wenna Straik>Out of doors, <i>in neutral</i> & chocked <00:00:01.000>already.

01:02:03.004 --> 01:02:05.000
1 &lt; 2 &amp; 3,
on two lines.
`;
const read = (text: string) => {
  const report = new Report();
  return { cues: readTranscript(new Lines('captions.vtt', text), report), problems: report.problems };
};

test('a transcript has the words said, without speakers’ names, styles, times inside and notes', () => {
  const { cues, problems } = read(VTT);
  expect(problems).toEqual([]);
  expect(cues.map((cue) => [cue.from, cue.until])).toEqual([
    [0.5, 2],
    [3723.004, 3725],
  ]);
  expect(cues[1]?.text).toBe('1 < 2 & 3, on two lines.');
  expect(cues[0]?.text).toBe('Out of doors, in neutral & chocked already.');
});

test('published captions hold words and times alone, and read back the same', () => {
  const { cues } = read(VTT);
  const published = captionsFile(cues);
  expect(published).not.toMatch(/PLANTED|Wenna|STYLE|first/);
  expect(published).toContain('01:02:03.004 --> 01:02:05.000');
  expect(read(published)).toEqual({ cues, problems: [] });
});

test('words are gathered under the step during which they were said; a silent step keeps its place', () => {
  const cue = (from: number) => ({ from, until: from + 1, text: String(from) });
  const step = (id: string, number: number, at?: number) => ({
    id,
    number,
    title: id,
    ...(at !== undefined && { at }),
  });
  const parts = passages(
    [cue(0), cue(9.9), cue(10), cue(31)],
    [step('b', 2, 30), step('a', 1, 10), step('s', 3, 20), step('n', 4)],
  );
  expect(parts.map((part) => [part.step?.id, part.cues.map((one) => one.text)])).toEqual([
    [undefined, ['0', '9.9']],
    ['a', ['10']],
    ['s', []],
    ['b', ['31']],
  ]);
});

test('a time opens our file, or the page elsewhere, at that place', () => {
  const file = {
    slug: 'first-start',
    recording: { kind: 'file' as const, path: '/x/Evening.MP4', type: 'video/mp4', sound: false },
  };
  expect(recordingName(file)).toBe('first-start.mp4');
  expect(atMoment(file, 751.8)).toMatch(/\/recordings\/first-start\.mp4#t=751$/);
  const link = {
    slug: 'x',
    recording: { kind: 'link' as const, href: 'https://video.example/265#top', host: 'video.example' },
  };
  expect(atMoment(link, 3)).toBe('https://video.example/265#t=3');
  expect(atMoment({ slug: 'x' }, 3)).toBeUndefined();
});
