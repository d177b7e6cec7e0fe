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
