/**
 * One diagnostic. Data only: words are put together where it is found, and printed in one place (report.ts).
 * Lines and columns count from 1, columns in characters of that line. No place known: leave them out, never a made-up 1:1.
 */
export interface Problem {
  /** Path from the project's root with forward slashes: "content/ledger.csv". */
  file: string;
  line?: number;
  column?: number;
  /** Permanent id from rules.ts: "ledger/amount". */
  rule: string;
  severity: 'error' | 'warning';
  /** Full sentences: what is wrong with the value shown, then what to write. */
  message: string;
}

/** Where an author wrote something; kept from the first reading on, so that any later check can point at it. */
export interface Place {
  file: string;
  line: number;
  column: number;
}

/** By file, line, column; what has no line comes first in its file. Sorts as the reader of a report goes through a file. */
export function inOrder(problems: readonly Problem[]): Problem[] {
  return [...problems].sort(
    (a, b) =>
      (a.file < b.file ? -1 : a.file > b.file ? 1 : 0) ||
      (a.line ?? 0) - (b.line ?? 0) ||
      (a.column ?? 0) - (b.column ?? 0) ||
      (a.message < b.message ? -1 : a.message > b.message ? 1 : 0),
  );
}
