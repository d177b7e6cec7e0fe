import { readdirSync, readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';

const folder = new URL('../../src/calc/', import.meta.url);
const files = readdirSync(folder).filter((name) => name.endsWith('.ts'));

interface Example {
  file: string;
  code: string;
  result: string;
}

const examples: Example[] = files.flatMap((file) =>
  [...readFileSync(new URL(file, folder), 'utf8').matchAll(/^\s*\*\s+(\w.*?) \/\/ => (.+?)\s*$/gm)].map(
    ([, code = '', result = '']) => ({ file, code, result }),
  ),
);

const spaces = (text: string) => text.replace(/[\u00a0\u202f]/g, ' ');

describe('every example in a doc comment gives what it says', () => {
  test('there are examples to run', () => expect(examples.length).toBeGreaterThan(15));

  test.each(examples.map((e) => [`${e.file}: ${e.code}`, e] as const))(
    '%s',
    async (_, { file, code, result }) => {
      const module: Record<string, unknown> = await import(new URL(file, folder).href);
      const names = Object.keys(module);
      const got: unknown = new Function(...names, `return ${code}`)(...names.map((n) => module[n]));
      const text = /^"(.*)"$/.exec(result)?.[1];
      if (text !== undefined) expect(spaces(String(got))).toBe(text);
      else {
        const wanted = Number.parseFloat(result);
        expect(Math.abs(Number(got) / wanted - 1), `${got}, said to be ${wanted}`).toBeLessThan(1e-3);
      }
    },
  );
});
