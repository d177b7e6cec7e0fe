/**
 * A small strict reader of XML as data: elements, attributes, text, CDATA, comments. There is no document type, so there
 * are no entities to expand but the five of the standard and characters by number. Source: XML 1.0, fifth edition.
 */
export interface XmlElement {
  /** Without its prefix. */
  name: string;
  attributes: ReadonlyMap<string, string>;
  children: XmlElement[];
  text: string;
  /** Offset in the text. */
  at: number;
}

/** What is wrong, and where in the text. */
export class XmlError extends Error {
  readonly at: number;
  constructor(message: string, at: number) {
    super(message);
    this.at = at;
  }
}

const MAX_DEPTH = 32;
const MAX_ELEMENTS = 1_000_000;
const NAME = /[A-Za-z_][\w.-]*(?::[A-Za-z_][\w.-]*)?/y;
const ATTRIBUTE = /\s+([A-Za-z_][\w.:-]*)\s*=\s*(?:"([^"<]*)"|'([^'<]*)')/y;
const NAMED: Record<string, string> = { amp: '&', lt: '<', gt: '>', quot: '"', apos: "'" };

/** @throws {XmlError} where the text is not well formed, declares a document type, or nests too deep. */
export function readXml(text: string): XmlElement {
  const open: XmlElement[] = [];
  let root: XmlElement | undefined;
  let count = 0;
  let at = 0;
  const words = (from: number, to: number, raw = false) => {
    const said = text.slice(from, to);
    const inside = open.at(-1);
    if (inside) inside.text += raw ? said : decoded(said, from);
    else if (said.trim() !== '') throw new XmlError('Text stands outside the first element.', from);
  };
  const past = (mark: string, from: number, what: string) => {
    const end = text.indexOf(mark, from);
    if (end < 0) throw new XmlError(`${what} is never closed.`, from);
    return end + mark.length;
  };
  while (at < text.length) {
    const next = text.indexOf('<', at);
    words(at, next < 0 ? text.length : next);
    if (next < 0) break;
    at = next;
    if (text.startsWith('<!--', at)) at = past('-->', at + 4, 'A comment');
    else if (text.startsWith('<![CDATA[', at)) {
      const end = past(']]>', at, 'A CDATA section');
      words(at + 9, end - 3, true);
      at = end;
    } else if (text.startsWith('<?', at)) at = past('?>', at, 'An instruction');
    else if (text.startsWith('<!', at))
      throw new XmlError('A document type is declared here; such files are not read.', at);
    else if (text.startsWith('</', at)) {
      const one = open.pop();
      const end = past('>', at, 'A closing tag');
      const name = text.slice(at + 2, end - 1).trim();
      if (!one || local(name) !== one.name)
        throw new XmlError(`</${name.slice(0, 40)}> closes nothing that is open here.`, at);
      at = end;
    } else {
      if (++count > MAX_ELEMENTS) throw new XmlError(`More than ${MAX_ELEMENTS} elements are not read.`, at);
      const { element, end, closed } = readTag(text, at);
      const inside = open.at(-1);
      if (inside) inside.children.push(element);
      else if (root) throw new XmlError('A second element stands after the first.', at);
      else root = element;
      if (!closed) open.push(element);
      if (open.length > MAX_DEPTH) throw new XmlError(`Elements nest deeper than ${MAX_DEPTH}.`, at);
      at = end;
    }
  }
  const left = open.at(-1);
  if (left) throw new XmlError(`<${left.name}> is never closed.`, left.at);
  if (!root) throw new XmlError('There is no element.', 0);
  return root;
}

function readTag(text: string, at: number): { element: XmlElement; end: number; closed: boolean } {
  NAME.lastIndex = at + 1;
  const name = NAME.exec(text)?.[0];
  if (name === undefined) throw new XmlError('A name is expected after "<".', at);
  const attributes = new Map<string, string>();
  let end = NAME.lastIndex;
  for (;;) {
    ATTRIBUTE.lastIndex = end;
    const found = ATTRIBUTE.exec(text);
    if (!found) break;
    const key = found[1] ?? '';
    if (attributes.has(key)) throw new XmlError(`The attribute "${key}" stands twice.`, end);
    attributes.set(key, decoded(found[2] ?? found[3] ?? '', end));
    end = ATTRIBUTE.lastIndex;
  }
  const close = /\s*(\/?)>/y;
  close.lastIndex = end;
  const found = close.exec(text);
  if (!found) throw new XmlError(`The tag <${name} is not written to its end.`, at);
  const element = { name: local(name), attributes, children: [], text: '', at };
  return { element, end: close.lastIndex, closed: found[1] === '/' };
}

const local = (name: string) => name.slice(name.indexOf(':') + 1);

function decoded(text: string, at: number): string {
  if (!text.includes('&')) return text;
  return text.replace(/&([^;&\s]{0,10};?)/g, (whole, inner: string) => {
    const name = inner.replace(/;$/, '');
    const number = /^#(?:x([\da-f]{1,6})|(\d{1,7}))$/i.exec(name);
    const code = number ? Number.parseInt(number[1] ?? number[2] ?? '', number[1] ? 16 : 10) : undefined;
    if (inner.endsWith(';') && code !== undefined && code > 0 && code < 0x110000)
      return String.fromCodePoint(code);
    const known = inner.endsWith(';') && Object.hasOwn(NAMED, name) ? NAMED[name] : undefined;
    if (known === undefined)
      throw new XmlError(`"${whole}" is not one of the five named characters of XML.`, at);
    return known;
  });
}
