import { type ChildProcess, spawn } from 'node:child_process';
import { appendFileSync, cpSync, mkdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { afterAll, beforeAll, expect, test } from 'vitest';

const root = fileURLToPath(new URL('../..', import.meta.url));
const place = join(root, '.oilway', 'dev-server');
const content = join(place, 'content');
const PORT = 4397;
let server: ChildProcess;
let said = '';

/** The environment without what a test runner adds: the dev server would take itself for a part of the tests. */
function ofAuthor(): NodeJS.ProcessEnv {
  const own = /^(VITEST.*|NODE_ENV|TEST|MODE|DEV|PROD|SSR|BASE_URL)$/;
  return Object.fromEntries(Object.entries(process.env).filter(([name]) => !own.test(name)));
}

/** The page once it answers and holds the text; fails with what the server said. */
async function page(path: string, text: string, within_ms = 30_000): Promise<string> {
  const until = Date.now() + within_ms;
  let last = '';
  while (Date.now() < until) {
    last = await fetch(`http://localhost:${PORT}${path}`).then(
      (answer) => answer.text(),
      () => '',
    );
    if (last.includes(text)) return last;
    await new Promise((later) => setTimeout(later, 100));
  }
  throw new Error(
    `${path} never showed "${text}". The server said:\n${said}\nand the page:\n${last.slice(0, 2000)}`,
  );
}

beforeAll(() => {
  rmSync(place, { recursive: true, force: true });
  mkdirSync(place, { recursive: true });
  cpSync(join(root, 'tests/series/_base/content'), content, { recursive: true });
  const later = join(content, 'chapters', '90-held-back');
  mkdirSync(later);
  writeFileSync(
    join(later, 'chapter.mdx'),
    '---\ntitle: Held back\ndate: 2026-12-01\nsummary: Not yet.\nheld: true\n---\n\nThe first sentence.\n',
  );
  server = spawn(join(root, 'node_modules/.bin/astro'), ['dev', '--ignore-lock', '--port', String(PORT)], {
    cwd: root,
    env: { ...ofAuthor(), OILWAY_CONTENT: content, ASTRO_TELEMETRY_DISABLED: '1' },
    stdio: ['ignore', 'pipe', 'pipe'],
    detached: true,
  });
  for (const stream of [server.stdout, server.stderr]) {
    stream?.on('data', (text) => {
      said += text;
    });
  }
});
afterAll(() => {
  if (server.pid !== undefined) process.kill(-server.pid);
  rmSync(place, { recursive: true, force: true });
});

test('While writing, a held chapter shows and is marked as held', async () => {
  expect(await page('/chapters/held-back/', 'The first sentence.')).toMatch(/held/i);
});

test('A saved chapter shows at once, a saved sheet too', async () => {
  appendFileSync(join(content, 'chapters', '90-held-back', 'chapter.mdx'), '\nThe second sentence.\n');
  await page('/chapters/held-back/', 'The second sentence.');
  const sheet = join(content, 'machine.yaml');
  writeFileSync(sheet, readFileSync(sheet, 'utf8').replace(/^name: .*$/m, 'name: Tarn 265 Special'));
  await page('/machine/', 'Tarn 265 Special');
});

test('A mistake is told with its place, and the page stays until it is mended', async () => {
  const file = join(content, 'series.yaml');
  const before = readFileSync(file, 'utf8');
  writeFileSync(file, before.replace(/^home_currency: .*$/m, 'home_currency: XQX'));
  await expect.poll(() => said, { timeout: 20_000 }).toContain('XQX');
  await page('/chapters/held-back/', 'The second sentence.');
  writeFileSync(file, before);
});

test('A new chapter shows without starting again', async () => {
  const folder = join(content, 'chapters', '91-another');
  mkdirSync(folder);
  writeFileSync(
    join(folder, 'chapter.mdx'),
    '---\ntitle: Another\ndate: 2026-12-02\nsummary: New.\nheld: true\n---\n\nQuite new.\n',
  );
  await page('/chapters/another/', 'Quite new.');
});
