/** What an attribute in braces may hold: data, never code. */
export type Data = string | number | boolean | null | Data[] | { [key: string]: Data };

/**
 * Reads the text between the braces of an attribute as plain data: strings in any quotes, numbers, true, false, null,
 * lists and objects. Nothing is executed; a name, a call, an operator or a `${…}` gives undefined.
 */
export function readLiteral(text: string): { value: Data } | undefined {
  const reader = new LiteralReader(text);
  const value = reader.value();
  return value !== undefined && reader.atEnd() ? { value } : undefined;
}

const ESCAPES: Record<string, string> = {
  n: '\n',
  t: '\t',
  r: '\r',
  b: '\b',
  f: '\f',
  v: '\v',
  0: '\0',
  '\n': '',
};

class LiteralReader {
  readonly #text: string;
  #at = 0;

  constructor(text: string) {
    this.#text = text;
  }

  atEnd(): boolean {
    this.#space();
    return this.#at === this.#text.length;
  }

  value(): Data | undefined {
    this.#space();
    const first = this.#text[this.#at];
    if (first === '[') return this.#list();
    if (first === '{') return this.#object();
    if (first === '"' || first === "'" || first === '`') return this.#string(first);
    const word = /^(?:-?(?:\d+\.?\d*|\.\d+)(?:e[+-]?\d+)?|true|false|null)(?![\w$.])/i.exec(
      this.#text.slice(this.#at),
    )?.[0];
    if (word === undefined) return undefined;
    this.#at += word.length;
    return word === 'true' ? true : word === 'false' ? false : word === 'null' ? null : Number(word);
  }

  #space(): void {
    const found = /^(?:\s|\/\*[\s\S]*?\*\/|\/\/[^\n]*(?:\n|$))+/.exec(this.#text.slice(this.#at));
    this.#at += found?.[0].length ?? 0;
  }

  #take(character: string): boolean {
    this.#space();
    if (this.#text[this.#at] !== character) return false;
    this.#at++;
    return true;
  }

  #string(quote: string): string | undefined {
    let text = '';
    for (this.#at++; this.#at < this.#text.length; this.#at++) {
      const character = this.#text[this.#at] ?? '';
      if (character === quote) {
        this.#at++;
        return text;
      }
      if (quote === '`' && character === '$' && this.#text[this.#at + 1] === '{') return undefined;
      if (character === '\n' && quote !== '`') return undefined;
      if (character !== '\\') {
        text += character;
        continue;
      }
      this.#at++;
      const escaped = this.#text[this.#at] ?? '';
      const code = /^(?:x([\da-f]{2})|u([\da-f]{4})|u\{([\da-f]{1,6})\})/i.exec(this.#text.slice(this.#at));
      if (code) {
        const point = Number.parseInt(code[1] ?? code[2] ?? code[3] ?? '', 16);
        if (point > 0x10ffff) return undefined;
        text += String.fromCodePoint(point);
        this.#at += code[0].length - 1;
      } else text += ESCAPES[escaped] ?? escaped;
    }
    return undefined;
  }

  #list(): Data[] | undefined {
    const items: Data[] = [];
    this.#at++;
    for (;;) {
      if (this.#take(']')) return items;
      const item = this.value();
      if (item === undefined) return undefined;
      items.push(item);
      if (this.#take(',')) continue;
      return this.#take(']') ? items : undefined;
    }
  }

  #object(): { [key: string]: Data } | undefined {
    const entries: [string, Data][] = [];
    this.#at++;
    for (;;) {
      if (this.#take('}')) return Object.fromEntries(entries);
      this.#space();
      const first = this.#text[this.#at];
      let key: string | undefined;
      if (first === '"' || first === "'") key = this.#string(first);
      else {
        key = /^[\p{L}_$][\p{L}\p{N}_$]*/u.exec(this.#text.slice(this.#at))?.[0];
        this.#at += key?.length ?? 0;
      }
      if (key === undefined || !this.#take(':')) return undefined;
      const value = this.value();
      if (value === undefined) return undefined;
      entries.push([key, value]);
      if (this.#take(',')) continue;
      return this.#take('}') ? Object.fromEntries(entries) : undefined;
    }
  }
}
