/** A source as it lies on disk, and what of it is words. */
export interface Source {
  /** As named by the author: "bench-notes.md". */
  name: string;
  text: string;
}

export type BlockKind = 'heading' | 'item' | 'task' | 'done' | 'row' | 'prose' | 'speech' | 'other';

/** A run of words in a source. Blocks follow each other and never overlap. */
export interface Block {
  kind: BlockKind;
  start: number;
  end: number;
  /** Seconds into the recording. */
  at?: number;
  /** Cells of a table's row, and whether the row is the table's heading. */
  cells?: string[];
  head?: boolean;
  depth?: number;
  /** The next block goes on with the same sentence. */
  goesOn?: boolean;
}

export interface ReadSource {
  source: Source;
  kind: 'notes' | 'captions' | 'transcript';
  /** As long as the text; whatever is no word (marks, times, tags) is blank. */
  masked: string;
  blocks: Block[];
  /** What was odd, in words, each with its line. */
  warnings: { line: number; message: string }[];
}

/** Line (from 1) of an offset, by bisection over the starts of lines. */
export function lineFinder(text: string): (offset: number) => number {
  const starts = [0];
  for (let at = text.indexOf('\n'); at >= 0; at = text.indexOf('\n', at + 1)) starts.push(at + 1);
  return (offset) => {
    let low = 0;
    let high = starts.length - 1;
    while (low < high) {
      const middle = (low + high + 1) >> 1;
      if ((starts[middle] ?? 0) <= offset) low = middle;
      else high = middle - 1;
    }
    return low + 1;
  };
}
