/** Rows of the notes as one table of the chapter. */
import type { Statement } from '../draft.ts';
import { plain, quoted } from './plain.ts';
import { keyOf, type Titles } from './titles.ts';

export function table(rows: readonly Statement[], titles: Titles): string {
  const width = Math.max(...rows.map((one) => one.cells?.length ?? 0), 1);
  const line = (cells: readonly string[]): string =>
    `| ${Array.from({ length: width }, (_, at) => plain(cells[at] ?? '') || ' ').join(' | ')} |`;
  const [head, ...rest] = rows;
  const title = titles.unique(`From the notes, line ${head?.line ?? 1}`);
  const lines = [
    line(head?.cells ?? []),
    `|${' --- |'.repeat(width)}`,
    ...rest.map((one) => line(one.cells ?? [])),
  ];
  return `<Table id=${quoted(keyOf(title))} title=${quoted(title)}>\n\n${lines.join('\n')}\n\n</Table>`;
}
