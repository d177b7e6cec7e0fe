import { existsSync, readFileSync, writeFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { expect, test } from 'vitest';
import { rulesPage } from '../../src/record/rules-page.ts';

test('The page of problems says what the catalogue of rules says', () => {
  const file = fileURLToPath(new URL('../../docs/problems.md', import.meta.url));
  if (process.env['UPDATE'] === '1') writeFileSync(file, rulesPage());
  expect(existsSync(file)).toBe(true);
  expect(readFileSync(file, 'utf8')).toBe(rulesPage());
});
