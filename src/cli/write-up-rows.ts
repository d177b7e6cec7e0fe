/** Rows of the registers from proposals: where each goes, and what it still lacks. */
import type { Kept } from '../notes/proposals-file.ts';
import { slug } from '../record/chapter/slug.ts';
import { readCsv } from '../record/read/csv.ts';
import { Report } from '../record/report-to.ts';
import { TABLES, type TableName } from '../record/tables.ts';
import { Lines } from '../record/text/lines.ts';
import type { OpenTable } from './add-to-table.ts';
import { fieldName, inManner, lineNumberAfter, rowLine, withLine } from './appended-row.ts';
import { lackOfPoint } from './take-point.ts';

export const TABLE_OF: Partial<Record<Kept['kind'], TableName>> = {
  refit: 'refit',
  measurement: 'measurements',
  part: 'parts',
  cost: 'ledger',
  thanks: 'supporters',
};

/** What a proposal still wants from the author, in words. */
export function lacks({ kind, row }: Kept): string | undefined {
  if (kind === 'question') return `"${row['ask']}" is a question. Write the answer behind "answer:".`;
  if (kind === 'road-test point') return lackOfPoint(row);
  if ((kind === 'put off' || kind === 'finding') && !row['fault'])
    return 'It names no fault. Write the name of a file in faults/ behind "fault:".';
  if (kind === 'thanks' && !row['name']) return 'No name is said. Write it behind "name:".';
  if (kind === 'thanks' && !row['consent'])
    return 'Ask whether they agree to be named, and write yes or no behind "consent:".';
  const table = TABLE_OF[kind];
  if (!table) return undefined;
  for (const [name, field] of Object.entries(TABLES[table]))
    if (field.needed && !row[name]) return `Nothing stands behind "${name}:". ${field.help}`;
  return undefined;
}

/** The table with a row at its end, and where the row stands; the same row twice is two rows. */
export function withRow(
  text: string,
  table: OpenTable,
  name: TableName,
  row: Record<string, string>,
): { text: string; where: string } {
  const fields: Record<string, { kind: { numeric?: boolean | undefined } }> = TABLES[name];
  const { manner } = table;
  const cells = new Map(
    Object.entries(row)
      .filter(([key, value]) => key in fields && value !== '')
      .map(([key, value]) => [
        key,
        fields[key]?.kind.numeric || key === 'estimate' ? inManner(value, manner.mark) : harmless(value),
      ]),
  );
  const id = name === 'parts' ? 'part' : name === 'refit' ? 'line' : undefined;
  if (id) cells.set(id, freeId(text, slug(cells.get(id) ?? '') || 'part', manner.delimiter));
  const where = `${name}.csv:${lineNumberAfter(text)}`;
  return { text: withLine(text, rowLine(cells, manner), manner), where };
}

/** A spreadsheet takes words that begin so for a formula; figures may have their sign. */
const harmless = (value: string): string => {
  const line = value.replace(/[\r\n\t]+/g, ' ').trim();
  return /^[+-]?[\d.,]+(?: |$)/.test(line) ? line : line.replace(/^[\s=+@-]+/, '');
};

function freeId(text: string, stem: string, delimiter: string): string {
  const taken = new Set(
    text.split(/\r?\n/).map((line) => line.split(delimiter)[0]?.replaceAll('"', '') ?? ''),
  );
  let id = stem;
  for (let n = 2; taken.has(id); n++) id = `${stem}-${n}`;
  return id;
}

/** The register of supporters with a chapter added to somebody's row; undefined where the row is not found or has it already. */
export function withChapter(
  text: string,
  { manner }: OpenTable,
  name: string,
  chapter: string,
): { text: string; where: string } | undefined {
  const at = manner.headings.findIndex((heading) => fieldName(heading) === 'chapters');
  const byName = manner.headings.findIndex((heading) => fieldName(heading) === 'name');
  if (at < 0 || byName < 0) return undefined;
  const bom = text.startsWith('\ufeff') ? 1 : 0;
  const lines = new Lines('', text.slice(bom).replace(/\r\n/g, '\n'));
  const record = readCsv(lines, new Report())
    .slice(1)
    .find(({ cells }) => cells[byName]?.text.trim() === name);
  const cell = record?.cells[at];
  if (!record || !cell) return undefined;
  const chapters = cell.text.split(/[\s,;]+/).filter(Boolean);
  const where = `supporters.csv:${cell.place.line}`;
  if (chapters.includes(chapter)) return { text, where };
  const cells = new Map(
    manner.headings.map((heading, column) => [fieldName(heading), record.cells[column]?.text ?? '']),
  );
  cells.set('chapters', [...chapters, chapter].join(' '));
  const rows = text.split(/(?<=\n)/);
  const last = (record.cells.at(-1)?.text.match(/\n/g)?.length ?? 0) > 0;
  const row = rows[cell.place.line - 1];
  // A row over several lines is left to the author.
  if (row === undefined || last || record.cells.some(({ text: one }) => one.includes('\n'))) return undefined;
  rows[cell.place.line - 1] = `${rowLine(cells, manner)}${/\r?\n$/.exec(row)?.[0] ?? ''}`;
  return { text: rows.join(''), where };
}
