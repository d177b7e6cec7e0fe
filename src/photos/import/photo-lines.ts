import type { FitChapter } from './fitting.ts';
import type { Entry } from './journal.ts';

export interface LineFacts {
  credit?: string;
  permission?: string;
  /** Shows a face, a number plate or a house front: its mask is to be filled in, or struck out with a reason to publish. */
  masked: boolean;
  step?: FitChapter['steps'][number];
}

/** An attribute's text, so written that nothing in it can become markup. */
function attribute(name: string, text: string): string {
  return /["\\{}<>&\n]/.test(text) ? `${name}={${JSON.stringify(text)}}` : `${name}="${text}"`;
}

/** `<Photo>` lines for the chapter. The alt is left empty: the check does not pass it until somebody says what is seen. */
export function photoLines(
  chapterNumber: number,
  photos: readonly { entry: Entry; facts: LineFacts }[],
): string {
  const lines: string[] = [];
  let step: FitChapter['steps'][number] | undefined;
  for (const { entry, facts } of photos) {
    if (facts.step && facts.step !== step) {
      const title = facts.step.title.replaceAll('*/', '* /');
      lines.push(`{/* Taken during step ${chapterNumber}.${facts.step.number}, ${title} */}`, '');
    }
    step = facts.step ?? step;
    const fields = [
      attribute('src', `./${entry.name}`),
      'alt=""',
      'caption=""',
      ...(facts.credit === undefined ? [] : [attribute('credit', facts.credit)]),
      ...(facts.permission === undefined ? [] : [attribute('permission', facts.permission)]),
      ...(facts.masked ? ['mask={["? ? ? ?"]}'] : []),
    ];
    lines.push(`<Photo ${fields.join(' ')} />`, '');
  }
  return lines.join('\n');
}
