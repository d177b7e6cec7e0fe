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

const [WORD, DIGIT, SIGN, BLANK] = [0, 1, 2, 3];
type Class = 0 | 1 | 2 | 3;

/** Words are of Latin, Greek and Cyrillic letters; a letter of another script is a sign. */
const LETTER = /[\u00b5\u00c0-\u00d6\u00d8-\u00f6\u00f8-\u024f\u0370-\u03ff\u0400-\u04ff\u1e00-\u1eff\u2126]/;
const classed = (letter: string): Class =>
  (/[A-Za-z]/.test(letter) || LETTER.test(letter)
    ? WORD
    : /[0-9]/.test(letter)
      ? DIGIT
      : /\s/.test(letter)
        ? BLANK
        : SIGN) as Class;

/** What each character below 0x2200 is; beyond it there are only signs and the wide blank. */
const CLASSES = Uint8Array.from({ length: 0x2200 }, (_, code) => classed(String.fromCharCode(code)));
const classAt = (text: string, i: number): number => {
  const code = text.charCodeAt(i);
  return code < 0x2200 ? (CLASSES[code] ?? SIGN) : code === 0x3000 || code === 0xfeff ? BLANK : SIGN;
};

const [LINE, POINT, COMMA, APOSTROPHE, CURLY] = [0x0a, 0x2e, 0x2c, 0x27, 0x2019];

/** A piece of a text in one pass: a word with its apostrophes, a number with its points and commas, or a single sign. */
export function tokensOf(text: string, offset = 0): Token[] {
  const out: Token[] = [];
  let lines = 0;
  let last = 0;
  for (let i = 0; i < text.length; ) {
    const kind = classAt(text, i);
    if (kind === BLANK) {
      if (text.charCodeAt(i) === LINE) lines += 1;
      i += 1;
      continue;
    }
    let end = i + 1;
    if (kind === WORD) end = wordEnd(text, end);
    else if (kind === DIGIT) end = numberEnd(text, end);
    const raw = text.slice(i, end);
    out.push({
      text: raw === '\u2044' ? '/' : kind === WORD ? raw.toLowerCase() : raw,
      start: i + offset,
      end: end + offset,
      kind: kind === WORD ? 'word' : kind === DIGIT ? 'number' : 'sign',
      gap: i === last ? 0 : lines === 0 ? 1 : lines === 1 ? 2 : 3,
    });
    lines = 0;
    last = end;
    i = end;
  }
  return out;
}

function wordEnd(text: string, from: number): number {
  let i = from;
  while (i < text.length) {
    if (classAt(text, i) === WORD) i += 1;
    else {
      const code = text.charCodeAt(i);
      if ((code !== APOSTROPHE && code !== CURLY) || classAt(text, i + 1) !== WORD) return i;
      i += 2;
    }
  }
  return Math.min(i, text.length);
}

function numberEnd(text: string, from: number): number {
  let i = from;
  while (i < text.length) {
    if (classAt(text, i) === DIGIT) i += 1;
    else {
      const code = text.charCodeAt(i);
      if ((code !== POINT && code !== COMMA) || classAt(text, i + 1) !== DIGIT) return i;
      i += 2;
    }
  }
  return i;
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
  return joins(tokens, i, 2) && !isStamped(tokens, i) ? i : -1;
}

/** A line that begins with a stamp, which is blank by now, begins something new. */
const isStamped = (tokens: readonly Token[], i: number): boolean =>
  tokens[i]?.gap === 2 && (tokens[i]?.start ?? 0) - (tokens[i - 1]?.end ?? 0) > 5;

/** The words round a place, in order, as one string between blanks: for looking a topic up. */
export function around(tokens: readonly Token[], from: number, to: number): string {
  let out = ' ';
  for (let i = Math.max(0, from); i < Math.min(tokens.length, to); i++) out += `${at(tokens, i)} `;
  return out;
}
