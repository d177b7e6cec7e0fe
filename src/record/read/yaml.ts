import { isAlias, isMap, isScalar, isSeq, type Node, parseDocument, type YAMLMap } from 'yaml';
import type { DecimalMark } from '../money/decimal.ts';
import type { Place } from '../problem.ts';
import type { Report } from '../report-to.ts';
import { fieldRule } from '../rules/written.ts';
import type { Lines } from '../text/lines.ts';
import { nearest } from '../text/nearest.ts';
import { either, shown } from '../text/words.ts';
import { type Fields, type Row, readField, toWrite } from './field.ts';

/** A mapping of a YAML file with the places of its keys and values. */
export class Mapping {
  readonly place: Place;
  readonly #lines: Lines;
  readonly #base: number;
  readonly #entries = new Map<string, { key: Place; node: Node | null }>();

  constructor(lines: Lines, base: number, map: YAMLMap | undefined, place?: Place) {
    this.#lines = lines;
    this.#base = base;
    this.place = place ?? this.#placeOf(map ?? null) ?? lines.at(base);
    for (const pair of map?.items ?? []) {
      if (!isScalar(pair.key)) continue;
      const key = this.#placeOf(pair.key) ?? this.place;
      this.#entries.set(String(pair.key.value), { key, node: (pair.value as Node | null) ?? null });
    }
  }

  keys(): string[] {
    return [...this.#entries.keys()];
  }

  has(key: string): boolean {
    return this.#entries.has(key);
  }

  /** Place of the key, else of the mapping that should hold it. */
  keyPlace(key: string): Place {
    return this.#entries.get(key)?.key ?? this.place;
  }

  /** Place of the value, else of its key, else of the mapping. */
  at(key: string): Place {
    const entry = this.#entries.get(key);
    return (entry && (this.#placeOf(entry.node) ?? entry.key)) ?? this.place;
  }

  /** What kind of value stands there, as an author would say it. */
  kind(key: string): 'nothing' | 'text' | 'list' | 'mapping' {
    const node = this.#entries.get(key)?.node;
    if (isMap(node)) return 'mapping';
    if (isSeq(node)) return 'list';
    return textOf(node) === undefined ? 'nothing' : 'text';
  }

  /** A value as it was written, digit for digit: 0.40 stays "0.40", and so does a date. */
  text(key: string): string | undefined {
    return textOf(this.#entries.get(key)?.node);
  }

  mapping(key: string): Mapping | undefined {
    const node = this.#entries.get(key)?.node;
    return isMap(node) ? new Mapping(this.#lines, this.#base, node, this.#placeOf(node)) : undefined;
  }

  /** Items of a list as mappings; an item that is none is undefined. */
  mappings(key: string): { item: Mapping | undefined; place: Place }[] {
    const node = this.#entries.get(key)?.node;
    if (!isSeq(node)) return [];
    return node.items.map((item) => {
      const place = this.#placeOf(item as Node) ?? this.at(key);
      return { place, item: isMap(item) ? new Mapping(this.#lines, this.#base, item, place) : undefined };
    });
  }

  /** Items of a list as texts, or the one text that stands in its place. */
  texts(key: string): { text: string | undefined; place: Place }[] {
    const node = this.#entries.get(key)?.node;
    if (isSeq(node))
      return node.items.map((item) => ({
        text: textOf(item as Node),
        place: this.#placeOf(item as Node) ?? this.at(key),
      }));
    const text = textOf(node);
    return text === undefined ? [] : [{ text, place: this.at(key) }];
  }

  #placeOf(node: Node | null): Place | undefined {
    const start = node?.range?.[0];
    return start === undefined ? undefined : this.#lines.at(this.#base + start);
  }
}

/** With the failsafe schema every scalar is the text that stands there: 0.40, 2026-05-02 and yes stay as written. */
function textOf(node: Node | null | undefined): string | undefined {
  if (!isScalar(node) || typeof node.value !== 'string') return undefined;
  const text = node.value.trim();
  const nothing = text === '' || (node.type === 'PLAIN' && (text === '~' || text === 'null'));
  return nothing ? undefined : text;
}

/** The parser's commonest complaints in the author's words. */
const BROKEN: Record<string, string> = {
  BLOCK_AS_IMPLICIT_KEY: 'A second colon stands in this value. Put the whole value in quotes.',
  MISSING_CHAR: 'A quote or bracket is opened before this and never closed. Close it.',
  BAD_INDENT:
    'What is opened above ends here unfinished, or this line is not indented as its neighbours are. Look at both.',
  TAB_AS_INDENT: 'A tab indents this line. Use spaces.',
  MULTILINE_IMPLICIT_KEY:
    'This line is neither a key with a colon nor indented under one. Add the colon or indent it.',
  BAD_ALIAS: 'A value that starts with * must stand in quotes.',
  BAD_SCALAR_START: 'A value that starts with this sign must stand in quotes.',
};

/**
 * Reads YAML that must be one mapping. `base` is the offset of the YAML inside its file (frontmatter). Undefined, with its
 * problems told, where it cannot be read as such.
 */
export function readYaml(lines: Lines, text: string, base: number, report: Report): Mapping | undefined {
  const document = parseDocument(text, { schema: 'failsafe', prettyErrors: false });
  for (const error of document.errors) {
    const place = lines.at(base + error.pos[0]);
    if (error.code === 'DUPLICATE_KEY')
      report.add('yaml/key-twice', place, 'This key stands twice. Remove or rename one.');
    else
      report.add(
        'yaml/broken',
        place,
        BROKEN[error.code] ?? `The YAML cannot be read here: ${sentence(error.message)}`,
      );
  }
  if (document.errors.some((error) => error.code !== 'DUPLICATE_KEY')) return undefined;
  const { contents } = document;
  if (contents === null) return new Mapping(lines, base, undefined);
  if (isMap(contents)) {
    let alias = false;
    for (const pair of contents.items) if (isAlias(pair.value)) alias = true;
    if (alias)
      report.add(
        'yaml/broken',
        lines.at(base),
        'An alias (*name) stands where a value should. Write the value itself.',
      );
    return new Mapping(lines, base, contents);
  }
  report.add(
    'yaml/broken',
    lines.at(base),
    `This is not a list of keys with values. Write lines such as "title: …".`,
  );
  return undefined;
}

function sentence(message: string): string {
  const text = message.split('\n')[0]?.trim() ?? '';
  return /[.?!]$/.test(text) ? text : `${text}.`;
}

/**
 * Reads the plain values of a mapping by its fields. `others` are the keys that the caller reads itself. An unknown key is
 * a warning; undefined where a needed value is missing or wrong.
 */
export function readMapping<F extends Fields>(
  mapping: Mapping,
  area: string,
  fields: F,
  {
    report,
    mark,
    others = [],
  }: { report: Report; mark: DecimalMark | undefined; others?: readonly string[] },
): Row<F> | undefined {
  const known = [...Object.keys(fields), ...others];
  for (const key of mapping.keys()) {
    if (known.includes(key)) continue;
    const near = nearest(key, known);
    report.add(
      'yaml/unknown-key',
      mapping.keyPlace(key),
      `There is no key ${shown(key)} here, so it is not read. ${near ? `The nearest is "${near}".` : `Known are ${either(known, 'and')}.`}`,
    );
  }
  const values: Record<string, unknown> = {};
  let whole = true;
  for (const [key, field] of Object.entries(fields)) {
    const rule = fieldRule(area, key);
    const kind = mapping.kind(key);
    if (kind === 'nothing') {
      if (!field.needed) continue;
      whole = false;
      report.add(rule, mapping.keyPlace(key), `"${key}" is missing. ${toWrite(field)}`);
      continue;
    }
    const text =
      kind === 'list'
        ? mapping
            .texts(key)
            .map((one) => one.text ?? '')
            .join(' ')
        : mapping.text(key);
    if (text === undefined || (kind === 'list' && !field.kind.several)) {
      if (field.needed) whole = false;
      report.add(
        rule,
        mapping.at(key),
        `"${key}" holds a ${kind} where one value should stand. Write ${field.kind.says}.`,
      );
      continue;
    }
    const value = readField(field, rule, { text, place: mapping.at(key) }, { report, mark });
    if (value === undefined && field.needed) whole = false;
    values[key] = value;
  }
  if (!whole) return undefined;
  return { ...values, place: mapping.place, at: (key: string) => mapping.at(key) } as unknown as Row<F>;
}
