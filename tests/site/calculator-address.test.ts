/** A set-up in the address, a reader's own machine, and the card for the workshop wall. */
import { readFileSync } from 'node:fs';
import { beforeAll, describe, expect, test } from 'vitest';
import { names, openIn, shown, site } from './calculator-sheets.ts';

/** Longer than the pause after which the address and the announcement follow. */
const PAUSE_ms = 1_200;

describe.each(names)('%s', (_title, calculator) => {
  const { open } = site();
  const path = `calculators/${calculator.id}/`;
  const figures = calculator.fields.filter((one) => one.kind === 'figure');
  const first = figures.find((one) => !one.when) ?? figures[0];

  test('the address holds the set-up: opened elsewhere it gives the same figures and the same answer', async () => {
    const { page } = await open(path);
    // A figure that can be a hundredth more and the answer still stands.
    let name = '';
    let was = '';
    for (const field of [...figures].sort(
      (a, b) => Number(b.takesPm ?? false) - Number(a.takesPm ?? false),
    )) {
      const box = page.locator(`[data-field="${field.name}"] [data-box="number"]`);
      const doubt = page.locator(`[data-field="${field.name}"] [data-box="pm"]`);
      if (field.whole || !(await box.isVisible())) continue;
      const [figure, pm] = [await box.inputValue(), field.takesPm ? await doubt.inputValue() : ''];
      if (!(Number(figure) > 0)) continue;
      await box.fill((Number(figure) * 1.01).toPrecision(3).replace('.', ','));
      if (field.takesPm) await doubt.fill('0,01');
      if (!(await shown(page)).stale) {
        [name, was] = [field.name, figure];
        break;
      }
      await box.fill(figure);
      if (field.takesPm) await doubt.fill(pm);
    }
    // A sheet of readings has its figures in rows: the first of them, then.
    const rows = calculator.fields.find((one) => one.kind === 'table' && !one.optional);
    if (name === '' && rows) {
      const box = page.locator(`[data-field="${rows.name}"] [data-box="number"]`);
      [name, was] = [rows.name, await box.inputValue()];
      await box.fill(was.replace(/\d+(?:\.\d+)?/, (one) => (Number(one) * 1.01).toPrecision(3)));
    }
    expect(name).not.toBe('');
    await page.waitForTimeout(PAUSE_ms);
    const here = await shown(page);
    const address = new URL(page.url());
    expect(here.stale).toBe(false);
    expect(address.search).toContain(`${name}=`);
    expect(address.search).not.toMatch(/%(?!25)/);
    const status = await page.locator('[data-part="status"]').textContent();
    expect(status).toContain(here.results[0]?.split('|')[1]?.slice(0, 4) ?? '-');
    const { page: friend, complaints } = await open(`${path}${address.search}`);
    expect((await shown(friend)).results).toEqual(here.results);
    expect(await friend.locator('[data-part="told"]').textContent()).toContain('came with the address');
    await friend.getByRole('button', { name: 'Put back the log’s figures' }).click();
    await expect
      .poll(() => friend.locator(`[data-field="${name}"] [data-box="number"]`).inputValue())
      .toBe(was);
    expect(complaints).toEqual([]);
    await page.context().close();
    await friend.context().close();
  });

  test('a broken or foreign address is harmless, and said in words', async () => {
    const choice = calculator.fields.find((one) => one.kind === 'choice');
    const odd = [
      `${first?.name}=%3Cimg+src%3Dx+onerror%3Dalert(1)%3E`,
      `nonsense=1&__proto__=2&constructor=3&${first?.name}=%E0%A4%A`,
      `${choice?.name ?? 'nothing'}=%22%3E%3Cscript%3Ealert(1)%3C%2Fscript%3E`,
      `${first?.name}=${'9'.repeat(5000)}`,
      '&&==&%',
      `${first?.name}=1&${first?.name}=2`,
    ];
    for (const query of odd) {
      const { page, complaints } = await open(`${path}?${query}`);
      const seen = await shown(page);
      expect(seen.text, query).not.toMatch(/NaN|Infinity|undefined|\[object/);
      expect(await page.locator('.sheet img').count(), query).toBe(0);
      expect(complaints, query).toEqual([]);
      if (query.includes('nonsense'))
        expect(await page.locator('[data-part="told"]').textContent()).toContain('“nonsense”');
      await page.context().close();
    }
  });

  test('the card for the wall is half an A4 page, whole, with figures, answer, drawing and address', async () => {
    const { page } = await open(path);
    await page.evaluate(() => {
      window.print = () => document.body.setAttribute('data-printed', '');
    });
    await page.getByRole('button', { name: 'Print card' }).click();
    await page.waitForSelector('body[data-printed]');
    // The width between the margins of an A4 page.
    await page.setViewportSize({ width: 680, height: 1000 });
    await page.emulateMedia({ media: 'print' });
    const card = await page.evaluate(() => {
      const sheet = document.querySelector('.sheet-card') as HTMLElement;
      const seen = (selector: string) =>
        [...sheet.querySelectorAll<HTMLElement>(selector)].filter((one) => one.getClientRects().length > 0);
      const bottom = Math.max(...seen('p, dd, td, svg, li').map((one) => one.getBoundingClientRect().bottom));
      return {
        height_mm: (sheet.getBoundingClientRect().height * 25.4) / 96,
        cut: bottom - sheet.getBoundingClientRect().bottom,
        wide: sheet.scrollWidth - sheet.clientWidth,
        putIn: seen('.put-in').length,
        answers: seen('.sheet-results dd').length,
        drawings: seen('svg').length,
        address: seen('.sheet-address')[0]?.textContent ?? '',
        boxes: seen('input, select, textarea, button').length,
        others: [...document.querySelectorAll<HTMLElement>('main > *, header, footer')].filter(
          (one) => !one.contains(sheet) && !sheet.contains(one) && one.getClientRects().length > 0,
        ).length,
      };
    });
    expect(card.height_mm).toBeLessThanOrEqual(148.5);
    expect(card.cut).toBeLessThanOrEqual(1);
    expect(card.wide).toBeLessThanOrEqual(0);
    expect(card.putIn).toBeGreaterThan(1);
    expect(card.answers).toBeGreaterThan(0);
    expect(card.drawings).toBeGreaterThan(0);
    expect(card.address).toContain(`/van/${path}?`);
    expect(card.boxes).toBe(0);
    expect(card.others).toBe(0);
    await page.context().close();
  });
});

describe('A reader’s own machine', () => {
  const { open, address } = site();
  let path = '';
  const name = 'stroke';
  beforeAll(() => {
    path = address('calculators/timing/');
  });
  const number = `[data-field="${name}"] [data-box="number"]`;

  test('is kept on the device, fills the other sheets, is listed, taken along, cleared and brought in', async () => {
    const { page, complaints } = await open('calculators/timing/');
    const context = page.context();
    await page.locator(number).fill('61,5');
    await page.getByRole('button', { name: 'Keep these as my machine' }).click();
    await expect
      .poll(() => page.locator('[data-part="told"]').textContent())
      .toContain('Kept on this device only');

    const { page: again } = await openIn(context, path);
    expect(await again.locator(number).inputValue()).toBe('61,5');
    expect(await again.locator('[data-whose="own"]').isChecked()).toBe(true);
    await again.locator('[data-whose="log"]').check();
    expect(await again.locator(number).inputValue()).toBe('58');

    const { page: list } = await openIn(context, address('calculators/'));
    await expect.poll(() => list.locator('[data-own="rows"]').textContent()).toContain('61,5 mm');
    const download = list.waitForEvent('download');
    await list.getByRole('button', { name: 'Take along as a file' }).click();
    const file = readFileSync(await (await download).path(), 'utf8');
    expect(JSON.parse(file).figures['engine.stroke']).toBe('61,5 mm');
    await list.getByRole('button', { name: 'Clear from this device' }).click();
    await expect.poll(() => list.locator('[data-own="none"]').isVisible()).toBe(true);
    expect(await list.evaluate(() => localStorage.length)).toBe(0);

    const bring = (text: string) =>
      list.locator('.own-machine input[type="file"]').setInputFiles({
        name: 'machine.json',
        mimeType: 'application/json',
        buffer: Buffer.from(text),
      });
    await bring(file);
    await expect.poll(() => list.locator('[data-own="rows"]').textContent()).toContain('61,5 mm');
    await bring('{"figures":{"engine.bore":"<img src=x onerror=alert(1)>","a b":"1","engine.rod":7}}');
    await expect.poll(() => list.locator('[data-own="told"]').textContent()).toContain('2 could not be read');
    expect(await list.locator('[data-own="rows"] img').count()).toBe(0);
    expect(await list.locator('[data-own="rows"]').textContent()).toContain('<img src=x');
    for (const garbage of ['', 'null', '[1,2]', '{"figures":[]}', '{"figures":{}}', 'x'.repeat(40_000)]) {
      await bring(garbage);
      await expect.poll(() => list.locator('[data-own="told"]').textContent()).toContain('stays as it was');
    }
    expect(complaints).toEqual([]);
    await context.close();
  });

  test('garbage in the browser’s store does not stop a sheet', async () => {
    const { page } = await open('calculators/');
    const context = page.context();
    const keys = await page.evaluate(() => {
      const key = `own-machine${location.pathname.replace(/calculators\/$/, '')}`;
      localStorage.setItem(key, '{"figures":{"engine.stroke":"not a figure","engine.rod":{"a":1}}');
      localStorage.setItem(`${key}used`, 'yes');
      return key;
    });
    const { page: sheet, complaints } = await openIn(context, path);
    expect(await sheet.locator(number).inputValue()).toBe('58');
    await sheet.evaluate(
      (key) => localStorage.setItem(key, '{"figures":{"engine.stroke":"not a figure"}}'),
      keys,
    );
    await sheet.reload();
    await sheet.waitForSelector('.sheet[data-running]');
    const seen = await shown(sheet);
    expect(seen.wrong['stroke']).toContain('not a figure');
    expect(seen.stale).toBe(true);
    expect(complaints).toEqual([]);
    await context.close();
  });
});
