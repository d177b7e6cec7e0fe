import { describe, expect, test } from 'vitest';
import type { OutputField } from '../../../src/calc/contract.ts';
import { calculators } from '../../../src/calc/index.ts';
import { printFigure } from '../../../src/calc/print-figure.ts';
import { fillTexts, readFilled } from '../../../src/calc/read-values.ts';
import { fieldsFirst, unitsFirst, withOwnUnits } from '../../../src/components/calculator/units-first.ts';

const output = (units: OutputField['units'], decimals?: number): OutputField => ({
  name: 'a',
  label: 'A',
  quantity: 'length',
  units,
  figures: 3,
  ...(decimals === undefined ? {} : { decimals }),
});

describe('units of a series that puts imperial ones first', () => {
  test.each<[OutputField['units'], OutputField['units']]>([
    [
      ['mm', 'in'],
      ['in', 'mm'],
    ],
    [
      ['km/h', 'mph'],
      ['mph', 'km/h'],
    ],
    [
      ['L', 'US qt', 'imp pt'],
      ['US qt', 'imp pt', 'L'],
    ],
    [
      ['Nm', 'kgf m', 'lbf ft'],
      ['lbf ft', 'Nm', 'kgf m'],
    ],
    [
      ['cm3', 'in3'],
      ['in3', 'cm3'],
    ],
    [
      ['%', '1 in'],
      ['%', '1 in'],
    ],
    [['deg'], ['deg']],
    [
      ['mL/L', 'US fl oz/US gal'],
      ['US fl oz/US gal', 'mL/L'],
    ],
  ])('%j are shown as %j', (units, shown) =>
    expect(unitsFirst([output(units)], 'imperial')[0]?.units).toEqual(shown),
  );
  test('decimals that were fixed for millimetres do not hold for inches', () =>
    expect(unitsFirst([output(['mm', 'in'], 2)], 'imperial')[0]).not.toHaveProperty('decimals'));
  test('a metric series keeps the calculator’s order', () =>
    expect(unitsFirst([output(['mm', 'in'], 2)], 'metric')[0]).toEqual(output(['mm', 'in'], 2)));
});

describe('boxes of a series that puts imperial ones first', () => {
  test.each(calculators.map((one) => [one.title, one] as const))(
    '%s offers them first, and reads the log’s figures as before',
    (_title, { fields }) => {
      const { texts } = fillTexts({ fields }, {});
      const turned = fieldsFirst(fields, 'imperial');
      expect(readFilled({ fields: turned }, withOwnUnits(fields, texts))).toEqual(
        readFilled({ fields }, texts),
      );
      for (const [i, field] of turned.entries()) {
        const declared = fields[i];
        if (field.kind !== 'figure' || declared?.kind !== 'figure') continue;
        expect([...field.units].sort()).toEqual([...declared.units].sort());
        if (declared.units.includes('in') && declared.quantity === 'length')
          expect(['in', 'thou', 'ft', 'yd', 'mi']).toContain(field.units[0]);
      }
    },
  );

  test('a metric series keeps the boxes as the calculator declares them', () => {
    const fields = calculators[0]?.fields ?? [];
    expect(fieldsFirst(fields, 'metric')).toBe(fields);
  });
});

describe('a figure with its ± shows no digits that nobody declared', () => {
  const plain = (text: string) => text.replaceAll('\u00a0', ' ');
  test.each([
    [3.1137e-3, 5e-7, 'mm', '3.1137 ± 0.0005 mm'],
    [3.1137e-3, 5.3e-7, 'in', '0.12259 ± 0.00002 in'],
    [4.01e-3, 5e-5, 'mm', '4.01 ± 0.05 mm'],
    [4.01e-3, 1.2e-4, 'mm', '4.01 ± 0.12 mm'],
    [3.1137e-3, 1e-9, 'mm', '3.11 mm'],
  ] as const)('%d m ± %d m in %s is %s', (si, pm, unit, text) =>
    expect(plain(printFigure({ si, pm }, 'length', unit, 3))).toBe(text),
  );
});
