import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { portTiming } from '../../src/calc/port-timing.ts';
import { asked } from './answers.ts';

const { drawings, notes, output, refusals, typed } = asked(portTiming);
const ENGINE = { stroke: '58 mm', rod: '115 mm', inletBy: 'none' };

describe('port timing', () => {
  test('exhaust 38 mm down a 58 mm stroke with a 115 mm rod: worked by hand with the cosine rule', () => {
    // d = 29 + 115 − 38 = 106; cos α = (29² + 106² − 115²) / (2 × 29 × 106)
    const alpha = (Math.acos((841 + 11236 - 13225) / (2 * 29 * 106)) * 180) / Math.PI;
    const given = { ...ENGINE, exhaust: '38 mm' };
    expect(output(given, 'exhaustOpens', 'deg')).toBeCloseTo(alpha, 9);
    expect(output(given, 'exhaustDuration', 'deg')).toBeCloseTo(360 - 2 * alpha, 9);
  });

  test('height, angle and duration turn back into each other, with a pin offset too', () =>
    fc.assert(
      fc.property(
        fc.double({ min: 20, max: 55, noNaN: true }),
        fc.double({ min: 0, max: 3, noNaN: true }),
        fc.boolean(),
        (height, offset, thrust) => {
          const rest = { ...ENGINE, offset: `${offset.toFixed(6)} mm`, side: thrust ? 'thrust' : 'away' };
          const given = { ...rest, exhaust: `${height.toFixed(9)} mm` };
          const [at, long] = ['exhaustOpens', 'exhaustDuration'].map((name) =>
            output(given, name, 'deg').toFixed(9),
          );
          expect(output({ ...rest, exhaustAngle: `${at} deg` }, 'exhaustTravel', 'mm')).toBeCloseTo(
            height,
            5,
          );
          expect(output({ ...rest, exhaustDuration: `${long} deg` }, 'exhaustTravel', 'mm')).toBeCloseTo(
            height,
            5,
          );
        },
      ),
      { numRuns: 300 },
    ));

  test('a port at half the stroke of a very long rod opens at 90° and is open for 180°', () => {
    const given = { stroke: '20 mm', rod: '800 mm', inletBy: 'none', exhaust: '10 mm' };
    expect(Math.abs(output(given, 'exhaustDuration', 'deg') - 180)).toBeLessThan(0.8);
  });

  test('a lower port is open for less time', () =>
    expect(output({ ...ENGINE, exhaust: '40 mm' }, 'exhaustDuration', 'deg')).toBeLessThan(
      output({ ...ENGINE, exhaust: '38 mm' }, 'exhaustDuration', 'deg'),
    ));

  test('heights from the barrel’s top: the deck is taken off', () =>
    expect(output({ ...ENGINE, exhaust: '38.5 mm', deck: '0.5 mm' }, 'exhaustTravel', 'mm')).toBeCloseTo(
      38,
      9,
    ));

  test('the skirt: floor 88 mm down, 70 mm of piston: the inlet opens 18 mm below the top, as long after as before', () => {
    const given = { stroke: '58 mm', rod: '115 mm', inletFloor: '88 mm', skirt: '70 mm' };
    expect(output(given, 'inletTravel', 'mm')).toBeCloseTo(18, 9);
    expect(output(given, 'inletOpens', 'deg')).toBeCloseTo(output(given, 'inletCloses', 'deg'), 9);
    const offset = { ...given, offset: '2 mm', side: 'away' };
    expect(output(offset, 'inletOpens', 'deg')).not.toBeCloseTo(output(offset, 'inletCloses', 'deg'), 1);
  });

  test('blowdown of 10° at 3000 rev/min lasts 0.556 ms', () => {
    const given = { ...ENGINE, exhaustAngle: '100 deg', transferAngle: '110 deg', speed: '3000' };
    expect(output(given, 'blowdownTime', 'ms')).toBeCloseTo(10 / 18, 9);
  });

  test('what no engine does is refused in plain words', () => {
    expect(refusals({ ...ENGINE, exhaust: '60 mm' })).toEqual([
      'exhaust: The piston travels only 58.0 mm: it would never open this port.',
    ]);
    expect(refusals({ ...ENGINE, exhaust: '46 mm', transfer: '38 mm' })[0]).toMatch(
      /^transfer: .*before the exhaust/,
    );
    expect(refusals({ stroke: '58 mm', rod: '20 mm', exhaust: '30 mm' })).toEqual([
      'rod: The rod must be longer than half the stroke.',
    ]);
    expect(refusals({ stroke: '58 mm', rod: '115 mm', inletFloor: '60 mm', skirt: '70 mm' })[0]).toMatch(
      /^skirt: The skirt does not reach/,
    );
    expect(refusals({ stroke: '58 mm', rod: '115 mm' })).toEqual(['exhaust: Give at least one port.']);
    expect(refusals({ ...ENGINE, inletBy: 'disc', discOpens: '250 deg', discCloses: '120 deg' })).toEqual([
      'discCloses: The disc would never shut.',
    ]);
  });

  test('a stroke typed in inches for millimetres is named', () =>
    expect(typed({ stroke: '58 in' })).toEqual([
      'stroke: 58 in? 58 mm is likelier; this must be between 10 mm and 300 mm.',
    ]));

  test('the circle is drawn and says each port', () => {
    const [drawn] = drawings({ ...ENGINE, exhaust: '38 mm', transfer: '46 mm' });
    expect(drawn?.desc).toContain('exhaust');
    expect(drawn?.desc).not.toContain('inlet');
    expect(notes({ ...ENGINE, exhaust: '38 mm' })).toContain('trapped over 38.0 mm');
  });
});
