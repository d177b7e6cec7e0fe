import { describe, expect, test } from 'vitest';
import { namesIn } from '../../../src/notes/say/names.ts';
import { helpersIn } from '../../../src/notes/say/people.ts';
import { taggedWords } from '../../../src/notes/say/words.ts';

const shown = (text: string, names: readonly string[] = []): string[] =>
  [...helpersIn(text, taggedWords(text), 0, new Set(names))].sort();

describe('Names of people in a source', () => {
  test.each([
    ['We lifted it out with Marisol at the hoist.', ['marisol']],
    ['[2:10] so cheers gudrun and the box is back', ['gudrun']],
    ['[2:10] my friend ottilie has the other one', ['ottilie']],
    ['- lamp from Vashti, 4 EUR', ['vashti']],
    ['Z. held the lamp.', ['z.']],
  ])('%s', (text, names) => {
    expect([...namesIn(text)]).toEqual(names);
  });

  test.each([
    'On Monday the parcel came from Japan.',
    'The Hub came off in May. The hub was dry.',
    'Thanks for watching, and thanks to the rust.',
    'The thread is Whitworth and the screw is Phillips.',
  ])('nobody is named: %s', (text) => {
    expect([...namesIn(text)]).toEqual([]);
  });
});

describe('Somebody who does something for the restorer', () => {
  test.each([
    ['Marisol welded the bracket.', ['a known name', 'a known name gives'], ['marisol']],
    ['My neighbour lent his hoist.', ['kin', 'somebody gives'], []],
    ['ottilie brought the puller', ['a bare word gives'], []],
    ['He gave me the two clips.', ['for me', 'he or she gives'], []],
    ["She wouldn't take a penny for it.", ['takes nothing'], []],
    ['I owe him a cake.', ['is owed'], []],
    ['There was no charge for the wash.', ['takes nothing'], []],
  ] as const)('%s', (text, told, names) => {
    expect(shown(text, names)).toEqual([...told].sort());
  });

  test.each(['The lamp came on.', 'The engine gave a cough.', 'I turned the drum.', 'It took an hour.'])(
    'no helper: %s',
    (text) => {
      expect(shown(text)).toEqual([]);
    },
  );
});
