import type { Cue } from '../../record/transcript.ts';

function stamp(seconds: number): string {
  const milli = Math.round(seconds * 1000);
  const two = (value: number, digits = 2) => String(Math.floor(value)).padStart(digits, '0');
  return `${two(milli / 3_600_000)}:${two((milli / 60_000) % 60)}:${two((milli / 1000) % 60)}.${two(milli % 1000, 3)}`;
}

const escaped = (text: string): string =>
  text.replaceAll('&', '&amp;').replaceAll('<', '&lt;').replaceAll('>', '&gt;');

/** Captions as they are published: words and times alone, none of the notes and names that the author's file may hold. */
export const captionsFile = (cues: readonly Cue[]): string =>
  `WEBVTT\n\n${cues.map(({ from, until, text }) => `${stamp(from)} --> ${stamp(until)}\n${escaped(text)}\n`).join('\n')}`;
