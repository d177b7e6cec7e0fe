import type { Report } from '../report-to.ts';
import { count } from '../text/words.ts';

/** What a file may hold at most, so that a wrong file is refused in words before it is read into memory. */
export interface Limits {
  /** Bytes of any text file. */
  bytes: number;
  /** Rows of any table. */
  rows: number;
  /** Pixels of any picture. */
  pixels: number;
}

export const LIMITS: Limits = { bytes: 40_000_000, rows: 250_000, pixels: 120_000_000 };

const strict = new TextDecoder('utf-8', { fatal: true });

/**
 * The text of a file with "\n" line ends and without byte-order mark; undefined, with its problem told, where the bytes
 * are no UTF-8 text.
 */
export function textOf(bytes: Uint8Array, file: string, report: Report): string | undefined {
  const [first, second] = bytes;
  if ((first === 0xff && second === 0xfe) || (first === 0xfe && second === 0xff) || looksUtf16(bytes)) {
    report.add(
      'file/encoding',
      { file },
      'The file is UTF-16 text. Save it as UTF-8 (in a spreadsheet: "CSV UTF-8").',
    );
    return undefined;
  }
  const nul = bytes.indexOf(0);
  if (nul >= 0) {
    report.add(
      'file/nul',
      { file },
      `The file holds a NUL byte after ${count(nul, 'byte')}, so it is no text. Save it again as plain UTF-8 text.`,
    );
    return undefined;
  }
  try {
    return strict.decode(bytes).replace(/\r\n?/g, '\n');
  } catch {
    const { line, column } = firstBadByte(bytes);
    report.add(
      'file/encoding',
      { file, line, column },
      'The file is not UTF-8 here: it was probably saved in an older Windows or Mac encoding. Save it as UTF-8.',
    );
    return undefined;
  }
}

/** UTF-16 without a mark: every other byte of the start is NUL. */
function looksUtf16(bytes: Uint8Array): boolean {
  const start = bytes.subarray(0, 64);
  if (start.length < 4) return false;
  let even = 0;
  let odd = 0;
  start.forEach((byte, at) => {
    if (byte !== 0) return;
    if (at % 2 === 0) even++;
    else odd++;
  });
  const half = Math.floor(start.length / 2);
  return (even === 0 && odd >= half * 0.8) || (odd === 0 && even >= half * 0.8);
}

function firstBadByte(bytes: Uint8Array): { line: number; column: number } {
  let low = 0;
  let high = bytes.length;
  // The longest prefix that still decodes; `stream` forgives a character cut at its end.
  while (low < high) {
    const middle = (low + high + 1) >> 1;
    if (decodes(bytes.subarray(0, middle))) low = middle;
    else high = middle - 1;
  }
  const before = new TextDecoder('utf-8')
    .decode(bytes.subarray(0, low), { stream: true })
    .replace(/\r\n?/g, '\n');
  const line = before.split('\n');
  return { line: line.length, column: [...(line.at(-1) ?? '')].length + 1 };
}

function decodes(bytes: Uint8Array): boolean {
  try {
    new TextDecoder('utf-8', { fatal: true }).decode(bytes, { stream: true });
    return true;
  } catch {
    return false;
  }
}
