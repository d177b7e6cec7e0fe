import { describe, expect, test } from 'vitest';
import { roundness, verdict, wearUsed } from '../../src/record/measurement-verdict.ts';
import type { Measurement } from '../../src/record/types.ts';

const measured = (values: Partial<Measurement>): Measurement => ({
  date: '2026-01-17',
  chapter: '01-first-look',
  item: 'Bore',
  found: '54.10',
  unit: 'mm',
  place: { file: 'content/measurements.csv', line: 2, column: 1 },
  ...values,
});

describe('A figure against its limits', () => {
  const limits = { min: '54.00', max: '54.15' };
  test.each([
    ['54.10', undefined, { kind: 'within' }],
    ['54.15', undefined, { kind: 'within' }],
    ['54.00', undefined, { kind: 'within' }],
    ['54.16', undefined, { kind: 'outside', beyond: 'most', by: '0.01' }],
    ['53.90', undefined, { kind: 'outside', beyond: 'least', by: '0.1' }],
    ['54.14', '0.01', { kind: 'within' }],
    ['54.14', '0.02', { kind: 'cannot tell', limit: 'most' }],
    ['54.16', '0.01', { kind: 'cannot tell', limit: 'most' }],
    ['54.17', '0.01', { kind: 'outside', beyond: 'most', by: '0.02' }],
    ['54.005', '0.01', { kind: 'cannot tell', limit: 'least' }],
  ])('%s ± %s', (found, foundPm, expected) =>
    expect(verdict(measured({ ...limits, found, ...(foundPm ? { foundPm } : {}) }))).toEqual(expected),
  );

  test('Decimals are compared as written: 0.1 + 0.2 is no more than 0.3', () =>
    expect(verdict(measured({ found: '0.3', foundPm: '0.2', max: '0.5' }))).toEqual({ kind: 'within' }));
  test('A ± round the figure when new gives both limits', () => {
    expect(verdict(measured({ found: '20.03', asNew: '20.00', limitPm: '0.02' }))).toEqual({
      kind: 'outside',
      beyond: 'most',
      by: '0.01',
    });
    expect(verdict(measured({ found: '19.98', asNew: '20.00', limitPm: '0.02' }))).toEqual({
      kind: 'within',
    });
  });
  test('Without limits there is no verdict, and none for what was not left', () => {
    expect(verdict(measured({}))).toBeUndefined();
    expect(verdict(measured({ max: '54.15' }), 'left')).toBeUndefined();
  });
});

describe('Wear used', () => {
  test('54.10 on the way from 54.00 to 54.15 has used 66.7 %', () =>
    expect(wearUsed(measured({ asNew: '54.00', max: '54.15' }))).toBe(66.7));
  test('A shaft wears down: 19.97 from 20.00 to 19.95 has used 60 %', () =>
    expect(wearUsed(measured({ found: '19.97', asNew: '20.00', min: '19.95' }))).toBe(60));
  test('Beyond the limit it is more than 100 %', () =>
    expect(wearUsed(measured({ found: '54.30', asNew: '54.00', max: '54.15' }))).toBe(200));
  test('Wear towards a side without a limit is not reckoned', () =>
    expect(wearUsed(measured({ found: '53.9', asNew: '54.00', max: '54.15' }))).toBeUndefined());
});

/**
 * Ovality is the greatest difference of two directions at one height, taper that of two heights in one direction: common
 * practice of engine reconditioning, no source. Worked by hand.
 */
describe('Ovality and taper', () => {
  const bore = [
    measured({ position: 'top, along', found: '54.12' }),
    measured({ position: 'top, across', found: '54.08' }),
    measured({ position: 'bottom, along', found: '54.03' }),
    measured({ position: 'bottom, across', found: '54.02' }),
  ];
  test('Four readings give 0.04 oval and 0.09 tapered', () =>
    expect(roundness(bore)).toEqual({ unit: 'mm', ovality: '0.04', taper: '0.09' }));
  test('A reading in inches is compared in the first one’s unit', () => {
    const mixed = [bore[0], measured({ position: 'top, across', found: '2.1291', unit: 'in' })].filter(
      (one) => one !== undefined,
    );
    // 2.1291 in are 54.079 mm.
    expect(roundness(mixed)?.ovality).toBe('0.041');
  });
  test('A drum’s numbered diameters are its directions: 150.36 − 150.22 out of round, 150.36 − 150.33 along', () => {
    const drum = [
      ['1, outer depth', '150.31'],
      ['2, outer depth', '150.22'],
      ['3, outer depth', '150.36'],
      ['1, inner depth', '150.29'],
      ['3, inner depth', '150.33'],
    ].map(([position = '', found = '']) => measured({ position, found }));
    expect(roundness(drum)).toEqual({ unit: 'mm', ovality: '0.14', taper: '0.03' });
  });
  test('A difference keeps the places that were read: 54.20 − 54.10 is 0.10', () => {
    const two = [
      measured({ position: 'A, along', found: '54.10' }),
      measured({ position: 'A, across', found: '54.20' }),
    ];
    expect(roundness(two)?.ovality).toBe('0.10');
  });
  test('Readings that do not say height and direction give neither', () => {
    const loose = [measured({ position: 'top' }), measured({ position: 'foot', found: '54.02' })];
    expect(roundness(loose)).toBeUndefined();
  });
  test('One reading says nothing', () => expect(roundness(bore.slice(0, 1))).toBeUndefined());
});
