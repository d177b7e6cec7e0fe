/** The sheets as they come from the server, and that a browser draws the same. */
import { readFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { gzipSync } from 'node:zlib';
import axe from 'axe-core';
import { describe, expect, test } from 'vitest';
import * as unitTable from '../../src/calc/unit-table.ts';
import { scriptBytes } from '../../src/cli/bench/keystroke.ts';
import { BUILDS, pagesOf } from './built-site.ts';
import { names, site } from './calculator-sheets.ts';

const PARTS = ['results', 'tables', 'drawings', 'notes', 'working'] as const;

describe.each(names)('%s', (_title, calculator) => {
  const { open } = site();
  const path = `calculators/${calculator.id}/`;
  const parts = () =>
    Object.fromEntries(
      [...document.querySelectorAll<HTMLElement>('.sheet [data-part]')].map((one) => [
        one.dataset['part'] ?? '',
        one.innerHTML,
      ]),
    );

  test('is complete without scripts: figures put in, answer, working as MathML, drawing, published checks', async () => {
    const { page } = await open(path, { javaScriptEnabled: false });
    const seen = await page.evaluate(() => ({
      putIn: [...document.querySelectorAll<HTMLElement>('.sheet .put-in')].filter((one) => one.offsetParent)
        .length,
      boxes: [
        ...document.querySelectorAll<HTMLElement>(
          '.sheet input, .sheet select, .sheet textarea, .sheet button',
        ),
      ].filter((one) => one.offsetParent).length,
      results: document.querySelectorAll('.sheet-results dd').length,
      math: document.querySelectorAll('.sheet-working math mfrac, .sheet-working math mn').length,
      drawings: document.querySelectorAll('.sheet-drawing svg').length,
      checks: document.querySelectorAll('.sheet-checks tbody tr').length,
      text: document.body.textContent ?? '',
    }));
    expect(seen.putIn).toBeGreaterThan(2);
    expect(seen.boxes).toBe(0);
    expect(seen.results).toBeGreaterThan(0);
    expect(seen.math).toBeGreaterThan(0);
    expect(seen.drawings).toBeGreaterThan(0);
    expect(seen.checks).toBe(calculator.checks.length);
    expect(seen.text).not.toMatch(/NaN|Infinity|undefined|\[object/);
    await page.context().close();
  });

  test('every published check on the page stays within the difference allowed', async () => {
    const { page } = await open(path, { javaScriptEnabled: false });
    const rows = await page.locator('.sheet-checks tbody tr').allInnerTexts();
    const figure = (text: string) => Number(text.replace(/[^\d.\u2212-]/g, '').replace('\u2212', '-'));
    for (const row of rows) {
      const [says, published = '', allowed = '', here = ''] = row.split('\t');
      const [p, a, h] = [published, allowed, here].map((one) =>
        figure(one.split(/\u00a0|[°a-zA-Z]/)[0] ?? ''),
      );
      expect(h, `${says}: ${row}`).not.toBeNaN();
      if (/^[\d.\s\u202f\u2212-]+/.test(published))
        expect(Math.abs((h ?? 0) - (p ?? 0)), row).toBeLessThanOrEqual((a ?? 0) * 1.001);
    }
    await page.context().close();
  });

  test('is drawn by the browser as by the server, to the last digit', async () => {
    const { page: still } = await open(path, { javaScriptEnabled: false });
    const server = await still.evaluate(parts);
    await still.context().close();
    const { page, complaints } = await open(path);
    const redrawn = await page.evaluate((names) => {
      // Whatever is redrawn takes the place of a mark; what keeps its mark was not redrawn.
      for (const name of names) {
        const place = document.querySelector(`.sheet [data-part="${name}"]`);
        if (place) place.innerHTML = '<i>not drawn</i>';
      }
      const box = document.querySelector('.sheet [data-box="number"]');
      box?.dispatchEvent(new Event('input', { bubbles: true }));
    }, PARTS);
    expect(redrawn).toBeUndefined();
    const browser = await page.evaluate(parts);
    for (const name of PARTS) expect(browser[name], name).toBe(server[name]);
    expect(complaints).toEqual([]);
    await page.context().close();
  });

  test.each(['light', 'dark'] as const)(
    'has no fault that an accessibility checker finds, with errors shown, in %s',
    async (colorScheme) => {
      const { page } = await open(path, { colorScheme, viewport: { width: 390, height: 844 } });
      await page.evaluate(() => {
        for (const group of document.querySelectorAll('details')) group.open = true;
      });
      for (const wrong of [false, true]) {
        if (wrong) await page.locator('.sheet input[data-box="number"]:visible').first().fill('twelve');
        await page.evaluate(axe.source);
        const { violations } = await page.evaluate(() =>
          (window as unknown as { axe: typeof axe }).axe.run(),
        );
        expect(
          violations.map((one) => `${one.id}: ${one.nodes.map((node) => node.target.join(' ')).join(', ')}`),
        ).toEqual([]);
      }
      await page.context().close();
    },
  );

  test.each([390, 820, 1440])('fits a window of %i px', async (width) => {
    const { page } = await open(path, { viewport: { width, height: 900 } });
    expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(width);
    await page.context().close();
  });

  test('every box can be reached and left by keyboard, has a name, and its errors are tied to it', async () => {
    const { page } = await open(path);
    await page.evaluate(() => {
      for (const group of document.querySelectorAll('details')) group.open = true;
    });
    const wanted = await page.locator('.sheet :is(input, select, textarea, button):visible:enabled').count();
    const reached = new Set<string>();
    await page.locator('.sheet .sheet-title').evaluate((title) => {
      (title as HTMLElement).tabIndex = -1;
      (title as HTMLElement).focus();
    });
    for (let i = 0; i < wanted * 2 + 20; i++) {
      await page.keyboard.press('Tab');
      const at = await page.evaluate(() => {
        const active = document.activeElement as HTMLElement;
        const outline = getComputedStyle(active);
        if (!active.matches('.sheet input, .sheet select, .sheet textarea, .sheet button')) return '';
        const all = [
          ...document.querySelectorAll('.sheet input, .sheet select, .sheet textarea, .sheet button'),
        ];
        return outline.outlineStyle === 'none' ? 'no outline' : String(all.indexOf(active));
      });
      if (at !== '') reached.add(at);
    }
    expect(reached.has('no outline')).toBe(false);
    // Of a pair of radio buttons the keyboard stops at the chosen one.
    const radios = await page.locator('.sheet input[type="radio"]:visible:enabled').count();
    expect(reached.size).toBe(wanted - Math.max(0, radios - 1));
    const tied = await page.evaluate(() =>
      [...document.querySelectorAll('.sheet [data-box="number"]')].every((box) =>
        (box.getAttribute('aria-describedby') ?? '').split(' ').every((id) => document.getElementById(id)),
      ),
    );
    expect(tied).toBe(true);
    await page.context().close();
  });
});

describe('Scripts', () => {
  const { open } = site();
  const [, { folder }] = BUILDS;

  test.each(names)(
    '%s loads just the scripts that it is said to, and has them all before a button is pressed',
    async (_title, { id }) => {
      const { page, complaints } = await open(`calculators/${id}/`);
      const first = page.locator('.sheet input[inputmode]:visible').first();
      const before = await page.locator('[data-part="address"]').textContent();
      await first.fill(`${await first.inputValue()}1`);
      await expect.poll(() => page.locator('[data-part="address"]').textContent()).not.toBe(before);
      const loaded = await page.evaluate(() =>
        performance
          .getEntriesByType('resource')
          .map(({ name }) => new URL(name).pathname)
          .filter((path) => path.endsWith('.js')),
      );
      const bytes = loaded.map((path) => {
        const script = readFileSync(join(folder, path.replace(/^\/van\//, '')));
        return gzipSync(script, { level: 9 }).length;
      });
      expect(bytes.length).toBeGreaterThan(1);
      expect(scriptBytes(folder, `calculators/${id}`)).toBe(bytes.reduce((sum, one) => sum + one, 0));
      expect(complaints).toEqual([]);
      await page.context().close();
    },
  );

  /** 12 KB, for a page's scripts in all. */
  const MOST = 12_288;
  test.each(names)('%s loads no more of them than is allowed, compressed', (_title, { id }) => {
    expect(scriptBytes(folder, `calculators/${id}`)).toBeLessThanOrEqual(MOST);
  });

  test('no chapter of the demo that shows sheets loads more than that', () => {
    const chapters = pagesOf(folder)
      .filter(({ file, html }) => file.startsWith('chapters/') && html.includes('data-calculator='))
      .map(({ file }) => dirname(file));
    expect(chapters.length).toBeGreaterThan(3);
    const bytes = chapters.map((chapter) => [chapter, scriptBytes(folder, chapter)] as const);
    expect(bytes.filter(([, sum]) => sum > MOST)).toEqual([]);
  });

  test('two sheets of any calculators but the two of the drive line have room on one page', () => {
    const others = names.map(([, { id }]) => id).filter((id) => id !== 'gearing' && id !== 'hills');
    const form = Math.min(...others.map((id) => formBytes(folder, id)));
    const sizes = others.map((id) => scriptBytes(folder, `calculators/${id}`) - form).sort((a, b) => b - a);
    expect(form + (sizes[0] ?? 0) + (sizes[1] ?? 0)).toBeLessThanOrEqual(MOST);
  });

  test.each(names)(
    'the page of %s carries every unit, and every table that its scripts look into',
    async (_title, { id }) => {
      const { page } = await open(`calculators/${id}/`, { javaScriptEnabled: false });
      const tables = JSON.parse((await page.locator('[data-tables]').textContent()) ?? '{}');
      expect(tables['unit-table']).toEqual(JSON.parse(JSON.stringify(unitTable)));
      expect(Object.keys(tables)).toEqual(expect.arrayContaining(['reading-messages', 'sheet-messages']));
      await page.context().close();
    },
  );
});

/** Of the script that every sheet of the page has in common. */
function formBytes(folder: string, id: string): number {
  const html = readFileSync(join(folder, 'calculators', id, 'index.html'), 'utf8');
  const [, file = ''] = /<script[^>]*src="[^"]*\/_astro\/(sheet\.[^"]+\.js)"/.exec(html) ?? [];
  return gzipSync(readFileSync(join(folder, '_astro', file)), { level: 9 }).length;
}
