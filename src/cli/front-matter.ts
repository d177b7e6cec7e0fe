import { isDeepStrictEqual } from 'node:util';
import { type Document, isMap, isSeq, parseDocument, stringify } from 'yaml';
import { UsageError } from './command.ts';

/** A file with a head of YAML between two lines of three hyphens, parted so that one entry can be changed and all else kept. */
export interface Headed {
  before: string;
  head: string;
  after: string;
  lineEnd: '\n' | '\r\n';
  document: Document;
}

/** @throws {UsageError} where there is no such head, or its YAML cannot be read. */
export function parted(written: string, file: string): Headed {
  const found = /^(\ufeff?---[ \t]*\r?\n)([\s\S]*?)(\r?\n---[ \t]*(?:\r?\n|$))/.exec(written);
  const document = found && parseDocument(found[2] ?? '');
  if (!found || !document || document.errors.length > 0 || !isMap(document.contents))
    throw new UsageError(
      `The head of ${file} cannot be read. Run "npm run check", put it right, and try again.`,
    );
  const [, before = '', head = ''] = found;
  return {
    before,
    head,
    after: written.slice(before.length + head.length),
    lineEnd: /\r\n/.test(before) ? '\r\n' : '\n',
    document,
  };
}

/** The file with an entry added to a list of its head; comments, quotes and layout of everything else stay. */
export function withEntry(written: string, list: string, entry: object, file: string): string {
  const whole = parted(written, file);
  const { document } = whole;
  const head = document.toJS() as Record<string, unknown>;
  const present = head[list];
  const expected = { ...head, [list]: [...(Array.isArray(present) ? present : []), entry] };
  const spliced = splice(whole, list, entry);
  if (spliced !== undefined && sameHead(spliced, expected)) return joined(whole, spliced);
  // A list in brackets, or none yet: the document writes it.
  if (Array.isArray(present)) document.addIn([list], document.createNode(entry));
  else document.set(list, document.createNode([entry]));
  return joined(whole, document.toString({ lineWidth: 0 }).trimEnd());
}

function splice({ head, document }: Headed, list: string, entry: object): string | undefined {
  const node = document.get(list, true);
  if (!isSeq(node) || node.flow || node.items.length === 0) return undefined;
  const [first, last] = [node.items[0], node.items.at(-1)] as { range?: [number, number, number] }[];
  if (!first?.range || !last?.range) return undefined;
  const dash = /(?:^|\n)([ \t]*)-[ \t]+$/.exec(head.slice(0, first.range[0]));
  if (!dash) return undefined;
  const text = head.slice(0, last.range[1]).trimEnd().length;
  const lineRest = /[^\r\n]*/.exec(head.slice(text))?.[0].length ?? 0;
  const lines = stringify([entry], { lineWidth: 0 }).trimEnd().split('\n');
  const shifted = lines.map((line) => (line === '' ? '' : `${dash[1] ?? ''}${line}`)).join('\n');
  return `${head.slice(0, text + lineRest)}\n${shifted}${head.slice(text + lineRest)}`;
}

/** The file without a key of its head, and without the key's line. */
export function withoutKey(written: string, key: string, file: string): string {
  const whole = parted(written, file);
  const { head, document } = whole;
  const { [key]: _gone, ...expected } = document.toJS() as Record<string, unknown>;
  const line = new RegExp(`^${key}[ \\t]*:.*(?:\\r?\\n|$)`, 'm').exec(head);
  if (line) {
    const without = (head.slice(0, line.index) + head.slice(line.index + line[0].length)).replace(
      /\r?\n$/,
      '',
    );
    if (sameHead(without, expected)) return whole.before + without + whole.after;
  }
  document.delete(key);
  return joined(whole, document.toString({ lineWidth: 0 }).trimEnd());
}

function sameHead(head: string, expected: object): boolean {
  const read = parseDocument(head);
  return read.errors.length === 0 && isDeepStrictEqual(read.toJS(), expected);
}

const joined = ({ before, after, lineEnd }: Headed, head: string): string =>
  before + head.replace(/\r?\n/g, lineEnd) + after;
