import { describe, expect, test } from 'vitest';
import { dueOf, usedInWords } from '../../src/components/state/due.ts';
import type { Chapter, DueItem, OdometerReading, Series } from '../../src/record/types.ts';

const place = { file: 'content/due.csv', line: 2, column: 1 };
const chapter = (number: number, date: string) => ({ id: `0${number}`, number, date }) as Chapter;
const interval = (amount: number, per: DueItem['after']['per'], size: number): DueItem['after'] => ({
  amount,
  per,
  text: `${amount}`,
  size,
});
const reading = (date: string, figure: string, unit: OdometerReading['unit']): OdometerReading => ({
  date,
  chapter: '01',
  reading: figure,
  unit,
  place,
});
const series = (due: DueItem[], odometer: OdometerReading[] = []) =>
  ({
    asOf: '2026-09-19',
    chapters: [chapter(1, '2026-06-13'), chapter(2, '2026-08-15')],
    due,
    odometer,
  }) as unknown as Series;
const item = (says: Partial<DueItem>): DueItem => ({
  what: 'Chain',
  after: interval(30, 'distance', 30_000),
  since: '01',
  place,
  ...says,
});

describe('What is due', () => {
  const driven = [reading('2026-06-01', '12', 'km'), reading('2026-09-12', '46', 'km')];

  test('34 km gone of 30 is overdue', () => {
    const [one] = dueOf(series([item({})], driven));
    expect(one).toMatchObject({ used: 34_000, overdue: true });
  });
  test('a chapter that did it ticks it off', () => {
    const [one] = dueOf(series([item({ doneIn: '02' })], driven));
    expect(one?.overdue).toBe(false);
    expect(one?.done?.id).toBe('02');
  });
  test('miles and kilometres add up: 10 mi is 16.09 km', () => {
    const mixed = [reading('2026-06-01', '0', 'km'), reading('2026-09-12', '10', 'mi')];
    expect(dueOf(series([item({})], mixed))[0]?.used).toBeCloseTo(16_093.44, 6);
  });
  test('hours are counted by hour readings alone', () => {
    const hours = item({ after: interval(1, 'hours', 3600) });
    expect(dueOf(series([hours], driven))[0]).toMatchObject({ overdue: false });
    expect(dueOf(series([hours], driven))[0]?.used).toBeUndefined();
    const run = [...driven, reading('2026-06-13', '0', 'h'), reading('2026-09-12', '2.8', 'h')];
    expect(dueOf(series([hours], run))[0]).toMatchObject({ overdue: true });
  });
  test('days count to the day of the series: 98 days from 13 June to 19 September', () => {
    const days = (amount: number) => item({ after: interval(amount, 'days', amount) });
    expect(dueOf(series([days(98)]))[0]).toMatchObject({ used: 98, overdue: true });
    expect(dueOf(series([days(99)]))[0]?.overdue).toBe(false);
  });
  test('a reading after the day of the series does not count', () => {
    const late = [reading('2026-06-01', '0', 'km'), reading('2026-10-01', '500', 'km')];
    expect(dueOf(series([item({})], late))[0]?.overdue).toBe(false);
  });
  test('overdue comes first, done comes last', () => {
    const list = dueOf(
      series([item({ doneIn: '02' }), item({ after: interval(500, 'distance', 5e5) }), item({})], driven),
    );
    expect(list.map((one) => (one.overdue ? 'overdue' : one.done ? 'done' : 'to come'))).toEqual([
      'overdue',
      'to come',
      'done',
    ]);
  });
  test('in words, in the reader’s measure', () => {
    expect(usedInWords(34_000, 'distance', false)).toBe('34 km');
    expect(usedInWords(16_093.44, 'distance', true)).toBe('10 mi');
    expect(usedInWords(10_080, 'hours', false)).toBe('2.8 h');
  });
});
