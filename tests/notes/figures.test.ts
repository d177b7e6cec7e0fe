import { createUnit, unit } from 'mathjs';
import { expect, test } from 'vitest';
import { findFigures } from '../../src/notes/figures/find.ts';

const said = (text: string): string[] =>
  findFigures(text).map(({ value, unit }) => `${Math.round(value * 1e4) / 1e4} ${unit}`);

test.each([
  ['three point four millimetres', ['3.4 mm']],
  ['two and a quarter turns', ['2.25 turn']],
  ['thirty-two to one', ['32 ratio']],
  ['twelve volt', ['12 V']],
  ['3/8 in', ['0.375 in']],
  ['ten thou', ['10 thou']],
  ['a gap of 0.010', ['0.01 in']],
  ['7.9 / 7.9 / 7.7 mm', ['7.9 mm', '7.9 mm', '7.7 mm']],
  ['five to ten hundredths of a millimetre', ['0.05 mm', '0.1 mm']],
  ['thirty one pounds for the two plus four pounds fifty postage', ['31 GBP', '4.5 GBP']],
  ['the box weighs thirty one pounds', ['31 lb']],
  ['bolt eight point eight m eight about twenty five newton metres dry', ['25 N m']],
  ['twenty-five hundred rpm', ['2500 rpm']],
  ['158 CZK and 3400 yen', ['158 CZK', '3400 JPY']],
  ['half a millimetre of rock', ['0.5 mm']],
])('"%s" is read as %j', (text, figures) => expect(said(text)).toEqual(figures));

test.each(['order 7 came', 'the M8 bolt', 'on 14 march', 'main jet 95', 'step 3'])(
  '"%s" measures nothing',
  (text) => expect(said(text)).toEqual([]),
);

test('a gallon stays a gallon until the series says which', () => {
  expect(findFigures('two gallons')[0]?.unit).toBe('gal');
  expect(findFigures('two gallons', { gallon: 'imperial' })[0]?.unit).toBe('imp gal');
});

test('what two words of a unit mean agrees with a general-purpose unit library (mathjs)', () => {
  createUnit('thou', '0.001 in', { override: true });
  for (const [a, b, library] of [
    ['ten thou', '0.010 in', unit(10, 'thou').toNumber('in')],
    ['two feet', '24 in', unit(2, 'ft').toNumber('in')],
    ['half a litre', '500 mL', unit(0.5, 'L').toNumber('mL')],
  ] as const) {
    expect(findFigures(a)).toHaveLength(1);
    expect(findFigures(b)[0]?.value).toBeCloseTo(library, 9);
  }
});
