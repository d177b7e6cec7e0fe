import { describe, expect, test } from 'vitest';
import { hazards } from '../../../src/record/hazards/catalogue.ts';
import { figuresAt } from '../../../src/record/hazards/figures.ts';
import { formsOf, possibleBasesOf } from '../../../src/record/hazards/forms.ts';
import { type Token, tokenise } from '../../../src/record/hazards/language.ts';
import { CLASSES, SAYINGS } from '../../../src/record/hazards/lexicon.ts';
import { compile } from '../../../src/record/hazards/words.ts';

const tokens = (text: string) => {
  const row: Token[] = [];
  tokenise(text, 0, row);
  return row;
};
const figures = (text: string) => {
  const row = tokens(text);
  return row.flatMap((_, i) => figuresAt(row, i, text));
};
const finder = (...words: string[]) => {
  const matcher = compile([words], { lift: 'jack|raise|hoist' }, ['hot topic']);
  return (text: string) => matcher([{ name: 'text', text }])[0]?.words;
};

describe('Forms of a word', () => {
  test('regular, doubled, irregular and in both spellings', () => {
    expect(formsOf('drain')).toEqual(expect.arrayContaining(['drains', 'drained', 'draining']));
    expect(formsOf('drip')).toEqual(expect.arrayContaining(['dripped', 'dripping']));
    expect(formsOf('pour')).not.toContain('pourred');
    expect(formsOf('spin')).toEqual(expect.arrayContaining(['spun', 'spinning']));
    expect(formsOf('battery')).toContain('batteries');
    expect(formsOf('tyre')).toEqual(expect.arrayContaining(['tires', 'tyres']));
    expect(formsOf('carburettor')).toEqual(expect.arrayContaining(['carb', 'carburetor', 'carburettors']));
  });

  test('small words take none, so that "she" does not find "shed"', () => {
    expect(formsOf('she')).toEqual(['she']);
    expect(formsOf('=gas')).toEqual(['gas']);
  });

  test('every form of every word of the catalogue leads back to the word', () => {
    const written = [...hazards.flatMap((entry) => entry.words), ...Object.values(CLASSES), ...SAYINGS];
    const words = new Set(written.flatMap((text) => text.match(/=?[a-z]+/g) ?? []));
    expect(words.size).toBeGreaterThan(3000);
    const lost = [...words].flatMap((word) =>
      formsOf(word)
        .filter((form) => !possibleBasesOf(form).includes(word))
        .map((form) => `${word}: ${form}`),
    );
    expect(lost).toEqual([]);
    expect(possibleBasesOf('lorries')).toContain('lorry');
    expect(possibleBasesOf('gaging')).toContain('gauge');
  });
});

describe('Figures with a unit', () => {
  test.each([
    ['at 6 bar', ['#bar']],
    ['90psi', ['#psi']],
    ['12 kV at the plug', ['#kv']],
    ['12,000 V', ['#kv']],
    ['a 24 V charger', ['#volt', '#volt24']],
    ['oven at 110 °C', ['#hot']],
    ['28 km/h', ['#speed']],
    ['38 kg', ['#heavy']],
    ['mixed 25:1', ['#mixratio']],
    ['twenty five to one', ['#mixratio']],
    ['2.27 to one', []],
    ['24 degrees before', []],
    ['0.4 mm', []],
  ])('%s', (text, names) => expect(figures(text)).toEqual(names));
});

describe('The words of a hazard', () => {
  test('stand near one another in either order, in one sentence', () => {
    const find = finder('@lift + van|front');
    expect(find('Jack the front up.')).toBe('Jack … front');
    expect(find('The front was raised on a block.')).toBe('front … raised');
    expect(
      find(
        'Raise it. '.concat(
          'It was a long day in the lean-to with rain on the roof all the while. The van is blue.',
        ),
      ),
    ).toBeUndefined();
  });

  test('a phrase is broken by a comma, and skips articles', () => {
    const find = finder('run it');
    expect(find('We run the, well, it stopped.')).toBeUndefined();
    expect(find('Run it.')).toBeDefined();
    expect(finder('axle stand')('the axle-stands')).toBeDefined();
    expect(finder('axle stand')('the axlestand')).toBeDefined();
    expect(finder('axle stand')('two axlestands')).toBe('axlestands');
  });

  test('exceptions void a rule that stands beside them, sayings take words out', () => {
    expect(finder('charge - postage')('The charge for postage was high.')).toBeUndefined();
    expect(finder('hot')('A hot topic.')).toBeUndefined();
    expect(finder('hot')('The pipe is hot.')).toBeDefined();
  });

  test('a class that does not exist, or a phrase of small words alone, or a term with nothing in it, is told when it is compiled', () => {
    expect(() => compile([['@nothing']], {}, [])).toThrow('no class @nothing');
    expect(() => compile([['the ground']], {}, [])).toThrow('only "ground" is left');
    expect(() => compile([['ground|']], {}, [])).toThrow('nothing is left');
  });

  test('~ joins words a few places apart, where both are common', () => {
    const find = finder('jacked ~ her');
    expect(find('jacked the nose of her up')).toBe('jacked … her');
    expect(find('jacked it up and went in to tea with her')).toBeUndefined();
  });

  test('what stands elsewhere in the step is told with the words, and the place is that of the others', () => {
    const matcher = compile([['weld & tank']], {}, []);
    const [found] = matcher([
      { name: 'title', text: 'Empty the tank' },
      {
        name: 'text',
        text: 'It stood outside for a week, under the tree, with the cap off. Then weld the seam.',
      },
    ]);
    expect(found).toMatchObject({ field: 'text', words: 'tank … weld' });
  });

  test('gives the place of the first word in its field', () => {
    const matcher = compile([['weld + tank']], {}, []);
    const [found] = matcher([
      { name: 'title', text: 'Mend it' },
      { name: 'text', text: 'Then weld the tank.' },
    ]);
    expect(found).toMatchObject({ field: 'text', offset: 5, words: 'weld … tank' });
  });
});
