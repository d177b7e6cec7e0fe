import fc from 'fast-check';
import { expect, test } from 'vitest';
import { readLiteral } from '../../../src/record/chapter/literal.ts';

test('Lists, reasons and figures in braces are read as data', () => {
  expect(readLiteral('["a", \'b\', `c`,]')).toEqual({ value: ['a', 'b', 'c'] });
  expect(readLiteral('{"x": "why", y: 2, }')).toEqual({ value: { x: 'why', y: 2 } });
  expect(readLiteral(' -1.5 ')).toEqual({ value: -1.5 });
  expect(readLiteral('"Umlaut \\u00fc and \\"quotes\\""')).toEqual({ value: 'Umlaut ü and "quotes"' });
});

test('Names, calls, operators and templates are code and give nothing', () => {
  for (const code of [
    'tools',
    'f("a")',
    '1 + 2',
    '[a]',
    '`$' + '{x}`',
    '["a"].concat',
    '{...x}',
    '[1',
    '"open',
    '() => 1',
    'new Date()',
    '',
  ])
    expect(readLiteral(code), code).toBeUndefined();
});

test('A key named __proto__ stays a key', () => {
  const read = readLiteral('{"__proto__": {"polluted": true}}');
  expect(({} as Record<string, unknown>)['polluted']).toBeUndefined();
  expect(Object.keys(read?.value as object)).toEqual(['__proto__']);
});

test('All that JSON can say is read as JSON reads it', () => {
  fc.assert(
    fc.property(fc.jsonValue(), (value) => {
      expect(readLiteral(JSON.stringify(value))).toEqual({ value: JSON.parse(JSON.stringify(value)) });
    }),
  );
});
