import { describe, expect, test } from 'vitest';
import { filled, firstFilled } from '../../src/calc/holes.ts';

const plain = (text: string) => text.replace(/[\u00a0\u202f]/g, ' ');
const said = (text: string, figures: Parameters<typeof filled>[1]) => plain(filled(text, figures));

describe('a text with holes', () => {
  test('prints a figure with its doubt, without it, without its unit, to fixed decimals', () => {
    const figures = { x: { si: 0.0034, pm: 0.00005 } };
    expect(said('{x|length|mm|3}', figures)).toBe('3.40 ± 0.05 mm');
    expect(said('{x|length|mm|3|plain}', figures)).toBe('3.40 mm');
    expect(said('{x|length|mm|3|bare}', { x: 0.0034 })).toBe('3.40');
    expect(said('{x|length|mm|3.1}', { x: 0.0034 })).toBe('3.4 mm');
  });

  test('is left out where a figure is missing or is none', () => {
    expect(said('It is {x|length|mm|3}.', {})).toBe('');
    expect(said('It is {x|length|mm|3}.', { x: Number.NaN })).toBe('');
    expect(said('It is {x|length|mm|3}.', { x: 0 })).toBe('It is 0 mm.');
    expect(said('{~x|length|mm|3}', {})).toBe('—');
  });

  test('asks for what must be there, must not, or must be one word', () => {
    expect(said('{?x}yes', { x: 1 })).toBe('yes');
    expect(said('{?x}yes', { x: 0 })).toBe('');
    expect(said('{?!x}no', {})).toBe('no');
    expect(said('{?known=oil}by oil', { known: 'oil' })).toBe('by oil');
    expect(said('{?known=oil}by oil', { known: 'fuel' })).toBe('');
    expect(said('{?!known=oil}by fuel', { known: 'fuel' })).toBe('by fuel');
  });

  test('takes the figure of its row’s number', () =>
    expect(said('{top_#|speed|km/h|3}', { row: 1, top_0: 1, top_1: 10 })).toBe('36.0 km/h'));

  test('sets a figure below nothing in brackets beside another, and the minus as an operator', () => {
    expect(filled('{x|length|mm|3|term}', { x: -0.001 })).toBe(
      '<mrow><mo>(</mo><mrow><mo>−</mo><mn>1.00</mn><mtext>\u00a0mm</mtext></mrow><mo>)</mo></mrow>',
    );
    expect(filled('{x|count|n|3|math}', { x: 2 })).toBe('<mn>2.00</mn>');
  });

  test('takes a word as it is, made safe for where it stands, and fills nothing inside it', () => {
    const word = '<b>{x}</b>';
    expect(filled('“{word}”', { word, x: 1 }, (one) => one.replaceAll('<', '&lt;'))).toBe(
      '“&lt;b>{x}&lt;/b>”',
    );
  });

  test('of several the first stands that finds all', () =>
    expect(firstFilled(['between {low} and {high}', '{low} or more'], { low: '5' })).toBe('5 or more'));
});
