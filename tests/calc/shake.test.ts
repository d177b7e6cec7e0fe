import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { shake } from '../../src/calc/shake.ts';
import { asked } from './answers.ts';

const { answered, notes, output, refusals, rows } = asked(shake);
const VAN = {
  road: '44.352 km/h',
  circumference: '1232 mm',
  sprocket: '16',
  axle: '34',
  links: '102',
  gear: '1',
  primary: '2.13',
  cylinders: '2',
  strokes: '2',
};

describe('what shakes', () => {
  test('10 Hz at 44.4 km/h on 1232 mm is the wheel (worked by hand)', () => {
    expect(output(VAN, 'wheel', 'Hz')).toBeCloseTo(44.352 / 3.6 / 1.232, 9);
    expect(notes({ ...VAN, felt: '10 Hz' })).toContain('fits: wheel, once a turn (10.0 Hz).');
  });

  test('the chain comes round once for three turns of the wheel with 102 links on 34 teeth', () =>
    expect(output(VAN, 'wheel', 'Hz') / output(VAN, 'chain', 'Hz')).toBeCloseTo(3, 9));

  test('every frequency grows with the road speed in proportion', () =>
    fc.assert(
      fc.property(fc.double({ min: 5, max: 60, noNaN: true }), (kmh) => {
        const at = (x: number) => answered({ ...VAN, road: `${x.toFixed(9)} km/h` }).outputs;
        const [one, two] = [at(kmh), at(2 * kmh)];
        for (const { name } of shake.outputs)
          expect((two[name]?.si ?? 0) / (one[name]?.si ?? 1)).toBeCloseTo(2, 6);
      }),
      { numRuns: 100 },
    ));

  test('a lower gear turns the engine faster and leaves the wheel alone', () => {
    const second = { ...VAN, gear: '1.75' };
    expect(output(second, 'engine', 'Hz') / output(VAN, 'engine', 'Hz')).toBeCloseTo(1.75, 9);
    expect(output(second, 'wheel', 'Hz')).toBe(output(VAN, 'wheel', 'Hz'));
  });

  test('with ± on speed and shake only what lies within twice the joint ± fits', () => {
    const sure = { ...VAN, road: '44.352 ± 0.2 km/h', felt: '10.6 ± 0.1 Hz' };
    expect(notes(sure)).toContain('Nothing that is counted here turns at 10.6 Hz; nearest is wheel');
    expect(notes({ ...sure, felt: '10.1 ± 0.1 Hz' })).toContain('fits: wheel, once a turn');
  });

  test('with a shaft nothing is said of chains', () => {
    const { sprocket: _s, axle: _a, links: _l, ...rest } = VAN;
    const { outputs } = answered({ ...rest, final: '4.125' });
    expect(outputs['link']).toBeUndefined();
    expect(rows({ ...rest, final: '4.125' }, 'parts').map((r) => r[0])).not.toContain('chain, once round');
  });

  test('a sprocket without its fellow and a chain that is too short are refused', () => {
    expect(refusals({ ...VAN, sprocket: '', links: '' })).toEqual([
      'sprocket: The teeth of both sprockets are needed.',
    ]);
    expect(refusals({ ...VAN, links: '20' })[0]).toMatch(/^links: A chain with so few links/);
  });
});
