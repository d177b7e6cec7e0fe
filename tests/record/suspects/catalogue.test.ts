import { describe, expect, test } from 'vitest';
import { hazard } from '../../../src/record/hazards/catalogue.ts';
import { findHazards } from '../../../src/record/hazards/find.ts';
import { starterList, starterLists } from '../../../src/record/suspects/catalogue.ts';
import { GROUPS, MARK } from '../../../src/record/suspects/starter-list.ts';

test('There is a starter list for each of the usual symptoms', () => {
  expect(starterLists.map((one) => one.title)).toEqual([
    'Will not start',
    'Will not idle',
    'Floods',
    'Backfires',
    'Overheats',
    'Jumps out of gear',
    'Pulls under braking',
    'Shakes at speed',
  ]);
  expect(MARK).toMatch(/common practice.*no source/i);
  expect(starterList('floods')?.title).toBe('Floods');
  expect(starterList('flies')).toBeUndefined();
});

describe.each(starterLists)('$title', ({ suspects }) => {
  test('names each suspect once, with an id that a fault’s file accepts', () => {
    const ids = suspects.map((one) => one.id);
    expect(new Set(ids).size).toBe(ids.length);
    for (const id of ids) expect(id).toMatch(/^[a-z0-9]+(?:-[a-z0-9]+)*$/);
  });
  test('has its suspects group by group, in the order of the groups, and more than one group', () => {
    const ranks = suspects.map((one) => GROUPS.indexOf(one.group));
    expect(ranks).toEqual(ranks.toSorted((a, b) => a - b));
    expect(new Set(ranks).size).toBeGreaterThan(1);
  });
  test('points only to hazards that the catalogue has', () => {
    for (const { hazards, id } of suspects)
      for (const name of hazards) expect(hazard(name), `${id}: ${name}`).toBeDefined();
  });
});

test.each([
  [
    /\b(?:fuel|float|jets?|carburettor|tank)\b.*\b(?:can|out|off|level|measure|wash|bowl|hose)\b/i,
    'petrol-vapour',
    'fuel',
  ],
  [/\btest gap\b/i, 'ht-spark', undefined],
  [/\braised on stands\b/i, 'under-raised-vehicle', undefined],
  [/\bbleed\b/i, 'brake-fluid', undefined],
  [/\bdraw the drums\b/i, 'brake-dust', undefined],
  [/\bwhile it runs\b/i, 'engine-indoors', undefined],
] as const)('A check whose words are %s carries the note %s', (words, name, group) => {
  const checks = starterLists.flatMap((one) => one.suspects).filter((one) => words.test(one.check));
  const meant = checks.filter((one) => group === undefined || one.group === group);
  expect(meant.length).toBeGreaterThan(0);
  for (const { id, hazards } of meant) expect(hazards, id).toContain(name);
});

/** What the gate hears and the check does not mean. */
const NOT_SO = new Set([
  'slow-jet road-test', // "take it out" of its thread, not for a run
  'thermostat road-test',
  'detent road-test',
  'flange-leak starting-fluid', // says never to use it
  'flange-leak road-test', // the engine's speed, standing
  'no-spark lifting-engine', // it is dried where it stands
  'coupling lifting-engine', // the wheels are raised
  'points-bounce stored-spring', // the breaker's leaf, a few newtons
  'tyre-fault road-test', // says not to drive
  'cracked-bracket hot-work', // a look along the welds
]);

test('The gate that reads the steps of chapters hears nothing in a check that its note leaves out', () => {
  const missing = starterLists.flatMap(({ id, suspects }) =>
    suspects.flatMap((one) =>
      findHazards({ text: one.check })
        .filter((found) => hazard(found.hazard)?.signal !== 'NOTICE' && !one.hazards.includes(found.hazard))
        .filter((found) => !NOT_SO.has(`${one.id} ${found.hazard}`))
        .map((found) => `${id}/${one.id}: "${found.words}" points to ${found.hazard}`),
    ),
  );
  expect(missing).toEqual([]);
});
