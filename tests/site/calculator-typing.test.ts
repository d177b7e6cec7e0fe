/** Types into every field of every calculator, wrong things included, and holds the page against `solve` itself. */
import type { Page } from 'playwright-core';
import { describe, expect, test } from 'vitest';
import type { Answer } from '../../src/calc/answer.ts';
import type { Calculator, Field } from '../../src/calc/contract.ts';
import { printOutput } from '../../src/calc/print-figure.ts';
import type { Texts } from '../../src/calc/read-values.ts';
import { textOfParts } from '../../src/components/calculator/parts-of-text.ts';
import type { SheetFacts } from '../../src/components/calculator/sheet-facts.ts';
import { solveTexts } from '../../src/components/calculator/solve-texts.ts';
import { names, shown, site } from './calculator-sheets.ts';

/** What a reader might type into any box, by mistake or on purpose; both decimal marks among it. */
const TYPED = [
  '12.5',
  '12,5',
  '0',
  '',
  'abc',
  '1.2.3',
  '1,234',
  '1e999',
  '-5',
  '99999999999',
  '0.157 in',
  '5 kPa',
  '🙂',
  '<img src=x onerror=alert(1)>',
  '"><b>7',
  '1 ± 2 ± 3',
  '± 5',
  '5 ±',
  '12 12',
  'NaN',
  'Infinity',
  '=1+1',
];

const printed = (calculator: Calculator, answer: Answer) =>
  calculator.outputs.flatMap((field) => {
    const output = answer.outputs[field.name];
    if (!output) return [];
    const [first = '', ...others] = printOutput(field, output);
    return [`${field.label}|${first}|${others.join(' · ')}`];
  });

const facts = async (page: Page): Promise<SheetFacts> =>
  JSON.parse((await page.locator('[data-part="facts"]').textContent()) ?? '{}');

/** Makes the choice that shows a field, through the form. */
async function bring(
  page: Page,
  calculator: Calculator,
  field: Field,
  texts: Record<string, string>,
): Promise<void> {
  const { when } = field;
  if (!when || when.is.includes(texts[when.field] ?? '')) return;
  const other = calculator.fields.find((one) => one.name === when.field);
  if (other) await bring(page, calculator, other, texts);
  const option = when.is[0] ?? '';
  await page.locator(`[data-field="${when.field}"] [data-box="number"]`).selectOption(option);
  texts[when.field] = option;
  Object.assign(texts, await textsOf(page, calculator, texts));
}

/** What the boxes hold now: a choice may have brought the present answer into an empty box. */
async function textsOf(page: Page, calculator: Calculator, texts: Texts): Promise<Texts> {
  const boxes = await page.evaluate(() =>
    [...document.querySelectorAll<HTMLElement>('.sheet [data-field]')].map((line) => {
      const value = (name: string) => line.querySelector<HTMLInputElement>(`[data-box="${name}"]`)?.value;
      return {
        name: line.dataset['field'] ?? '',
        number: value('number') ?? '',
        pm: value('pm') ?? '',
        unit: value('unit'),
      };
    }),
  );
  return Object.fromEntries(
    boxes.map(({ name, number, pm, unit }) => {
      const field = calculator.fields.find((one) => one.name === name);
      if (field?.kind !== 'figure') return [name, number || (texts[name] ?? '')];
      return [name, textOfParts(field, { number, pm, unit: (unit ?? field.units[0]) as never })];
    }),
  );
}

describe.each(names)('%s', (_title, calculator) => {
  const { open } = site();

  test('types every odd thing into every field, and shows what the calculator answers or refuses', async () => {
    const { page, complaints } = await open(`calculators/${calculator.id}/`);
    const logs = (await facts(page)).texts;
    const found: string[] = [];
    await page.evaluate(() => {
      for (const group of document.querySelectorAll('details')) group.open = true;
    });
    for (const field of calculator.fields) {
      if (field.kind === 'choice') continue;
      const texts: Record<string, string> = { ...logs };
      await bring(page, calculator, field, texts);
      const number = page.locator(`[data-field="${field.name}"] [data-box="number"]`);
      const unit = page.locator(`[data-field="${field.name}"] [data-box="unit"]`);
      const pm = page.locator(`[data-field="${field.name}"] [data-box="pm"]`);
      const before = texts[field.name] ?? '';
      let last = (await shown(page)).results;
      for (const typed of TYPED) {
        await number.fill(typed);
        const box = {
          number: typed,
          pm: (await pm.count()) > 0 ? await pm.inputValue() : '',
          unit: ((await unit.count()) > 0
            ? await unit.inputValue()
            : field.kind === 'figure' && field.units[0]) as never,
        };
        texts[field.name] = field.kind === 'figure' ? textOfParts(field, box) : typed;
        const expected = solveTexts(calculator, texts, calculator.solve);
        const seen = await shown(page);
        const at = `${field.name} ← ${JSON.stringify(typed)}`;
        if (/NaN|Infinity|undefined|\[object/.test(seen.text.replaceAll(typed || '\0', '')))
          found.push(`${at}: the sheet shows a figure that is none`);
        if (expected.ok) {
          last = printed(calculator, expected);
          if (seen.stale) found.push(`${at}: marked as out of date`);
          if (Object.keys(seen.wrong).length > 0)
            found.push(`${at}: refused with ${JSON.stringify(seen.wrong)}`);
        } else {
          if (!seen.stale) found.push(`${at}: the old answer is not marked`);
          const wanted = expected.errors.map((one) => one.message);
          const messages = seen.text.replace(/\s+/g, ' ');
          for (const message of wanted)
            if (!messages.includes(message.replace(/\s+/g, ' ')))
              found.push(`${at}: does not say ${message}`);
          const own = expected.errors.some((one) => one.field === field.name);
          if (own !== seen.invalid.includes(field.name)) found.push(`${at}: aria-invalid is ${!own}`);
        }
        if (JSON.stringify(seen.results) !== JSON.stringify(last))
          found.push(`${at}: shows ${seen.results.join(', ')}\n  for ${last.join(', ')}`);
      }
      await page.getByRole('button', { name: 'Put back the log’s figures' }).click();
      texts[field.name] = before;
    }
    expect(await page.locator('.sheet img, .sheet script:not([type])').count()).toBe(0);
    expect(complaints).toEqual([]);
    expect(found).toEqual([]);
  }, 240_000);

  test('a figure typed key by key, with its own unit and a comma, ends in the boxes it belongs to', async () => {
    const field = calculator.fields.find(
      (one) =>
        one.kind === 'figure' &&
        one.units.includes('in') &&
        one.units.includes('mm') &&
        one.takesPm &&
        !one.when,
    );
    if (field?.kind !== 'figure') return;
    const { page } = await open(`calculators/${calculator.id}/`);
    const box = (name: string) => page.locator(`[data-field="${field.name}"] [data-box="${name}"]`);
    await box('number').fill('');
    await box('number').pressSequentially('2,5 in ± 0,002');
    await box('number').press('Tab');
    expect(await box('number').inputValue()).toBe('2,5');
    expect(await box('pm').inputValue()).toBe('0,002');
    expect(await box('unit').inputValue()).toBe('in');
    const texts = { ...(await facts(page)).texts, [field.name]: '2.5 ± 0.002 in' };
    const expected = solveTexts(calculator, texts, calculator.solve);
    const seen = await shown(page);
    expect(seen.stale).toBe(!expected.ok);
    if (expected.ok) expect(seen.results).toEqual(printed(calculator, expected));
    await page.context().close();
  });
});
