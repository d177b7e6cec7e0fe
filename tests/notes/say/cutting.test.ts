import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { readSource } from '../../../src/notes/read/read-source.ts';
import { clausesOf } from '../../../src/notes/say/clauses.ts';

const cut = (name: string, text: string): string[] =>
  [...clausesOf(readSource({ name, text }))].map(({ clause }) => clause.text);

describe('speech without stops is cut where a new turn begins', () => {
  test.each([
    [
      "wheel cylinder pushes back by hand doesn't leak but the bleed screw is rounded that's for another day",
      [
        "wheel cylinder pushes back by hand doesn't leak",
        "but the bleed screw is rounded that's for another day",
      ],
    ],
    [
      "drum inside is scored and i'll put the gauge on it we have one hundred and sixty point four at the widest",
      [
        "drum inside is scored and i'll put the gauge on it",
        'we have one hundred and sixty point four at the widest',
      ],
    ],
    ['the rubber has come right off the metal plate', ['the rubber has come right off the metal plate']],
    [
      'the free length comes out at two hundred and twelve millimetres and the sheet says two hundred and twenty',
      [
        'the free length comes out at two hundred and twelve millimetres and the sheet says two hundred and twenty',
      ],
    ],
    [
      'so i take hold of the swinging arm and waggle it side to side and it clonks every time you do that',
      [
        'so i take hold of the swinging arm and waggle it side to side',
        'and it clonks every time you do that',
      ],
    ],
    [
      'there are three short in there and either i lost them or somebody else did before me',
      ['there are three short in there and either i lost them or somebody else did before me'],
    ],
    ['i cut it when i twisted it so hard', ['i cut it when i twisted it so hard']],
  ])('%s', (words, wanted) =>
    expect(cut('talk.txt', `[0:05] ${words}\n[0:40] bye\n`)).toEqual([...wanted, 'bye']),
  );
});

test('speech with stops is cut at its stops alone', () => {
  const vtt =
    'WEBVTT\n\n00:01.000 --> 00:06.000\n<v Berta>Then we rock it, let it settle, and only\nthen tighten. Thirty-two newton metres.\n';
  expect(cut('talk.vtt', vtt)).toEqual([
    'Then we rock it, let it settle, and only then tighten.',
    'Thirty-two newton metres.',
  ]);
});

test('another speaker begins a new statement, though no stop stands between', () => {
  const vtt =
    'WEBVTT\n\n00:01.000 --> 00:03.000\n<v Berta>and the seal is\n\n00:03.100 --> 00:05.000\n<v Ruben>it is on the bench\n';
  expect(cut('talk.vtt', vtt)).toEqual(['and the seal is', 'it is on the bench']);
});

test('a line that ended before its margin is an entry of its own; a wrapped line goes on', () => {
  expect(
    cut('notes.txt', 'tap off and strainer out\nbowl full of rust\nnew cork fitted this evening\n'),
  ).toEqual(['tap off and strainer out', 'bowl full of rust', 'new cork fitted this evening']);
  expect(
    cut(
      'notes.txt',
      'I took the tap off and the strainer came out with it, in\ntwo pieces. The bowl is fine.\n',
    ),
  ).toEqual(['I took the tap off and the strainer came out with it, in two pieces.', 'The bowl is fine.']);
});

test('no word is lost by cutting, whatever is said', () => {
  const word = fc.constantFrom(
    ...'so the and wheel it is off i took right now then nut uh we have . 12 mm'.split(' '),
  );
  fc.assert(
    fc.property(fc.array(word, { minLength: 1, maxLength: 80 }), (words) => {
      const said = words.join(' ');
      expect(cut('talk.txt', `[0:05] ${said}\n[9:00] end\n`).slice(0, -1).join(' ')).toBe(said);
    }),
    { numRuns: 200 },
  );
});
