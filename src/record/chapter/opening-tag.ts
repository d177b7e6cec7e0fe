/** An attribute's name, and the equals sign where it has a value. */
const NAME = /([\p{L}_$][\p{L}\p{N}_$:.-]*)(?:\s*(=)\s*)?/uy;

/** Where one attribute of a tag stands in the file's text. */
export interface AttributeSpan {
  /** "" for a spread in braces. */
  name: string;
  start: number;
  /** First character of the value, after its quote or brace; the name's start where there is no value. */
  value: number;
}

/**
 * Walks the opening tag that starts at `start` and gives its attributes in order. The MDX tree has their values but not
 * their places; the text has both. Quotes and nested braces are stepped over.
 */
export function attributeSpans(text: string, start: number): AttributeSpan[] {
  const spans: AttributeSpan[] = [];
  let at = start + 1;
  at += /^[\w.:-]*/.exec(text.slice(at, at + 200))?.[0].length ?? 0;
  while (at < text.length) {
    const character = text[at] ?? '';
    if (character === '{') {
      spans.push({ name: '', start: at, value: at + 1 });
      at = afterBraces(text, at);
      continue;
    }
    NAME.lastIndex = at;
    const found = NAME.exec(text);
    if (found) {
      const nameStart = at;
      const [whole, name = '', equals] = found;
      at += name.length;
      if (equals === undefined) {
        spans.push({ name, start: nameStart, value: nameStart });
        continue;
      }
      const next = nameStart + whole.length;
      const opener = text[next] ?? '';
      spans.push({ name, start: nameStart, value: next + 1 });
      if (opener === '{') at = afterBraces(text, next);
      else at = text.indexOf(opener, next + 1) < 0 ? text.length : text.indexOf(opener, next + 1) + 1;
    } else if (character === '>' || (character === '/' && text[at + 1] === '>')) return spans;
    else at++;
  }
  return spans;
}

function afterBraces(text: string, open: number): number {
  let depth = 0;
  for (let at = open; at < text.length; at++) {
    const character = text[at] ?? '';
    if (character === '{') depth++;
    else if (character === '}') {
      depth--;
      if (depth === 0) return at + 1;
    } else if (character === '"' || character === "'" || character === '`') {
      for (at++; at < text.length && text[at] !== character; at++) if (text[at] === '\\') at++;
    }
  }
  return text.length;
}
