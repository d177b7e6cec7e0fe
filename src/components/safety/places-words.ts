import type { Chapter, Step } from '../../record/types.ts';
import { at, atChapter } from '../address.ts';
import { type Markup, markup } from '../markup.ts';

/** "Taking it down (steps 2.1, 2.4); First start." with links. */
export function placesWords(places: readonly { chapter: Chapter; steps: readonly Step[] }[]): Markup {
  const said = places.map(({ chapter, steps }, place) => {
    const links = steps.map(
      (step, turn) =>
        markup`${turn > 0 && ', '}<a href="${atChapter(chapter, step.id)}">${chapter.number}.${step.number}</a>`,
    );
    const inBrackets = steps.length > 0 && markup` (${steps.length > 1 ? 'steps' : 'step'} ${links})`;
    return markup`${place > 0 && '; '}<a href="${atChapter(chapter)}">${chapter.title}</a>${inBrackets}`;
  });
  return markup`${said}.`;
}

/** "Fuel and oil mixture, Gearing." with links. */
export function calculatorsWords(calculators: readonly { id: string; title: string }[]): Markup {
  const said = calculators.map(
    ({ id, title }, place) => markup`${place > 0 && ', '}<a href="${at(`/calculators/${id}/`)}">${title}</a>`,
  );
  return markup`${said}.`;
}
