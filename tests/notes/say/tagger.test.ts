import { readdirSync, readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { expect, test } from 'vitest';
import model from 'wink-eng-lite-web-model';
import winkNLP from 'wink-nlp';
import { taggedWords } from '../../../src/notes/say/words.ts';

/** The library's own door, asked for the same text. */
const library = winkNLP(model, ['pos']);
const { its } = library;
const asTheLibrary = (text: string) => {
  const tokens = library.readDoc(text.replace(/\s/g, ' ')).tokens();
  const list = (what: unknown) => tokens.out(what as typeof its.pos) as string[];
  const [stems, lemmas, tags] = [list(its.stem), list(its.lemma), list(its.pos)];
  return (tokens.out() as string[]).map((value, i) => ({
    text: value.toLowerCase().replaceAll('’', "'"),
    stem: stems[i],
    lemma: lemmas[i]?.toLowerCase(),
    pos: tags[i],
  }));
};
const bare = (text: string) =>
  taggedWords(text).map(({ text, stem, lemma, pos }) => ({ text, stem, lemma, pos }));

const FIRST = fileURLToPath(new URL('../labelled/first/', import.meta.url));
const TEXTS = readdirSync(FIRST).filter((name) => !name.endsWith('.json'));

test.each(TEXTS)(
  'every word of %s has the stem, dictionary form and part of speech that the library gives',
  (name) => {
    const lines = readFileSync(`${FIRST}${name}`, 'utf8').split('\n');
    expect(lines.length).toBeGreaterThan(20);
    for (const line of lines) expect(bare(line), line).toEqual(asTheLibrary(line));
  },
);

test.each([
  "can’t won’t I’ll we've it's don't they're",
  'M8 x 1.25, 8.8; 1/2" AF (27 mm) ~3 l. £4.50 + p&p = 5€',
  'see http://tap.example/a?b and write to me@shed.example :-)',
  '“half” — an eighth… “Berta” said: no!! 3pm 1st 1980s @who #tap 😀',
  'Fuel tap WEEPS at the lever, Cork is hard as wood. w/ 0.8mm drill e.g. the jet',
])('so has every mark and word of %s', (text) => {
  expect(bare(text)).toEqual(asTheLibrary(text));
});

test('words have the places at which they stand, over line ends and behind several blanks', () => {
  const text = 'the  tap\n weeps,\tand it doesn’t hold';
  for (const { text: word, start, end } of taggedWords(text))
    expect(text.slice(start, end).toLowerCase().replace('’', "'")).toBe(word);
});

test('a word is tagged alike whatever was read before it', () => {
  const first = bare('it is Oduya’s drill');
  bare('was it (Oduya’s)? The drill, Oduya’s.');
  bare('“Oduya’s” drill');
  expect(bare('it is  Oduya’s drill')).toEqual(first);
});
