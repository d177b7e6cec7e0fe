import { describe, expect, test } from 'vitest';
import { airDensity, airPressure } from '../../src/calc/road-load.ts';

/**
 * ISO 2533:1975, Standard atmosphere, Table 5: geometric altitude in m, pressure in hPa. Found, transcribed from the printed
 * standard in a public test file.
 */
const PRESSURE: readonly [number, number][] = [
  [0, 1013.25],
  [500, 954.613],
  [2000, 795.014],
  [3000, 701.211],
];

/** The same table: geometric altitude in m, temperature in K by the standard's 6.5 K a geopotential km, density in kg/m³. */
const DENSITY: readonly [number, number, number][] = [
  [500, 284.9003, 1.16727],
  [1000, 281.651, 1.11166],
  [3000, 268.6592, 0.909254],
];

describe('standard atmosphere (ISO 2533:1975, Table 5, found)', () => {
  test.each(PRESSURE)('%i m: %f hPa', (altitude, hPa) =>
    expect(Math.abs(airPressure(altitude) / 100 - hPa)).toBeLessThan(0.005),
  );
  test.each(DENSITY)('%i m at %f K: %f kg/m³', (altitude, kelvin, density) =>
    expect(Math.abs(airDensity(altitude, kelvin) - density)).toBeLessThan(2e-5),
  );
  test('U.S. Standard Atmosphere, 1976, Table I: 89 876.3 Pa at 1000 m (found)', () =>
    expect(Math.abs(airPressure(1000) - 89876.3)).toBeLessThan(0.5));
});
