import fc from 'fast-check';
import { expect, test } from 'vitest';
import { MAX_FILE, readOwnMachine, writeOwnMachine } from '../../../src/components/calculator/own-machine.ts';

test('what is kept comes back as it was', () => {
  const machine = { 'engine.stroke': '61,5 mm', 'tyres.rear': '4.00-8', 'fuel.ratio': '25:1' };
  expect(readOwnMachine(writeOwnMachine(machine))).toEqual({ machine, leftOut: 0 });
});

test('two files of the same machine are the same, whatever was kept first', () => {
  expect(writeOwnMachine({ 'b.b': '1', 'a.a': '2' })).toBe(writeOwnMachine({ 'a.a': '2', 'b.b': '1' }));
});

test.each(['', 'null', '3', '[]', '{}', '{"figures":3}', '{"figures":[1]}', '{', 'x'.repeat(MAX_FILE + 1)])(
  'a file that is none is refused: %.20s',
  (file) => {
    expect(readOwnMachine(file)?.machine ?? {}).toEqual({});
  },
);

test('figures without a proper place or text are left out and counted', () => {
  const figures = {
    'engine.bore': 7,
    'a b': '1',
    bore: '1',
    '__proto__.x': '1',
    'engine.rod': '',
    'x.y': 'a\u0007b',
    'engine.stroke': '58 mm',
  };
  expect(readOwnMachine(JSON.stringify({ figures }))).toEqual({
    machine: { 'engine.stroke': '58 mm' },
    leftOut: 6,
  });
});

test('a hundred figures are kept at most', () => {
  const figures = Object.fromEntries(Array.from({ length: 150 }, (_, at) => [`engine.v${at}`, '1']));
  const read = readOwnMachine(JSON.stringify({ figures }));
  expect(Object.keys(read?.machine ?? {})).toHaveLength(100);
  expect(read?.leftOut).toBe(50);
});

test('no file makes it throw', () => {
  fc.assert(fc.property(fc.json(), (file) => void readOwnMachine(`{"figures":${file}}`)));
});
