import { readdirSync, readFileSync } from 'node:fs';
import { join, relative } from 'node:path';
import { fileURLToPath } from 'node:url';
import { type DefaultTreeAdapterTypes, parse } from 'parse5';

type Node = DefaultTreeAdapterTypes.Node;
type Element = DefaultTreeAdapterTypes.Element;

/** The demo as the tests' set-up builds it: at a domain's root, and below a path. */
export const BUILDS = [
  { folder: fileURLToPath(new URL('../../.oilway/site-root', import.meta.url)), base: '/' },
  { folder: fileURLToPath(new URL('../../.oilway/site-van', import.meta.url)), base: '/van/' },
] as const;

/** Every file of a built site, as paths from its folder with forward slashes. */
export function filesOf(folder: string): string[] {
  return readdirSync(folder, { recursive: true, withFileTypes: true })
    .filter((one) => one.isFile())
    .map((one) => relative(folder, join(one.parentPath, one.name)).replaceAll('\\', '/'));
}

/** Every element of a page, in document order. */
export function elementsOf(html: string): Element[] {
  const found: Element[] = [];
  const walk = (node: Node) => {
    if ('tagName' in node) found.push(node);
    if ('childNodes' in node) for (const child of node.childNodes) walk(child);
    if ('content' in node) walk(node.content);
  };
  walk(parse(html));
  return found;
}

export function attribute(element: Element, name: string): string | undefined {
  return element.attrs.find((one) => one.name === name)?.value;
}

export interface BuiltPage {
  /** "chapters/the-mark/index.html" */
  file: string;
  html: string;
  elements: Element[];
}

export function pagesOf(folder: string): BuiltPage[] {
  return filesOf(folder)
    .filter((file) => file.endsWith('.html'))
    .map((file) => {
      const html = readFileSync(join(folder, file), 'utf8');
      return { file, html, elements: elementsOf(html) };
    });
}
