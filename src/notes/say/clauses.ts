/** Cuts the words of a source into statements: sentences where they are written, turns of speech where nobody wrote a stop. */
import { type BlockKind, lineFinder, type ReadSource } from '../read/source.ts';
import { sentences } from './sentences.ts';
import { turns } from './turns.ts';
import { type TaggedWord, taggedWords } from './words.ts';

export interface Clause {
  /** Offsets in the source; statements and what lies between them join to the whole of it. */
  start: number;
  end: number;
  /** The words alone, line ends as blanks. */
  text: string;
  line: number;
  lastLine: number;
  kind: BlockKind;
  at?: number;
  cells?: string[];
  head?: boolean;
  /** First of its block: a bullet, a paragraph, a time stamp. */
  opens: boolean;
  block: number;
}

/** A clause with its tagged words, whose offsets are those of the source. Handed on one by one: a long source is never tagged as a whole. */
export function* clausesOf({
  source,
  masked,
  blocks,
}: ReadSource): Generator<{ clause: Clause; words: TaggedWord[] }> {
  const lineOf = lineFinder(source.text);
  for (let b = 0; b < blocks.length; b++) {
    const first = blocks[b];
    if (!first) continue;
    let last = b;
    while (blocks[last]?.goesOn && blocks[last + 1] && last - b < 12) last += 1;
    const times = blocks.slice(b, last + 1);
    const end = times.at(-1)?.end ?? first.end;
    const text = masked.slice(first.start, end);
    const words = taggedWords(text);
    let opens = true;
    let next = 0;
    for (const [from, to] of piecesOf(first.kind, text, words, last === b)) {
      const lead = /^\s*/.exec(text.slice(from, to))?.[0].length ?? 0;
      const said = text.slice(from + lead, to).trimEnd();
      if (said === '') continue;
      const start = first.start + from + lead;
      const time = times.findLast((one) => one.start <= start)?.at;
      const own: TaggedWord[] = [];
      for (; next < words.length; next++) {
        const word = words[next];
        if (!word || word.start >= to) break;
        if (word.start >= from)
          own.push({ ...word, start: word.start + first.start, end: word.end + first.start });
      }
      yield {
        words: own,
        clause: {
          start,
          end: start + said.length,
          text: said.replace(/\s+/g, ' '),
          line: lineOf(start),
          lastLine: lineOf(start + said.length - 1),
          kind: first.kind,
          opens,
          block: b,
          ...(time === undefined ? {} : { at: time }),
          ...(first.cells ? { cells: first.cells, head: first.head === true } : {}),
        },
      };
      opens = false;
    }
    b = last;
  }
}

const WHOLE: ReadonlySet<BlockKind> = new Set(['heading', 'row', 'other']);

function piecesOf(
  kind: BlockKind,
  text: string,
  words: readonly TaggedWord[],
  paragraphs: boolean,
): (readonly [number, number])[] {
  if (WHOLE.has(kind)) return [[0, text.length]];
  const written = sentences(text, kind !== 'speech', paragraphs);
  // Speech with stops is cut where they stand; only a very long sentence is looked into.
  const stops = text.match(/[.!?](?:\s|$)/g)?.length ?? 0;
  const bare = kind === 'speech' && stops * 30 < words.length;
  let next = 0;
  return written.flatMap(([from, to]) => {
    // Sentences and words come in order: a paragraph of a whole book is gone through once.
    while (next < words.length && (words[next]?.start ?? 0) < from) next += 1;
    const first = next;
    while (next < words.length && (words[next]?.start ?? 0) < to) next += 1;
    return bare || to - from > 220 ? turns(words.slice(first, next), from, to) : [[from, to] as const];
  });
}
