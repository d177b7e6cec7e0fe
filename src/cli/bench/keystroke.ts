import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { gzipSync } from 'node:zlib';
import type { Measured } from '../bench.ts';
import { command as build } from '../build.ts';
import type { Io } from '../command.ts';
import { serveFolder } from '../serve.ts';

const BUDGET_ms = 16;
const SCRIPT_BUDGET = 12_000;
const KEYS = 200;

export interface Keystrokes {
  id: string;
  /** From the key's event to the answer and drawings laid out anew, over all presses. */
  median_ms: number;
  /** Of a hundred presses the five slowest take longer. */
  slow_ms: number;
}

const at = (sorted: readonly number[], share: number) =>
  sorted[Math.min(sorted.length - 1, Math.floor(sorted.length * share))] ?? Number.NaN;

/** Presses keys in a figure of each calculator of a built site, in a browser, and times each until its answer is laid out. */
export async function pressKeys(folder: string, base: string): Promise<Keystrokes[]> {
  const { launchBrowser } = await import('../../../tests/site/browser.ts');
  const served = await serveFolder(folder, { base });
  const browser = await launchBrowser();
  try {
    const page = await browser.newPage({ viewport: { width: 1440, height: 900 } });
    const found: Keystrokes[] = [];
    for (const id of calculatorsOf(folder)) {
      await page.goto(`${served.address}calculators/${id}/`);
      await page.waitForSelector('.sheet[data-running]');
      const times = await page.evaluate(async (keys) => {
        const sheet = document.querySelector('.sheet') as HTMLElement;
        // The first figure that takes a longer number without a change of meaning: 58 becomes 58.1 and 58.2.
        const boxes = [...sheet.querySelectorAll<HTMLInputElement>('input[data-box="number"]')];
        const box = boxes.find(
          (one) => one.offsetParent && /^\d+(\.\d+)?$/.test(one.value),
        ) as HTMLInputElement;
        const was = box.value.includes('.') ? box.value : `${box.value}.`;
        const taken: number[] = [];
        for (let key = 0; key < keys; key++) {
          await new Promise((frame) => requestAnimationFrame(frame));
          box.value = `${was}${1 + (key % 8)}`;
          const pressed = performance.now();
          box.dispatchEvent(new InputEvent('input', { bubbles: true }));
          sheet.getBoundingClientRect();
          taken.push(performance.now() - pressed);
        }
        if (sheet.hasAttribute('data-stale')) throw new Error(`${box.id} ${box.value} was refused`);
        return taken;
      }, KEYS);
      times.sort((a, b) => a - b);
      found.push({ id, median_ms: at(times, 0.5), slow_ms: at(times, 0.95) });
    }
    return found;
  } finally {
    await browser.close();
    await served.close();
  }
}

function calculatorsOf(folder: string): string[] {
  const entries = readdirSync(join(folder, 'calculators'), { withFileTypes: true });
  return entries.filter((one) => one.isDirectory()).map((one) => one.name);
}

/** Bytes, compressed, of every script that a calculator's page can come to load; shared ones count on each page. */
export function scriptBytes(folder: string, id: string): number {
  const others = calculatorsOf(folder).filter((one) => one !== id);
  const seen = new Set<string>();
  let bytes = 0;
  const follow = (text: string) => {
    for (const [, file = ''] of text.matchAll(/["'`](?:\.\/|[^"'`\s]*\/_astro\/)([\w.@-]+\.js)["'`]/g)) {
      if (seen.has(file) || others.some((one) => file.startsWith(`${one}.`))) continue;
      seen.add(file);
      const script = readFileSync(join(folder, '_astro', file));
      bytes += gzipSync(script, { level: 9 }).length;
      follow(script.toString('utf8'));
    }
  };
  follow(readFileSync(join(folder, 'calculators', id, 'index.html'), 'utf8'));
  return bytes;
}

export async function measure(io: Io): Promise<Measured> {
  const out = '.oilway/bench-calculators';
  const code = await build.run(['--out', out], { ...io, out: () => undefined });
  if (code !== 0) throw new Error('The series could not be built; run npm run check.');
  const folder = join(io.root, out);
  const lines = (await pressKeys(folder, '/')).map(({ id, median_ms, slow_ms }) => {
    const script = (scriptBytes(folder, id) / 1000).toFixed(1);
    return `${id.padEnd(10)}key to answer ${median_ms.toFixed(1)} ms median, ${slow_ms.toFixed(1)} ms at 95 % (budget ${BUDGET_ms}); scripts ${script} kB (budget ${SCRIPT_BUDGET / 1000})`;
  });
  return { lines };
}
