import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { speedCheck } from '../../src/calc/speed-check.ts';
import { asked } from './answers.ts';

const { answered, notes, output, refusals, typed } = asked(speedCheck);
const RUN = { distance: '1 km ± 5 m', time: '84 ± 0.4 s' };

describe('speedometer check', () => {
  test('1 km in 84 s is 42.86 km/h; 45 shown is 2.14 too much (worked by hand)', () => {
    expect(output(RUN, 'speed', 'km/h')).toBeCloseTo(3600 / 84, 9);
    expect(output({ ...RUN, indicated: '45' }, 'off', 'km/h')).toBeCloseTo(45 - 3600 / 84, 9);
  });

  test('the shares of distance and time add by squares', () => {
    const o = answered(RUN).outputs['speed'];
    expect((o?.pm ?? 0) / (o?.si ?? 1)).toBeCloseTo(Math.hypot(0.005, 0.4 / 84), 5);
  });

  test('a longer distance at the same speed leaves less doubt', () => {
    const far = answered({ distance: '2 km ± 5 m', time: '168 ± 0.4 s' }).outputs['speed']?.pm ?? 0;
    expect(far).toBeLessThan((answered(RUN).outputs['speed']?.pm ?? 0) * 0.51);
  });

  test.each([
    ['45 ± 1 km/h', 'it lies where UN Regulation No. 39 puts'],
    ['40 ± 1 km/h', 'It reads low'],
    ['56 ± 1 km/h', 'higher than UN Regulation No. 39 allows'],
    ['43 ± 1 km/h', 'too wide to tell'],
  ])('%s shown at a true 42.9 km/h: %s', (indicated, says) =>
    expect(notes({ ...RUN, indicated })).toContain(says),
  );

  test('the odometer put right, and the same the other way', () =>
    fc.assert(
      fc.property(fc.double({ min: 0.8, max: 1.2, noNaN: true }), (k) => {
        const given = { odoTrue: `${(20 * k).toFixed(9)} km`, odoShown: '20 km', reading: '1000 km' };
        expect(output(given, 'really', 'km')).toBeCloseTo(1000 * k, 5);
      }),
      { numRuns: 100 },
    ));

  test('minutes and seconds may be written as they are read', () =>
    expect(output({ distance: '1 km', time: '1 min 12 s' }, 'speed', 'km/h')).toBeCloseTo(50, 9));

  test('a vehicle at 900 km/h, miles taken for kilometres and a missing time are refused in plain words', () => {
    expect(refusals({ distance: '1 km', time: '4 s' })).toEqual([
      'time: That would be 900 km/h: check the time, and whether the distance is in m, km or miles.',
    ]);
    expect(refusals({ ...RUN, indicated: '20 km/h' })[0]).toMatch(/^indicated: .*km\/h against mph/);
    expect(refusals({ odoTrue: '16 km', odoShown: '10 km' })[0]).toMatch(/^odoShown: .*a mile is 1.609 km/);
    expect(refusals({ distance: '1 km' })).toEqual(['time: This is needed as well.']);
    expect(typed({ distance: '1' })).toEqual([]);
  });
});
