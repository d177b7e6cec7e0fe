import type { MdxNode } from './tree.ts';

/** The plain words of a paragraph, heading or cell: code and links as their text, figures in the author's unit. */
export function passageText(node: MdxNode): string {
  return said(node).replace(/\s+/g, ' ').trim();
}

function said(node: MdxNode): string {
  if (node.type === 'text' || node.type === 'inlineCode' || node.type === 'code') return node.value ?? '';
  if (node.type === 'break') return ' ';
  if (node.type === 'mdxJsxTextElement' && (node.name === 'Qty' || node.name === 'Sum')) {
    const of = node.attributes?.find((one) => one.name === 'of')?.value;
    return node.name === 'Qty' && typeof of === 'string' && !of.startsWith('machine.') ? of : '';
  }
  return (node.children ?? []).map(said).join('');
}

export function wordsIn(text: string): number {
  return text.match(/[\p{L}\p{N}]+(?:['’.,:-][\p{L}\p{N}]+)*/gu)?.length ?? 0;
}
