import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { firingSpeed } from '../../src/calc/firing-speed.ts';
import { asked } from './answers.ts';

const { answered, notes, output, refusals, rows, typed } = asked(firingSpeed);
const TWIN = { cylinders: '2', strokes: '2' };

describe('engine speed from its sound', () => {
  test('a two-stroke twin heard at 140 Hz turns 4200 rev/min (worked by hand)', () =>
    expect(output({ ...TWIN, frequency: '140 Hz' }, 'speed', 'rpm')).toBeCloseTo((140 / 2) * 60, 9));

  test('speed to tone and back, whichever tone was heard', () =>
    fc.assert(
      fc.property(
        fc.double({ min: 300, max: 6000, noNaN: true }),
        fc.integer({ min: 1, max: 12 }),
        fc.constantFrom('2', '4'),
        fc.constantFrom<[string, string]>(['firing', 'firing'], ['one', 'one']),
        (speed, cylinders, strokes, [tone, name]) => {
          const engine = { cylinders: String(cylinders), strokes, tone };
          const hertz = output({ ...engine, speed: speed.toFixed(9) }, name, 'Hz');
          expect(
            output({ ...engine, frequency: `${hertz.toFixed(9)} Hz` }, 'speed', 'rpm') / speed,
          ).toBeCloseTo(1, 6);
        },
      ),
      { numRuns: 300 },
    ));

  test('a four-stroke of the same sound turns twice as fast as a two-stroke', () => {
    const at = (strokes: string) => output({ ...TWIN, strokes, frequency: '50' }, 'speed', 'rpm');
    expect(at('4') / at('2')).toBeCloseTo(2, 12);
  });

  test('two seconds of recording leave 0.25 Hz open: 7.5 rev/min of a two-stroke twin', () => {
    const given = { ...TWIN, frequency: '25 Hz', window: '2 s' };
    expect(((answered(given).outputs['speed']?.pm ?? 0) * 60) / (2 * Math.PI)).toBeCloseTo(7.5, 9);
    expect(notes(given)).toContain('0.5000 Hz');
  });

  test('the table offers the other readings of the tone', () =>
    expect(rows({ ...TWIN, frequency: '25 Hz' }, 'tones').map((r) => r[2])).toEqual(
      expect.arrayContaining(['750.0', '1500', '375.0']),
    ));

  test('an engine that could not turn so fast is refused, and so is half a cylinder', () => {
    expect(refusals({ ...TWIN, cylinders: '1', frequency: '900 Hz' })[0]).toMatch(
      /^frequency: 54 000 rev\/min is more than engines turn/,
    );
    expect(typed({ ...TWIN, cylinders: '2.5' })).toEqual([
      'cylinders: A whole number is wanted here: 2 or 3.',
    ]);
  });
});
