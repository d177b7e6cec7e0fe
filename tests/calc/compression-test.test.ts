import { describe, expect, test } from 'vitest';
import { compressionTest } from '../../src/calc/compression-test.ts';
import { asked } from './answers.ts';

const { answered, notes, output, refusals, rows, typed } = asked(compressionTest);

describe('compression test', () => {
  test('at the sea a reading stays as it is; the spread is lowest against highest', () => {
    const given = { dry: '6.8; 6.4', altitude: '0 m' };
    expect(output(given, 'meanSea', 'bar')).toBeCloseTo(6.6, 9);
    expect(output(given, 'spreadShare', '%')).toBeCloseTo((0.4 / 6.8) * 100, 9);
    expect(rows(given, 'cylinders').map((r) => r[3])).toEqual(['100 %', '94 %']);
  });

  test('a reading in psi and one in bar stand together', () =>
    expect(output({ dry: '100 psi; 7 bar' }, 'low', 'bar')).toBeCloseTo(6.894757, 6));

  test('one cylinder has no spread', () =>
    expect(answered({ dry: '6.8' }).outputs['spread']).toBeUndefined());

  test('higher up the same engine reads less; a measured air pressure counts before the height', () => {
    const given = { dry: '6.8', reference: '7 bar' };
    expect(output({ ...given, altitude: '1500 m' }, 'expected', 'bar')).toBeLessThan(7);
    expect(output({ ...given, altitude: '1500 m', pressure: '1013.25 hPa' }, 'expected', 'bar')).toBeCloseTo(
      7,
      9,
    );
    expect(
      output({ ...given, altitude: '1500 m', referenceAltitude: '1500 m' }, 'expected', 'bar'),
    ).toBeCloseTo(7, 9);
  });

  test('5 mL of oil in 22.9 mL raises any reading by about a third, sealing or not (bounds worked by hand)', () => {
    const given = { dry: '6.8', oil: '5 mL', room: '22.9 mL', swept: '87 cm3' };
    const rise = (n: number) => ((1 + 87 / 17.9) ** n - 1) / ((1 + 87 / 22.9) ** n - 1) - 1;
    const found = answered(given).outputs['byVolume'];
    expect(found?.si).toBeGreaterThan(rise(1));
    expect(found?.si).toBeLessThan(rise(1.35));
    expect((found?.si ?? 0) - (found?.pm ?? 0)).toBeCloseTo(rise(1), 2);
    expect((found?.si ?? 0) + (found?.pm ?? 0)).toBeCloseTo(rise(1.35), 2);
  });

  test('oil on a two-stroke is called weak evidence, on a four-stroke it points to the rings', () => {
    expect(notes({ dry: '6.8', wet: '7.6', strokes: '2' })).toContain('weak evidence');
    expect(notes({ dry: '6.8', wet: '7.6', strokes: '4' })).toContain('points to rings and bore');
  });

  test('no maker’s figure is invented', () => {
    expect(answered({ dry: '6.8; 6.4' }).outputs['expected']).toBeUndefined();
    expect(notes({ dry: '6.8; 6.4' })).toContain('Without the maker’s figure');
    expect(compressionTest.fields.find((f) => f.name === 'reference')).not.toHaveProperty('start');
  });

  test('missing readings, and oil that fills the chamber, are refused', () => {
    expect(refusals({})).toEqual(['dry: Give one reading for each cylinder, such as 7.5; 7.2.']);
    expect(refusals({ dry: '6.8; 6.4', wet: '7' })).toEqual([
      'wet: Give one for each dry reading: 2, not 1.',
    ]);
    expect(refusals({ dry: '6.8', oil: '25 mL', room: '22.9 mL', swept: '87 cm3' })[0]).toMatch(
      /^room: .*lock solid/,
    );
  });

  test('95 typed for psi in a field of bar is named', () =>
    expect(typed({ dry: '95' })[0]).toMatch(/^dry: Row 1: 95 bar\? 95 psi is likelier/));
});
