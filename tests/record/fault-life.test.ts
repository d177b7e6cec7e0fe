import { describe, expect, test } from 'vitest';
import { faultAt, livesOf, openFaults } from '../../src/record/fault-life.ts';
import { offTheRoad } from '../../src/record/off-the-road.ts';
import type { Fault, FaultEvent, Series, Severity } from '../../src/record/types.ts';

const place = { file: 'content/faults/a.md', line: 1, column: 1 };
const event = (
  chapter: string,
  what: FaultEvent['what'],
  severity?: Severity,
  more: Partial<FaultEvent> = {},
): FaultEvent => ({
  chapter,
  date: `2026-01-${chapter}`,
  what,
  text: `${what} in ${chapter}`,
  rulesOut: [],
  rulesIn: [],
  place,
  ...(severity ? { severity } : {}),
  ...more,
});
const fault = (id: string, events: FaultEvent[]): Fault => ({
  id,
  title: `Fault ${id}.`,
  system: 'brakes',
  symptom: 'It pulls.',
  suspects: [],
  events,
  story: '',
  place,
});
const numbers = new Map(['01', '02', '03', '04', '05'].map((id) => [id, Number(id)]));
const series = (...faults: Fault[]) =>
  ({ faults, chapters: [...numbers].map(([id, number]) => ({ id, number })) }) as unknown as Series;

/** Found in 1, worse in 2, put off in 2, cured in 3, back in 4, cured in 5. */
const drag = fault('drag', [
  event('01', 'found', 'nuisance'),
  event('02', 'worse', 'do not drive'),
  event('02', 'put off', undefined, { review: '2026-02-01' }),
  event('03', 'cured'),
  event('04', 'came back', 'drive with care'),
  event('05', 'cured'),
]);

describe('The life of a fault, chapter by chapter (worked by hand)', () => {
  test.each([
    [{ before: 1 }, undefined],
    [{ after: 1 }, { open: true, severity: 'nuisance', since: '2026-01-01', lives: 0 }],
    [{ before: 2 }, { open: true, severity: 'nuisance', since: '2026-01-01', lives: 0 }],
    [{ after: 2 }, { open: true, severity: 'do not drive', since: '2026-01-01', lives: 0 }],
    [{ after: 3 }, { open: false, lives: 1 }],
    [{ before: 4 }, { open: false, lives: 1 }],
    [{ after: 4 }, { open: true, severity: 'drive with care', since: '2026-01-04', lives: 1 }],
    [{ after: 5 }, { open: false, lives: 2 }],
  ])('%o', (moment, expected) => {
    const state = faultAt(drag, numbers, moment);
    if (expected === undefined) expect(state).toBeUndefined();
    else expect(state).toMatchObject(expected);
  });

  test('What is put off says why and until when, and is no longer put off once it is tried', () => {
    expect(faultAt(drag, numbers, { after: 2 })?.putOff).toEqual({
      reason: 'put off in 02',
      review: '2026-02-01',
    });
    expect(faultAt(drag, numbers, { after: 3 })?.putOff).toBeUndefined();
    const tried = fault('t', [
      event('01', 'found', 'nuisance'),
      event('01', 'put off'),
      event('02', 'tried'),
    ]);
    expect(faultAt(tried, numbers, { after: 2 })?.putOff).toBeUndefined();
  });

  test('A fault that came back shows both lives', () => {
    expect(livesOf(drag).map((life) => [life.events.map((one) => one.what), life.cured])).toEqual([
      [['found', 'worse', 'put off', 'cured'], true],
      [['came back', 'cured'], true],
    ]);
  });

  test('Found and cured in one chapter, it is carried neither to it nor from it', () => {
    const brief = fault('brief', [event('02', 'found', 'do not drive'), event('02', 'cured')]);
    expect(openFaults(series(brief), { before: 2 })).toEqual([]);
    expect(openFaults(series(brief), { after: 2 })).toEqual([]);
  });

  test('An event of a chapter that is not in the series has not happened', () => {
    const held = fault('h', [event('01', 'found', 'nuisance'), event('09', 'cured')]);
    expect(openFaults(series(held)).map((state) => state.fault.id)).toEqual(['h']);
  });

  test('Two chapters of one day keep their order', () => {
    const sameDay = fault('s', [
      event('02', 'found', 'nuisance'),
      { ...event('03', 'cured'), date: '2026-01-02' },
    ]);
    expect(openFaults(series(sameDay), { before: 3 })).toHaveLength(1);
    expect(openFaults(series(sameDay), { after: 3 })).toHaveLength(0);
  });
});

describe('Off the road: one of three sentences', () => {
  const stop = fault('stop', [event('01', 'found', 'do not drive')]);
  const care = fault('care', [event('01', 'found', 'drive with care')]);
  const rattle = fault('rattle', [event('01', 'found', 'nuisance')]);

  test('One fault that forbids driving is named, and the lesser ones are not', () =>
    expect(offTheRoad(series(care, stop, rattle)).text).toBe('Not to be driven: Fault stop.'));
  test('Faults that limit driving are named', () =>
    expect(offTheRoad(series(rattle, care)).text).toBe('Open faults that limit driving: Fault care.'));
  test('Nothing that forbids: the sentence gives no permission', () => {
    const expected = 'This log records no open fault that forbids driving; inspection and law decide.';
    expect(offTheRoad(series(rattle)).text).toBe(expected);
    expect(offTheRoad(series()).text).toBe(expected);
  });
  test('It is worked out for the moment, not for today', () => {
    const cured = fault('c', [event('01', 'found', 'do not drive'), event('03', 'cured')]);
    expect(offTheRoad(series(cured), { before: 3 }).kind).toBe('not to be driven');
    expect(offTheRoad(series(cured), { after: 3 }).kind).toBe('nothing recorded');
  });
});
