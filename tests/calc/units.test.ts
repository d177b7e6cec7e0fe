import { unit } from 'mathjs';
import { describe, expect, test } from 'vitest';
import {
  fromSi,
  type Quantity,
  toSi,
  UNITS,
  type UnitId,
  unitSymbol,
  unitsOf,
} from '../../src/calc/units.ts';

/** Our unit → mathjs's name, where both know it. */
const KNOWN: readonly [Quantity, UnitId, string, string][] = [
  ['length', 'in', 'inch', 'm'],
  ['length', 'thou', 'mil', 'm'],
  ['length', 'ft', 'foot', 'm'],
  ['length', 'yd', 'yard', 'm'],
  ['length', 'mi', 'mile', 'm'],
  ['area', 'in2', 'sqin', 'm2'],
  ['area', 'ft2', 'sqft', 'm2'],
  ['volume', 'L', 'L', 'm3'],
  ['volume', 'cm3', 'cc', 'm3'],
  ['volume', 'in3', 'cuin', 'm3'],
  ['volume', 'US gal', 'gallon', 'm3'],
  ['volume', 'US qt', 'quart', 'm3'],
  ['volume', 'US pt', 'pint', 'm3'],
  ['volume', 'US fl oz', 'fluidounce', 'm3'],
  ['angle', 'deg', 'deg', 'rad'],
  ['time', 'h', 'hour', 's'],
  ['speed', 'km/h', 'km/h', 'm/s'],
  ['speed', 'mph', 'mi/h', 'm/s'],
  ['mass', 'lb', 'lbm', 'kg'],
  ['mass', 'oz', 'oz', 'kg'],
  ['mass', 'st', 'stone', 'kg'],
  ['force', 'lbf', 'lbf', 'N'],
  ['force', 'kgf', 'kgf', 'N'],
  ['torque', 'lbf ft', 'lbf ft', 'N m'],
  ['torque', 'kgf m', 'kgf m', 'N m'],
  ['power', 'hp', 'hp', 'W'],
  ['pressure', 'psi', 'psi', 'Pa'],
  ['pressure', 'bar', 'bar', 'Pa'],
  ['pressure', 'atm', 'atm', 'Pa'],
  ['pressure', 'mmHg', 'mmHg', 'Pa'],
  ['temperature', 'degC', 'degC', 'K'],
  ['temperature', 'degF', 'degF', 'K'],
  ['density', 'lb/ft3', 'lbm/ft^3', 'kg/m^3'],
];

/** Exact by definition. Pint unit registry, default_en.txt, commit 0069630 (read there); NIST Handbook 44, App. C. */
const PUBLISHED: readonly [Quantity, UnitId, number, string][] = [
  ['length', 'mi', 1609.344, 'm'],
  ['volume', 'US gal', 3.785411784e-3, 'm³'],
  ['volume', 'US fl oz', 29.5735295625e-6, 'm³'],
  ['volume', 'imp fl oz', 28.4130625e-6, 'm³'],
  ['volume', 'in3', 16.387064e-6, 'm³'],
  ['force', 'lbf', 4.4482216152605, 'N'],
  ['torque', 'lbf in', 0.1129848290276167, 'N·m'],
  ['torque', 'kgf m', 9.80665, 'N·m'],
  ['power', 'hp', 745.6998715822702, 'W'],
  ['power', 'PS', 735.49875, 'W'],
  ['pressure', 'inHg', 3386.388640341, 'Pa'],
];

describe('unit factors', () => {
  test.each(KNOWN)('%s: %s agrees with the reference library', (quantity, id, theirs, si) => {
    const wanted = unit(20, theirs).toNumber(si);
    // The library keeps hp to seven figures and mmHg to six.
    expect(toSi(20, quantity, id) / wanted).toBeCloseTo(1, 5);
  });

  test.each(PUBLISHED)('one %s unit, %s, is exactly %f %s', (quantity, id, si) => {
    expect(Math.abs(toSi(1, quantity, id) / si - 1)).toBeLessThan(1e-12);
  });

  test('an imperial gallon has 160 fluid ounces of its own, a US gallon 128', () => {
    expect(fromSi(toSi(1, 'volume', 'imp gal'), 'volume', 'imp fl oz')).toBeCloseTo(160, 10);
    expect(fromSi(toSi(1, 'volume', 'US gal'), 'volume', 'US fl oz')).toBeCloseTo(128, 10);
    expect(fromSi(toSi(1, 'volume', 'US fl oz'), 'volume', 'imp fl oz')).toBeCloseTo(1.040842731, 8);
  });

  test('consumption turns round: 5 L/100 km is 56.4962 imperial and 47.0429 US miles a gallon', () => {
    expect(fromSi(toSi(5, 'use', 'L/100km'), 'use', 'imp mpg')).toBeCloseTo(56.4962, 4);
    expect(fromSi(toSi(8, 'use', 'L/100km'), 'use', 'US mpg')).toBeCloseTo(29.4018, 4);
  });

  test('−40 °F is −40 °C, and a step of 180 °F is 100 K', () => {
    expect(fromSi(toSi(-40, 'temperature', 'degF'), 'temperature', 'degC')).toBeCloseTo(-40, 10);
    expect(toSi(180, 'temperature step', 'degF')).toBeCloseTo(100, 10);
  });

  test('every unit goes to SI and back', () => {
    for (const quantity of Object.keys(UNITS) as Quantity[])
      for (const id of unitsOf(quantity))
        expect(fromSi(toSi(7.3, quantity, id), quantity, id)).toBeCloseTo(7.3, 9);
  });

  test('printed as the trade writes them', () => {
    expect(
      ['mm2', 'm3', 'Nm', 'rpm', 'degC', 'kg/m3', 'US fl oz'].map((u) => unitSymbol(u as UnitId)),
    ).toEqual(['mm²', 'm³', 'N·m', 'rev/min', '°C', 'kg/m³', 'US fl oz']);
  });

  test('a unit of another quantity is refused', () => {
    expect(() => toSi(1, 'length', 'kg')).toThrow(RangeError);
  });
});
