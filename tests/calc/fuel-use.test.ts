import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { fuelUse } from '../../src/calc/fuel-use.ts';
import { asked } from './answers.ts';

const { answered, notes, output, refusals, rows, typed } = asked(fuelUse);
const FILLS = { fills: '142 km 9.4 L; 118 km 7.6 L; 155 km 10.5 L' };

describe('fuel use and range', () => {
  test('27.5 L over 415 km is 6.63 L/100 km (worked by hand)', () =>
    expect(output(FILLS, 'use', 'L/100km')).toBeCloseTo((9.4 + 7.6 + 10.5) / 4.15, 9));

  test('joined fills lie between the best and the worst, and are not their mean', () => {
    const uneven = { fills: '20 km 2 L; 300 km 18 L' };
    expect(output(uneven, 'use', 'L/100km')).toBeCloseTo(6.25, 9);
    expect(rows(uneven, 'fills').map((r) => r[3])).toEqual(['10.0', '6.00', '6.25']);
  });

  test('filling to the brim counts twice over the whole, so that more fills leave less doubt', () => {
    const at = (fills: string) => answered({ fills, brim: '0.3 L' }).outputs['use'];
    const [one, three] = [at('142 9.4'), at('142 9.4; 142 9.4; 142 9.4')];
    expect(one?.pm).toBeCloseTo((Math.SQRT2 * 0.3e-3) / 142e3, 13);
    expect((one?.pm ?? 0) / (three?.pm ?? 1)).toBeCloseTo(3, 6);
  });

  test('an odometer wrong by 5 % leaves the use wrong by 5 %, however many fills', () => {
    const o = answered({ ...FILLS, odo: '5 %' }).outputs['use'];
    expect((o?.pm ?? 0) / (o?.si ?? 1)).toBeCloseTo(0.05, 3);
  });

  test('every way of saying it turns back into litres', () =>
    fc.assert(
      fc.property(
        fc.double({ min: 2, max: 60, noNaN: true }),
        fc.constantFrom('km/L', 'imp mpg', 'US mpg'),
        (litres, unit) => {
          const other = output({ use: `${litres.toFixed(9)} L/100km` }, 'use', unit as 'km/L');
          expect(output({ use: `${other.toFixed(9)} ${unit}` }, 'use', 'L/100km') / litres).toBeCloseTo(1, 7);
        },
      ),
      { numRuns: 300 },
    ));

  test('12 L with 1.5 L reserve at 6.5 L/100 km reach 161.5 km to the reserve', () => {
    const given = { use: '6.5 L/100km', tank: '12 L', reserve: '1.5 L', now: '5 L', trip: '40 km' };
    expect(output(given, 'toReserve', 'km')).toBeCloseTo(1050 / 6.5, 9);
    expect(output(given, 'left', 'km')).toBeCloseTo(350 / 6.5, 9);
    expect(output(given, 'takes', 'L')).toBeCloseTo(2.6, 9);
  });

  test('fills that differ more than filling explains ask for a look underneath', () => {
    expect(notes({ fills: '142 9.4; 142 15', brim: '0.3 L' })).toContain('Look under it.');
    expect(notes({ ...FILLS, brim: '0.3 L' })).toContain('filling alone may explain');
  });

  test('fuel before distance, half rows and a reserve larger than the tank are refused', () => {
    expect(refusals({ fills: '2 km 40 L' })[0]).toMatch(
      /^fills: Row 1: 40.0 L for 2.00 km .* Distance comes first/,
    );
    expect(typed({ fills: '142' })[0]).toMatch(/^fills: Row 1: write distance and fuel/);
    expect(refusals({ ...FILLS, tank: '5 L', reserve: '6 L' })[0]).toMatch(/^reserve: /);
    expect(refusals({ ...FILLS, tank: '5 L', now: '7 L' })[0]).toMatch(
      /^now: That is more than the tank holds/,
    );
  });
});
