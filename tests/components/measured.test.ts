import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { judge, limitsOf, wearUsed } from '../../src/components/state/measured.ts';
import type { Measurement } from '../../src/record/types.ts';

const place = { file: 'content/measurements.csv', line: 2, column: 1 };
const measured = (figures: Partial<Measurement>): Measurement => ({
  date: '2026-02-28',
  chapter: '03-bores-and-rings',
  item: 'Bore',
  found: '54.00',
  unit: 'mm',
  place,
  ...figures,
});

describe('A reading against its limits', () => {
  const bore = measured({ found: '54.09', foundPm: '0.01', max: '54.15' });

  test('well below the upper limit it is within', () => {
    expect(judge(bore, bore.found)).toEqual({ kind: 'within' });
  });
  test('past the limit by more than its doubt it is outside, and by how much', () => {
    const gap = measured({ found: '0.70', foundPm: '0.02', max: '0.60' });
    expect(judge(gap, gap.found)).toEqual({ kind: 'outside', by: '0.10', side: 'above' });
  });
  test('below a lower limit it is outside on the other side', () => {
    const brush = measured({ found: '9', foundPm: '0.5', min: '10' });
    expect(judge(brush, brush.found)).toEqual({ kind: 'outside', by: '1', side: 'below' });
  });
  test('where the doubt reaches over the limit it cannot be told, from either side', () => {
    const short = measured({ found: '0.07', foundPm: '0.014', max: '0.08' });
    const past = measured({ found: '0.09', foundPm: '0.014', max: '0.08' });
    expect(judge(short, short.found)).toEqual({ kind: 'cannot tell' });
    expect(judge(past, past.found)).toEqual({ kind: 'cannot tell' });
  });
  test('on the limit, without a doubt, it is within', () => {
    expect(judge(measured({ found: '0.3', max: '0.3' }), '0.3')).toEqual({ kind: 'within' });
  });
  test('what binary fractions add is not taken for a difference: 0.1 + 0.2 against 0.3', () => {
    const one = measured({ found: '0.2', foundPm: '0.1', max: '0.3' });
    expect(judge(one, one.found)).toEqual({ kind: 'within' });
  });
  test('without a limit nothing is said', () => {
    expect(judge(measured({}), '54.00')).toEqual({ kind: 'no limit' });
  });
  test('as new, give or take, makes a lower and an upper limit', () => {
    const gap = measured({ found: '0.25', asNew: '0.40', limitPm: '0.05' });
    expect(limitsOf(gap).min).toBeCloseTo(0.35, 12);
    expect(judge(gap, gap.found)).toEqual({ kind: 'outside', by: '0.10', side: 'below' });
  });
  test('no reading is called within whose doubt reaches past its limit', () => {
    const cents = (max: number) => fc.integer({ min: 0, max }).map((value) => (value / 100).toFixed(2));
    fc.assert(
      fc.property(cents(10_000), cents(100), cents(10_000), (found, foundPm, max) => {
        const verdict = judge(measured({ found, foundPm, max }), found);
        const reach = Math.round(Number(found) * 100) + Math.round(Number(foundPm) * 100);
        expect(verdict.kind === 'within').toBe(reach <= Math.round(Number(max) * 100));
      }),
    );
  });
});

describe('Wear used', () => {
  test('half way from new to the worn limit is 50 %', () => {
    expect(wearUsed(measured({ found: '54.075', asNew: '54.00', max: '54.15' }))).toBeCloseTo(50, 9);
  });
  test('a lining wears towards its lower limit', () => {
    expect(wearUsed(measured({ found: '2.1', asNew: '4.0', min: '1.5' }))).toBeCloseTo(76, 9);
  });
  test('past the limit it is more than all', () => {
    expect(wearUsed(measured({ found: '9', asNew: '16', min: '10' }))).toBeCloseTo(116.67, 2);
  });
  test('nothing is said without a figure for new, or without a limit on that side', () => {
    expect(wearUsed(measured({ found: '54.09', max: '54.15' }))).toBeUndefined();
    expect(wearUsed(measured({ found: '53.99', asNew: '54.00', max: '54.15' }))).toBeUndefined();
  });
});
