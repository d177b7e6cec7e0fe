import type { Place } from '../problem.ts';

/**
 * Turns an offset into a place. Lines and columns count from 1; a column counts characters as a reader sees them in the
 * line (an emoji outside the basic plane is one), not UTF-16 halves.
 */
export class Lines {
  readonly file: string;
  readonly text: string;
  readonly #starts: number[] = [0];

  constructor(file: string, text: string) {
    this.file = file;
    this.text = text;
    for (let at = text.indexOf('\n'); at >= 0; at = text.indexOf('\n', at + 1)) this.#starts.push(at + 1);
  }

  at(offset: number): Place {
    let low = 0;
    let high = this.#starts.length - 1;
    while (low < high) {
      const middle = (low + high + 1) >> 1;
      if ((this.#starts[middle] ?? 0) <= offset) low = middle;
      else high = middle - 1;
    }
    const before = this.text.slice(this.#starts[low] ?? 0, offset);
    return { file: this.file, line: low + 1, column: characters(before) + 1 };
  }

  /** The place of a line and a UTF-16 column, both from 1, as parsers give them. */
  atLine(line: number, column: number): Place {
    return this.at((this.#starts[line - 1] ?? this.text.length) + column - 1);
  }
}

function characters(text: string): number {
  if (!/[\ud800-\udfff]/.test(text)) return text.length;
  let count = 0;
  for (const _ of text) count++;
  return count;
}
