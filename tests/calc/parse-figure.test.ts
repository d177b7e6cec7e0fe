import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { parseFigure } from '../../src/calc/parse-figure.ts';
import type { Quantity, UnitId } from '../../src/calc/units.ts';

const read = (text: string, quantity: Quantity = 'length', unit: UnitId = 'mm') => {
  const reading = parseFigure(text, quantity, unit);
  if (!reading.ok) throw new Error(reading.message);
  return reading;
};
const refused = (text: string, quantity: Quantity = 'length', unit: UnitId = 'mm') => {
  const reading = parseFigure(text, quantity, unit);
  return reading.ok ? `read as ${reading.figure.si}` : reading.message;
};

describe('a figure is read as a person types it', () => {
  test.each([
    ['0.157 in', 0.0039878],
    ['0,157 in', 0.0039878],
    ['.157in', 0.0039878],
    ['4', 0.004],
    ['4 mm', 0.004],
    ['-4 mm', -0.004],
    ['−4 mm', -0.004],
    ['3/8 in', 0.009525],
    ['3/8″', 0.009525],
    ['1 3/8 in', 0.034925],
    ['1-3/8"', 0.034925],
    ['1⅜ in', 0.034925],
    ['½ in', 0.0127],
    ['5 ft 3 in', 1.6002],
    ['5′ 3″', 1.6002],
    ["5' 3''", 1.6002],
    ['1 234 mm', 1.234],
    ['1 234,5 mm', 1.2345],
    ['1,234.5 mm', 1.2345],
    ['1.234,5 mm', 1.2345],
    ['1.234 in', 0.0313436],
    ['12,5 mm', 0.0125],
    ['157 thou', 0.0039878],
    ['3 inches', 0.0762],
    ['2 metres', 2],
  ])('%s', (text, si) => expect(read(text).figure.si).toBeCloseTo(si, 12));

  test.each<[string, Quantity, UnitId, number]>([
    ['24°', 'angle', 'deg', 24],
    ['24 degrees', 'angle', 'deg', 24],
    ['24° 30′', 'angle', 'deg', 24.5],
    ['25:1', 'mixture', ':1', 0.04],
    ['1:25', 'mixture', ':1', 0.04],
    ['25', 'mixture', ':1', 0.04],
    ['4 %', 'mixture', ':1', 0.04],
    ['1 in 7', 'slope', '%', 1 / 7],
    ['14 %', 'slope', '%', 0.14],
    ['45 deg', 'slope', '%', 1],
    ['35/11', 'ratio', ':1', 35 / 11],
    ['3.2:1', 'ratio', ':1', 3.2],
    ['35/11 x 28/15', 'ratio', ':1', (35 / 11) * (28 / 15)],
    ['3000 rev/min', 'rotation', 'rpm', 3000],
    ['15 °C', 'temperature', 'degC', 15],
    ['5 l', 'volume', 'L', 0.005],
    ['5 litres', 'volume', 'L', 0.005],
    ['2 US gallons', 'volume', 'L', 7.570823568e-3],
    ['2 gal US', 'volume', 'L', 7.570823568e-3],
    ['1 imperial pint', 'volume', 'L', 5.6826125e-4],
    ['8 imp. fl. oz', 'volume', 'mL', 2.273045e-4],
    ['19 N·m', 'torque', 'Nm', 19],
    ['14 lbf ft', 'torque', 'Nm', 18.98145],
    ['9 hp', 'power', 'kW', 6711.2988],
    ['40 kph', 'speed', 'km/h', 40 / 3.6],
  ])('%s of %s', (text, quantity, unit, wanted) => {
    const { figure, unit: got } = read(text, quantity, unit);
    const si =
      quantity === 'angle'
        ? (figure.si * 180) / Math.PI
        : quantity === 'rotation'
          ? (figure.si * 30) / Math.PI
          : quantity === 'temperature'
            ? figure.si - 273.15
            : figure.si;
    expect(si, got).toBeCloseTo(wanted, quantity === 'volume' ? 10 : 4);
  });

  test.each<[string, number, number]>([
    ['3.4 ± 0.05 mm', 0.0034, 0.00005],
    ['3.4 mm ± 0.05 mm', 0.0034, 0.00005],
    ['3,4 +/- 0,05 mm', 0.0034, 0.00005],
    ['3.4 +- 0.05', 0.0034, 0.00005],
    ['120 mm ± 5 %', 0.12, 0.006],
    ['1 in ± 1 mm', 0.0254, 0.001],
  ])('%s carries its ±', (text, si, pm) => {
    const { figure } = read(text);
    expect(figure.si).toBeCloseTo(si, 12);
    expect(figure.pm).toBeCloseTo(pm, 12);
  });

  test('a ± on a ratio is turned into oil for fuel: 25:1 ± 1 is 4.00 ± 0.16 %', () => {
    expect(read('25:1 ± 1', 'mixture', ':1').figure.pm).toBeCloseTo(0.0016026, 6);
  });
});

describe('what has two readings is refused, never guessed', () => {
  test('1,234 in may be 1.234 or 1234', () =>
    expect(refused('1,234 in')).toBe('“1,234” may be 1.234 or 1234. Write one of these.'));
  test('a gallon asks which', () =>
    expect(refused('2 gal', 'volume', 'L')).toBe(
      '“gal” may be US or imperial, which differ by a fifth or less. Write US gal or imp gal.',
    ));
  test('a pint, a fluid ounce and an ounce ask which', () => {
    expect(refused('1 pint', 'volume', 'L')).toContain('Write US pt or imp pt.');
    expect(refused('6 fl oz', 'volume', 'mL')).toContain('Write US fl oz or imp fl oz.');
    expect(refused('6 oz', 'volume', 'mL')).toContain('Write US fl oz or imp fl oz.');
  });
  test('mpg asks which', () => expect(refused('40 mpg', 'use', 'L/100km')).toContain('US mpg or imp mpg'));
});

describe('what is no figure is refused in plain words', () => {
  test.each([
    '',
    'abc',
    '12,5o',
    '1.2.3',
    '3 ± ',
    '3 ± 1 ± 1',
    '1e999',
    '--3',
    '3/0 in',
    '3 mm mm',
    '± 3',
    ',',
  ])('“%s”', (text) => {
    const message = refused(text);
    expect(message).not.toContain('read as');
    expect(message).toMatch(/^[“A-Z].*\.$/);
    expect(message).not.toMatch(/NaN|Infinity|undefined/);
  });
  test('a unit of another quantity is named', () =>
    expect(refused('24 deg')).toBe('“deg” is no unit of length. Write the figure in mm, cm, m, km.'));
  test('0:1 is no mixture', () => expect(refused('0:1', 'mixture', ':1')).not.toContain('read as'));
  test('a ± as large as a ratio itself is refused', () =>
    expect(refused('5:1 ± 5', 'mixture', ':1')).toContain('as large as the figure'));
});

test('no text whatever gives NaN, Infinity or an exception', () => {
  const quantities: [Quantity, UnitId][] = [
    ['length', 'mm'],
    ['volume', 'L'],
    ['mixture', ':1'],
    ['slope', '%'],
    ['ratio', ':1'],
    ['use', 'L/100km'],
    ['temperature', 'degC'],
  ];
  const alphabet = [...'0123456789.,:/ ±+-%′″x', 'mm', 'in', 'gal', 'US ', '1 in ', 'ft'];
  const text = fc.oneof(
    fc.string(),
    fc.array(fc.constantFrom(...alphabet), { maxLength: 12 }).map((a) => a.join('')),
  );
  fc.assert(
    fc.property(text, fc.constantFrom(...quantities), (t, [quantity, unit]) => {
      const reading = parseFigure(t, quantity, unit);
      if (!reading.ok) return !/NaN|Infinity|undefined/.test(reading.message.replace(t.trim(), ''));
      return Number.isFinite(reading.figure.si) && Number.isFinite(reading.figure.pm ?? 0);
    }),
    { numRuns: 5000 },
  );
});
