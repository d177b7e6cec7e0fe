import { expect, test } from 'vitest';
import { searchOf } from '../../src/components/faults/search-table.ts';
import type { Fault, FaultEvent } from '../../src/record/types.ts';

const place = { file: 'content/faults/weak-spark.md', line: 1, column: 1 };
const event = (what: FaultEvent['what'], findings: { out?: string[]; in?: string[] } = {}): FaultEvent => ({
  chapter: '02-taking-it-down',
  date: '2026-02-07',
  what,
  text: '',
  rulesOut: findings.out ?? [],
  rulesIn: findings.in ?? [],
  place,
});
const fault = (events: FaultEvent[]): Fault => ({
  id: 'weak-spark',
  title: 'Weak spark',
  system: 'ignition',
  symptom: '',
  suspects: ['plug', 'lead', 'brush', 'cap'].map((id) => ({ id, name: id, place })),
  events,
  story: '',
  place,
});
const verdicts = (events: FaultEvent[]) =>
  Object.fromEntries(searchOf(fault(events)).rows.map((row) => [row.suspect.id, row.verdict]));

test('only events that rule something in or out are columns, numbered as the life numbers them', () => {
  const { checks } = searchOf(fault([event('found'), event('tried', { out: ['plug'] }), event('worse')]));
  expect(checks.map((one) => one.number)).toEqual([2]);
});

test('what the cure rules in is the cause, what was ruled out stays out, the rest was not tried', () => {
  expect(
    verdicts([event('found'), event('tried', { out: ['plug'] }), event('cured', { in: ['brush'] })]),
  ).toEqual({
    plug: 'ruled out',
    lead: 'not yet tried',
    brush: 'the cause',
    cap: 'not yet tried',
  });
});

test('what was ruled in before the cure is the cause; while the fault is open it only points there', () => {
  const open = [event('found'), event('tried', { in: ['cap'] })];
  expect(verdicts(open)['cap']).toBe('points to it');
  expect(verdicts([...open, event('cured')])['cap']).toBe('the cause');
});

test('a fault that came back: the first life’s cause is ruled out by the second, and the cure of one is none of the other', () => {
  const first = [
    event('found'),
    event('tried', { in: ['cap'] }),
    event('cured', { in: ['brush'] }),
    event('came back'),
  ];
  expect(verdicts([...first, event('tried', { out: ['brush'] })])['brush']).toBe('ruled out');
  const back = verdicts([
    event('found'),
    event('cured'),
    event('came back'),
    event('tried', { in: ['cap'] }),
  ]);
  expect(back['cap']).toBe('points to it');
});
