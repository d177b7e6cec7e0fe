/** A plain transcript: a time stamp, then running words, as speech recognition gives. */
import { blank } from './markdown.ts';
import type { Block, ReadSource, Source } from './source.ts';

const STAMP =
  /^[ \t]*(?:[[(]\s*)?((?:\d{1,2}:)?\d{1,3}:\d{2}(?:[.,]\d{1,3})?)(?:\s*[\])])?[ \t]*(?:[-–—:|]\s)?/;

/** Whether most paragraphs of a text begin with a time. */
export function isTimed(text: string): boolean {
  const lines = text
    .slice(0, 40_000)
    .split('\n')
    .filter((line) => line.trim() !== '');
  const stamped = lines.filter((line) => STAMP.test(line)).length;
  return stamped >= 2 && stamped >= lines.length / 8;
}

export function readTimed(source: Source): ReadSource {
  const blocks: Block[] = [];
  const warnings: ReadSource['warnings'] = [];
  const parts: string[] = [];
  let at = 0;
  let row = 0;
  let now: Block | undefined;
  let last = -1;
  for (const line of source.text.split(/(?<=\n)/)) {
    row += 1;
    const stamp = STAMP.exec(line);
    const lead = stamp?.[0].length ?? 0;
    const words = line.slice(lead);
    if (stamp) {
      const time = (stamp[1] ?? '')
        .replace(',', '.')
        .split(':')
        .reduce((sum, part) => sum * 60 + Number(part), 0);
      if (time < last)
        warnings.push({
          line: row,
          message: `The time ${stamp[1]} is earlier than the one before it. The words are kept in the order of the file.`,
        });
      last = time;
      now = { kind: 'speech', start: at + lead, end: at + lead, at: time };
      if (words.trim() !== '') blocks.push(now);
      else blocks.push(now);
    } else if (!now && words.trim() !== '') {
      now = { kind: 'prose', start: at, end: at };
      blocks.push(now);
    }
    if (now && words.trim() !== '') now.end = at + lead + words.trimEnd().length;
    parts.push(blank(line.slice(0, lead)), words);
    at += line.length;
  }
  return {
    source,
    kind: 'transcript',
    masked: parts.join(''),
    blocks: blocks.filter(({ start, end }) => end > start),
    warnings,
  };
}
