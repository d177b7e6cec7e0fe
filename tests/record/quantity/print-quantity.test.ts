import fc from 'fast-check';
import { expect, test } from 'vitest';
import { converted } from '../../../src/record/quantity/counterpart.ts';
import { type Printable, printQuantity } from '../../../src/record/quantity/print-quantity.ts';

const plain = (printable: Printable, language = 'en-GB') => {
  const { text, also } = printQuantity(printable, language);
  return [text, also].map((one) => one?.replaceAll('\u00a0', ' '));
};
const figure = (text: string, unit: string, pm?: string): Printable => ({
  kind: 'figure',
  quantity: { text, unit, ...(pm === undefined ? {} : { pm }) },
});

test('3.4 mm is 0.134 in: no digit more than the author’s last one knows, and none fewer', () =>
  expect(plain(figure('3.4', 'mm'))).toEqual(['3.4 mm', '0.134 in']));

test('The author’s digits stay as written, noughts included', () =>
  expect(plain(figure('0.40', 'mm'))).toEqual(['0.40 mm', '0.0157 in']));

test('Units of the trade have their counterparts, by exact definitions', () => {
  expect(plain(figure('22', 'Nm'))).toEqual(['22 N·m', '16.2 lbf·ft']);
  expect(plain(figure('390', 'kg'))).toEqual(['390 kg', '860 lb']);
  expect(plain(figure('12', 'L'))).toEqual(['12 L', '2.6 imp gal']);
  expect(plain(figure('12', 'L'), 'en-US')).toEqual(['12 L', '3.2 US gal']);
  expect(plain(figure('1.8', 'bar'))).toEqual(['1.8 bar', '26 psi']);
  expect(plain(figure('0.157', 'in'))).toEqual(['0.157 in', '3.99 mm']);
  expect(plain(figure('82', 'degC'))).toEqual(['82 °C', '180 °F']);
  expect(plain(figure('6.5', 'L/100km'))).toEqual(['6.5 L/100 km', '43.5 mpg (imp)']);
});

test('What has no counterpart stands alone', () => {
  expect(plain(figure('24', 'deg'))).toEqual(['24°', undefined]);
  expect(plain(figure('34', ''))).toEqual(['34', undefined]);
  expect(plain(figure('35', 'W'))).toEqual(['35 W', undefined]);
});

test('A limit is rounded inward, so that nobody is led outside it', () => {
  // 150.8 mm are 5.93701 in, 150.6 mm are 5.92913 in.
  expect(plain({ kind: 'at most', quantity: { text: '150.8', unit: 'mm' } })).toEqual([
    'at most 150.8 mm',
    'at most 5.937 in',
  ]);
  expect(plain({ kind: 'at most', quantity: { text: '150.6', unit: 'mm' } })).toEqual([
    'at most 150.6 mm',
    'at most 5.929 in',
  ]);
  expect(plain({ kind: 'at least', quantity: { text: '150.6', unit: 'mm' } })).toEqual([
    'at least 150.6 mm',
    'at least 5.930 in',
  ]);
  expect(plain({ kind: 'range', low: '0.35', high: '0.45', unit: 'mm' })).toEqual([
    '0.35 to 0.45 mm',
    '0.0138 to 0.0177 in',
  ]);
});

test('A limit on fuel used turns round in miles a gallon', () =>
  expect(plain({ kind: 'at most', quantity: { text: '6.5', unit: 'L/100km' } })).toEqual([
    'at most 6.5 L/100 km',
    'at least 43.5 mpg (imp)',
  ]));

test('A ± is turned with its figure and never made smaller', () => {
  expect(plain(figure('0.4', 'mm', '0.05'))).toEqual(['0.4 ± 0.05 mm', '0.0157 ± 0.0020 in']);
  expect(plain(figure('160', 'mm', '0.1'))).toEqual(['160 ± 0.1 mm', '6.299 ± 0.004 in']);
});

test('A language with a decimal comma prints one', () =>
  expect(plain(figure('3.4', 'mm'), 'de')).toEqual(['3,4 mm', '0,134 in']));

test('Rounded inward, a converted limit never lies outside the limit itself', () => {
  const mm = { quantity: 'length', unit: 'mm' } as const;
  fc.assert(
    fc.property(fc.integer({ min: 1, max: 999_999 }), fc.integer({ min: 0, max: 3 }), (digits, decimals) => {
      const text = (digits / 10 ** decimals).toFixed(decimals);
      const [up, down] = [
        Number(converted(text, mm, 'in', 'up')) * 25.4,
        Number(converted(text, mm, 'in', 'down')) * 25.4,
      ];
      expect(up).toBeGreaterThanOrEqual(Number(text) - 1e-6);
      expect(down).toBeLessThanOrEqual(Number(text) + 1e-6);
    }),
  );
});
