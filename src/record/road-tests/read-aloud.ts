import { bisectRight } from 'd3-array';
import { readSpoken, type Spoken } from '../captions.ts';
import type { Report } from '../report-to.ts';
import type { Lines } from '../text/lines.ts';
import type { PointsText, ReadPoint } from './points.ts';
import { spokenSpeeds } from './spoken-speed.ts';

/** A longer silence ends a sentence. */
const SILENCE_s = 2.5;

/**
 * The speeds that somebody reads aloud on a recording, from its captions or its timed transcript. A speed has the time at
 * which its line of words begins.
 */
export function readAloud(lines: Lines, report: Report): PointsText | undefined {
  const spoken = readSpoken(lines, report, 'road-tests/read-aloud');
  if (spoken.length === 0)
    return report.add(
      'road-tests/read-aloud',
      { file: lines.file },
      'No words with times stand in this file. Export the captions as WebVTT or SRT, or begin each line of a transcript with its time, such as [1:05].',
    );
  const { text, lineAt } = oneText(spoken);
  const points = spokenSpeeds(text).flatMap(({ start, end, ...speed }): ReadPoint[] => {
    const { line, offset } = lineAt(start);
    if (!line) return [];
    const at = lines.at(line.at + offset);
    return [{ ...speed, time_s: line.from, words: text.slice(start, end), at }];
  });
  return { points: saidOnce(points), aloud: true };
}

/** A figure that is said again in one breath is one point, with all that was said of it. */
function saidOnce(points: readonly ReadPoint[]): ReadPoint[] {
  const out: ReadPoint[] = [];
  /** Of the same line of words. */
  let breath: { time_s: number | undefined; byValue: Map<number, number[]> } | undefined;
  for (const one of points) {
    if (breath?.time_s !== one.time_s || !breath) breath = { time_s: one.time_s, byValue: new Map() };
    const same = breath.byValue.get(one.value) ?? [];
    const at = same.find((index) => agrees(out[index], one));
    if (at === undefined) breath.byValue.set(one.value, [...same, out.push(one) - 1]);
    else out[at] = { ...one, ...out[at] };
  }
  return out;
}

const agrees = (a: ReadPoint | undefined, b: ReadPoint) =>
  a !== undefined &&
  (a.unit ?? b.unit) === (b.unit ?? a.unit) &&
  (a.slope ?? b.slope) === (b.slope ?? a.slope);

/** Lines as one running text, so that a sentence may go over several; and the line that an offset of it lies in. */
function oneText(spoken: readonly Spoken[]) {
  let text = '';
  const starts: number[] = [];
  for (const [i, one] of spoken.entries()) {
    const before = spoken[i - 1];
    if (before) text += one.from - before.until > SILENCE_s ? '\n\n' : ' ';
    starts.push(text.length);
    text += one.text;
  }
  const lineAt = (offset: number) => {
    const i = bisectRight(starts, offset) - 1;
    return { line: spoken[i], offset: offset - (starts[i] ?? 0) };
  };
  return { text, lineAt };
}
