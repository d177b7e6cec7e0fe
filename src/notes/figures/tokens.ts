/** A text as words, numbers and signs, each with what lies before it. */
export interface Token {
  /** In small letters. */
  text: string;
  start: number;
  end: number;
  kind: 'word' | 'number' | 'sign';
  /** What lies before: nothing, blanks, a line's end, an empty line. */
  gap: 0 | 1 | 2 | 3;
}

/** Words of Latin, Greek and Cyrillic letters; a letter of another script is a sign. */
const TOKEN =
  /([A-Za-z\u00b5\u00c0-\u00d6\u00d8-\u00f6\u00f8-\u024f\u0370-\u03ff\u0400-\u04ff\u1e00-\u1eff\u2126]+(?:['’][A-Za-z\u00c0-\u00d6\u00d8-\u00f6\u00f8-\u024f]+)*)|(\d+(?:[.,]\d+)*)|\S/g;

export function tokensOf(text: string, offset = 0): Token[] {
  const out: Token[] = [];
  let last = 0;
  TOKEN.lastIndex = 0;
  for (let found = TOKEN.exec(text); found; found = TOKEN.exec(text)) {
    const start = found.index;
    const raw = found[0];
    const end = start + raw.length;
    out.push({
      text: raw === '\u2044' ? '/' : raw.toLowerCase(),
      start: start + offset,
      end: end + offset,
      kind: found[2] !== undefined ? 'number' : found[1] !== undefined ? 'word' : 'sign',
      gap: start === last ? 0 : gapOf(text, last, start),
    });
    last = end;
  }
  return out;
}

function gapOf(text: string, from: number, to: number): 1 | 2 | 3 {
  const line = text.indexOf('\n', from);
  if (line < 0 || line >= to) return 1;
  const next = text.indexOf('\n', line + 1);
  return next < 0 || next >= to ? 2 : 3;
}

/** Text of the token at a place; empty beyond the ends. */
export const at = (tokens: readonly Token[], i: number): string => tokens[i]?.text ?? '';

/** Whether a token follows the one before it with nothing, or with no more than `most`, between. */
export const joins = (tokens: readonly Token[], i: number, most: 0 | 1 | 2 = 0): boolean =>
  (tokens[i]?.gap ?? 3) <= most;

/** The next word of the same number: over a blank or a hyphen, which may end the line; -1 where the number ends. */
export function next(tokens: readonly Token[], i: number): number {
  if (at(tokens, i) === '-' && joins(tokens, i, 1) && joins(tokens, i + 1, joins(tokens, i) ? 2 : 1))
    return i + 1;
  return joins(tokens, i, 2) ? i : -1;
}

/** The words round a place, in order, as one string between blanks: for looking a topic up. */
export function around(tokens: readonly Token[], from: number, to: number): string {
  let out = ' ';
  for (let i = Math.max(0, from); i < Math.min(tokens.length, to); i++) out += `${at(tokens, i)} `;
  return out;
}
