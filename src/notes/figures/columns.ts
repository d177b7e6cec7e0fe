/** A table's cell with a bare number is in the unit of its column: told by the heading, or by the other rows. */
import { type Candidate, known, NONE } from './figure.ts';
import { unitNameOf } from './headings.ts';
import { at, type Token } from './tokens.ts';

interface Column {
  unit: string;
  several: boolean;
  /** Its head names the unit, or two rows do. */
  sure: boolean;
}

export function settleColumns(tokens: readonly Token[], all: readonly Candidate[]): void {
  const cells = cellsOf(tokens);
  if (cells.size === 0) return;
  const columns = new Map<string, Column>();
  const rows = new Map<string, string>();
  const note = (key: string | undefined, unit: string, head: boolean): void => {
    if (key === undefined) return;
    const before = columns.get(key);
    if (!before) columns.set(key, { unit, several: false, sure: head });
    else if (before.unit !== unit) before.several = true;
    else before.sure = true;
  };
  for (const [i, { column, row }] of cells) {
    const unit = unitNameOf(at(tokens, i));
    if (!unit || tokens[i - 1]?.kind === 'number' || !headsCell(tokens, i)) continue;
    // "| dollars | 39.50 |"
    if (column.endsWith(':0') && at(tokens, i - 1) === '|' && at(tokens, i + 1) === '|') rows.set(row, unit);
    else note(column, unit, true);
  }
  for (const one of all) if (known(one)) note(cells.get(one.from)?.column, one.unit, false);
  for (const one of all) {
    const cell = one.unit === '' ? cells.get(one.from) : undefined;
    if (!cell || !fillsCell(tokens, one)) continue;
    const column = columns.get(cell.column);
    const unit = column && !column.several && (column.sure || one.decimal) ? column.unit : rows.get(cell.row);
    if (unit === undefined) {
      // A bare whole number of a table counts
      if (!one.decimal && one.value < 100) one.unit = NONE;
      continue;
    }
    one.unit = unit;
    one.shared = true;
    one.carried = true;
  }
}

const END = { text: '', gap: 3 } as const;

interface Cell {
  /** "table:column", columns from nought. */
  column: string;
  row: string;
}

/** The cell of every token between two strokes of a table's row. */
function cellsOf(tokens: readonly Token[]): Map<number, Cell> {
  const out = new Map<number, Cell>();
  let table = 0;
  let row = 0;
  let column = -1;
  for (let i = 0; i < tokens.length; i++) {
    const { text, gap } = tokens[i] ?? END;
    if (column < 0 && text !== '|') continue;
    if (gap >= 2 || i === 0) {
      // The line below a table's head may be blank by now, so an empty line ends no table
      if (text !== '|') column = -1;
      else {
        if (column < 0) table += 1;
        column = 0;
        row += 1;
        continue;
      }
    }
    if (column < 0) continue;
    if (text === '|') column += 1;
    else out.set(i, { column: `${table}:${column}`, row: `${table}/${row}` });
  }
  return out;
}

const headsCell = (tokens: readonly Token[], i: number): boolean =>
  /^(?:\||\)|\]|\/|,|)$/.test(at(tokens, i + 1)) || /^(?:\(|\[|\/|in|,)$/.test(at(tokens, i - 1));

/** Nothing else in its cell but "min", "about" and marks. */
function fillsCell(tokens: readonly Token[], one: Candidate): boolean {
  let k = one.from - 1;
  while (/^(?:min|max|about|~|limit|under|over|-|:|\(|=|<|>)$/.test(at(tokens, k))) k -= 1;
  return at(tokens, k) === '|' && /^(?:\||\(|,|;|\/|!|\?|min|max|$)/.test(at(tokens, one.to));
}
