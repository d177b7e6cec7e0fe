/** Notes in Markdown or plain text: headings, bullets, tasks, tables and paragraphs, each with its place. */
import type { Nodes, Parent } from 'mdast';
import remarkGfm from 'remark-gfm';
import remarkParse from 'remark-parse';
import { unified } from 'unified';
import type { Block, ReadSource, Source } from './source.ts';

const parser = unified().use(remarkParse).use(remarkGfm);

export function readMarkdown(source: Source): ReadSource {
  const { text } = source;
  // The parser passes over a byte-order mark; a blank in its place keeps every offset.
  const tree = parser.parse(text.replace(/^\ufeff/, ' '));
  const blocks: Block[] = [];
  const add = (node: Nodes, block: Omit<Block, 'start' | 'end'>): void => {
    const start = node.position?.start.offset;
    const end = node.position?.end.offset;
    if (start !== undefined && end !== undefined && end > start) blocks.push({ ...block, start, end });
  };
  const walk = (node: Nodes, task?: 'task' | 'done', inItem = false): void => {
    if (node.type === 'heading') {
      add(node, { kind: 'heading', depth: node.depth });
      return;
    }
    if (node.type === 'paragraph') {
      add(node, { kind: inItem ? (task ?? 'item') : 'prose' });
      return;
    }
    if (node.type === 'table') {
      node.children.forEach((row, at) => {
        const cells = row.children.map((cell) => {
          const from = cell.position?.start.offset ?? 0;
          return text
            .slice(from, cell.position?.end.offset ?? from)
            .replace(/^\|/, '')
            .replace(/\|$/, '')
            .trim();
        });
        add(row, { kind: 'row', cells, head: at === 0 });
      });
      return;
    }
    if (node.type === 'code' || node.type === 'html' || node.type === 'definition') {
      add(node, { kind: 'other' });
      return;
    }
    if (node.type === 'listItem') {
      const said = node.checked === true ? 'done' : node.checked === false ? 'task' : undefined;
      for (const child of node.children) walk(child, said, true);
      return;
    }
    for (const child of (node as Parent).children ?? []) walk(child as Nodes, task, inItem);
  };
  walk(tree);
  blocks.sort((a, b) => a.start - b.start);
  const masked = mask(text, blocks);
  return {
    source,
    kind: 'notes',
    masked,
    blocks: blocks.filter((one) => masked.slice(one.start, one.end).trim() !== ''),
    warnings: [],
  };
}

/** Everything outside blocks blank, and the marks at a block's beginning as well. */
export function mask(text: string, blocks: readonly Block[]): string {
  const parts: string[] = [];
  let at = 0;
  for (const { kind, start, end } of blocks) {
    parts.push(blank(text.slice(at, start)));
    const words = text.slice(start, end);
    const marks =
      kind === 'heading' ? /^\s*#{1,6}\s*/ : kind === 'task' || kind === 'done' ? /^\s*\[[ xX]\]\s*/ : /^\s*/;
    const lead = marks.exec(words)?.[0].length ?? 0;
    parts.push(blank(words.slice(0, lead)), words.slice(lead));
    at = end;
  }
  parts.push(blank(text.slice(at)));
  return parts.join('');
}

export const blank = (text: string): string => text.replace(/[^\n]/g, ' ');
