import fc from 'fast-check';
import { expect, test } from 'vitest';
import type { Field } from '../../../src/calc/contract.ts';
import { readAddress } from '../../../src/components/calculator/read-address.ts';
import { writeAddress } from '../../../src/components/calculator/write-address.ts';

const fields: readonly Field[] = [
  {
    kind: 'choice',
    name: 'known',
    label: 'Known',
    start: 'a',
    options: [
      { value: 'a', label: 'A' },
      { value: 'b', label: 'B' },
    ],
  },
  { kind: 'figure', name: 'stroke', label: 'Stroke', quantity: 'length', units: ['mm', 'in'] },
  { kind: 'text', name: 'tyre', label: 'Tyre' },
  { kind: 'table', name: 'curve', label: 'Curve', columns: [], maxRows: 9 },
];

test('a set-up stands in the address as it was typed', () => {
  const texts = { known: 'b', stroke: '58 ± 0,05 mm', tyre: '4.00-8', curve: '1000 12\n3000 24' };
  const query = writeAddress(fields, texts);
  expect(query).toBe('known=b&stroke=58~0,05+mm&tyre=4.00-8&curve=1000+12;3000+24');
  expect(readAddress(fields, `?${query}`)).toEqual({ texts, unknown: [] });
});

test('any typed text comes back but for its spaces', () => {
  const plain = (text: string) => text.replace(/\s+/g, '');
  fc.assert(
    fc.property(fc.string({ unit: 'grapheme' }), fc.string(), (stroke, tyre) => {
      const text = stroke.replace(/~/g, '');
      const read = readAddress(fields, writeAddress(fields, { stroke: text, tyre }));
      expect(plain(read.texts['stroke'] ?? '')).toBe(plain(text));
      expect(plain(read.texts['tyre'] ?? '')).toBe(plain(tyre));
    }),
  );
});

test('no query makes it throw, and nothing but known fields is taken', () => {
  fc.assert(
    fc.property(fc.string({ unit: 'binary' }), (query) => {
      for (const name of Object.keys(readAddress(fields, query).texts))
        expect(fields.some((one) => one.name === name)).toBe(true);
    }),
  );
});

test('unknown names, unknown options, a second value and an endless one are left out and named', () => {
  const query = `known=zebra&stroke=1&stroke=2&colour=red&__proto__=x&tyre=${'9'.repeat(3000)}`;
  expect(readAddress(fields, query)).toEqual({
    texts: { stroke: '1' },
    unknown: ['known', 'stroke', 'colour', '__proto__', 'tyre'],
  });
});
