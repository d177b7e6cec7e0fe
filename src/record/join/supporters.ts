import { join } from 'node:path';
import { readCsv } from '../read/csv.ts';
import { given, type Row } from '../read/field.ts';
import { Report } from '../report-to.ts';
import { fieldRule } from '../rules/written.ts';
import { type SUPPORTERS, TABLES } from '../tables.ts';
import { Lines } from '../text/lines.ts';
import { shown } from '../text/words.ts';
import type { Supporter } from '../types.ts';
import type { References } from './references.ts';
import type { Parsed } from './series.ts';

export function joinSupporters(
  rows: readonly Row<typeof SUPPORTERS>[],
  refer: References,
  report: Report,
): Supporter[] {
  const known = new Map<string, Row<typeof SUPPORTERS>>();
  return rows.flatMap((row) => {
    const before = known.get(row.name.toLowerCase());
    if (before) {
      report.add(
        fieldRule('supporters', 'name'),
        row.at('name'),
        `${shown(row.name)} already stands in line ${before.place.line}. Put both into one row.`,
      );
      return [];
    }
    known.set(row.name.toLowerCase(), row);
    const chapters = (row.chapters ?? []).filter((to) =>
      refer.rowChapter('supporters', 'chapters', to, row.at('chapters')),
    );
    if (row.from !== undefined && row.until !== undefined && row.until < row.from)
      report.add(
        fieldRule('supporters', 'until'),
        row.at('until'),
        `${row.until} lies before ${row.from}. Put the days the other way round.`,
      );
    return [
      given({
        name: row.name,
        credit: row.credit ?? row.name,
        kind: row.kind,
        what: row.what,
        from: row.from,
        until: row.until,
        chapters,
        consent: row.consent,
        link: row.link,
        place: row.place,
      }),
    ];
  });
}

/** What may stand between the words of a name: spaces, line breaks, emphasis, the hyphen of a file's name. */
const BETWEEN = '[\\s*_~`"\'’.-]+';

/** A search for names as whole words in any letter case, however they are broken over lines or set. */
function anyOf(names: readonly string[]): RegExp | undefined {
  const patterns = [...new Set(names)].flatMap((name) => {
    const words = name.normalize('NFC').match(/[\p{L}\p{N}]+/gu);
    return words ? [words.join(BETWEEN)] : [];
  });
  if (patterns.length === 0) return undefined;
  return new RegExp(`(?<![\\p{L}\\p{N}])(?:${patterns.join('|')})(?![\\p{L}\\p{N}])`, 'giu');
}

/**
 * Looks for supporters who did not agree to be named, in everything that could be published: chapters with their captions,
 * faults, both sheets and the published columns of every table. Naming one is an error.
 */
export function checkNamesWithheld(parsed: Parsed, supporters: readonly Supporter[], report: Report): void {
  const withheld = supporters.filter((one) => !one.consent);
  const search = anyOf(withheld.flatMap((one) => [one.name, one.credit]));
  if (!search) return;
  const tell = (lines: Lines, hidden: (offset: number) => boolean = () => false) => {
    const composed = lines.text.normalize('NFC');
    const text = composed === lines.text ? lines : new Lines(lines.file, composed);
    for (const found of text.text.matchAll(search)) {
      if (hidden(found.index)) continue;
      report.add(
        'supporters/named',
        text.at(found.index),
        `${shown(found[0])} did not agree to be named. Take the name out, or ask again and change "consent" in supporters.csv.`,
      );
    }
  };
  const look = (path: string, hidden?: (lines: Lines) => (offset: number) => boolean) => {
    const lines = parsed.texts(join(parsed.folder, path));
    if (lines) tell(lines, hidden?.(lines));
  };
  for (const name of ['series.yaml', 'machine.yaml']) look(name);
  for (const { id, captions } of parsed.chapters) {
    look(`chapters/${id}/chapter.mdx`);
    if (captions) look(`chapters/${id}/captions.vtt`);
  }
  for (const id of parsed.faults.keys()) look(`faults/${id}.md`);
  for (const name of Object.keys(TABLES))
    if (name !== 'supporters') look(`${name}.csv`, (lines) => hiddenCells(lines, name));
}

/** Whether an offset of a table lies in a column that is never published. */
function hiddenCells(lines: Lines, table: string): (offset: number) => boolean {
  const fields: Record<string, { hidden?: true }> = TABLES[table as keyof typeof TABLES];
  const records = readCsv(lines, new Report());
  const hidden = new Set(
    records[0]?.cells.flatMap((cell, at) => (fields[cell.text.trim().toLowerCase()]?.hidden ? [at] : [])) ??
      [],
  );
  return (offset) => {
    const place = lines.at(offset);
    const record = records.findLast((one) => one.place.line <= place.line);
    const at = record?.cells.findLastIndex(
      (cell) =>
        cell.place.line < place.line || (cell.place.line === place.line && cell.place.column <= place.column),
    );
    return at !== undefined && hidden.has(at);
  };
}
