/** Changes of a text gathered first and made at once, so that every place is one of the text as it stands. */

/** One change of the text: what stands from `start` to `end` becomes `text`. An insertion has no extent. */
export interface Edit {
  start: number;
  end: number;
  text: string;
}

/** A block with blank lines round it, as the place needs. */
export function apartAt(written: string, place: number, text: string): string {
  const before = written.slice(0, place);
  const lead = before.endsWith('\n\n') ? '' : before.endsWith('\n') ? '\n' : '\n\n';
  return `${lead}${text}${written.slice(place).trim() === '' ? '\n' : /^\r?\n/.test(written.slice(place)) ? '' : '\n\n'}`;
}

/** The text with all edits made, in its own line ends; of two at one place the first given stands first. */
export function edited(text: string, edits: readonly Edit[]): string {
  const parts: string[] = [];
  const ends = text.includes('\r\n') ? '\r\n' : '\n';
  let at = 0;
  for (const { start, end, text: next } of [...edits].sort((a, b) => a.start - b.start)) {
    parts.push(text.slice(at, Math.max(at, start)), next.replaceAll('\n', ends));
    at = Math.max(at, end);
  }
  parts.push(text.slice(at));
  return parts.join('');
}
