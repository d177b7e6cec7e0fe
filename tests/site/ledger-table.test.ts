import type { Browser, Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { type Served, serveFolder } from '../../src/cli/serve.ts';
import { launchBrowser } from './browser.ts';
import { BUILDS } from './built-site.ts';

let browser: Browser;
let served: Served;
beforeAll(async () => {
  browser = await launchBrowser();
  served = await serveFolder(BUILDS[0].folder);
});
afterAll(async () => {
  await browser.close();
  await served.close();
});

const amounts = (page: Page): Promise<number[]> =>
  page.$$eval('.ledger tbody tr:not([hidden]) td:last-child', (cells) =>
    cells.map((cell) => Number((cell as HTMLElement).dataset['key'])),
  );
const sum = (minor: readonly number[]) => minor.reduce((a, b) => a + b, 0);

async function open(width: number, javaScriptEnabled = true): Promise<Page> {
  const context = await browser.newContext({ viewport: { width, height: 900 }, javaScriptEnabled });
  const page = await context.newPage();
  await page.goto(`${served.address}costs/ledger/`, { waitUntil: 'load' });
  return page;
}

describe('The ledger in a browser', () => {
  test('is sorted by a click on a head, the other way round by the next', async () => {
    const page = await open(1440);
    const before = await amounts(page);
    const head = page.locator('.ledger thead th').last();
    await head.getByRole('button').click();
    expect(await head.getAttribute('aria-sort')).toBe('ascending');
    expect(await amounts(page)).toEqual(before.toSorted((a, b) => a - b));
    await head.getByRole('button').click();
    expect(await head.getAttribute('aria-sort')).toBe('descending');
    expect(await amounts(page)).toEqual(before.toSorted((a, b) => b - a));
    await page.context().close();
  });

  test('is filtered by kind and by words, and says what the rows shown come to', async () => {
    const page = await open(1440);
    const all = (await amounts(page)).length;
    await page.getByRole('combobox', { name: 'Kind', exact: true }).selectOption('freight');
    const freight = await amounts(page);
    expect(freight.length).toBeGreaterThan(1);
    expect(freight.length).toBeLessThan(all);
    const told = (await page.locator('.ledger-tools output').textContent()) ?? '';
    expect(told).toContain(`${freight.length} of ${all} rows`);
    expect(
      told
        .replace(/[^\d.]/g, ' ')
        .trim()
        .split(/\s+/)
        .at(-1),
    ).toBe((sum(freight) / 100).toFixed(2));
    await page.getByRole('searchbox', { name: 'Find' }).fill('no such words');
    expect(await amounts(page)).toEqual([]);
    await page.context().close();
  });

  test('is worked by keyboard alone', async () => {
    const page = await open(1440);
    const button = page.locator('.ledger thead th').first().getByRole('button');
    await button.focus();
    await page.keyboard.press('Enter');
    await page.keyboard.press('Enter');
    expect(await page.locator('.ledger thead th').first().getAttribute('aria-sort')).toBe('descending');
    await page.context().close();
  });

  test('is complete without scripts, and shows no control that would not work', async () => {
    const page = await open(1440, false);
    expect((await amounts(page)).length).toBeGreaterThan(10);
    expect(await page.locator('main button, main input, main select').count()).toBe(0);
    await page.context().close();
  });

  test('folds its rows on a phone and stays within the screen', async () => {
    const page = await open(390);
    const over = await page.evaluate(
      () => document.documentElement.scrollWidth - document.documentElement.clientWidth,
    );
    expect(over).toBe(0);
    const label = await page.$eval(
      '.ledger tbody td[data-label="Kind"]',
      (cell) => getComputedStyle(cell, '::before').content,
    );
    expect(label).toBe('"Kind"');
    await page.context().close();
  });
});
