/** Brings every sheet of the page to life; each calculator's `solve` comes as a module of its own. */
import { solves } from 'virtual:oilway/solves';
import { startSheet } from './sheet.ts';

export async function startSheets(): Promise<void> {
  for (const sheet of document.querySelectorAll<HTMLElement>('[data-calculator]')) {
    const load = solves[sheet.dataset['calculator'] ?? ''];
    const facts = sheet.querySelector('[data-part="facts"]')?.textContent;
    if (load && facts) startSheet(sheet, JSON.parse(facts), await load());
  }
}
