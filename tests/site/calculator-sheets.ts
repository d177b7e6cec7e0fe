/** What the tests of the calculators' pages share: the demo below /van/, served and opened, and what a sheet shows. */
import type { Browser, BrowserContextOptions, Page } from 'playwright-core';
import { afterAll, beforeAll } from 'vitest';
import { calculators } from '../../src/calc/index.ts';
import { type Served, serveFolder } from '../../src/cli/serve.ts';
import { launchBrowser } from './browser.ts';
import { BUILDS } from './built-site.ts';

export const names = calculators.map((one) => [one.title, one] as const);

export interface Opened {
  page: Page;
  /** What the browser complained of: errors, and whatever the site's policy refused. */
  complaints: string[];
}

/** Serves the built demo for a test file; the functions open its pages. */
export function site() {
  const [, { folder, base }] = BUILDS;
  let browser: Browser;
  let served: Served;
  beforeAll(async () => {
    browser = await launchBrowser();
    served = await serveFolder(folder, { base });
  });
  afterAll(async () => {
    await browser.close();
    await served.close();
  });
  return {
    address: (path: string) => `${served.address}${path}`,
    async open(path: string, options: BrowserContextOptions = {}): Promise<Opened> {
      const context = await browser.newContext({ viewport: { width: 1440, height: 900 }, ...options });
      return openIn(context, `${served.address}${path}`);
    },
  };
}

/** Opens an address in a context that may already keep something, and waits until its sheets run. */
export async function openIn(
  context: Awaited<ReturnType<Browser['newContext']>>,
  address: string,
): Promise<Opened> {
  const page = await context.newPage();
  const complaints: string[] = [];
  page.on('console', (message) => {
    if (message.type() === 'error') complaints.push(message.text());
  });
  page.on('pageerror', (error) => complaints.push(error.message));
  await page.goto(address);
  const scripts = await page.evaluate(() => matchMedia('(scripting: enabled)').matches);
  if (scripts) {
    await page.waitForFunction(() =>
      [...document.querySelectorAll('.sheet')].every((one) => one.hasAttribute('data-running')),
    );
  }
  return { page, complaints };
}

export interface Shown {
  results: string[];
  /** Whether the answer is marked as not belonging to the figures that stand. */
  stale: boolean;
  /** Messages beside their fields, by field. */
  wrong: Record<string, string>;
  /** Fields whose box is said to be invalid. */
  invalid: string[];
  /** Everything that can be read on the sheet. */
  text: string;
}

export function shown(page: Page): Promise<Shown> {
  return page.evaluate(() => {
    const sheet = document.querySelector('.sheet') as HTMLElement;
    const wrong: Record<string, string> = {};
    const invalid: string[] = [];
    for (const line of sheet.querySelectorAll<HTMLElement>('[data-field]')) {
      const name = line.dataset['field'] ?? '';
      const message = line.querySelector('.wrong')?.textContent ?? '';
      if (message !== '') wrong[name] = message;
      if (line.querySelector('[aria-invalid="true"]')) invalid.push(name);
    }
    return {
      results: [...sheet.querySelectorAll('.sheet-results > div')].map((one) =>
        [one.querySelector('dt'), one.querySelector('b'), one.querySelector('.also')]
          .map((part) => part?.textContent ?? '')
          .join('|'),
      ),
      stale: sheet.hasAttribute('data-stale'),
      wrong,
      invalid,
      // biome-ignore lint/performance/useDomNodeTextContent: what is hidden is not shown
      text: sheet.innerText,
    };
  });
}
