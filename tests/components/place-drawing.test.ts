import { describe, expect, test } from 'vitest';
import { placeDrawing, shapeNamed } from '../../src/components/state/place-drawing.ts';

const drawn = (item: string, positions: (string | undefined)[]) =>
  placeDrawing(
    item,
    positions.map((position) => (position === undefined ? {} : { position })),
  );
const words = (svg = '') => [...svg.matchAll(/<text[^>]*>([^<]*)</g)].map(([, text]) => text);

describe('Where readings were taken', () => {
  const heights = ['A', 'B', 'C', 'D'].flatMap((one) => [`${one}, along the pin`, `${one}, across the pin`]);
  test('a bore is drawn with each height once and its two directions', () => {
    const bore = drawn('Bore, number one', heights);
    expect(bore?.name).toBe('bore');
    expect(words(bore?.svg)).toEqual(['A', 'B', 'C', 'D', '↔ along the pin', '↕ across the pin']);
  });
  test('a drum with its numbered diameters and depths', () => {
    const drum = drawn('Brake drum, front', [
      '1, outer depth',
      '2, outer depth',
      '1, inner depth',
      '2, inner depth',
    ]);
    expect(drum?.name).toBe('drum');
    expect(words(drum?.svg)).toEqual(['1', '2', 'outer depth', 'inner depth']);
  });
  test('a journal by its stations', () => {
    expect(drawn('Main journal', ['front, up and down', 'rear, up and down'])?.name).toBe('shaft');
    expect(shapeNamed('King pin')).toBe('shaft');
  });
  test('anything else by its places, in the order measured', () => {
    const gap = drawn('Ring gap, number one', ['top ring', 'second ring']);
    expect(gap?.name).toBe('places');
    expect(words(gap?.svg)).toEqual(['top ring', 'second ring']);
  });
  test('one place, or none, is not drawn', () => {
    expect(drawn('Lining', ['thinnest'])).toBeUndefined();
    expect(drawn('Lining', [undefined, undefined])).toBeUndefined();
  });
  test('what an author wrote stays text, and no figure of the drawing is broken', () => {
    const svg = drawn('<b>', ['<script>alert(1)</script>', 'b&c'])?.svg ?? '';
    expect(svg).not.toMatch(/<script|<b>|NaN|undefined/);
    expect(svg).toContain('b&amp;c');
  });
});
