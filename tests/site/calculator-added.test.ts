/** In a copy of the house: one more file and one more line of the index give a page, a component and a sheet that solves. */
import { execFileSync } from 'node:child_process';
import {
  appendFileSync,
  cpSync,
  existsSync,
  mkdirSync,
  mkdtempSync,
  rmSync,
  symlinkSync,
  writeFileSync,
} from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { afterAll, expect, test } from 'vitest';
import { serveFolder } from '../../src/cli/serve.ts';
import { launchBrowser } from './browser.ts';
import { openIn } from './calculator-sheets.ts';

const house = fileURLToPath(new URL('../../', import.meta.url));
const copy = mkdtempSync(join(tmpdir(), 'oilway-house-'));
afterAll(() => rmSync(copy, { recursive: true, force: true }));

/** Mean piston speed: twice the stroke in each turn. */
const PISTON_SPEED = `import type { Figure, Found, Values } from './contract.ts';
import { told } from './declare.ts';
import { lines } from './says.ts';

export function solve(values: Values): Found {
  const stroke = (values['stroke'] as Figure).si;
  const speed = (values['speed'] as Figure).si / (2 * Math.PI);
  return { ok: true, outputs: { mean: { si: 2 * stroke * speed } } };
}

export const pistonSpeed = told({
  id: 'piston-speed',
  component: 'PistonSpeed',
  title: 'Piston speed',
  answers: 'How fast does the piston travel on average?',
  fields: [
    { kind: 'figure', name: 'stroke', label: 'Stroke', quantity: 'length', units: ['mm', 'in'], start: '58 mm', machine: 'engine.stroke', min: 0.01, max: 0.3 },
    { kind: 'figure', name: 'speed', label: 'Engine speed', quantity: 'rotation', units: ['rpm'], start: '3000', min: 1, max: 2000 },
  ],
  outputs: [{ name: 'mean', label: 'Mean piston speed', quantity: 'speed', units: ['m/s', 'ft/s'], figures: 3 }],
  conventions: [],
  cautions: ['A figure is no permission.'],
  hazards: [],
  sources: ['Twice the stroke in each turn: exact geometry.'],
  checks: [],
  says: {
    notes: ['Mean over the stroke; the greatest is about 1.6 times as high.'],
    lines: lines(
      { c_m: ['mean', 'speed', 'm/s'], s: ['stroke', 'length', 'mm'], n: ['speed', 'rotation', 'rpm'] },
      [['Mean piston speed', 'c_m = 2 s n']],
    ),
  },
}, solve);
`;

test('a calculator of one file and one line has its page, its place in a chapter and a sheet that solves', async () => {
  for (const part of ['src', 'public', 'astro.config.mjs', 'package.json', 'tsconfig.json']) {
    if (existsSync(join(house, part)))
      cpSync(join(house, part), join(copy, part), { recursive: true, dereference: true });
  }
  symlinkSync(join(house, 'node_modules'), join(copy, 'node_modules'));
  writeFileSync(join(copy, 'src/calc/piston-speed.ts'), PISTON_SPEED);
  appendFileSync(join(copy, 'src/calc/contents.ts'), "export { pistonSpeed } from './piston-speed.ts';\n");

  const chapter = join(copy, 'content/chapters/01-bench');
  mkdirSync(chapter, { recursive: true });
  cpSync(join(house, 'content/series.yaml'), join(copy, 'content/series.yaml'));
  cpSync(join(house, 'content/machine.yaml'), join(copy, 'content/machine.yaml'));
  writeFileSync(
    join(chapter, 'chapter.mdx'),
    '---\ntitle: On the bench\ndate: 2026-01-17\nsummary: One sheet.\n---\n\n<PistonSpeed speed="4200 rpm" />\n',
  );
  execFileSync(process.execPath, ['src/cli/main.ts', 'build', '--out', 'out'], { cwd: copy, stdio: 'pipe' });

  const served = await serveFolder(join(copy, 'out'));
  const browser = await launchBrowser();
  try {
    const context = await browser.newContext();
    const { page, complaints } = await openIn(context, `${served.address}calculators/piston-speed/`);
    expect(await page.locator('h1').textContent()).toBe('Piston speed');
    expect(await page.locator('.sheet-results b').textContent()).toBe('5.80\u00a0m/s');
    await page.getByLabel('Engine speed').fill('6000');
    expect(await page.locator('.sheet-results b').textContent()).toBe('11.6\u00a0m/s');
    const { page: there } = await openIn(context, `${served.address}chapters/bench/`);
    expect(await there.locator('.sheet-results b').textContent()).toBe('8.12\u00a0m/s');
    expect(await there.locator('a[data-same]').getAttribute('href')).toContain('/calculators/piston-speed/?');
    expect(complaints).toEqual([]);
  } finally {
    await browser.close();
    await served.close();
  }
}, 180_000);
