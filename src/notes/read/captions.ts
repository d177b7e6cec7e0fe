/** Captions, WebVTT (W3C) or SRT: each cue's words with its time. */
import webvtt from 'webvtt-parser';
import { blank } from './markdown.ts';
import { type Block, lineFinder, type ReadSource, type Source } from './source.ts';

const TIMING = /^\s*((?:\d+:)?\d{1,2}:\d{2}[.,]\d{1,3})\s*-->\s*((?:\d+:)?\d{1,2}:\d{2}[.,]\d{1,3})(.*)$/;

const seconds = (time: string): number =>
  time
    .replace(',', '.')
    .split(':')
    .reduce((sum, part) => sum * 60 + Number(part), 0);

export function readCaptions(source: Source): ReadSource {
  const { text } = source;
  const lineOf = lineFinder(text);
  const blocks: Block[] = [];
  const warnings: ReadSource['warnings'] = [];
  let masked = '';
  let at = 0;
  let state: 'between' | 'words' | 'note' = 'between';
  let cue: { from: number; until: number } | undefined;
  let last = { from: -1, until: -1 };
  let speaker = '';
  for (const line of text.split(/(?<=\n)/)) {
    const bare = line.replace(/[\r\n]+$/, '');
    const timing = TIMING.exec(bare);
    if (timing) {
      cue = { from: seconds(timing[1] ?? ''), until: seconds(timing[2] ?? '') };
      const here = lineOf(at);
      if (cue.until < cue.from)
        warnings.push({
          line: here,
          message: `This cue ends at ${timing[2]}, before it begins. Its words are kept at ${timing[1]}.`,
        });
      else if (cue.from < last.from)
        warnings.push({
          line: here,
          message: `This cue begins at ${timing[1]}, before the one above it. Its words are kept in the order of the file.`,
        });
      else if (cue.from < last.until - 0.001)
        warnings.push({
          line: here,
          message: `This cue begins at ${timing[1]}, while the one above it still runs. Both are kept.`,
        });
      last = cue;
      state = 'words';
      masked += blank(line);
    } else if (bare.trim() === '') {
      state = 'between';
      masked += blank(line);
    } else if (state === 'words' && cue) {
      const words = withoutTags(line);
      masked += words;
      const trimmed = words.trim();
      if (trimmed !== '') {
        const start = at + words.indexOf(trimmed);
        const before = blocks.at(-1);
        const same = before?.at === cue.from;
        // A cue that stops in mid-sentence is gone on with by the next one.
        if (before && !/[.!?…]["'”’]?$/.test(masked.slice(before.start, before.end).trim()))
          before.goesOn = true;
        if (before && !same && cue.from - (endOf.get(before) ?? cue.from) > 2.5) before.goesOn = false;
        // Somebody else speaks: WebVTT's voice tag, or the dash or the name that captions for the deaf put before it.
        const voice = VOICE.exec(bare);
        const name = voice?.[1] ?? voice?.[2] ?? '';
        if (before && voice && (name === '' || name !== speaker)) before.goesOn = false;
        if (voice) speaker = name;
        const block: Block = { kind: 'speech', start, end: start + trimmed.length, at: cue.from };
        endOf.set(block, cue.until);
        blocks.push(block);
      }
    } else {
      if (/^(?:NOTE|STYLE|REGION)\b/.test(bare)) state = 'note';
      masked += blank(line);
    }
    at += line.length;
  }
  if (/^\ufeff?WEBVTT/.test(text) && text.length < 2_000_000) {
    const errors = new webvtt.WebVTTParser().parse(text.replace(/\r\n?/g, '\n')).errors;
    const known = new Set(warnings.map(({ line }) => line));
    for (const { message, line } of errors)
      if (!known.has(line) && !/escape|tag|<v>|<lang>|overlap|start timestamp/i.test(message))
        warnings.push({
          line: Math.max(1, line),
          message: `${message.replace(/\.?$/, '.')} Export the captions again, or put the line right.`,
        });
  }
  return { source, kind: 'captions', masked, blocks, warnings };
}

const VOICE = /^\s*(?:<v(?:\.[^\s>]*)?\s+([^>]+)>|[-–—]\s|([A-Z][A-Z .'-]{1,24}):\s)/;

const endOf = new WeakMap<Block, number>();

/** Tags blank out; what escapes stand for is told by the reader of the words. */
const withoutTags = (line: string): string =>
  line.replace(/<\/?(?:[biuc]|v|lang|ruby|rt|font)(?:[.\s][^<>\n]*)?>|<\d[\d:.]*>|\{\\an?\d\}/gi, (tag) =>
    ' '.repeat(tag.length),
  );
