/**
 * What is said on a recording and when, from WebVTT, SRT, or a transcript whose lines begin with a time. Every character
 * keeps its offset in the file, so that a problem can point at the very word.
 */
import type { Report } from './report-to.ts';
import type { RuleId } from './rules/written.ts';
import type { Lines } from './text/lines.ts';
import { shown } from './text/words.ts';

/** One line of words and the times between which it is said. */
export interface Spoken {
  /** Seconds into the recording. */
  from: number;
  until: number;
  /** As long as it is in the file: markup is blanked out. */
  text: string;
  /** Offset of the text in the file. */
  at: number;
}

const CLOCK = String.raw`(?:\d{1,3}:)?\d{1,3}:\d{2}(?:[.,]\d{1,3})?`;
const WHOLE_CLOCK = new RegExp(`^${CLOCK}$`);
const CUE = new RegExp(`^\\s*(${CLOCK})\\s*-->\\s*(${CLOCK})(?:\\s.*)?$`);
const STAMP = new RegExp(`^\\s*[[(]?(${CLOCK})(?![\\d:.,])[\\])]?[ \\t]*(?:[-–—:|]\\s)?`);
const TAGS = /<\/?(?:[biuc]|v|lang|ruby|rt|font)(?:[.\s][^<>\n]*)?>|<\d[\d:.]*>|\{\\an?\d\}/gi;
/** Words of a transcript without an end time are taken to last no longer than this. */
const BREATH_s = 10;

/** Seconds of "1:05", "00:01:05.250" or "00:01:05,250"; undefined where it is no time of a recording. */
export function clockSeconds(text: string): number | undefined {
  if (!WHOLE_CLOCK.test(text.trim())) return undefined;
  const parts = text.trim().replace(',', '.').split(':').map(Number);
  if (parts.slice(1).some((part) => part >= 60)) return undefined;
  return parts.reduce((sum, part) => sum * 60 + part, 0);
}

/** Everything said, in the order of the file. A line of times that cannot be read is told under `rule`. */
export function readSpoken(lines: Lines, report: Report, rule: RuleId): Spoken[] {
  return lines.text.includes('-->') ? cuesOf(lines, report, rule) : stampedOf(lines.text);
}

function* linesOf(text: string): Generator<{ line: string; at: number }> {
  let at = 0;
  for (const line of text.split('\n')) {
    yield { line, at };
    at += line.length + 1;
  }
}

function cuesOf(lines: Lines, report: Report, rule: RuleId): Spoken[] {
  const out: Spoken[] = [];
  let cue: { from: number; until: number } | undefined;
  for (const { line, at } of linesOf(lines.text)) {
    if (line.trim() === '') cue = undefined;
    else if (line.includes('-->')) {
      const found = CUE.exec(line);
      const [from, until] = [clockSeconds(found?.[1] ?? ''), clockSeconds(found?.[2] ?? '')];
      cue = from === undefined || until === undefined ? undefined : { from, until };
      const wrong =
        cue === undefined
          ? `${shown(line)} is no line of times. Write it as 00:01:05.000 --> 00:01:08.000.`
          : cue.until < cue.from && 'These words end before they begin. Put the two times right.';
      if (wrong) report.add(rule, lines.at(at + line.search(/\S/)), wrong);
    } else if (cue) out.push({ ...cue, text: line.replace(TAGS, (tag) => ' '.repeat(tag.length)), at });
  }
  return out;
}

/** Lines without a time of their own belong to the last one. */
function stampedOf(text: string): Spoken[] {
  const out: Spoken[] = [];
  let from: number | undefined;
  for (const { line, at } of linesOf(text)) {
    const stamp = STAMP.exec(line);
    const time = clockSeconds(stamp?.[1] ?? '');
    const lead = time === undefined ? 0 : (stamp?.[0].length ?? 0);
    from = time ?? from;
    if (from !== undefined && line.slice(lead).trim() !== '')
      out.push({ from, until: from + BREATH_s, text: line.slice(lead), at: at + lead });
  }
  let next = Number.POSITIVE_INFINITY;
  for (const [i, one] of [...out.entries()].reverse()) {
    const after = out[i + 1];
    if (after && after.from > one.from) next = after.from;
    if (next > one.from) one.until = Math.min(one.until, next);
  }
  return out;
}
