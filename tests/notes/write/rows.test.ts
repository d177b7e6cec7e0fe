import { describe, expect, test } from 'vitest';
import { draftOf } from '../../../src/notes/draft.ts';
import { readSource } from '../../../src/notes/read/read-source.ts';
import { type Proposal, proposalsOf } from '../../../src/notes/write/proposals.ts';

const proposed = (text: string): Proposal[] => {
  const read = readSource({ name: 'notes.md', text });
  return proposalsOf(
    draftOf([read], {}),
    { chapter: '11-the-second-coat', date: '2026-10-24', currency: 'EUR' },
    { reads: [read] },
  ).proposals;
};
const rows = (list: readonly Proposal[], kind: Proposal['kind'], ...fields: string[]): string[] =>
  list
    .filter((one) => one.kind === kind)
    .map(({ row }) => fields.map((field) => row[field] ?? '').join(' | '));

describe('A table of things bought', () => {
  const list = proposed(`Parcel from the fair:

| item | qty | each | total | from |
| --- | --- | --- | --- | --- |
| trim clips | 20 | 0.35 EUR | 7.00 EUR | Marten |
| clutch cable | 1 | 12.40 EUR | 12.40 EUR | Marten |
| post | | | 6.90 EUR | |
| all together | | | 26.30 EUR | |
`);
  test('gives a row of the ledger for each, freight told apart, the sum of all left out', () => {
    expect(rows(list, 'cost', 'kind', 'item', 'qty', 'amount', 'currency', 'supplier')).toEqual([
      'part | Trim clips | 20 | 7.00 | EUR | Marten',
      'part | Clutch cable |  | 12.40 | EUR | Marten',
      'freight | Post |  | 6.90 | EUR | ',
    ]);
  });
  test('gives the parts that came', () => {
    expect(rows(list, 'part', 'name', 'qty', 'status')).toEqual([
      'Trim clips | 20 | arrived',
      'Clutch cable | 1 | arrived',
    ]);
  });
  test('takes the currency from the heading, and several pieces at a price each', () => {
    const each = proposed(`| part | number | each, GBP |\n| --- | --- | --- |\n| hinge pin | 4 | 2.50 |\n`);
    expect(rows(each, 'cost', 'item', 'qty', 'amount', 'currency')).toEqual(['Hinge pin | 4 | 10.00 | GBP']);
  });
});

describe('A table of things measured', () => {
  const list = proposed(`Front leg on the bench:

| what | left | right | limit |
| --- | --- | --- | --- |
| spring, free length | 231 mm | 246 mm | min 240 mm |
| arm bush, bore | 16.05 mm | 16.31 mm | 16.10 mm max |
| damper pin | 9.98 mm | 9.97 mm | 9.95 mm min |
`);
  test('gives every side its own measurement with the limit', () => {
    expect(rows(list, 'measurement', 'item', 'position', 'found', 'min', 'max')).toEqual([
      'Spring, free length | left | 231 | 240 | ',
      'Spring, free length | right | 246 | 240 | ',
      'Arm bush, bore | left | 16.05 |  | 16.1',
      'Arm bush, bore | right | 16.31 |  | 16.1',
      'Damper pin | left | 9.98 | 9.95 | ',
      'Damper pin | right | 9.97 | 9.95 | ',
    ]);
  });
  test('makes a fault of what lies beyond its limit, and of nothing else', () => {
    expect(rows(list, 'fault', 'title')).toEqual([
      'Spring, free length, left beyond its limit',
      'Arm bush, bore, right beyond its limit',
    ]);
  });
  test('a table without a limit or a heading for what was found is no measurement', () => {
    expect(
      rows(proposed('| day | hours |\n| --- | --- |\n| Monday | 3 h |\n'), 'measurement', 'item'),
    ).toEqual([]);
  });
});

test('a row that tells of a fault in words is one', () => {
  const list = proposed(`Hoses, looked over:

| hose | length | state |
| --- | --- | --- |
| top | 240 mm | cracked and leaking at the engine end |
| bottom | 310 mm | good |
`);
  expect(rows(list, 'fault', 'symptom')).toEqual(['top, cracked and leaking at the engine end']);
});

describe('Thanks', () => {
  test('two helpers are two proposals, and what is said on of one stays with him', () => {
    const list = proposed(
      'Ruben lent me his hoist for the afternoon. He would not take a penny for it. And thanks to my sister for the soup.\n',
    );
    expect(rows(list, 'thanks', 'name', 'kind')).toEqual(['Ruben | loan', ' | help']);
    expect(list.find(({ kind }) => kind === 'thanks')?.also).toEqual(['notes.md:1']);
  });
});

test('a fault said on right behind it is one fault with a finding', () => {
  const list = proposed('The wheel cylinder is seized solid. It is rusted in and will not move at all.\n');
  expect(rows(list, 'fault', 'system')).toEqual(['brakes']);
});

describe('What a sum was for', () => {
  test.each([
    ['- a wiper motor from a man at the fair, bought for 650 CZK with the post in it', 'part'],
    ['- bought seat webbing, 14 EUR post incl', 'part'],
    ['- bought 6 grease nipples for 5.40 EUR', 'part'],
    ['- bought an oil seal for 7 EUR', 'part'],
    ['- bought a tin of grease for 7 EUR', 'consumable'],
    ['- post for the parcel was 6.90 EUR', 'freight'],
  ])('%s: %s', (line, kind) => {
    expect(rows(proposed(`${line}\n`), 'cost', 'kind')).toEqual([kind]);
  });
  test('what was looked at and left is no cost', () => {
    const list = proposed(
      '## Looked at and left\n\n- a battery with 44 Ah for 69 EUR\n\n## Bought\n\n- bought a fuse box for 12 EUR\n',
    );
    expect(rows(list, 'cost', 'item')).toEqual(['Fuse box']);
  });
});
