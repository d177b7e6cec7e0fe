import { readFileSync, writeFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { expect, test } from 'vitest';
import { referenceGuide } from '../src/record/guide.ts';

test('The guide lists exactly the fields that the check reads', () => {
  const file = fileURLToPath(new URL('../docs/files.md', import.meta.url));
  if (process.env['UPDATE'] === '1') writeFileSync(file, referenceGuide());
  expect(readFileSync(file, 'utf8')).toBe(referenceGuide());
});
