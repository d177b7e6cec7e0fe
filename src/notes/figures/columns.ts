/** A table's cell with a bare number is in the unit of its column: told by the heading, or by the other rows. */
import { type Candidate, known } from './figure.ts';
import { unitNameOf } from './headings.ts';
import { at, type Token } from './tokens.ts';

interface Column {
  unit: string;
  several: boolean;
}

export function settleColumns(tokens: readonly Token[], all: readonly Candidate[]): void {
  const cells = cellsOf(tokens);
  if (cells.size === 0) return;
  const columns = new Map<string, Column>();
  const note = (key: string | undefined, unit: string): void => {
    if (key === undefined) return;
    const before = columns.get(key);
    if (!before) columns.set(key, { unit, several: false });
    else if (before.unit !== unit) before.several = true;
  };
  for (const [i, key] of cells) {
    const unit = unitNameOf(at(tokens, i));
    if (unit && tokens[i - 1]?.kind !== 'number' && headsCell(tokens, i)) note(key, unit);
  }
  for (const one of all) if (known(one)) note(cells.get(one.from), one.unit);
  for (const one of all) {
    const column = one.unit === '' ? columns.get(cells.get(one.from) ?? '') : undefined;
    if (!column || column.several || !fillsCell(tokens, one)) continue;
    one.unit = column.unit;
    one.shared = true;
    one.carried = true;
  }
}

/** "table:column" for every token between two strokes of a table's row. */
function cellsOf(tokens: readonly Token[]): Map<number, string> {
  const out = new Map<number, string>();
  let table = 0;
  let column = -1;
  for (const [i, { text, gap }] of tokens.entries()) {
    if (gap >= 2 || i === 0) {
      if (text !== '|') column = -1;
      else {
        if (column < 0 || gap === 3) table += 1;
        column = 0;
        continue;
      }
    }
    if (column < 0) continue;
    if (text === '|') column += 1;
    else out.set(i, `${table}:${column}`);
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
