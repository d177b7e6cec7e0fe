/** One step as MDX: its words in paragraphs, its hazards declared. */
import type { DraftStep, Statement } from '../draft.ts';
import { type Called, hazardsOf, readBack } from './called.ts';
import { quoted } from './plain.ts';
import { proseOf } from './prose.ts';
import type { Titles } from './titles.ts';

export interface WrittenStep {
  block: string;
  title: string;
  called: Called[];
}

/** `told` is all that was told with it, also what is written elsewhere. */
export function stepOf(
  step: DraftStep,
  source: string,
  titles: Titles,
  told: readonly Statement[] = [],
): WrittenStep {
  const title = titles.unique(step.title);
  const paragraphs = paragraphsOf(step.statements).map((list) =>
    list.map((one) => proseOf(one, source)).join(' '),
  );
  const wanted = hazardsOf(title, paragraphs.map(readBack), told);
  const attributes = [`title=${quoted(title)}`];
  if (step.at !== undefined) attributes.push(`at="${clock(step.at)}"`);
  if (wanted.size > 0)
    attributes.push(`hazards={[${[...wanted.keys()].map((id) => JSON.stringify(id)).join(', ')}]}`);
  const open = `<Step ${attributes.join(' ')}>`;
  return {
    title,
    called: [...wanted].map(([hazard, words]) => ({
      step: title,
      hazard,
      words,
      place: `${step.source}:${step.line}`,
    })),
    block: `${open.length > 110 ? `<Step\n  ${attributes.join('\n  ')}\n>` : open}\n\n${paragraphs.join('\n\n')}\n\n</Step>`,
  };
}

/** Who speaks, where captions write it before the words: "Berta: ". */
const SPEAKER = /^(\p{Lu}[\p{L} .'-]{1,18}):\s/u;

/** Parted at a new bullet or paragraph of the notes, where somebody else speaks, and where speech runs long. */
function paragraphsOf(statements: readonly Statement[]): Statement[][] {
  const paragraphs: Statement[][] = [];
  let words = 0;
  let speaker = '';
  for (const one of statements) {
    const named = one.kind === 'speech' ? (SPEAKER.exec(one.text)?.[1] ?? speaker) : '';
    const parts =
      (one.opens && one.kind !== 'speech') || named !== speaker || (words > 70 && one.flow?.begins !== false);
    if (paragraphs.length === 0 || parts) {
      paragraphs.push([]);
      words = 0;
    }
    speaker = named;
    paragraphs.at(-1)?.push(one);
    words += one.text.split(' ').length;
  }
  return paragraphs;
}

function clock(at: number): string {
  const two = (value: number): string => String(Math.floor(value)).padStart(2, '0');
  return at >= 3600
    ? `${Math.floor(at / 3600)}:${two((at % 3600) / 60)}:${two(at % 60)}`
    : `${Math.floor(at / 60)}:${two(at % 60)}`;
}
