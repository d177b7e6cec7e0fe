import { all, create } from 'mathjs';
import { describe, expect, test } from 'vitest';
import { parseSum } from '../../../src/record/sum/parse-sum.ts';
import { solveSum } from '../../../src/record/sum/solve-sum.ts';
import { SumProblem } from '../../../src/record/sum/sum-node.ts';
import type { MachineValue } from '../../../src/record/types.ts';

const value = (path: string, text: string, unit: string, pm?: string): [string, MachineValue] => [
  path,
  {
    path,
    label: path,
    now: { text, unit, ...(pm === undefined ? {} : { pm }) },
    place: { file: 'content/machine.yaml', line: 1, column: 1 },
  },
];
const machine = new Map([
  value('engine.bore', '54', 'mm'),
  value('engine.stroke', '58', 'mm'),
  value('engine.rod', '115', 'mm', '0.1'),
  value('engine.cylinders', '2', ''),
  value('flywheel.diameter', '160', 'mm'),
  value('ignition.advance', '24', 'deg'),
  value('fuel.use', '6.5', 'L/100km'),
  value('cooling.opens', '82', 'degC'),
]);
const around = {
  machine,
  language: 'en-GB',
  missing: (path: string) => `There is no machine value "machine.${path}".`,
};
const solved = (of: string, to: string) => solveSum(of, to, around).text.replaceAll('\u00a0', ' ');
const refused = (of: string, to: string) => {
  try {
    solveSum(of, to, around);
  } catch (error) {
    if (error instanceof SumProblem) return error.message;
    throw error;
  }
  throw new Error(`${of} was not refused`);
};

describe('Sums worked by hand', () => {
  test('Two cylinders of 54 by 58 mm hold 265.7 cm³ (π/4 · 5.4² · 5.8 · 2 = 265.66)', () =>
    expect(
      solved('machine.engine.cylinders * pi / 4 * machine.engine.bore^2 * machine.engine.stroke', 'cm^3'),
    ).toBe('265.7 cm³'));
  test('24 degrees lie 33.51 mm along a rim of 160 mm (π · 160 · 24 / 360)', () => {
    expect(solved('machine.flywheel.diameter * pi * 24 / 360', 'mm')).toBe('33.51 mm');
    expect(solved('machine.flywheel.diameter * pi * machine.ignition.advance / (360 deg)', 'mm')).toBe(
      '33.51 mm',
    );
  });
  test('Five litres at 25:1 take 200 mL of oil', () => expect(solved('5 L / 25', 'mL')).toBe('200 mL'));
  test('2.4 L over 34 km are 7.1 L for 100 km', () =>
    expect(solved('2.4 L / 34 km', 'L/(100 km)')).toBe('7.1 L/100 km'));
  test('A figure and its unit belong together before any sign: 1 L / 100 km', () =>
    expect(solved('machine.fuel.use * 200 km / (1 L / 1 L)', 'L')).toBe('13.0 L'));
  test('An inch is an inch and no operator', () => expect(solved('8 in + 2 * 4 in', 'mm')).toBe('406.4 mm'));
});

describe('Digits that the figures put in cannot vouch for are not printed', () => {
  test('54.12 − 54.08 is 0.04', () => expect(solved('54.12 mm - 54.08 mm', 'mm')).toBe('0.04 mm'));
  test('54.12 − 54.02 is 0.10, its nought being known', () =>
    expect(solved('54.12 mm - 54.02 mm', 'mm')).toBe('0.10 mm'));
  test('π · (54.12 − 54.06) is 0.19, not 0.1885', () =>
    expect(solved('pi * (54.12 mm - 54.06 mm)', 'mm')).toBe('0.19 mm'));
  test('A figure that stands twice is one figure: 5 degrees of crank move this piston 0.1384 mm', () =>
    expect(
      solved(
        'machine.engine.stroke / 2 * (1 - cos(5 deg)) + machine.engine.rod - sqrt(machine.engine.rod^2 - (machine.engine.stroke / 2 * sin(5 deg))^2)',
        'mm',
      ),
    ).toBe('0.1381 mm'));
});

describe('Wrong units stop a sum', () => {
  test.each([
    ['machine.engine.bore + 3 L', 'mm', /A length and a volume cannot be added/],
    ['machine.engine.bore * 2', 'L', /is a length, not a volume/],
    ['machine.engine.bore * machine.ignition.advance', 'mm', /Angles are no bare numbers/],
    ['sin(24)', '1', /sin wants an angle/],
    ['machine.cooling.opens * 2', 'K', /no plain multiple/],
    ['machine.engine.bro', 'mm', /There is no machine value/],
    ['2 ^ machine.engine.bore', '1', /A power must be a bare number/],
    ['sqrt(3 mm - 5 mm)', 'mm', /root of a negative/],
    ['1 / 0', '1', /divided by 0/],
  ])('%s to %s', (of, to, words) => expect(refused(of, to)).toMatch(words));
});

describe('Nothing but sums can be written', () => {
  test.each([
    'ones(1e4, 1e4)',
    '1:1e7',
    'x = 3',
    'f(x) = x',
    '[1, 2]',
    '"text"',
    'constructor',
    '__proto__',
    'import("fs")',
    'machine',
    'machine.__proto__.x',
    '1; 2',
    'a => 1',
    '5!',
    'sqrt 4',
    '(((',
    '9^9^9',
    'process.exit()',
    'machine.engine.bore.constructor',
    '',
  ])('%s', (of) => expect(refused(of, '1')).not.toBe(''));
  test('Deep brackets and long texts are refused, not run', () => {
    expect(refused(`${'('.repeat(300)}1${')'.repeat(90)}`, '1')).toMatch(/too deep/);
    expect(refused(`${'-'.repeat(390)}1`, '1')).toMatch(/too many signs/);
    expect(refused('1+'.repeat(300), '1')).toMatch(/at most/);
    expect(refused('1+'.repeat(5000), '1')).toMatch(/10000 characters; 400/);
    expect(refused(`1${'^1'.repeat(190)}`, '1')).toMatch(/too many signs/);
    expect(solved(`1${' + 1'.repeat(99)}`, '1')).toBe('100');
  });
  test.each([
    ['1:1e7', 0, /A range cannot stand in a sum/],
    ['x = 3', 0, /An assignment cannot/],
    ['f(x) = x', 0, /A function of one’s own cannot/],
    ['2 * [1, 2]', 4, /A list cannot/],
    ['{a: 1}', 0, /An object cannot/],
    ['"text"', 0, /This cannot stand in a sum/],
    ['true', 0, /This cannot stand in a sum/],
    ['1 ? 2 : 3', 0, /A condition cannot/],
    ['1 < 2 < 3', 0, /A comparison cannot/],
    ['1; 2', 0, /A second sum cannot/],
    ['3 + constructor', 4, /"constructor" is no unit, function or machine value/],
    ['__proto__', 0, /"__proto__" is no unit/],
    ['ones(1e4, 1e4)', 0, /"ones" is no unit, function/],
    ['1e4', 0, /"1e4" is no plain figure/],
    ['.5', 0, /"\.5" is no plain figure/],
    ['0x1F', 0, /"0x1F" is no plain figure/],
    ['3 + 5!', 5, /"!" cannot stand here/],
    ['7 mod 2', 2, /"mod" cannot stand here/],
    ['+3', 0, /"\+" cannot stand here/],
    ['3,4 mm', 1, /A comma cannot stand here/],
    ['sqrt(3,4)', 0, /sqrt works on one value and gets 2/],
    ['2 * sqrt 4', 4, /"sqrt" needs brackets/],
    ['2 (3 + 4)', 2, /needs a sign between two values/],
    ['3 mm (4)', 5, /"\(" cannot stand here/],
    ['3 # hidden', 2, /"#" cannot stand in a sum/],
    ['3 mm^-1', 2, /power of a unit is a whole number/],
    ['machine["engine"]', 0, /This cannot stand in a sum/],
  ])('%s is refused at %i', (of, at, message) =>
    expect(() => parseSum(of)).toThrow(
      expect.objectContaining({ at, message: expect.stringMatching(message) }),
    ),
  );
});

describe('A figure keeps its unit, its digits and its place', () => {
  test.each([
    ['115 mm', 'mm', '115 mm'],
    ['24 deg', 'deg', '24°'],
    ['12 mm^2', 'mm^2', '12 mm²'],
    ['12 mm2', 'mm^2', '12 mm²'],
    ['24°', 'deg', '24°'],
    ['5 % * 200 mL', 'mL', '10 mL'],
    ['1 / 2 mm * 4 mm^2', 'mm', '2 mm'],
    ['-3 mm + 5 mm', 'mm', '2 mm'],
    ['3 × 4 mm − 2 mm', 'mm', '10 mm'],
    ['54.10 mm - 54.00 mm', 'mm', '0.10 mm'],
    ['2\n* 3 mm', 'mm', '6 mm'],
    ['2 machine.engine.bore^2', 'mm^2', '5832 mm²'],
    ['2 pi', '1', '6.283'],
    ['5 kg * 9.80665 m/s^2', 'N', '49.03 N'],
  ])('%s in %s is %s', (of, to, said) => expect(solved(of, to)).toBe(said));
  test('Keys with hyphens and digits name machine values; a problem stands at its own one', () => {
    const tree = parseSum('machine.engine.rod-length + machine.gears.2nd');
    expect(tree).toMatchObject({
      left: { k: 'machine', path: 'engine.rod-length', at: 0 },
      right: { k: 'machine', path: 'gears.2nd', at: 28 },
    });
  });
});

test('A problem names the place in the sum', () => {
  expect(() => parseSum('3 mm + 4 fathoms')).toThrow(expect.objectContaining({ at: 9 }));
  expect(() => parseSum('2 * (3 + 4')).toThrow(expect.objectContaining({ at: 10 }));
});

/**
 * A second opinion on values and units: sums are read with mathjs 15.2 here and there, but this program works them out
 * itself, with its own units. It says nothing about the reading, which the sums worked by hand check.
 */
test('Values agree with those of an independent library', () => {
  const math = create(all ?? {}, {});
  for (const [of, to] of [
    ['3 mm * 4 cm / 2 m', 'mm'],
    ['(3 + 4) * 2^3 - 5 / 4', '1'],
    ['-2^2 + 3 * -4', '1'],
    ['2^3^2', '1'],
    ['sqrt((3 cm)^2 + (4 cm)^2)', 'mm'],
    ['22 N * 0.3 m', 'N m'],
    ['12 V / (3 ohm)', 'A'],
    ['35 W / (12 V)', 'A'],
    ['asin(0.5)', 'deg'],
    ['atan(1)', 'deg'],
    ['tan(30 deg) * 3 m', 'cm'],
    ['5 kg * 9.80665 m/s^2', 'N'],
    ['100 km / (2 h)', 'km/h'],
    ['4.2 m * 7.98 ohm / (1000 m)', 'ohm'],
    ['1 / 3 + 1 / 7', '1'],
    ['14 psi', 'kPa'],
  ] as const) {
    // It gives arc functions as bare numbers.
    const expression = of.startsWith('a') ? `(${of}) rad` : of;
    const theirs = math.evaluate(to === '1' ? of : `number(${expression}, ${to})`);
    const ours = Number(
      solved(of, to)
        .replace(/[^\d.−-].*$/, '')
        .replace('−', '-'),
    );
    expect(Math.abs(ours - theirs), of).toBeLessThanOrEqual(Math.abs(theirs) * 0.01 + 0.05);
  }
});

test('The formula is set as MathML with its figures put in', () => {
  const { mathml } = solveSum('machine.flywheel.diameter * pi / 2', 'mm', around);
  expect(mathml).toContain('<mn>160</mn>');
  expect(mathml).toContain('<mn>251.3</mn>');
  expect(mathml).toMatch(/^<math>.*<\/math>$/);
  expect(mathml).not.toContain('machine');
});
