import { describe, expect, test } from 'vitest';
import { statementsOf } from '../../../src/notes/draft.ts';
import { readSource } from '../../../src/notes/read/read-source.ts';

const said = (line: string): string[] =>
  statementsOf(readSource({ name: 'notes.md', text: `- ${line}\n` }), {}).flatMap((one) => [
    ...one.said.keys(),
  ]);

describe('what a line says is told from its words', () => {
  test.each([
    ['the oil seal is leaking', 'fault'],
    ['two studs are stripped', 'fault'],
    ['horn does not work', 'fault'],
    ['left rear brake cylinder seized solid', 'fault'],
    ['ordered two oil seals, 8.40 EUR with post', 'part'],
    ['need a new gasket for the tap', 'part'],
    ['bought a fan belt for 12.50 GBP', 'cost'],
    ['postage was 6.90 EUR', 'cost'],
    ['thanks to Berta for the loan of the puller', 'thanks'],
    ['Ruben lent me his compressor', 'thanks'],
    ['the wiper can wait till spring', 'put off'],
  ])('%s: %s', (line, saying) => expect(said(line)).toContain(saying));
  test.each([
    ['no play in the bearing at all', 'fault'],
    ['cleaned the plugs and set the gap', 'fault'],
    ['horn works now, lamps are fine', 'fault'],
    ['thanks for watching', 'thanks'],
    ['drained the oil into the pan', 'part'],
    ['bore is 54.02 mm at the top', 'cost'],
  ])('%s: no %s', (line, saying) => expect(said(line)).not.toContain(saying));
});

test('a finding over two lines names the one that its words stand on', () => {
  const text =
    'The drum came away at last, and behind all that old dust and grease\nboth of the wheel cylinders were seized solid.\n';
  const [one] = statementsOf(readSource({ name: 'notes.md', text }), {});
  expect(one?.saidOn.get('fault')).toBe(2);
});
