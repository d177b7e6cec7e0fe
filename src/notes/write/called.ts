/** Hazards that the words of a step call for: as the check will read the chapter, and as one run of words, for speech has no stops. */
import { hazard } from '../../record/hazards/catalogue.ts';
import { type FoundHazard, match, withoutCovered } from '../../record/hazards/find.ts';
import type { Field } from '../../record/hazards/words.ts';
import type { Statement } from '../draft.ts';
import { wordsOf } from './prose.ts';

export interface Called {
  /** Title of the step; empty for words outside steps. */
  step: string;
  hazard: string;
  words: string;
  place: string;
}

/** Hazards by id with the words that point to each, worst first. `paragraphs` are as the chapter's reader will see them. */
export function hazardsOf(
  title: string,
  paragraphs: readonly string[],
  statements: readonly Statement[],
): Map<string, string> {
  const wanted = new Map<string, string>();
  const take = (found: readonly FoundHazard[]): void => {
    for (const one of found)
      if (hazard(one.hazard)?.signal !== 'NOTICE' && !wanted.has(one.hazard))
        wanted.set(one.hazard, one.words);
  };
  const fields: Field[] = [title, ...paragraphs].map((text, at) => ({ name: String(at), text }));
  take(withoutCovered(match(fields), () => true));
  // Statements read in one breath, since a turn of speech may be cut in the wrong place; one alone is read already.
  if (statements.length > 1) {
    const all = match([
      { name: '0', text: title },
      { name: '1', text: statements.map(wordsOf).join(' ') },
    ]);
    take(
      all.filter(
        (one) =>
          !hazard(one.hazard)?.coveredBy?.some(
            (id) => wanted.has(id) || all.some((more) => more.hazard === id),
          ),
      ),
    );
  }
  return wanted;
}

/** A paragraph of the chapter as its reader will see it, marked figures in digits. */
export const readBack = (paragraph: string): string =>
  paragraph
    .replace(/<Qty of="([^"]*)" \/>/g, '$1')
    .replace(/&#(\d+);/g, (_, code: string) => String.fromCodePoint(Number(code)));
