import { describe, expect, test } from 'vitest';
import { findFigures } from '../../../src/notes/figures/find.ts';
import { besideSpec } from '../../../src/notes/say/beside-spec.ts';
import { thenMended } from '../../../src/notes/say/then-mended.ts';
import { taggedWords } from '../../../src/notes/say/words.ts';

const beside = (text: string): string | undefined => besideSpec(text, findFigures(text, {}), 0);

describe('A figure beside the one that it should be', () => {
  test.each([
    ['The points open at 29 degrees, the book says 24 degrees.', 'apart'],
    ['End float was 0.4 mm and the paper says 0.05 to 0.10 mm.', 'apart'],
    ['slack 35 mm, it is meant to be 25 mm at the most', 'apart'],
    ['The gap is 0.4 mm, as it should be 0.4 mm.', 'as it should be'],
    ['float 0.08 mm, book 0.05 to 0.10 mm', 'as it should be'],
    ['pin 9.98 mm, limit 9.95 mm min', 'as it should be'],
    ['The bow was 7 mm, now 1 mm.', 'put right'],
    ['A strip of 60 mm by 20 mm.', undefined],
    ['It weighs 4 kg and the book says 20 Nm.', undefined],
    ['The book says six to ten thou, that is 0.15 to 0.25 mm.', undefined],
  ])('%s', (text, told) => {
    expect(beside(text)).toBe(told);
  });
});

describe('A state and its mending in one breath', () => {
  test.each([
    ['neg lead green, scraped', true],
    ['striker loose, tightened it', true],
    ['pivot dry, greased', true],
    ['pushrod bent 1 mm, straightened in the vice', true],
    ['drained the box, cleaned the magnet', false],
    ['hoses, clips and a cap', false],
    ['top hose split on the underside', false],
  ])('%s', (text, told) => {
    expect(thenMended(taggedWords(text))).toBe(told);
  });
});
