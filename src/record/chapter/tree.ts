import { mdxToJs, mdxToMdast } from 'satteri';
import type { Report } from '../report-to.ts';
import type { Lines } from '../text/lines.ts';

/** The part of a Markdown tree that the reader looks at. */
export interface MdxNode {
  type: string;
  value?: string;
  name?: string | null;
  attributes?: { type: string; name?: string; value?: string | null | { value: string } }[];
  children?: MdxNode[];
  position?: { start: { offset?: number; line: number; column: number } };
}

const VOID = ['br', 'hr', 'img', 'input', 'wbr'];

/** The chapter's tree; undefined, with its problem told, where the MDX cannot be read. */
export function readTree(lines: Lines, report: Report): MdxNode | undefined {
  try {
    const tree = mdxToMdast(lines.text, { position: true }) as unknown as MdxNode;
    // The tree accepts a broken import; only compiling finds it. Most chapters have none, and compiling costs time.
    if (tree.children?.some((node) => node.type === 'mdxjsEsm')) mdxToJs(lines.text);
    return tree;
  } catch (error) {
    const message = error instanceof Error ? error.message : String(error);
    const found = /^(\d+):(\d+): ([\s\S]*?)(?: \(mdx[\w-]*:[\w-]+\))?$/.exec(message);
    if (!found)
      return report.add('chapters/mdx', { file: lines.file }, `The chapter cannot be read: ${message}.`);
    return report.add(
      'chapters/mdx',
      lines.atLine(Number(found[1]), Number(found[2])),
      plainly(found[3] ?? ''),
    );
  }
}

/** The parser's words in the author's. */
function plainly(reason: string): string {
  const unclosed = /^Expected a closing tag for `<([\w.-]*)/.exec(reason)?.[1];
  if (unclosed !== undefined && VOID.includes(unclosed))
    return `"<${unclosed}>" has no end. Write "<${unclosed} />".`;
  if (unclosed !== undefined)
    return `"<${unclosed}>" is opened here and never closed. Write "</${unclosed}>" where it ends, on a line of its own.`;
  const unopened = /^Unexpected closing tag `<\/([\w.-]*)/.exec(reason)?.[1];
  if (unopened !== undefined)
    return `"</${unopened}>" closes a tag that is not open. Write "<${unopened} …>" before it, or remove it.`;
  if (reason.startsWith('Unexpected character after `<`'))
    return 'What follows "<" here is no tag that can be read. Look for a quote that is not closed; for a less-than sign write "&lt;".';
  const expression = /^Could not parse (expression|esm)[^:]*: ?([\s\S]*)$/.exec(reason);
  if (expression?.[1] === 'expression')
    return `What stands in braces here cannot be read (${expression[2] ?? 'unknown'}). Write data such as ["a", "b"]; for a plain brace write "\\{".`;
  if (reason.startsWith('Could not parse esm'))
    return 'This import or export cannot be read. Chapters need none: the components are there by themselves.';
  return `The chapter cannot be read here: ${reason.replace(/\.$/, '')}. Look for a tag or brace that is not closed.`;
}

/** Names that a chapter imports or defines itself. */
export function ownNames(tree: MdxNode): Set<string> {
  const names = new Set<string>();
  for (const node of tree.children ?? []) {
    if (node.type !== 'mdxjsEsm') continue;
    for (const found of (node.value ?? '').matchAll(
      /\b(?:import|export\s+(?:const|let|function|class))\s+([A-Za-z_$][\w$]*)/g,
    ))
      if (found[1]) names.add(found[1]);
    for (const list of (node.value ?? '').matchAll(/\{([^}]*)\}\s*from/g))
      for (const item of (list[1] ?? '').split(','))
        names.add(
          item
            .split(/\bas\b/)
            .at(-1)
            ?.trim() ?? '',
        );
  }
  return names;
}
