import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { fits } from '../../src/calc/fits.ts';
import { HOLES, limitsOf, SHAFTS } from '../../src/calc/limits-and-fits.ts';
import { asked } from './answers.ts';

const { answered, notes, output, refusals, typed } = asked(fits);
const OWN = { outer: 'own', outerGrowth: '23', inner: 'own', innerGrowth: '12' };

describe('fits and growth', () => {
  test('52 mm bearing, 40 µm tight in aluminium of 23: 30 µm to spare takes 58.5 K (worked by hand)', () => {
    // (30 + 40) / (52 000 × 23e-6) = 58.53 K above 20 °C
    const given = { ...OWN, size: '52 mm', clearance: '-40 um', gap: '30 um' };
    expect(output(given, 'heatTo', 'degC')).toBeCloseTo(20 + 70 / (52000 * 23e-6), 6);
    expect(output(given, 'heatBy', 'K')).toBeCloseTo(70 / (52000 * 23e-6), 6);
  });

  test('heated as told, the clearance is what was asked for, chilled inner part or not', () =>
    fc.assert(
      fc.property(
        fc.double({ min: 10, max: 110, noNaN: true }),
        fc.double({ min: -60, max: 20, noNaN: true }),
        fc.double({ min: -18, max: 40, noNaN: true }),
        (size, cold, inner) => {
          const given = {
            ...OWN,
            size: `${size.toFixed(6)} mm`,
            clearance: `${cold.toFixed(6)} um`,
            innerHot: `${inner.toFixed(6)} degC`,
            gap: '30 um',
          };
          const to = output(given, 'heatTo', 'K');
          if (to > 670) return;
          expect(output({ ...given, outerHot: `${to.toFixed(9)} K` }, 'hot', 'um')).toBeCloseTo(30, 4);
        },
      ),
      { numRuns: 300 },
    ));

  test('an aluminium piston in an iron barrel closes as both warm', () => {
    const given = {
      size: '54 mm',
      outer: 'iron',
      inner: 'piston',
      clearance: '70 um',
      outerHot: '120 degC',
      innerHot: '200 degC',
    };
    // 54 000 × (10.5e-6 × 100 − 20e-6 × 180) = −137.7 µm
    expect(output(given, 'hot', 'um')).toBeCloseTo(70 - 137.7, 6);
    expect(notes(given)).toContain('It would seize');
  });

  test('what alloys differ by goes into the ± of the answer', () =>
    expect(
      answered({ size: '52 mm', outer: 'aluminium', inner: 'steel', outerHot: '100 degC' }).outputs[
        'outerGrowth'
      ]?.pm,
    ).toBeCloseTo(0.052 * 1.5e-6 * 80, 12));

  test('tighter letters are tighter, and steps have no gap, from 1 to 120 mm', () => {
    for (let size = 1; size <= 120; size++) {
      const uppers = SHAFTS.filter((name) => name.endsWith('6')).map(
        (name) => limitsOf(name, size / 1e3)?.[1] ?? Number.NaN,
      );
      expect(uppers, `${size} mm`).toEqual([...uppers].sort((a, b) => a - b));
      for (const name of [...HOLES, ...SHAFTS]) {
        const [low = 0, high = 0] = limitsOf(name, size / 1e3) ?? [];
        expect(high, `${size} ${name}`).toBeGreaterThan(low);
      }
    }
    expect(limitsOf('H7', 0.121)).toBeUndefined();
  });

  test('the table, not the formula: IT7 from 10 to 18 mm is 18 µm', () =>
    expect(output({ size: '16 mm', fit: 'H7/h6' }, 'holeMost', 'mm')).toBeCloseTo(16.018, 9));

  test('clearance, transition and interference are told apart', () => {
    expect(notes({ size: '25 mm', fit: 'H7/g6' })).toContain('is a clearance fit: from 7.00 µm of clearance');
    expect(notes({ size: '25 mm', fit: 'H7/k6' })).toContain('is a transition fit');
    expect(notes({ size: '25 mm', fit: 'H7/p6' })).toContain('is an interference fit');
  });

  test('above 120 °C it says so', () =>
    expect(notes({ ...OWN, size: '20 mm', clearance: '-40 um', gap: '30 um' })).toContain(
      'above about 120 °C',
    ));

  test('a fit that the table has not, or a missing clearance, is refused with what to write', () => {
    expect(refusals({ size: '25 mm', fit: 'h7/G6' })[0]).toMatch(
      /^fit: Write hole and shaft, such as H7\/k6/,
    );
    expect(refusals({ size: '150 mm', fit: 'H7/k6' })).toEqual(['fit: The table ends at 120 mm.']);
    expect(refusals({ size: '25 mm', gap: '30 um' })[0]).toMatch(
      /^clearance: The fit, or the clearance cold/,
    );
  });

  test('a clearance of 30 mm is likelier 30 µm', () =>
    expect(typed({ clearance: '30 mm' })[0]).toMatch(/^clearance: 30 mm\? 30 µm is likelier/));
});
