import { readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { expect, test } from 'vitest';
import { hazard } from '../../../src/record/hazards/catalogue.ts';
import { type Labelled, measure, precision, recall } from '../../../src/record/hazards/measure.ts';

/**
 * Single statements as restorers say them, half of them with words of danger where nothing of the kind is meant. A line is `ids<TAB>words`:
 * the hazards that they must call, `?id` for one that they may, `-` for none. All were written before the words of the catalogue were
 * mended on `tuned.tsv`; `kept.tsv`, every third of them, was not tuned on and is the measurement.
 */
const read = (name: string): Labelled[] =>
  readFileSync(fileURLToPath(new URL(`statements/${name}.tsv`, import.meta.url)), 'utf8')
    .trim()
    .split('\n')
    .map((row) => {
      const [ids = '', text = ''] = row.split('\t');
      const all = ids.split(' ').filter((id) => id !== '-');
      const may = all.filter((id) => id.startsWith('?')).map((id) => id.slice(1));
      return { text, must: all.filter((id) => !id.startsWith('?')), may };
    });
const tuned = read('tuned');
const kept = read('kept');

test('at least 600 statements are labelled with hazards that exist, half with none, none twice', () => {
  const all = [...tuned, ...kept];
  expect(all.length).toBeGreaterThanOrEqual(600);
  expect(all.filter(({ must, may }) => must.length + may.length === 0).length).toBeGreaterThan(
    all.length * 0.45,
  );
  expect(new Set(all.map(({ text }) => text)).size).toBe(all.length);
  for (const id of all.flatMap(({ must, may }) => [...must, ...may])) expect(hazard(id), id).toBeDefined();
});

test.each([
  ['tuned', tuned, 0.93, 0.75],
  ['kept', kept, 0.87, 0.65],
] as const)(
  'on the %s statements the gate hears dangers and warnings as well as it did',
  (_, rows, heard, right) => {
    const { grave } = measure(rows);
    expect(recall(grave)).toBeGreaterThanOrEqual(heard);
    expect(precision(grave)).toBeGreaterThanOrEqual(right);
  },
);
