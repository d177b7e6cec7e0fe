import { mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { mkdir } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, beforeEach, expect, test } from 'vitest';
import { main } from '../../src/cli/main.ts';
import { createReader } from '../../src/record/read-series.ts';

let root = '';
beforeEach(async () => {
  root = mkdtempSync(join(tmpdir(), 'new-series-'));
  await mkdir(join(root, 'content'));
  writeFileSync(join(root, 'content', 'mine.txt'), 'a year of work');
});
afterEach(() => rmSync(root, { recursive: true, force: true }));

async function run(...args: string[]) {
  let said = '';
  const say = (text: string) => {
    said += text;
  };
  const code = await main(['new-series', ...args], { root, out: say, err: say, interactive: false });
  return { code, said };
}

const ANSWERS = ['--title', 'The moped', '--by', 'W. Straik', '--machine', 'Tarn 50', '--currency', 'GBP'];

test('A new series is set up, and what was there before is set aside as it was', async () => {
  const { code, said } = await run(...ANSWERS);
  expect(code).toBe(0);
  expect(said).toContain('content-set-aside/');
  expect(readFileSync(join(root, 'content-set-aside', 'mine.txt'), 'utf8')).toBe('a year of work');
  const { series, problems } = await createReader(join(root, 'content'), { root }).read();
  expect(problems).toEqual([]);
  expect(series?.title).toBe('The moped');
  expect(series?.chapters.map((one) => one.held)).toEqual([true]);
});

test('A second new series sets the first one aside beside the demo', async () => {
  await run(...ANSWERS);
  await run('--title', 'The other', ...ANSWERS.slice(2));
  expect(
    readdirSync(root)
      .filter((one) => one.startsWith('content'))
      .sort(),
  ).toEqual(['content', 'content-set-aside', 'content-set-aside-2']);
  expect(readFileSync(join(root, 'content-set-aside-2', 'series.yaml'), 'utf8')).toContain('The moped');
});

test('Without an answer and without a terminal nothing is touched', async () => {
  const { code, said } = await run('--title', 'The moped');
  expect(code).toBe(2);
  expect(said).toContain('--by is missing');
  expect(readdirSync(root)).toEqual(['content']);
});

test('A currency that is none is refused in words', async () => {
  const { code, said } = await run('--currency', 'eur');
  expect(code).toBe(2);
  expect(said).toContain('"eur" is not a currency');
  expect(readdirSync(root)).toEqual(['content']);
});
