/** Hazards that the words of a step call for: as the check will read the chapter, and as one run of words, for speech has no stops. */
import { hazard } from '../../record/hazards/catalogue.ts';
import { match, withoutCovered } from '../../record/hazards/find.ts';
import type { Field } from '../../record/hazards/words.ts';
import type { Draft, DraftStep, Statement } from '../draft.ts';
import { wordsOf } from './prose.ts';

export interface Called {
  /** Title of the step; empty for words outside steps. */
  step: string;
  hazard: string;
  words: string;
  place: string;
}

/**
 * Hazards by id with the words that point to each, worst first. `paragraphs` are as the chapter's reader will see them, `told` is all
 * that was told there, with what is written elsewhere.
 */
export function hazardsOf(
  title: string,
  paragraphs: readonly string[],
  told: readonly Statement[] = [],
): Map<string, string> {
  const wanted = new Map<string, string>();
  const read = (texts: readonly string[]): void => {
    const fields = texts.map((text, at): Field => ({ name: String(at), text }));
    for (const one of withoutCovered(match(fields), () => true))
      if (hazard(one.hazard)?.signal !== 'NOTICE' && !wanted.has(one.hazard))
        wanted.set(one.hazard, one.words);
  };
  read([title, ...paragraphs]);
  if (told.length > 0) read([title, told.map(wordsOf).join('\n')]);
  return wanted;
}

/**
 * Work that is told with thanks or a fault goes into a register, and its hazard stays where it was told: with the step before it,
 * or with the first. What is only bought is not worked on.
 */
export function toldWith(draft: Draft): Map<DraftStep, Statement[]> {
  const told = new Map<DraftStep, Statement[]>();
  let step = draft.steps[0];
  for (const one of draft.statements) {
    if (one.home.kind === 'step') step = draft.steps[one.home.step - 1] ?? step;
    else if (one.home.kind !== 'proposal') continue;
    else if (!one.said.has('thanks') && (one.said.has('part') || one.said.has('cost'))) continue;
    const list = step && told.get(step);
    if (list) list.push(one);
    else if (step) told.set(step, [one]);
  }
  return told;
}

/** A paragraph of the chapter as its reader will see it, marked figures in digits. */
export const readBack = (paragraph: string): string =>
  paragraph
    .replace(/<Qty of="([^"]*)" \/>/g, '$1')
    .replace(/&#(\d+);/g, (_, code: string) => String.fromCodePoint(Number(code)));
