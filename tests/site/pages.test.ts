/** What a reader finds on the built pages, by kind of page. */
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import type { Browser } from 'playwright-core';
import Parser from 'rss-parser';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { type Served, serveFolder } from '../../src/cli/serve.ts';
import { launchBrowser } from './browser.ts';
import { attribute, BUILDS, filesOf, pagesOf } from './built-site.ts';

const [{ folder }] = BUILDS;
const pages = pagesOf(folder);
const page = (file: string) => {
  const found = pages.find((one) => one.file === file);
  if (!found) throw new Error(`${file} was not built.`);
  return found;
};
const chapterPages = pages.filter((one) => /^chapters\/[^/]+\/index\.html$/.test(one.file));

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

describe('Every page', () => {
  test('has one first heading, one main part, and headings that skip no level', () => {
    for (const { file, elements } of pages) {
      const levels = elements
        .filter((one) => /^h[1-6]$/.test(one.tagName))
        .map((one) => Number(one.tagName.slice(1)));
      expect(
        levels.filter((one) => one === 1),
        file,
      ).toHaveLength(1);
      expect(
        elements.filter((one) => one.tagName === 'main'),
        file,
      ).toHaveLength(1);
      const skipped = levels.some((level, place) => place > 0 && level > (levels[place - 1] ?? 0) + 1);
      expect(skipped, `${file}: ${levels.join(' ')}`).toBe(false);
    }
  });

  test('leaves no white space before a comma or a full stop', () => {
    for (const { file, html } of pages) {
      const body = html.replace(/<(script|style|math|svg)\b[\s\S]*?<\/\1>/g, '');
      expect(body.match(/.{0,40}<\/(?:a|span|b|time)>\s+[,.;:](?=[\s<])/g) ?? [], file).toEqual([]);
    }
  });
});

describe('A chapter', () => {
  test('can be read without a script: its prose, steps, notes and tables are in the page', async () => {
    const context = await browser.newContext({ javaScriptEnabled: false });
    const opened = await context.newPage();
    await opened.goto(`${served.address}chapters/first-start/`);
    expect(await opened.locator('.step').count()).toBe(10);
    expect(await opened.locator('#carried-over').isVisible()).toBe(true);
    expect(await opened.locator('#carried-on').isVisible()).toBe(true);
    await context.close();
  });

  test('gives each step a link of its own that shows its number', () => {
    for (const { file, elements } of chapterPages) {
      const steps = elements.filter((one) => /(^| )step( |$)/.test(attribute(one, 'class') ?? ''));
      const links = elements.filter((one) => attribute(one, 'class') === 'step-number');
      expect(
        links.map((one) => attribute(one, 'href')),
        file,
      ).toEqual(steps.map((one) => `#${attribute(one, 'id')}`));
    }
  });

  test('that was paid for says so above its first paragraph', () => {
    const { html } = page('chapters/front-hub-and-brakes/index.html');
    const said = html.indexOf('Halmquist Bearings');
    expect(said).toBeGreaterThan(0);
    expect(said).toBeLessThan(html.indexOf('class="summary"'));
    expect(said).toBeLessThan(html.indexOf('class="chapter-body"'));
  });

  test('shows a correction at its head and at its step, and the home page shows it if it can hurt', () => {
    const now = 'Polishing makes a pit smooth and leaves it as deep';
    const { html } = page('chapters/front-hub-and-brakes/index.html');
    expect(html.split(now)).toHaveLength(3);
    expect(page('index.html').html).toContain(now);
  });

  test('weighs at most 40 kB of page and styles, compressed, where it has no calculator', async () => {
    const { gzipSync } = await import('node:zlib');
    for (const { file, html, elements } of chapterPages) {
      if (html.includes('data-calculator=')) continue;
      const styles = elements
        .filter((one) => one.tagName === 'link' && attribute(one, 'rel') === 'stylesheet')
        .map((one) => readFileSync(join(folder, attribute(one, 'href') ?? '')));
      const bytes = [Buffer.from(html), ...styles].reduce((sum, one) => sum + gzipSync(one).length, 0);
      expect(bytes, file).toBeLessThan(40_000);
    }
  });
});

describe('The home page', () => {
  test('says first that the machine is not to be driven while a fault forbids it', () => {
    const { html } = page('index.html');
    const record = html.slice(html.indexOf('class="record"'));
    expect(record.replace(/<[^>]+>/g, ' ').replace(/\s+/g, ' ')).toMatch(
      /^[^>]*> On the road Not to be driven: Front wheel cylinder weeps ?\./,
    );
  });
});

describe('The register of faults', () => {
  test('lists every fault without a script', async () => {
    const context = await browser.newContext({ javaScriptEnabled: false });
    const opened = await context.newPage();
    await opened.goto(`${served.address}faults/`);
    const faults = filesOf(folder).filter((file) => /^faults\/[^/]+\/index\.html$/.test(file));
    expect(await opened.locator('.register > li').count()).toBe(faults.length);
    expect(await opened.locator('#fault-filters').isVisible()).toBe(false);
    await context.close();
  });

  test('shows the open ones alone, or one system, and keeps the choice in the address', async () => {
    const context = await browser.newContext();
    const opened = await context.newPage();
    await opened.goto(`${served.address}faults/`);
    const shown = () => opened.locator('.register > li:visible').count();
    const all = await shown();
    await opened.getByLabel('open only').check();
    expect(await shown()).toBe(3);
    expect(await opened.locator('#cured').isVisible()).toBe(false);
    expect(await opened.locator('output').textContent()).toBe(`3 of ${all} shown`);
    await opened.getByLabel('System').selectOption('brakes');
    expect(await shown()).toBe(1);
    await opened.goto(opened.url());
    expect(await shown()).toBe(1);
    await context.close();
  });

  test('a fault that came back shows both lives, and every suspect with its verdict', () => {
    const { html } = page('faults/weak-spark-two/index.html');
    expect(html).toContain('First life');
    expect(html).toContain('Second life');
    expect(html.match(/<tr class="[^"]*\bculprit\b/g)).toHaveLength(1);
  });
});

describe('On paper', () => {
  test('a step’s heading stands on the sheet of its safety note', async () => {
    const context = await browser.newContext({ viewport: { width: 680, height: 1000 } });
    const opened = await context.newPage();
    await opened.goto(`${served.address}chapters/first-start/`);
    await opened.emulateMedia({ media: 'print' });
    const broken = await opened.evaluate(() =>
      [...document.querySelectorAll('.step > h2, .step > .step-line, .step > .step-helper')]
        .filter((one) => getComputedStyle(one).breakAfter !== 'avoid')
        .map((one) => one.textContent),
    );
    expect(broken).toEqual([]);
    expect(await opened.locator('.running-head').isVisible()).toBe(false);
    await context.close();
  });
});

describe('Feeds', () => {
  const [, below] = BUILDS;
  test('announce chapters and corrections with whole addresses, below the site’s path', async () => {
    const feed = await new Parser().parseString(readFileSync(join(below.folder, 'feed.xml'), 'utf8'));
    expect(feed.items.length).toBeGreaterThan(10);
    for (const item of feed.items)
      expect(item.link).toMatch(/^https:\/\/[^/]+\/van\/chapters\/[^/]+\/(#.+)?$/);
    expect(feed.items.some((item) => item.title?.startsWith('Corrected in'))).toBe(true);
  });
  test('say the same in JSON', () => {
    const feed = JSON.parse(readFileSync(join(below.folder, 'feed.json'), 'utf8'));
    expect(feed.version).toBe('https://jsonfeed.org/version/1.1');
    const ids = feed.items.map((one: { id: string }) => one.id);
    expect(new Set(ids).size).toBe(ids.length);
  });
});
