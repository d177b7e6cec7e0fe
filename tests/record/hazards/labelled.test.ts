import { readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { expect, test } from 'vitest';
import { hazard } from '../../../src/record/hazards/catalogue.ts';
import { labelledRows, measure, precision, recall } from '../../../src/record/hazards/measure.ts';

const read = (name: string) =>
  labelledRows(readFileSync(fileURLToPath(new URL(`labelled/${name}.jsonl`, import.meta.url)), 'utf8'));
const tuning = read('tuning');
const untouched = read('untouched');

test('at least 400 sentences are labelled, many without a hazard, none in both halves', () => {
  const all = [...tuning, ...untouched];
  expect(all.length).toBeGreaterThanOrEqual(400);
  expect(all.filter((row) => row.must.length === 0).length).toBeGreaterThan(100);
  const texts = all.map((row) => `${row.title ?? ''}|${row.text}`);
  expect(new Set(texts).size).toBe(texts.length);
  for (const id of all.flatMap((row) => [...row.must, ...row.may])) expect(hazard(id), id).toBeDefined();
});

test.each([
  ['tuning', tuning],
  ['untouched', untouched],
])(
  'on the %s half the gate hears 95 % of dangers and warnings, and 85 % of its calls are right',
  (_, rows) => {
    const { grave } = measure(rows);
    expect(recall(grave)).toBeGreaterThanOrEqual(0.95);
    expect(precision(grave)).toBeGreaterThanOrEqual(0.85);
  },
);
