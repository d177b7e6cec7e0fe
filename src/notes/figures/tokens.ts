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

const TOKEN = /\p{L}+(?:['’]\p{L}+)*|\d+(?:[.,]\d+)*|[^\s\p{L}\d]/gu;

export function tokensOf(text: string, offset = 0): Token[] {
  const out: Token[] = [];
  let last = 0;
  for (const found of text.matchAll(TOKEN)) {
    const start = found.index;
    const raw = found[0];
    const first = raw.charCodeAt(0);
    out.push({
      text: raw === '\u2044' ? '/' : raw.toLowerCase(),
      start: start + offset,
      end: start + raw.length + offset,
      kind: first >= 48 && first <= 57 ? 'number' : LETTER.test(raw) ? 'word' : 'sign',
      gap: start === last ? 0 : gapOf(text, last, start),
    });
    last = start + raw.length;
  }
  return out;
}

const LETTER = /^\p{L}/u;

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

/** The next word of the same number: over a blank or a hyphen; -1 where the number ends. */
export function next(tokens: readonly Token[], i: number): number {
  if (at(tokens, i) === '-' && joins(tokens, i, 1) && joins(tokens, i + 1, 1)) return i + 1;
  return joins(tokens, i, 2) ? i : -1;
}

/** The words round a place, in order, as one string between blanks: for looking a topic up. */
export function around(tokens: readonly Token[], from: number, to: number): string {
  let out = ' ';
  for (let i = Math.max(0, from); i < Math.min(tokens.length, to); i++) out += `${at(tokens, i)} `;
  return out;
}
