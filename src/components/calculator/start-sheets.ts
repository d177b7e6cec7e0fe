/** Brings every sheet of the page to life; each calculator's `solve` comes as a script of its own. */
import { solveOf } from 'virtual:oilway/solves';
import { startSheet } from './sheet.ts';

export async function startSheets(): Promise<void> {
  for (const sheet of document.querySelectorAll<HTMLElement>('[data-calculator]')) {
    const facts = sheet.querySelector('[data-part="facts"]')?.textContent;
    if (facts) await startSheet(sheet, JSON.parse(facts), await solveOf(sheet));
  }
}
