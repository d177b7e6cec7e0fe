/** The draft as MDX: steps with their hazards, tables, calculators, and at the end what could not be placed. */
import type { MachineValue } from '../../record/types.ts';
import type { Draft, DraftStep, Statement } from '../draft.ts';
import { calculatorsFor } from './calculators.ts';
import { type Called, hazardsOf, readBack, toldWith } from './called.ts';
import { plain } from './plain.ts';
import { proseOf } from './prose.ts';
import { stepOf } from './step.ts';
import { table } from './table.ts';
import { Titles } from './titles.ts';

export interface Head {
  title: string;
  date: string;
  summary: string;
}

/** What is needed of the series: texts of the sources by name, and the machine's values by path. */
export interface Around {
  texts: ReadonlyMap<string, string>;
  machine?: ReadonlyMap<string, MachineValue>;
}

/** A piece of the chapter that stands by itself, and the statements that it was written from. */
export interface Block {
  text: string;
  from: Statement[];
}

export const NOT_PLACED = '## Not placed';

export function frontmatter({ title, date, summary }: Head): string {
  return `---\ntitle: ${JSON.stringify(title)}\ndate: ${date}\nsummary: ${JSON.stringify(summary)}\nheld: true\n---\n`;
}

export interface Body {
  blocks: Block[];
  notPlaced: string[];
  called: Called[];
}

/** The line of "Not placed" for a statement. */
export const notPlacedLine = (one: Statement): string =>
  `- ${plain(`${one.source}:${one.line}`)}: ${plain(one.text)}`;

export function bodyOf(
  draft: Draft,
  around: Around,
  titles = new Titles(),
  /** The heading that became the chapter's title. */
  title?: Statement,
): Body {
  const blocks: Block[] = [];
  const notPlaced: string[] = [];
  const called: Called[] = [];
  const drawn = new Set<string>();
  const written = new Set<DraftStep>();
  const told = toldWith(draft);
  let rows: Statement[] = [];
  let prose: Statement[] = [];
  const textOf = (one: Statement): string => proseOf(one, around.texts.get(one.source) ?? '');
  const flush = (): void => {
    if (prose.length > 0) {
      const paragraphs = inParagraphs(prose).map((list) => list.map(textOf).join(' '));
      // Work told before the first step, or between two, is hazardous all the same: its note stands over it.
      const wanted = hazardsOf('', paragraphs.map(readBack), prose);
      if (wanted.size > 0) {
        blocks.push({
          text: `<Safety hazards={[${[...wanted.keys()].map((id) => JSON.stringify(id)).join(', ')}]} />`,
          from: [],
        });
        const place = `${prose[0]?.source}:${prose[0]?.line}`;
        called.push(...[...wanted].map(([hazard, words]) => ({ step: '', hazard, words, place })));
      }
      blocks.push({ text: paragraphs.join('\n\n'), from: prose });
    }
    if (rows.length > 0) blocks.push({ text: table(rows, titles), from: rows });
    prose = [];
    rows = [];
  };
  for (const one of draft.statements) {
    const { home } = one;
    if (home.kind === 'step') {
      const step = draft.steps[home.step - 1];
      if (!step || written.has(step)) continue;
      flush();
      written.add(step);
      const made = stepOf(step, around.texts.get(step.source) ?? '', titles, told.get(step));
      step.title = made.title;
      called.push(...made.called);
      blocks.push({ text: made.block, from: step.statements });
      for (const calculator of calculatorsFor(step.statements, around.machine))
        if (!drawn.has(calculator)) {
          drawn.add(calculator);
          blocks.push({ text: calculator, from: [] });
        }
    } else if (home.kind === 'heading') {
      flush();
      if (one !== title) blocks.push({ text: `## ${plain(one.text)}`, from: [one] });
    } else if (home.kind === 'not placed') {
      // A stroke or a lone stop says nothing that could be placed.
      if (/[\p{L}\p{N}]/u.test(one.text)) notPlaced.push(notPlacedLine(one));
    } else if (home.kind === 'prose' && one.kind === 'row') {
      if (prose.length > 0) flush();
      rows.push(one);
    } else if (home.kind === 'prose') {
      if (rows.length > 0 || (one.opens && one.kind !== 'speech' && prose.length > 0)) flush();
      prose.push(one);
    }
  }
  flush();
  return { blocks, notPlaced, called };
}

/** Speech goes on under one note of what may hurt, each speaker's turn a paragraph. */
function inParagraphs(prose: readonly Statement[]): Statement[][] {
  const paragraphs: Statement[][] = [];
  for (const one of prose)
    if (paragraphs.length === 0 || (one.opens && one.flow?.begins !== false)) paragraphs.push([one]);
    else paragraphs.at(-1)?.push(one);
  return paragraphs;
}

export const joined = (blocks: readonly Block[]): string => blocks.map(({ text }) => `${text}\n`).join('\n');
