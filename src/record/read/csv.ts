import type { Place } from '../problem.ts';
import type { Report } from '../report-to.ts';
import type { Lines } from '../text/lines.ts';
import { shown } from '../text/words.ts';

export interface Cell {
  text: string;
  place: Place;
}

export interface CsvRecord {
  cells: Cell[];
  place: Place;
}

const DELIMITERS = [',', ';', '\t'] as const;

/**
 * Splits a table into records of cells, each with its own place. Quoted cells may hold the delimiter, line breaks and
 * doubled quotes; a quote inside an unquoted cell is a plain character. Blank lines are skipped.
 */
export function readCsv(lines: Lines, report: Report): CsvRecord[] {
  const { text } = lines;
  const delimiter = delimiterOf(text);
  const records: CsvRecord[] = [];
  let at = 0;
  while (at < text.length) {
    if (text[at] === '\n') {
      at++;
      continue;
    }
    const start = at;
    const record = readRecord(lines, start, delimiter, report);
    at = record.end;
    if (record.unclosed) break;
    const blank = record.cells.length === 1 && record.cells[0]?.text.trim() === '';
    if (!blank) records.push({ cells: record.cells, place: lines.at(start) });
  }
  return records;
}

interface Split {
  cells: Cell[];
  end: number;
  unclosed: boolean;
}

function readRecord(lines: Lines, start: number, delimiter: string, report: Report): Split {
  const { text } = lines;
  const cells: Cell[] = [];
  let at = start;
  for (;;) {
    const cellStart = at;
    while (text[at] === ' ' && delimiter !== ' ') at++;
    if (text[at] === '"') {
      const closing = closingQuote(text, at);
      if (closing < 0) {
        report.add(
          'csv/unclosed-quote',
          lines.at(start),
          `A quote is opened in the row that starts here (${shown(text.slice(at, text.indexOf('\n', at) < 0 ? undefined : text.indexOf('\n', at)))}) and never closed. Close it; inside a quoted cell, write a quote twice.`,
        );
        return { cells, end: text.length, unclosed: true };
      }
      cells.push({ text: text.slice(at + 1, closing).replaceAll('""', '"'), place: lines.at(at + 1) });
      at = closing + 1;
      const rest = at;
      while (at < text.length && text[at] !== delimiter && text[at] !== '\n') at++;
      const extra = text.slice(rest, at);
      if (extra.trim() !== '')
        report.add(
          'csv/after-quote',
          lines.at(rest),
          `${shown(extra)} stands after a closing quote. Put the whole cell in quotes, and write a quote inside it twice.`,
        );
    } else {
      while (at < text.length && text[at] !== delimiter && text[at] !== '\n') at++;
      const raw = text.slice(cellStart, at);
      const lead = raw.length - raw.trimStart().length;
      cells.push({ text: raw.trim(), place: lines.at(cellStart + (raw.trim() === '' ? 0 : lead)) });
    }
    if (at >= text.length) return { cells, end: at, unclosed: false };
    const was = text[at];
    at++;
    if (was === '\n') return { cells, end: at, unclosed: false };
  }
}

function closingQuote(text: string, open: number): number {
  let at = open + 1;
  for (;;) {
    const quote = text.indexOf('"', at);
    if (quote < 0) return -1;
    if (text[quote + 1] !== '"') return quote;
    at = quote + 2;
  }
}

/** The delimiter that stands most often in the heading, outside quotes. */
export function delimiterOf(text: string): string {
  const end = text.search(/\n(?!\s*$)/);
  const heading = (end < 0 ? text : text.slice(0, end)).replace(/"[^"]*"/g, '');
  let best = ',';
  let most = 0;
  for (const delimiter of DELIMITERS) {
    const times = heading.split(delimiter).length - 1;
    if (times > most) {
      most = times;
      best = delimiter;
    }
  }
  return best;
}
