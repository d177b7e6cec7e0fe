/** The words of a recording, from its captions (WebVTT, W3C). */
import webvtt, { type Cue as VttCue } from 'webvtt-parser';
import type { Report } from './report-to.ts';
import type { Lines } from './text/lines.ts';

export interface Cue {
  /** Seconds into the recording. */
  from: number;
  until: number;
  /** Plain text, without the markup of captions. */
  text: string;
}

/** What WebVTT writes instead of its own marks; the parser wants each with and without its semicolon. */
const ENTITIES: Record<`&${string}`, string> = Object.fromEntries(
  Object.entries({ amp: '&', lt: '<', gt: '>', lrm: '\u200e', rlm: '\u200f', nbsp: '\u00a0' }).flatMap(
    ([name, character]) => [
      [`&${name}`, character],
      [`&${name};`, character],
    ],
  ),
);

/** Mistakes inside a cue's words, which players pass over: a bare "&", a tag left open. Lost words are looked for below. */
const HARMLESS = /escape|tag|<v>|<lang>|^Timestamp (?:must|not allowed)|previous timestamp/;

/** Cues in the order of their times; what cannot be read is told with its place. */
export function readTranscript(lines: Lines, report: Report): Cue[] {
  const { cues, errors } = new webvtt.WebVTTParser(ENTITIES).parse(lines.text);
  for (const { message, line, col } of errors) {
    if (HARMLESS.test(message)) continue;
    report.add(
      'chapters/captions',
      lines.atLine(Math.max(1, line), Math.max(1, col)),
      `${message.replace(/\.?$/, '.')} Export the captions again as WebVTT, or put the line right.`,
    );
  }
  let from = 0;
  for (const { text } of cues) {
    const start = lines.text.indexOf(text, from);
    const bare = text.search(/<(?![/a-z\d])/i);
    if (bare >= 0 && start >= 0)
      report.add(
        'chapters/captions',
        lines.at(start + bare),
        'A bare "<" begins a tag in captions, and the words after it would be lost. Write &lt; instead.',
      );
    from = Math.max(from, start);
  }
  return cues
    .map((cue) => ({
      from: cue.startTime,
      until: cue.endTime,
      text: wordsOf(cue.tree.children).replace(/\s+/g, ' ').trim(),
    }))
    .filter((cue) => cue.text !== '')
    .sort((a, b) => a.from - b.from);
}

type Node = VttCue['tree']['children'][number];

/** Text of a cue's tree; a speaker's name, styles and times within it are not words said. */
function wordsOf(nodes: readonly Node[]): string {
  return nodes
    .map((node) =>
      node.type === 'text' ? node.value : node.type === 'object' ? wordsOf(node.children as Node[]) : '',
    )
    .join('');
}

export interface Passage {
  /** The step under way; undefined before the first. */
  step?: { id: string; title: string; number: number; at: number };
  cues: Cue[];
}

/** Cues gathered under the steps during which they were said. Every timed step has its passage, also a silent one. */
export function passages(
  cues: readonly Cue[],
  steps: readonly { id: string; title: string; number: number; at?: number }[],
): Passage[] {
  const timed = steps
    .flatMap(({ at, ...step }) => (at === undefined ? [] : [{ ...step, at }]))
    .sort((a, b) => a.at - b.at);
  const first = timed[0]?.at ?? Number.POSITIVE_INFINITY;
  const before = cues.filter((cue) => cue.from < first);
  const under = timed.map((step, at): Passage => {
    const end = timed[at + 1]?.at ?? Number.POSITIVE_INFINITY;
    return { step, cues: cues.filter((cue) => cue.from >= step.at && cue.from < end) };
  });
  return before.length > 0 ? [{ cues: before }, ...under] : under;
}
