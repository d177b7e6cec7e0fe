import { describe, expect, test } from 'vitest';
import { formula } from '../../src/calc/formula.ts';
import type { Symbols } from '../../src/calc/says.ts';
import { termMathml } from '../../src/calc/working.ts';

const symbols: Symbols = {
  x: ['x', 'length', 'mm'],
  r: ['r', 'length', 'mm'],
  l: ['l', 'length', 'mm'],
  α_1: ['a', 'angle', 'deg'],
  g: [9.80665, 'acceleration', 'm/s2'],
  '#n': ['n', '{n|rotation|rpm|4|bare}/min'],
};
const shown = (text: string) =>
  termMathml(formula(text, symbols).formula, false)
    .replace(/<[^>]*>/g, '')
    .replace(/\u2062/g, ' ');
const putIn = (text: string) => termMathml(formula(text, symbols).formula, true);

describe('a formula as it is declared', () => {
  test.each([
    ['x = r + l - r cos(α_1)', 'r+l−r cos\u2061(α1)'],
    ['x = (r + l)^2', '(r+l)2'],
    ['x = r (l - r)', 'r (l−r)'],
    ['x = √(l^2 - (r sin(α_1))^2)', '√(l2−(r sin\u2061(α1))2)'],
    ['x = l - (r - x)', 'l−(r−x)'],
  ])('%s', (text, expected) => expect(shown(text)).toBe(expected));

  test('a blank binds looser than a stroke: π/4 r^2 is a quarter of π times r²', () => {
    const { formula: term } = formula('x = π/4 r^2', symbols);
    expect(term).toMatchObject({ op: '*', args: [{ op: '/' }, { op: '^' }] });
  });

  test('figures stand in holes, a constant is printed, a number of its own is written as said', () => {
    expect(putIn('x = r g')).toContain('{r|length|mm|4|math}');
    expect(putIn('x = r g')).toContain('<mn>9.807</mn>');
    expect(putIn('x = #n r')).toContain('<mn>{n|rotation|rpm|4|bare}/min</mn>');
  });

  test.each(['x = r +', 'x = q', 'x = r ! l', 'x = (r', '= r', 'x = r)'])('"%s" is refused', (text) =>
    expect(() => formula(text, symbols)).toThrow(RangeError),
  );
});
