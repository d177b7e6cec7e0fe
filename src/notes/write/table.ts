/** Rows of the notes as one table of the chapter. */
import type { Statement } from '../draft.ts';
import { plain, quoted } from './plain.ts';
import { keyOf, type Titles } from './titles.ts';

/** "Place, found and limit": what its columns are; a table without a heading is told by its line. */
function titleOf(head: Statement | undefined): string {
  const cells = (head?.cells ?? []).map((cell) => cell.replace(/["<>{}`*_|\\]/g, '').trim());
  const named = cells
    .filter((cell) => /\p{L}{2}/u.test(cell) && !/\d/.test(cell))
    .map((cell) => cell.replace(/^\p{Lu}(?=\p{Ll})/u, (letter) => letter.toLowerCase()));
  const title =
    named.length > 1 ? `${named.slice(0, -1).join(', ')} and ${named.at(-1)}`.replace(/\s+/g, ' ') : '';
  if (!head?.head || title === '' || named.length < cells.length - 1 || title.length > 60)
    return `From the notes, line ${head?.line ?? 1}`;
  return title.slice(0, 1).toUpperCase() + title.slice(1);
}

export function table(rows: readonly Statement[], titles: Titles): string {
  const width = Math.max(...rows.map((one) => one.cells?.length ?? 0), 1);
  const line = (cells: readonly string[]): string =>
    `| ${Array.from({ length: width }, (_, at) => plain(cells[at] ?? '') || ' ').join(' | ')} |`;
  const [head, ...rest] = rows;
  const title = titles.unique(titleOf(head));
  const lines = [
    line(head?.cells ?? []),
    `|${' --- |'.repeat(width)}`,
    ...rest.map((one) => line(one.cells ?? [])),
  ];
  return `<Table id=${quoted(keyOf(title))} title=${quoted(title)}>\n\n${lines.join('\n')}\n\n</Table>`;
}
