import { existsSync, mkdirSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { type Browser, chromium as playwright } from 'playwright-core';

const root = fileURLToPath(new URL('../..', import.meta.url));

/**
 * A headless browser: the one of CHROMIUM_PATH, else the one that comes with the project's packages (Linux on x64).
 * It unpacks into a folder named by its version, since it would take an older version's files from a shared one.
 */
export async function launchBrowser(): Promise<Browser> {
  const own = process.env['CHROMIUM_PATH'];
  if (own) return playwright.launch({ executablePath: own, args: ['--no-sandbox'] });
  const folder = `${root}node_modules/.cache/chromium-153`;
  mkdirSync(folder, { recursive: true });
  const before = process.env['TMPDIR'];
  process.env['TMPDIR'] = folder;
  // Brings its own security libraries where the machine has none.
  process.env['AWS_LAMBDA_JS_RUNTIME'] ??= 'nodejs24.x';
  // Its own font list names a folder that is not this one, and without any font Chromium dies at the first form field.
  if (existsSync('/etc/fonts/fonts.conf')) process.env['FONTCONFIG_PATH'] ??= '/etc/fonts';
  const { default: packed } = await import('@sparticuz/chromium');
  const executablePath = await packed.executablePath();
  if (before === undefined) delete process.env['TMPDIR'];
  else process.env['TMPDIR'] = before;
  return playwright.launch({
    executablePath,
    args: ['--no-sandbox', '--disable-gpu', '--disable-background-networking', '--no-first-run'],
  });
}
