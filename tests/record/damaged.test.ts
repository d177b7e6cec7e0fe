import { cpSync, mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { expect, test } from 'vitest';
import { createReader } from '../../src/record/read-series.ts';

const DEMO = fileURLToPath(new URL('../../content', import.meta.url));
const BITS = [
  '"',
  '{',
  '}',
  '<',
  '>',
  '\n',
  '---\n',
  ',',
  ';',
  ':',
  '|',
  '`',
  '[',
  ']',
  '\t',
  '&',
  '*',
  '=',
  '\0',
  'é',
  '🔧',
  '<Step title="x">',
  '</Step>',
  '1,234',
  '\\',
  '${',
  '/*',
  '~',
];

/** The same figures for the same seed. */
function dice(seed: number): (below: number) => number {
  let state = seed;
  return (below) => {
    state = (Math.imul(state, 1664525) + 1013904223) >>> 0;
    return Math.floor((state / 2 ** 32) * below);
  };
}

test('However the demo’s files are damaged, the reader tells problems at places that exist, and never throws', async () => {
  const root = mkdtempSync(join(tmpdir(), 'oilway-'));
  try {
    const content = join(root, 'content');
    cpSync(DEMO, content, { recursive: true });
    const reader = createReader(content);
    const files = readdirSync(DEMO, { recursive: true })
      .map(String)
      .filter((name) => /\.(?:mdx|csv|yaml|md)$/.test(name))
      .sort();
    const roll = dice(20260117);
    for (let round = 0; round < 150; round++) {
      const file = files[roll(files.length)] ?? 'series.yaml';
      const whole = readFileSync(join(DEMO, file), 'utf8');
      let text = whole;
      for (let cut = 0; cut <= roll(3); cut++) {
        const at = roll(text.length);
        const bit = roll(2) === 0 ? (BITS[roll(BITS.length)] ?? '') : '';
        text = text.slice(0, at) + bit + text.slice(at + roll(bit === '' ? 40 : 2));
      }
      writeFileSync(join(content, file), text);
      const { problems } = await reader.read();
      for (const { file: name, line, column, message } of problems) {
        expect(message).not.toMatch(/\bundefined\b|\bNaN\b|\[object/);
        if (line === undefined || column === undefined) continue;
        const written = readFileSync(join(root, name), 'utf8').split('\n')[line - 1];
        expect(written, `${name}:${line}`).toBeDefined();
        expect(column).toBeLessThanOrEqual([...(written ?? '')].length + 1);
      }
      writeFileSync(join(content, file), whole);
    }
    expect((await reader.read()).problems).toEqual((await createReader(DEMO).read()).problems);
  } finally {
    rmSync(root, { recursive: true, force: true });
  }
});
