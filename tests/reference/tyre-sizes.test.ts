import { describe, expect, test } from 'vitest';
import { tyreOf } from '../../src/calc/tyre.ts';

const diameter = (marking: string) => {
  const tyre = tyreOf(marking);
  if (typeof tyre === 'string') throw new Error(tyre);
  return tyre;
};

/** UN Regulation No. 30, 02 series of amendments, Annex 5: overall diameter in mm, from memory, ± 3 mm. */
const TABLE: readonly [string, number][] = [
  ['125 R 13', 536],
  ['135 R 13', 548],
  ['145 R 13', 566],
  ['155 R 13', 578],
  ['165 R 13', 596],
  ['145 R 10', 492],
  ['145 R 12', 542],
  ['145 R 15', 616],
  ['5.20-10', 508],
  ['5.20-13', 582],
  ['5.60-13', 600],
];

describe('tyre sizes of UN Regulation No. 30, Annex 5 (memory)', () => {
  test.each(TABLE)('%s is tabled at %i mm', (marking, mm) =>
    expect(Math.abs(diameter(marking).diameter_m * 1e3 - mm)).toBeLessThanOrEqual(3),
  );

  // The rules behind sizes that are not tabled, held against sizes that are: a neighbour's rim or width by rule.
  test.each([
    ['155/80 R 13', 578],
    ['125/82 R 13', 536],
    ['145/82 R 10', 492],
    ['145/82 R 12', 542],
    ['145/82 R 15', 616],
  ])('by the formula of 6.1.2, %s comes within 3 mm of the tabled %i mm', (marking, mm) =>
    expect(Math.abs(diameter(marking).diameter_m * 1e3 - mm)).toBeLessThanOrEqual(3),
  );

  test('an estimated size says so and carries a wider ±', () => {
    expect(diameter('4.00-8').rule).toContain('estimate');
    expect(diameter('4.00-8').pm_m).toBeGreaterThan(diameter('145 R 10').pm_m);
  });
});
