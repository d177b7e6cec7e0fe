import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { brakeDrum } from '../../src/calc/brake-drum.ts';
import { cleanDiameter } from '../../src/calc/solve-brake-drum.ts';
import { asked } from './answers.ts';

const { answered, notes, output, refusals, typed } = asked(brakeDrum);
const DRUM = { across: '150.42 150.55 150.48 150.50', fresh: '150 mm', discard: '151 mm' };

describe('brake drum', () => {
  test('largest 150.55 of 151 mm leaves 0.45; turned with 0.10 run-out and a cut of 0.05, 0.25 (worked by hand)', () => {
    const given = { ...DRUM, runOut: '0.10 mm', cut: '0.05 mm', keep: '0.2 mm' };
    expect(output(given, 'left', 'mm')).toBeCloseTo(0.45, 9);
    expect(output(given, 'leftAfter', 'mm')).toBeCloseTo(151 - 150.55 - 0.1 - 0.1, 9);
    expect(output(given, 'spare', 'mm')).toBeCloseTo(0.05, 9);
  });

  test('the cleaned diameter is never less than an oval, offset drum needs', () =>
    fc.assert(
      fc.property(
        fc.double({ min: 0, max: 0.3, noNaN: true }),
        fc.double({ min: 0, max: 0.3, noNaN: true }),
        fc.double({ min: 0, max: 6.28, noNaN: true }),
        (oval, offset, lean) => {
          const r = (t: number) => 75 + oval * Math.cos(2 * t) + offset * Math.cos(t - lean);
          const all = Array.from({ length: 360 }, (_, i) => (i * Math.PI) / 180);
          const radii = all.map(r);
          const runOut = Math.max(...radii) - Math.min(...radii);
          const largest = Math.max(...all.map((t) => r(t) + r(t + Math.PI)));
          return cleanDiameter(largest, runOut) >= 2 * Math.max(...radii) - 1e-9;
        },
      ),
      { numRuns: 200 },
    ));

  test('a drum beyond its discard diameter is scrap, and one that may be is told so', () => {
    expect(notes({ ...DRUM, across: '151.10 151.05' })).toContain('it is scrap');
    expect(notes({ ...DRUM, across: '150.98 ± 0.05; 150.90 ± 0.05' })).toContain('may be passed already');
    expect(notes({ ...DRUM, across: '150.90 150.85', runOut: '0.15 mm' })).toContain('do not machine it');
  });

  test('no limit is made up where none was given', () => {
    const { discard: _none, ...rest } = DRUM;
    expect(answered(rest).outputs['left']).toBeUndefined();
    expect(notes(rest)).toContain('there is no figure to work to');
    expect(notes(DRUM)).toContain('none is assumed');
  });

  test('the ± of the gauge counts twice in a difference of two readings', () =>
    expect(answered({ ...DRUM, across: '150.42 ± 0.02; 150.55 ± 0.02' }).outputs['ovality']?.pm).toBeCloseTo(
      0.02e-3 * Math.SQRT2,
      9,
    ));

  test('a lining at its limit is named', () =>
    expect(notes({ ...DRUM, lining: '1.5 ± 0.1 mm', liningLimit: '1.5 mm' })).toContain(
      'renew it on both sides',
    ));

  test('inches among millimetres, a lip, and a discard diameter below new are refused in plain words', () => {
    expect(refusals({ ...DRUM, across: '160.1 150.5' })[0]).toMatch(/^across: 160.10 mm is far from/);
    expect(refusals({ ...DRUM, across: '149.5 150.5' })[0]).toMatch(/^across: 149.50 mm is smaller than new/);
    expect(refusals({ ...DRUM, discard: '149 mm' })).toEqual([
      'discard: The discard diameter must be larger than the new one.',
    ]);
    expect(typed({ ...DRUM, across: '6 150.5' })[0]).toMatch(/^across: Row 1: 6 mm\? 6 in is likelier/);
  });
});
