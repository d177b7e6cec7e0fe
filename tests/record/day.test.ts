import { expect, test } from 'vitest';
import { daysBetween, readDay } from '../../src/record/day.ts';

test('A day of the calendar is read as it is written', () => {
  for (const day of ['2026-05-02', '2024-02-29', '2000-02-29', '2026-12-31'])
    expect(readDay(day)).toEqual({ day });
});

test('A day that does not exist is refused with its reason', () => {
  expect(readDay('2026-02-29')).toMatchObject({ wrong: expect.stringContaining('28 days') });
  expect(readDay('1900-02-29')).toMatchObject({ wrong: expect.stringContaining('28 days') });
  expect(readDay('2026-04-31')).toMatchObject({ wrong: expect.stringContaining('30 days') });
  expect(readDay('2026-00-10')).toMatchObject({ wrong: expect.stringContaining('no month 0') });
  expect(readDay('2026-04-00')).toMatchObject({ wrong: expect.stringContaining('30 days') });
});

test('Every day from 1900 to 2200 agrees with the calendar of the language', () => {
  for (let time = Date.UTC(1900, 0, 1); time <= Date.UTC(2200, 11, 31); time += 86_400_000) {
    const day = new Date(time).toISOString().slice(0, 10);
    if (!('day' in readDay(day))) throw new Error(day);
  }
});

test('Another order is refused, and the right form named only where one reading is possible', () => {
  expect(readDay('2026/3/2')).toMatchObject({ wrong: expect.stringContaining('2026-03-02') });
  expect(readDay('2.3.2026')).toMatchObject({ wrong: expect.stringContaining('2026-05-02') });
});

test('Days between two dates count over a leap day and never by hours', () => {
  expect(daysBetween('2024-02-28', '2024-03-01')).toBe(2);
  expect(daysBetween('2026-03-28', '2026-03-30')).toBe(2);
  expect(daysBetween('2026-03-30', '2026-03-28')).toBe(-2);
});
