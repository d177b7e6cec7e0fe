import type { Place } from '../problem.ts';
import type { Report } from '../report-to.ts';
import type { Lines } from '../text/lines.ts';
import { nearest } from '../text/nearest.ts';
import { either, shown } from '../text/words.ts';
import type { Attribute } from './components.ts';
import { type Data, readLiteral } from './literal.ts';
import { attributeSpans } from './opening-tag.ts';
import type { MdxNode } from './tree.ts';

/** One component as a chapter uses it: its attributes as data, each with its place. */
export class Element {
  readonly name: string;
  readonly place: Place;
  readonly #values = new Map<string, { value: Data; offset: number }>();
  /** Names of all attributes, also of those whose value cannot be used. */
  readonly #written = new Set<string>();
  readonly #lines: Lines;
  readonly #report: Report;
  readonly #told = new Set<string>();

  constructor(node: MdxNode, lines: Lines, report: Report) {
    const start = node.position?.start.offset ?? 0;
    this.name = node.name ?? '';
    this.place = lines.at(start);
    this.#lines = lines;
    this.#report = report;
    const attributes = node.attributes ?? [];
    const spans = attributes.length === 0 ? [] : attributeSpans(lines.text, start);
    for (const [at, attribute] of attributes.entries()) {
      const span = spans[at];
      const offset = span && span.name === (attribute.name ?? '') ? span.value : start;
      if (attribute.name !== undefined) this.#written.add(attribute.name);
      const value = this.#read(attribute, offset);
      if (value !== undefined && attribute.name !== undefined)
        this.#values.set(attribute.name, { value, offset });
    }
  }

  #read({ type, name, value }: NonNullable<MdxNode['attributes']>[number], offset: number): Data | undefined {
    if (type !== 'mdxJsxAttribute' || name === undefined)
      return this.#report.add(
        'chapters/attribute-value',
        this.#lines.at(offset),
        'Attributes in braces of their own ({...name}) are code, not data. Write each one as name="…".',
      );
    if (value === null || value === undefined) return true;
    if (typeof value === 'string') return value;
    const read = readLiteral(value.value);
    if (read) return read.value;
    return this.#report.add(
      'chapters/attribute-value',
      this.#lines.at(offset),
      `${shown(`{${value.value}}`)} is code, not data. Write texts in quotes, lists as {["a", "b"]}, reasons as {{"a": "why"}}.`,
    );
  }

  has(name: string): boolean {
    return this.#values.has(name);
  }

  at(name: string): Place {
    const offset = this.#values.get(name)?.offset;
    return offset === undefined ? this.place : this.#lines.at(offset);
  }

  /** Tells unknown attributes, naming the nearest, and needed ones that are missing. Undefined where one is missing. */
  check(attributes: Record<string, Attribute>, others: readonly string[] | 'any' = []): true | undefined {
    for (const name of this.#values.keys()) {
      if (Object.hasOwn(attributes, name) || others === 'any' || others.includes(name)) continue;
      const known = [...Object.keys(attributes), ...others];
      const near = nearest(name, known);
      const choices = known.length === 0 ? 'It takes none.' : `It takes ${either(known, 'and')}.`;
      this.#report.add(
        'chapters/attribute',
        this.at(name),
        `<${this.name}> has no attribute ${shown(name)}. ${near ? `The nearest is "${near}".` : choices}`,
      );
    }
    let whole: true | undefined = true;
    for (const [name, { needed }] of Object.entries(attributes)) {
      if (!needed || this.#written.has(name)) continue;
      whole = this.#report.add(
        'chapters/attribute-missing',
        this.place,
        `<${this.name}> lacks "${name}". Write ${name}="…".`,
      );
    }
    return whole;
  }

  text(name: string): string | undefined {
    const found = this.#values.get(name);
    if (!found) return undefined;
    const { value } = found;
    if (typeof value === 'number') return String(value);
    if (typeof value !== 'string') return this.#wrong(name, `a text, such as ${name}="…"`);
    const text = value.replace(/\s*\n\s*/g, ' ').trim();
    return text;
  }

  /** A needed text that says something. */
  filled(name: string): string | undefined {
    const text = this.text(name);
    if (text !== '') return text;
    return this.#report.add(
      'chapters/attribute-value',
      this.at(name),
      `"${name}" of <${this.name}> is empty. Write what belongs there.`,
    );
  }

  texts(name: string): string[] {
    const found = this.#values.get(name);
    if (!found) return [];
    const { value } = found;
    if (typeof value === 'string') return value.trim() === '' ? [] : [value.trim()];
    if (Array.isArray(value) && value.every((one): one is string => typeof one === 'string'))
      return value.map((one) => one.trim()).filter((one) => one !== '');
    this.#wrong(name, `a list of texts, such as ${name}={["a", "b"]}`);
    return [];
  }

  reasons(name: string): Map<string, string> {
    const found = this.#values.get(name);
    if (!found) return new Map();
    const { value } = found;
    const entries =
      typeof value === 'object' && value !== null && !Array.isArray(value)
        ? Object.entries(value)
        : undefined;
    if (
      entries?.every((pair): pair is [string, string] => typeof pair[1] === 'string' && pair[1].trim() !== '')
    )
      return new Map(entries.map(([key, reason]) => [key, reason.trim()]));
    this.#wrong(name, `reasons by name, such as ${name}={{"a": "why it does not apply"}}`);
    return new Map();
  }

  /** A text, or the bare attribute, which says yes without words. */
  note(name: string): string | undefined {
    const found = this.#values.get(name);
    if (found?.value === true) return '';
    if (found?.value === false) return undefined;
    return this.text(name);
  }

  /** Seconds of "12:31" or "1:02:31". */
  time(name: string): number | undefined {
    const text = this.text(name);
    if (text === undefined) return undefined;
    const found = /^(?:(\d{1,2}):)?(\d{1,2}):([0-5]\d)(?:\.\d+)?$/.exec(text);
    if (!found || (found[1] !== undefined && Number(found[2]) > 59))
      return this.#wrong(name, 'minutes and seconds, such as "12:31"');
    return Number(found[1] ?? 0) * 3600 + Number(found[2]) * 60 + Number(found[3]);
  }

  /** Tells a wrong value once, however often it is asked for. */
  #wrong(name: string, write: string): undefined {
    if (this.#told.has(name)) return undefined;
    this.#told.add(name);
    const value = this.#values.get(name)?.value;
    const said =
      value === true
        ? `"${name}" without a value`
        : shown(typeof value === 'string' ? value : JSON.stringify(value));
    return this.#report.add(
      'chapters/attribute-value',
      this.at(name),
      `${said} cannot be used for "${name}" of <${this.name}>. Write ${write}.`,
    );
  }
}
