import fc from 'fast-check';
import { createUnit, unit } from 'mathjs';
import { describe, expect, test } from 'vitest';
import { findFigures, type Habits } from '../../src/notes/figures/find.ts';
import { PHRASES } from './figures.phrases.ts';
import { SAYINGS } from './figures.sayings.ts';

const said = (text: string, habits: Habits = {}): string[] =>
  findFigures(text, habits).map(({ value, unit }) => `${Math.round(value * 1e4) / 1e4} ${unit}`);

describe('each phrase gives its figures, and no more', () => {
  test.each([...PHRASES, ...SAYINGS].map(([phrase, ...figures]) => [phrase, figures] as const))(
    '"%s" is read as %j',
    (phrase, figures) => expect(said(phrase)).toEqual(figures),
  );
});

test('a gallon stays a gallon until the series says which', () => {
  expect(said('two gallons and a pint')).toEqual(['2 gal', '1 pt']);
  expect(said('two gallons and a pint', { gallon: 'imperial' })).toEqual(['2 imp gal', '1 imp pt']);
  expect(said('two gallons and a pint', { gallon: 'US' })).toEqual(['2 US gal', '1 US pt']);
  expect(said('two imperial gallons', { gallon: 'US' })).toEqual(['2 imp gal']);
});

test('a plain speed takes the unit of the text, else that of the series, else none', () => {
  expect(said('on the level flat out she shows fifty five')).toEqual([]);
  expect(said('on the level flat out she shows fifty five', { speed: 'mph' })).toEqual(['55 mph']);
  expect(said('thirty km/h in the lane, and flat out on the level the speedo shows fifty five')).toEqual([
    '30 km/h',
    '55 km/h',
  ]);
});

test('a sum without a currency takes that of the text, else the home currency, else none', () => {
  expect(said('the seal cost four ninety')).toEqual([]);
  expect(said('the seal cost four ninety', { money: 'EUR' })).toEqual(['4.9 EUR']);
  expect(said('the seal cost four ninety and the chain sixty pounds fifty', { money: 'EUR' })).toEqual([
    '4.9 GBP',
    '60.5 GBP',
  ]);
});

test('degrees are of angle or of heat by the words beside them, and of neither where none tell', () => {
  expect(said('twenty degrees before top dead centre')).toEqual(['20 deg']);
  expect(said('it was twenty degrees in the shed and warm')).toEqual(['20 degC']);
  expect(said('twenty degrees')).toEqual([]);
});

test('"about" and limits are kept', () => {
  const [about] = findFigures('about 12 mm');
  expect(about?.about).toBe(true);
  expect(findFigures('min 2.6 mm')[0]?.limit).toBe('min');
  expect(findFigures('no more than 151 mm')[0]?.limit).toBe('max');
  expect(findFigures('twenty odd mm')[0]?.about).toBe(true);
  expect(findFigures('2.6 mm minimum')[0]?.limit).toBe('min');
});

test('a figure whose unit stands elsewhere says so', () => {
  const [first, second] = findFigures('between fifty and sixty km/h');
  expect([first?.shared, second?.shared]).toEqual([true, undefined]);
  expect(findFigures('22 mm free, should be 24')[1]).toMatchObject({
    shared: true,
    carried: true,
    unit: 'mm',
  });
});

test("a table's bare number is in its column's unit", () => {
  expect(said('| what | found (mm) |\n|---|---|\n| pin | 14.98 |\n| bush | 15 |')).toEqual([
    '14.98 mm',
    '15 mm',
  ]);
  expect(said('| run | drop |\n|---|---|\n| red | 0.2 ohm |\n| blue | 0.1 |')).toEqual([
    '0.2 ohm',
    '0.1 ohm',
  ]);
});

/** Names of the units here against those of a general-purpose unit library (mathjs): "ten thou" is 0.010 in there as here. */
test('what two sayings come to is the same in a general-purpose unit library (mathjs)', () => {
  createUnit('thou', '0.001 in', { override: true });
  createUnit('lbfft', '1 lbf ft', { override: true });
  createUnit('impgal', '4.54609 L', { override: true });
  const library: Readonly<Record<string, string>> = {
    'lbf ft': 'lbfft',
    'imp gal': 'impgal',
    'N m': 'N m',
    'US gal': 'gallon',
    mph: 'mi/h',
    cm3: 'cm3',
  };
  const inLibrary = (text: string) => {
    const [figure] = findFigures(text);
    expect(findFigures(text), text).toHaveLength(1);
    return unit(figure?.value ?? Number.NaN, library[figure?.unit ?? ''] ?? figure?.unit ?? '');
  };
  for (const [a, b] of [
    ['ten thou', '0.010 in'],
    ['two feet', '24 in'],
    ['half a litre', '500 mL'],
    ['a litre and a half', '1500 cc'],
    ['an inch and three eighths', '1 3/8 in'],
    ['five hundredths of a millimetre', '50 µm'],
    ['two and a half kilometres', '2500 m'],
    ['an hour and a half', '90 min'],
    ['half a pound of chain', '8 oz'],
  ] as const) {
    expect(inLibrary(a).equals(inLibrary(b)), `${a} = ${b}`).toBe(true);
  }
  // mathjs: 1 lbf ft in N m, 1 psi in bar, imperial gallon by its definition in litres
  expect(inLibrary('fifty foot pounds').toNumber('N m')).toBeCloseTo(67.79, 2);
  expect(inLibrary('thirty two psi').toNumber('bar')).toBeCloseTo(2.2063, 4);
  expect(inLibrary('two imperial gallons').toNumber('L')).toBeCloseTo(9.09218, 5);
  expect(inLibrary('two US gallons').toNumber('L')).toBeCloseTo(7.570824, 5);
  expect(inLibrary('thirty five miles an hour').toNumber('km/h')).toBeCloseTo(56.327, 3);
});

const ONES =
  'zero one two three four five six seven eight nine ten eleven twelve thirteen fourteen fifteen sixteen seventeen eighteen nineteen'.split(
    ' ',
  );
const TENS = 'twenty thirty forty fifty sixty seventy eighty ninety'.split(' ');

/** A whole number below a million in words, British. Not the product's: written for this test alone. */
function inWords(n: number, hyphen = '-'): string {
  if (n < 20) return ONES[n] ?? '';
  if (n < 100) return `${TENS[Math.floor(n / 10) - 2]}${n % 10 ? `${hyphen}${ONES[n % 10]}` : ''}`;
  if (n < 1000)
    return `${ONES[Math.floor(n / 100)]} hundred${n % 100 ? ` and ${inWords(n % 100, hyphen)}` : ''}`;
  const rest = n % 1000;
  return `${inWords(Math.floor(n / 1000), hyphen)} thousand${rest ? `${rest < 100 ? ' and' : ''} ${inWords(rest, hyphen)}` : ''}`;
}

describe('whatever is written', () => {
  const seed = { seed: 265, numRuns: 400 } as const;

  test('a whole number said in words, with or without hyphens, is read back', () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 999_999 }), fc.boolean(), (n, hyphens) => {
        const words = `it was ${inWords(n, hyphens ? '-' : ' ')} millimetres then`;
        const figures = findFigures(words);
        expect(
          figures.map(({ value, unit }) => ({ value, unit })),
          words,
        ).toEqual([{ value: n, unit: 'mm' }]);
        expect(words.slice(figures[0]?.start, figures[0]?.end)).toBe(
          `${inWords(n, hyphens ? '-' : ' ')} millimetres`,
        );
      }),
      seed,
    );
  });

  test('a decimal said digit by digit, and the same written with point or comma, is read back', () => {
    fc.assert(
      fc.property(fc.integer({ min: 0, max: 9999 }), fc.stringMatching(/^[0-9]{1,4}$/), (n, decimals) => {
        const value = Number(`${n}.${decimals}`);
        const spoken = [...decimals].map((digit) => ONES[Number(digit)]).join(' ');
        expect(findFigures(`${inWords(n)} point ${spoken} millimetres`).map((one) => one.value)).toEqual([
          value,
        ]);
        expect(findFigures(`${n}.${decimals} mm`).map((one) => one.value)).toEqual([value]);
        // Three digits behind a comma are a group
        if (decimals.length !== 3)
          expect(findFigures(`${n},${decimals} mm`).map((one) => one.value)).toEqual([value]);
      }),
      seed,
    );
  });

  test('a text without a digit or a number word gives nothing', () => {
    const plain =
      'the bolt came off and was bent so cable engine millimetres volts bar over under with rag litres degrees pounds to by then oil';
    const word = fc.constantFrom(...plain.split(' '));
    fc.assert(
      fc.property(fc.array(word, { maxLength: 30 }), (words) => {
        expect(findFigures(words.join(' '))).toEqual([]);
      }),
      seed,
    );
  });

  test('nothing throws, figures stand in order without overlap, and each lies in the text that it was read from', () => {
    const piece = fc.oneof(
      fc.constantFrom(
        'half',
        'a',
        'and',
        'point',
        'oh',
        'hundred',
        'thousand',
        'twenty',
        'five',
        'one',
        'to',
        '/',
        '.',
        ',',
        ':',
        '-',
        '½',
        '£',
        'mm',
        'mil',
        'degrees',
        'pounds',
        '3',
        '1/2',
        '0.4',
        '25',
        '|',
        '\n',
        '\n\n',
        'x',
        '"',
        '±',
        'of',
        'an',
        'inch',
        'quarter',
        'quid',
      ),
      fc.string({ unit: 'binary', maxLength: 6 }),
    );
    fc.assert(
      fc.property(fc.array(piece, { maxLength: 25 }), fc.constantFrom(' ', ''), (pieces, gap) => {
        const text = pieces.join(gap);
        let last = 0;
        for (const { start, end, value, unit, digits } of findFigures(text)) {
          expect(start).toBeGreaterThanOrEqual(last);
          expect(end).toBeGreaterThan(start);
          expect(end).toBeLessThanOrEqual(text.length);
          expect(text.slice(start, end).trim()).toBe(text.slice(start, end));
          expect(Number.isFinite(value)).toBe(true);
          expect(unit).toMatch(/^[^?]+$/);
          expect(Number(digits)).toBeCloseTo(value, 4);
          last = end;
        }
      }),
      { seed: 265, numRuns: 3000 },
    );
  });
});
