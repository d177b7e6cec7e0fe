import axe from 'axe-core';
import type { Browser } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { type Served, serveFolder } from '../../src/cli/serve.ts';
import { launchBrowser } from './browser.ts';
import { BUILDS, pagesOf } from './built-site.ts';

let browser: Browser;
beforeAll(async () => {
  browser = await launchBrowser();
});
afterAll(() => browser.close());

describe.each(BUILDS)('Opened in a browser, the site for $base', ({ folder, base }) => {
  let served: Served;
  beforeAll(async () => {
    served = await serveFolder(folder, { base });
  });
  afterAll(() => served.close());

  test('asks no other host for anything, and logs no error, on any page', async () => {
    const context = await browser.newContext();
    const page = await context.newPage();
    const complaints: string[] = [];
    let at = '';
    page.on('console', (message) => {
      if (message.type() === 'error') complaints.push(`${at}: ${message.text()}`);
    });
    page.on('pageerror', (error) => complaints.push(`${at}: ${error.message}`));
    page.on('request', (request) => {
      if (!request.url().startsWith(served.address) && !request.url().startsWith('data:'))
        complaints.push(`${at}: asks ${request.url()}`);
    });
    page.on('response', (response) => {
      if (response.status() >= 400 && !at.startsWith('404'))
        complaints.push(`${at}: ${response.status()} ${response.url()}`);
    });
    for (const { file } of pagesOf(folder)) {
      at = file;
      await page.goto(served.address + file.replace(/index\.html$/, ''), { waitUntil: 'load' });
    }
    await context.close();
    expect(complaints).toEqual([]);
  }, 180_000);
});

describe('Every page of the site', () => {
  const [{ folder }] = BUILDS;
  let served: Served;
  beforeAll(async () => {
    served = await serveFolder(folder);
  });
  afterAll(() => served.close());

  /** One page of each kind stands for its kind; all pages of one kind come from one template. */
  const kinds = new Map<string, string>();
  for (const { file } of pagesOf(folder)) {
    const kind = file.split('/').length > 2 ? (file.split('/')[0] ?? file) : file;
    if (!kinds.has(kind)) kinds.set(kind, file);
  }

  test.each(['light', 'dark'] as const)(
    'has no fault that an accessibility checker finds, in %s',
    async (colorScheme) => {
      const found: string[] = [];
      const context = await browser.newContext({ colorScheme, viewport: { width: 390, height: 844 } });
      const page = await context.newPage();
      for (const file of kinds.values()) {
        await page.goto(served.address + file);
        await page.evaluate(axe.source);
        const { violations } = await page.evaluate(() =>
          (window as unknown as { axe: typeof axe }).axe.run(),
        );
        for (const one of violations)
          found.push(
            `${file}: ${one.id} ${one.nodes
              .map((node) => node.target.join(' '))
              .slice(0, 3)
              .join(', ')}`,
          );
      }
      await context.close();
      expect(found).toEqual([]);
    },
    240_000,
  );

  test.each([390, 820, 1440])(
    'fits a window of %i px without scrolling sideways',
    async (width) => {
      const wide: string[] = [];
      const context = await browser.newContext({ viewport: { width, height: 900 } });
      const page = await context.newPage();
      for (const { file } of pagesOf(folder)) {
        await page.goto(served.address + file);
        const over = await page.evaluate(
          () => document.documentElement.scrollWidth - document.documentElement.clientWidth,
        );
        if (over > 0) wide.push(`${file}: ${over} px too wide`);
      }
      await context.close();
      expect(wide).toEqual([]);
    },
    180_000,
  );
});
