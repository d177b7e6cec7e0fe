import { spawnSync } from 'node:child_process';
import { hash } from 'node:crypto';
import { cpSync, existsSync, mkdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { beforeAll, expect, test } from 'vitest';
import { filesOf } from './built-site.ts';

const root = fileURLToPath(new URL('../..', import.meta.url));
const place = join(root, '.oilway', 'last-good');
const content = join(place, 'content');
const site = join(place, 'site');

function build() {
  const ran = spawnSync('node', ['src/cli/main.ts', 'build', '--content', content, '--out', site], {
    cwd: root,
    encoding: 'utf8',
  });
  return { code: ran.status, said: ran.stdout + ran.stderr };
}

/** Every file of the site with a sum of its bytes. */
const bytes = () =>
  Object.fromEntries(filesOf(site).map((file) => [file, hash('sha256', readFileSync(join(site, file)))]));

beforeAll(() => {
  rmSync(place, { recursive: true, force: true });
  mkdirSync(place, { recursive: true });
  cpSync(join(root, 'tests/series/_base/content'), content, { recursive: true });
});

test('Two builds of one series are the same, byte for byte', () => {
  expect(build()).toMatchObject({ code: 0 });
  const first = bytes();
  expect(build()).toMatchObject({ code: 0 });
  expect(bytes()).toEqual(first);
});

test('With an error in the author’s files the last good site stays as it is', () => {
  const good = bytes();
  const file = join(content, 'machine.yaml');
  const before = readFileSync(file, 'utf8');
  writeFileSync(file, `${before}\nengine: [broken`);
  const { code, said } = build();
  writeFileSync(file, before);
  expect(code).toBe(1);
  expect(said).toContain('machine.yaml:');
  expect(said).toContain('Nothing was published.');
  expect(said).not.toMatch(/^\s+at /m);
  expect(bytes()).toEqual(good);
  expect(existsSync(join(place, '.site.next'))).toBe(false);
});

test('A photo cut off half-way is a problem with its name, and the last good site stays', () => {
  const good = bytes();
  const chapter = filesOf(join(content, 'chapters')).find((one) => /\.(jpe?g|png)$/.test(one));
  if (chapter === undefined) throw new Error('The small series has no photo');
  const file = join(content, 'chapters', chapter);
  const before = readFileSync(file);
  writeFileSync(file, before.subarray(0, Math.floor(before.length * 0.6)));
  const { code, said } = build();
  writeFileSync(file, before);
  expect(code).toBe(1);
  expect(said).toContain(chapter.split('/').at(-1));
  expect(said).not.toMatch(/^\s+at /m);
  expect(bytes()).toEqual(good);
});
