import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { foundIn, labelsOf, type Score, score } from './measure.ts';

/** A little below what was measured when the rules were last changed: no change may read the labelled texts worse unseen. */
const FLOOR = {
  quantities: [0.96, 0.97],
  steps: [0.74, 0.74],
  faults: [0.83, 0.74],
  parts: [0.87, 0.82],
  costs: [0.91, 0.85],
  thanks: [0.85, 0.75],
} as const;

test('the labelled texts are read at least as well as before', () => {
  const folder = join(import.meta.dirname, 'labelled/tuning');
  const total: Record<string, Score> = {};
  for (const name of readdirSync(folder).filter((one) => one.endsWith('.labels.json'))) {
    const stem = name.replace('.labels.json', '');
    const text = readdirSync(folder).find((one) => one.startsWith(`${stem}.`) && one !== name) ?? '';
    const labels = labelsOf(JSON.parse(readFileSync(join(folder, name), 'utf8')));
    for (const [kind, one] of Object.entries(
      score(foundIn(text, readFileSync(join(folder, text), 'utf8')), labels),
    )) {
      const sum = total[kind] ?? { right: 0, wanted: 0, told: 0 };
      total[kind] = {
        right: sum.right + one.right,
        wanted: sum.wanted + one.wanted,
        told: sum.told + one.told,
      };
    }
  }
  for (const [kind, [recall, precision]] of Object.entries(FLOOR)) {
    const { right, wanted, told } = total[kind] ?? { right: 0, wanted: 1, told: 1 };
    expect(right / wanted, `recall of ${kind}`).toBeGreaterThanOrEqual(recall);
    expect(right / told, `precision of ${kind}`).toBeGreaterThanOrEqual(precision);
  }
}, 60_000);
