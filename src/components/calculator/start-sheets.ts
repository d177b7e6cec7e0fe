/** Brings every sheet of the page to life; each calculator's `solve` comes as a script of its own. */
import { solveOf } from 'virtual:oilway/solves';
import { answering, type SaidOnPage } from '../../calc/answer.ts';
import { startSheet } from './sheet.ts';
import type { SheetFacts } from './sheet-facts.ts';

const read = (place: ParentNode, selector: string) =>
  JSON.parse(place.querySelector(selector)?.textContent ?? 'null');

export async function startSheets(): Promise<void> {
  for (const sheet of document.querySelectorAll<HTMLElement>('[data-calculator]')) {
    const says: SaidOnPage = read(document, `[data-says="${sheet.dataset['calculator']}"]`);
    const facts: SheetFacts = read(sheet, '[data-part="facts"]');
    startSheet(sheet, facts, says.carry, answering(says, await solveOf(sheet), facts.name));
  }
}
