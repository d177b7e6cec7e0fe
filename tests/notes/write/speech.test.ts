import { describe, expect, test } from 'vitest';
import { readSource } from '../../../src/notes/read/read-source.ts';
import { writeUp } from '../../../src/notes/write-up.ts';

/** The prose of a chapter made of one transcript or of captions. */
const proseOf = (text: string, name = 'talk.txt'): string =>
  writeUp([readSource({ name, text })], {
    chapter: '03-talk',
    title: 'Talk',
    date: '2026-05-02',
    currency: 'EUR',
    habits: {},
    around: { texts: new Map() },
  })
    .chapter.replace(/^---\n[\s\S]*?\n---\n/, '')
    .replace(/<Qty of="([^"]*)" \/>/g, '$1')
    .replace(/<[^>]*>/g, '')
    .replace(/\s*\n\s*/g, '\n')
    .trim();
const said = (words: string): string =>
  proseOf(`[0:05] ${words}\n[9:00] the end of it\n`)
    .split('\n')[0]
    ?.replace(/ The end of it\.$/, '') ?? '';

describe('speech without stops becomes sentences in the speaker’s own words', () => {
  test.each([
    ['um so the drum is scored and it is past its limit', 'The drum is scored, and it is past its limit.'],
    ['okay right so i took the cap off it', 'I took the cap off it.'],
    ['the the hose has gone soft near the clip you know', 'The hose has gone soft near the clip.'],
    ['right side first because the bolts are longer', 'Right side first because the bolts are longer.'],
    ['so tight i could hardly turn the nut', 'So tight I could hardly turn the nut.'],
    ['well worn the pin is and the bush too', 'Well worn the pin is and the bush too.'],
    ['the impeller is okay', 'The impeller is okay.'],
    ['you get a sort of porridge and then a bang', 'You get a sort of porridge and then a bang.'],
    ["i checked the rod it's right to half a millimetre", "I checked the rod. It's right to 0.5 mm."],
    [
      'then go and check it is tight and make sure it’s dry',
      'Then go and check it is tight and make sure it’s dry.',
    ],
    ["then go and check it's tight", "Then go and check it's tight."],
    ["never open the cap until it's cold", "Never open the cap until it's cold."],
    ["don't start it if there's petrol on the floor", "Don't start it if there's petrol on the floor."],
    ["make sure there's nobody under it", "Make sure there's nobody under it."],
    [
      'the pump came off but the gasket stayed on the block',
      'The pump came off, but the gasket stayed on the block.',
    ],
  ])('%s → %s', (words, wanted) => expect(said(words)).toBe(wanted));
});

test('a caption’s sentence goes on in the next caption, and its times are no prose', () => {
  const vtt =
    'WEBVTT\n\n1\n00:01.000 --> 00:03.000\n<v Berta>so i pulled the pin out of the\n\n2\n00:03.100 --> 00:05.000\n<v Berta>lever and laid it on the bench\n';
  expect(proseOf(vtt, 'talk.vtt')).toBe('I pulled the pin out of the lever and laid it on the bench.');
});

test('where captions name who speaks, each turn of a step is a paragraph', () => {
  const srt =
    '1\n00:00:01,000 --> 00:00:03,000\nBerta: I took the drum off the hub.\n\n2\n00:00:03,100 --> 00:00:05,000\nRuben: It is scored.\n\n3\n00:00:05,100 --> 00:00:07,000\nBerta: It is past its limit.\n';
  expect(proseOf(srt, 'talk.srt').split('\n')).toEqual([
    'Berta: I took the drum off the hub.',
    'Ruben: It is scored.',
    'Berta: It is past its limit.',
  ]);
});

test('notes written in small letters get their capitals and stops, and nothing else', () => {
  expect(
    proseOf('# Tank\n\ntried to start her. no luck\n\n- tank off, 2 bolts + the strap\n', 'a.md'),
  ).toMatch(/Tried to start her\. No luck\.\nTank off, 2 bolts \+ the strap\./);
});

test('a word that its line’s end parted is one word again, and a hyphen that waits for its word is left', () => {
  const prose = proseOf(
    '# Stud\n\nI had the drill out and centre-\npunched the stud, and cut the two- and\nthree-pin plates from sheet.\n',
    'a.md',
  );
  expect(prose).toContain('centre-punched the stud, and cut the two- and three-pin plates');
});
