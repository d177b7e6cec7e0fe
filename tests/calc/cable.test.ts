import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { cable } from '../../src/calc/cable.ts';
import { fromSi, toSi } from '../../src/calc/units.ts';
import { asked } from './answers.ts';

const { answered, notes, output, refusals, rows, typed } = asked(cable);
const LAMP = { supply: '12 V', load: '35 W', length: '3 m', section: '1.5 mm2' };

describe('cable and voltage drop', () => {
  test('35 W over 3 m of 1.5 mm² out and back at 12 V loses 0.233 V (worked by hand)', () =>
    // 2.9167 A × 6 m × 13.3 Ω/km
    expect(output(LAMP, 'drop', 'V')).toBeCloseTo((35 / 12) * 6 * 0.0133, 9));

  test('twice the length loses twice the voltage; the frame as the way back halves it', () =>
    fc.assert(
      fc.property(fc.double({ min: 0.5, max: 15, noNaN: true }), (m) => {
        const at = (length: number, back = 'cable') =>
          output({ ...LAMP, load: '5 W', length: `${length.toFixed(6)} m`, back }, 'drop', 'V');
        expect(at(2 * m) / at(m)).toBeCloseTo(2, 5);
        expect(at(m, 'frame') / at(m)).toBeCloseTo(0.5, 9);
      }),
      { numRuns: 200 },
    ));

  test('the copper that is asked for loses just the limit', () =>
    fc.assert(
      fc.property(
        fc.double({ min: 1, max: 60, noNaN: true }),
        fc.constantFrom('6 V', '12 V', '24 V'),
        (watts, supply) => {
          const given = { ...LAMP, supply, load: `${watts.toFixed(6)} W`, conductor: 'ideal', limit: '3 %' };
          const needed = output(given, 'needed', 'mm2');
          fc.pre(needed > 0.2 && needed < 120);
          const section = `${needed.toFixed(9)} mm2`;
          expect(output({ ...given, section }, 'share', '%')).toBeCloseTo(3, 5);
        },
      ),
      { numRuns: 200 },
    ));

  test('the smallest size of the series is within the limit, the next thinner is not', () => {
    const given = { ...LAMP, limit: '1.5 %' };
    expect(output(given, 'least', 'mm2')).toBeCloseTo(2.5, 9);
    expect(output({ ...given, section: '2.5 mm2' }, 'share', '%')).toBeLessThanOrEqual(1.5);
    expect(output({ ...given, section: '1.5 mm2' }, 'share', '%')).toBeGreaterThan(1.5);
    expect(rows(given, 'sizes')).toHaveLength(11);
  });

  test('joints count: 0.3 V at a rusty earth costs more light than the cable', () => {
    const bad = { ...LAMP, joints: '300 mV' };
    expect(output(bad, 'drop', 'V') - output(LAMP, 'drop', 'V')).toBeCloseTo(0.3, 9);
    expect(output(bad, 'light', '%')).toBeLessThan(output(LAMP, 'light', '%'));
    expect(notes({ ...LAMP, back: 'frame' })).toContain('The frame is counted as nothing.');
  });

  test('the same watts at 6 V lose four times the share of 12 V', () =>
    expect(output({ ...LAMP, supply: '6 V' }, 'share', '%') / output(LAMP, 'share', '%')).toBeCloseTo(4, 9));

  test('gauge numbers and sections turn back into each other', () => {
    for (const n of [-3, 0, 10, 14, 36])
      expect(fromSi(toSi(n, 'section', 'AWG'), 'section', 'AWG')).toBeCloseTo(n, 9);
    expect(toSi(-3, 'section', 'AWG')).toBeCloseTo((Math.PI / 4) * (0.46 * 0.0254) ** 2, 12);
  });

  test('amperes instead of watts', () =>
    expect(output({ ...LAMP, load: '', current: '3.5 A' }, 'drop', 'V')).toBeCloseTo(3.5 * 6 * 0.0133, 9));

  test('a doubtful length is carried to the drop', () =>
    expect(answered({ ...LAMP, length: '3 ± 0.3 m' }).outputs['drop']?.pm).toBeCloseTo(0.023275, 6));

  test('a cable that would lose everything, and figures out of range, are refused in plain words', () => {
    expect(refusals({ ...LAMP, load: '4000 W', length: '30 m' })[0]).toMatch(
      /^load: The cable alone would lose/,
    );
    expect(typed({ ...LAMP, length: '300' })[0]).toMatch(
      /^length: 300 m\? .* is likelier; this must be between/,
    );
    expect(typed({ ...LAMP, section: '0' })[0]).toMatch(/^section: /);
  });
});
