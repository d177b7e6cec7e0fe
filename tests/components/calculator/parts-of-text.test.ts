import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { FigureField } from '../../../src/calc/contract.ts';
import { parseFigure, partsOfText } from '../../../src/calc/parse-figure.ts';
import { figureInWords, textOfParts } from '../../../src/components/calculator/parts-of-text.ts';

const length: FigureField = {
  kind: 'figure',
  name: 'stroke',
  label: 'Stroke',
  quantity: 'length',
  units: ['mm', 'in', 'thou'],
  takesPm: true,
};
const slope: FigureField = { ...length, quantity: 'slope', units: ['%', '1 in', 'deg'] };
const mixture: FigureField = { ...length, quantity: 'mixture', units: [':1', '%'] };
const teeth: FigureField = { ...length, quantity: 'count', units: ['n'], takesPm: false };

describe('A figure parted over its boxes', () => {
  test.each([
    [length, '58 mm', '58', '', 'mm'],
    [length, '58', '58', '', 'mm'],
    [length, '2,28 in', '2,28', '', 'in'],
    [length, '58 ± 0.05 mm', '58', '0.05', 'mm'],
    [length, '58 mm ± 0,05', '58', '0,05', 'mm'],
    [length, '2.5 in +/- 0.002 in', '2.5', '0.002', 'in'],
    [slope, '1 in 7', '7', '', '1 in'],
    [slope, '12°', '12', '', 'deg'],
    [mixture, '25:1', '25', '', ':1'],
    [teeth, '34', '34', '', 'n'],
  ] as const)('%#: "%s" has its number, ± and unit in their boxes', (field, text, number, pm, unit) => {
    expect(partsOfText(field, text)).toEqual({ number, pm, unit });
  });

  test.each(['58 cm', '5 ft 3 in', '2,283 in', '58 mm ± 0.002 in', 'abc', '1 ± 2 ± 3', '<b>7</b>'])(
    '"%s" does not part cleanly and stays whole',
    (text) => {
      expect(partsOfText(length, text)).toEqual({ number: text, pm: '', unit: 'mm' });
    },
  );

  test('a text without a unit keeps the unit that was chosen', () => {
    expect(partsOfText(length, '2.5', 'in').unit).toBe('in');
  });
});

describe('The text that the boxes say', () => {
  test('a ± or a unit typed into the figure counts before the other boxes', () => {
    expect(textOfParts(length, { number: '2,5 in ± 0,1', pm: '6', unit: 'mm' })).toBe('2,5 in ± 0,1');
    expect(textOfParts(length, { number: '2.5 in', pm: '0.1', unit: 'mm' })).toBe('2.5 in ± 0.1');
  });

  test('parted and put together again, a figure is read as the same', () => {
    const units = fc.constantFrom(...length.units);
    const digits = fc.double({ min: 0.001, max: 9_999, noNaN: true }).map((x) => x.toFixed(4));
    fc.assert(
      fc.property(digits, fc.option(digits), units, fc.boolean(), (x, pm, unit, comma) => {
        const typed = `${x}${pm === null ? '' : ` ± ${pm}`} ${unit}`;
        const text = comma ? typed.replaceAll('.', ',') : typed;
        const back = textOfParts(length, partsOfText(length, text));
        expect(parseFigure(back, 'length', 'mm')).toEqual(parseFigure(text, 'length', 'mm'));
      }),
    );
  });

  test('whatever is typed, parting and joining never throws and invents no figure', () => {
    fc.assert(
      fc.property(fc.string(), (text) => {
        const back = textOfParts(length, partsOfText(length, text));
        const [before, after] = [text, back].map((one) => parseFigure(one, 'length', 'mm'));
        if (before?.ok && after?.ok) expect(after.figure.si).toBeCloseTo(before.figure.si, 12);
        if (before && !before.ok) expect(after?.ok).toBe(false);
      }),
    );
  });
});

test('what was put in reads as a printed figure', () => {
  expect(figureInWords(length, '58 ± 0.05 mm')).toBe('58 ± 0.05\u00a0mm');
  expect(figureInWords(mixture, '25:1')).toBe('25:1');
  expect(figureInWords(slope, '1 in 7')).toBe('1 in 7');
  expect(figureInWords(length, '5 ft 3 in')).toBe('5 ft 3 in');
});
