import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { gzipSync } from 'node:zlib';
import type { Measured } from '../bench.ts';
import { command as build } from '../build.ts';
import type { Io } from '../command.ts';
import { serveFolder } from '../serve.ts';

const BUDGET_ms = 16;
/** 12 KB. */
const SCRIPT_BUDGET = 12_288;
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
        const press = (box: HTMLInputElement | HTMLTextAreaElement, text: string) => {
          box.value = text;
          box.dispatchEvent(new InputEvent('input', { bubbles: true }));
        };
        const refused = () => sheet.hasAttribute('data-stale');
        // The first box whose last figure takes a longer number and is answered: 58 becomes 58.1 and 58.2.
        const boxes = [
          ...sheet.querySelectorAll<HTMLInputElement>('input[data-box="number"]:not(.written)'),
          ...sheet.querySelectorAll<HTMLTextAreaElement>('textarea'),
        ].filter((one) => one.checkVisibility() && /\d$/.test(one.value));
        const longer = ({ value }: { value: string }) => (/\.\d+$/.test(value) ? value : `${value}.`);
        const box = boxes.find((one) => {
          const [was, text] = [one.value, longer(one)];
          const answered = [1, 8].every((key) => {
            press(one, `${text}${key}`);
            return !refused();
          });
          press(one, was);
          return answered;
        });
        if (!box) throw new Error('No figure of this sheet takes one digit more.');
        const was = longer(box);
        const taken: number[] = [];
        for (let key = 0; key < keys; key++) {
          await new Promise((frame) => requestAnimationFrame(frame));
          box.value = `${was}${1 + (key % 8)}`;
          const pressed = performance.now();
          box.dispatchEvent(new InputEvent('input', { bubbles: true }));
          sheet.getBoundingClientRect();
          taken.push(performance.now() - pressed);
        }
        if (refused()) throw new Error(`${box.id} ${box.value} was refused`);
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

const gzipped = (script: string | Buffer) => gzipSync(script, { level: 9 }).length;

/**
 * Bytes, compressed, of every script of a page: those in the page itself, those that it names, the one that each sheet
 * names, and all that these import, at once or when they are asked to.
 * @param page folder of the page below the site's: "calculators/timing"
 */
export function scriptBytes(folder: string, page: string): number {
  const found = new Map<string, number>();
  const load = (file: string) => {
    if (found.has(file)) return;
    const script = readFileSync(join(folder, '_astro', file));
    found.set(file, gzipped(script));
    const imports = script
      .toString('utf8')
      .matchAll(/(?:\bfrom|\bimport)\s*\(?\s*["'`]\.\/([\w.@+-]+\.js)["'`]/g);
    for (const [, next = ''] of imports) load(next);
  };
  const html = readFileSync(join(folder, page, 'index.html'), 'utf8');
  for (const [, file = ''] of html.matchAll(/(?:src|data-solve)="[^"]*\/_astro\/([^"]+\.js)"/g)) load(file);
  const inline = [...html.matchAll(/<script(?![^>]*(?:\bsrc=|application\/))[^>]*>(.*?)<\/script>/gs)];
  return [...found.values(), ...inline.map(([, script = '']) => gzipped(script))].reduce(
    (sum, bytes) => sum + bytes,
    0,
  );
}

export async function measure(io: Io): Promise<Measured> {
  const out = '.oilway/bench-calculators';
  const code = await build.run(['--out', out], { ...io, out: () => undefined });
  if (code !== 0) throw new Error('The series could not be built; run npm run check.');
  const folder = join(io.root, out);
  const lines = (await pressKeys(folder, '/')).map(({ id, median_ms, slow_ms }) => {
    const script = scriptBytes(folder, `calculators/${id}`);
    return `${id.padEnd(18)}key to answer ${median_ms.toFixed(1)} ms median, ${slow_ms.toFixed(1)} ms at 95 % (budget ${BUDGET_ms}); scripts ${script} bytes (budget ${SCRIPT_BUDGET})`;
  });
  return { lines };
}
