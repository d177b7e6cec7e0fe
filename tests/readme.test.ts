import { existsSync, readdirSync, readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { describe, expect, test } from 'vitest';

const root = fileURLToPath(new URL('..', import.meta.url));
const text = (file: string) => readFileSync(`${root}${file}`, 'utf8');
const PAGES = [
  'README.md',
  'DEVELOPERS.md',
  ...readdirSync(`${root}docs`)
    .filter((one) => one.endsWith('.md'))
    .map((one) => `docs/${one}`),
];
const { scripts } = JSON.parse(text('package.json')) as { scripts: Record<string, string> };

describe.each(PAGES)('%s', (page) => {
  test('names only npm scripts that there are', () => {
    const named = [...text(page).matchAll(/npm run ([a-z][\w-]*)/g)].map(([, name]) => name ?? '');
    expect(named.filter((name) => !(name in scripts))).toEqual([]);
  });

  test('links only to files that there are', () => {
    const folder = page.includes('/') ? 'docs/' : '';
    const links = [...text(page).matchAll(/\]\((?!https?:|#)([^)#]+)/g)].map(([, to]) => to ?? '');
    expect(links.filter((to) => !existsSync(`${root}${folder}${to}`))).toEqual([]);
  });
});

test('Every command has a script, and its help names that script', async () => {
  const main = text('src/cli/main.ts');
  const commands = [...main.matchAll(/import\('\.\/([\w-]+)\.ts'\)/g)].map(([, name]) => name ?? '');
  expect(commands.length).toBeGreaterThan(8);
  for (const name of commands) {
    const { command } = (await import(`../src/cli/${name}.ts`)) as {
      command: { name: string; usage: string };
    };
    const script = Object.entries(scripts).find(([, run]) => run.endsWith(`main.ts ${command.name}`))?.[0];
    expect(script, `package.json has no script for ${command.name}`).toBeDefined();
    expect(command.usage, command.name).toContain(script === 'test' ? 'npm test' : `npm run ${script}`);
  }
});

test('The house’s guide for developers stays on one screen', () => {
  expect(text('DEVELOPERS.md').split('\n').length).toBeLessThanOrEqual(61);
  for (const folder of readdirSync(`${root}src`, { withFileTypes: true }).filter((one) =>
    one.isDirectory(),
  )) {
    const readme = ['README.md', '_README.md']
      .map((one) => `src/${folder.name}/${one}`)
      .find((one) => existsSync(root + one));
    expect(readme, `src/${folder.name} has no README`).toBeDefined();
    expect(
      text(readme ?? '')
        .trim()
        .split('\n').length,
      readme,
    ).toBeLessThanOrEqual(6);
  }
});
