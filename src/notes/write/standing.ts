/** A chapter as it stands, edited or not: where its steps are, and where words that were written into it are found again. */
import { mdxToMdast } from 'satteri';

interface Node {
  type: string;
  name?: string | null;
  attributes?: { name?: string; value?: unknown }[];
  children?: Node[];
  position?: { start: { offset?: number }; end: { offset?: number } };
}

export interface StandingBlock {
  start: number;
  end: number;
  /** "Step", "Table" … of a component; the kind of node otherwise. */
  name: string;
  title?: string;
  /** Where the children begin and end, of a component that has some. */
  inside?: { start: number; end: number };
}

export class Standing {
  readonly text: string;
  readonly blocks: StandingBlock[];

  /** @throws where the chapter is no MDX that can be read. */
  constructor(text: string) {
    this.text = text;
    const tree = mdxToMdast(text, { position: true }) as unknown as Node;
    this.blocks = (tree.children ?? []).flatMap((node) => asBlock(node));
  }

  get titles(): string[] {
    return this.blocks.flatMap(({ name, title }) =>
      title !== undefined && (name === 'Step' || name === 'Table') ? [title] : [],
    );
  }

  /** Where "Not placed" begins, or the end of the chapter. */
  get end(): number {
    const heading = this.blocks.find(
      ({ name, start, end }) => name === 'heading' && /^## Not placed\s*$/.test(this.text.slice(start, end)),
    );
    return heading?.start ?? this.text.length;
  }

  /** The one place where words stand as they were written, in a paragraph or a step; undefined where they do not, or twice. */
  find(words: string): { start: number; end: number; block: StandingBlock } | undefined {
    if (words.trim().length < 3) return undefined;
    const start = this.text.indexOf(words);
    if (start < 0 || this.text.indexOf(words, start + 1) >= 0) return undefined;
    const end = start + words.length;
    const block = this.blocks.find((one) => one.start <= start && end <= one.end);
    if (!block || start >= this.end) return undefined;
    if (block.name === 'paragraph') return { start, end, block };
    const { inside } = block;
    if (block.name !== 'Step' || !inside || start < inside.start || end > inside.end) return undefined;
    // A comment within the step hides what is put into it.
    const before = this.text.slice(inside.start, start);
    if (before.lastIndexOf('{/*') > before.lastIndexOf('*/}')) return undefined;
    return { start, end, block };
  }

  step(title: string): StandingBlock | undefined {
    const found = this.blocks.filter((one) => one.name === 'Step' && one.title === title);
    return found.length === 1 ? found[0] : undefined;
  }
}

function asBlock(node: Node): StandingBlock[] {
  const start = node.position?.start.offset;
  const end = node.position?.end.offset;
  if (start === undefined || end === undefined) return [];
  const component = node.type === 'mdxJsxFlowElement';
  const title = node.attributes?.find(({ name }) => name === 'title')?.value;
  const first = node.children?.[0]?.position?.start.offset;
  const last = node.children?.at(-1)?.position?.end.offset;
  return [
    {
      start,
      end,
      name: component ? (node.name ?? '') : node.type,
      ...(typeof title === 'string' ? { title } : {}),
      ...(component && first !== undefined && last !== undefined
        ? { inside: { start: first, end: last } }
        : {}),
    },
  ];
}
