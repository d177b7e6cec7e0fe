/** Where written sentences end: at a stop with a capital behind it, at a blank line, and at a line's end that no margin forced. */
const SHORT =
  /\b(?:abt|approx|no|nr|e\.g|i\.e|vs|ca|dia|fr|ft|in|mm|max|min|l|r|R|g|st|mr|mrs|dr|fig|pos|neg|inc|ea|pcs)\.$/;

/** `lines` tells whether the end of a line may part, `paragraphs` whether a blank line does: between two captions it parts nothing. */
export function sentences(text: string, lines: boolean, paragraphs = true): (readonly [number, number])[] {
  const ends: number[] = [];
  const stop =
    /[.!?…]+["'”’)]*(?=\s+["'“‘(]?[A-Z0-9£€])|(?<=[a-z0-9]{3}["'”’)]?)\.(?=[ \t]+[a-z])|[!?]+(?=\s)|\n[ \t]*\n/g;
  for (let found = stop.exec(text); found; found = stop.exec(text)) {
    const short = SHORT.test(text.slice(Math.max(0, found.index - 7), found.index + 1));
    if (short && !found[0].startsWith('\n')) continue;
    if (!paragraphs && found[0].startsWith('\n')) continue;
    ends.push(found.index + found[0].length);
  }
  if (lines) ends.push(...freeLineEnds(text));
  const cuts = [...new Set(ends)].sort((a, b) => a - b);
  const parts: (readonly [number, number])[] = [];
  let from = 0;
  for (const end of cuts) {
    if (text.slice(from, end).trim() === '') continue;
    parts.push([from, end]);
    from = end;
  }
  parts.push([from, text.length]);
  return parts;
}

/** Nobody wraps prose as narrow as this: each line is an entry. */
const NARROW = 48;

/** Nothing ends so, however short its line. */
const HANGS =
  /(?:\p{L}-|\b(?:and|or|the|an?|to|of|with|for|from|into|my|his|her|our|their|its|is|was|are|were|that|which|because|but|if|when|than|as|I need))\s*$/u;

/** Line ends with room left for the next word: somebody pressed the key there, so a new entry begins. */
function freeLineEnds(text: string): number[] {
  const lines = text.split('\n');
  if (lines.length < 2) return [];
  const width = Math.max(...lines.map((line) => line.trimEnd().length));
  const out: number[] = [];
  let at = 0;
  for (const [i, line] of lines.entries()) {
    at += line.length + 1;
    const next = lines[i + 1];
    if (next === undefined) break;
    const word = /^\s*(\S+)/.exec(next)?.[1] ?? '';
    const room = width - line.trimEnd().length;
    const marked = /^\s*(?:[•·–—>~+-]|\d{1,2}[.)])\s/.test(next);
    // A wrapped paragraph fills its lines; a list without marks does not.
    const narrow = width < NARROW && !/[,;(–-]\s*$/.test(line);
    if (!marked && HANGS.test(line) && /^\s*\p{Ll}/u.test(next)) continue;
    if (marked || narrow || room > word.length + Math.max(2, width * 0.12)) out.push(at);
  }
  return out;
}
