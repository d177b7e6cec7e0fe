/** What the pages say of the machine's state: on a copy of the demo with its worst fault cured, and on paper and phone. */
import { spawnSync } from 'node:child_process';
import { cpSync, existsSync, mkdirSync, readFileSync, rmSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import type { Browser } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { type Served, serveFolder } from '../../src/cli/serve.ts';
import { launchBrowser } from './browser.ts';
import { BUILDS, filesOf, pagesOf } from './built-site.ts';

const root = fileURLToPath(new URL('../..', import.meta.url));
const place = join(root, '.oilway', 'state-pages');
const [{ folder }] = BUILDS;
const page = (file: string, from = folder) => readFileSync(join(from, file), 'utf8');
/** As read: no tags, single spaces. */
const text = (html: string) =>
  html
    .replace(/<[^>]+>/g, ' ')
    .replace(/\s+/g, ' ')
    .replace(/ ([.;,])/g, '$1');

let browser: Browser;
let served: Served;
beforeAll(async () => {
  browser = await launchBrowser();
  served = await serveFolder(folder);
});
afterAll(async () => {
  await browser.close();
  await served.close();
});

test('The home page says that it is not to be driven, and stops saying so when the fault is cured', () => {
  expect(text(page('index.html'))).toContain('Not to be driven: Front wheel cylinder weeps.');
  rmSync(place, { recursive: true, force: true });
  mkdirSync(place, { recursive: true });
  const content = join(place, 'content');
  cpSync(join(root, 'content'), content, { recursive: true });
  const cure = ['--fault', 'front-cylinder-weeps', '--chapter', '10-round-the-lane', '--date', '2026-09-19'];
  const run = (...args: string[]) =>
    spawnSync('node', ['src/cli/main.ts', ...args, '--content', content], { cwd: root, encoding: 'utf8' });
  const cured = run('cure', ...cure, '--text', 'New cylinder.');
  expect(cured.status, cured.stdout + cured.stderr).toBe(0);
  const built = run('build', '--out', join(place, 'site'));
  expect(built.status, built.stdout + built.stderr).toBe(0);
  const home = text(page('index.html', join(place, 'site')));
  expect(home).not.toContain('Not to be driven');
  expect(home).toContain('Open faults that limit driving: King pin has play.');
});

test('The bench list is in no build', () => {
  expect(existsSync(join(folder, 'bench'))).toBe(false);
  const telling = filesOf(folder).filter((file) => /\.(html|xml|json|js|css)$/.test(file));
  for (const file of telling) expect(page(file), file).not.toMatch(/Bench list|\/bench\/|bench-list\.astro/);
});

describe('Starter lists of suspects', () => {
  const lists = pagesOf(folder).filter((one) => /^suspects\/[^/]+\/index\.html$/.test(one.file));
  test('have a page each, marked as common practice, with the notes of what can hurt before the checks', () => {
    expect(lists).toHaveLength(8);
    for (const { file, html } of lists) {
      expect(html, file).toContain('Common practice of the trade, no source.');
      expect(html.indexOf('class="safety compact'), file).toBeGreaterThan(0);
      expect(html.indexOf('class="safety compact'), file).toBeLessThan(html.indexOf('<table'));
    }
  });
});

test.each([
  ['faults/weak-spark-two/', '.search'],
  ['suspects/will-not-start/', '.suspects'],
  ['measurements/', '.measured'],
  ['outcome/', 'main table'],
])('%s reads on a phone and on paper without a wider page', async (path, table) => {
  for (const [width, media] of [
    [390, 'screen'],
    [602, 'print'],
  ] as const) {
    const context = await browser.newContext({ viewport: { width, height: 800 } });
    const opened = await context.newPage();
    await opened.emulateMedia({ media });
    await opened.goto(served.address + path);
    const beyond = await opened.evaluate(() => document.documentElement.scrollWidth - innerWidth);
    expect(beyond, `${path} ${media}`).toBeLessThanOrEqual(0);
    const box = await opened.locator(table).first().boundingBox();
    expect((box?.x ?? 0) + (box?.width ?? 0), `${path} ${media}`).toBeLessThanOrEqual(width);
    await context.close();
  }
});

test('A chapter that was corrected says so on paper, with the day', async () => {
  const context = await browser.newContext();
  const opened = await context.newPage();
  await opened.emulateMedia({ media: 'print' });
  await opened.goto(`${served.address}chapters/front-hub-and-brakes/`);
  expect(await opened.locator('.when').first().textContent()).toContain('corrected 19 September 2026');
  await context.close();
});

test('The measurements’ page draws the four heights of a bore and tells the drum’s ovality', () => {
  const html = page('measurements/index.html');
  expect(html).toContain('Where bore, number one was measured');
  expect(text(html)).toMatch(/Ovality 0\.14.mm\. Taper 0\.03.mm/);
});
