/** Cuts the words of a source into statements: sentences where they are written, turns of speech where nobody wrote a stop. */
import { type BlockKind, lineFinder, type ReadSource } from '../read/source.ts';

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

/** Words that a speaker starts afresh with. */
const TURN =
  /^(?:so|okay|ok|right|now|then|anyway|next|also|first|finally|thanks|thank|and (?:then|now|that|the|it|there|so|i)|but|i|i'm|i've|i'll|it's|that's|there's|there|we|we'll|we've|you|the other)$/;
const STRONG = /^(?:okay|ok|right|now|anyway|next|thanks|thank|then|so)$/;
const HOLDS =
  /^(?:and|but|or|that|which|who|what|if|as|when|because|where|how|than|to|the|a|an|of|for|with|so|till|until|before|after|while|whether|like|think|bet|say|said|know|not|why|sure|then|by|from|at|in|on|is|was|it|do|did|can|should|must|could|would|will|hope|suppose|unless|once|since|see|all|thing|what's|just)$/;

export function clausesOf({ source, masked, blocks }: ReadSource): Clause[] {
  const lineOf = lineFinder(source.text);
  const out: Clause[] = [];
  for (let b = 0; b < blocks.length; b++) {
    const first = blocks[b];
    if (!first) continue;
    let last = b;
    while (blocks[last]?.goesOn && blocks[last + 1] && last - b < 12) last += 1;
    const times = blocks.slice(b, last + 1);
    const end = times.at(-1)?.end ?? first.end;
    const text = masked.slice(first.start, end);
    let opens = true;
    for (const [from, to] of whole(first.kind)
      ? [[0, text.length] as const]
      : cuts(text, first.kind === 'speech')) {
      const lead = /^\s*/.exec(text.slice(from, to))?.[0].length ?? 0;
      const words = text.slice(from + lead, to).trimEnd();
      if (words === '') continue;
      const start = first.start + from + lead;
      const time = times.findLast((one) => one.start <= start)?.at;
      out.push({
        start,
        end: start + words.length,
        text: words.replace(/\s+/g, ' '),
        line: lineOf(start),
        lastLine: lineOf(start + words.length - 1),
        kind: first.kind,
        opens,
        block: b,
        ...(time === undefined ? {} : { at: time }),
        ...(first.cells ? { cells: first.cells, head: first.head === true } : {}),
      });
      opens = false;
    }
    b = last;
  }
  return out;
}

const whole = (kind: BlockKind): boolean => kind === 'heading' || kind === 'row' || kind === 'other';

/** Where sentences end; in speech without stops, where a new turn begins. */
function cuts(text: string, speech: boolean): (readonly [number, number])[] {
  const parts: [number, number][] = [];
  let from = 0;
  const stop = /[.!?…]+["'”’)]*(?=\s+["'“‘(]?[A-Z0-9£€])|\n\s*\n/g;
  for (let found = stop.exec(text); found; found = stop.exec(text)) {
    if (
      /\b(?:abt|approx|no|nr|e\.g|i\.e|vs|ca|dia|fr|ft|in|mm|max|min|l|r|R|g)\.$/.test(
        text.slice(Math.max(0, found.index - 7), found.index + 1),
      ) &&
      !/\n/.test(found[0])
    )
      continue;
    parts.push([from, found.index + found[0].length]);
    from = found.index + found[0].length;
  }
  parts.push([from, text.length]);
  return speech ? parts.flatMap(([a, z]) => turns(text, a, z)) : parts;
}

function turns(text: string, from: number, to: number): [number, number][] {
  const words = [...text.slice(from, to).matchAll(/\S+/g)].map((found) => ({
    word: found[0].toLowerCase().replace(/[,;:]$/, ''),
    at: from + found.index,
    comma: /[,;:]$/.test(found[0]),
  }));
  const out: [number, number][] = [];
  let start = 0;
  for (let i = 1; i < words.length; i++) {
    const word = words[i]?.word ?? '';
    const before = words[i - 1]?.word ?? '';
    const length = i - start;
    const left = words.length - i;
    if (left < 3 || words[i - 1]?.comma) continue;
    const two = `${word} ${words[i + 1]?.word ?? ''}`;
    const strong =
      STRONG.test(word) &&
      !HOLDS.test(before) &&
      length >= 5 &&
      !/^(?:so (?:that|far|much|many|i)|then (?:the|it)|now (?:and|it)|right (?:side|hand|one|front|rear|way|up|hub|down|round))\b/.test(
        two,
      );
    const soft = (TURN.test(word) || TURN.test(two)) && !HOLDS.test(before) && length >= 9;
    const long = length >= 26 && /^(?:and|but)$/.test(word) && left >= 6;
    if (strong || soft || long) {
      out.push([words[start]?.at ?? from, words[i]?.at ?? to]);
      start = i;
    }
  }
  out.push([words[start]?.at ?? from, to]);
  return out;
}
