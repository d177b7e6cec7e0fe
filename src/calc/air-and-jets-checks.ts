import type { Mark, PublishedCheck } from './contract.ts';
import type { UnitId } from './units.ts';

const ISO =
  'ISO 2533:1975, Standard atmosphere, Table 5, transcribed from the printed standard in a public test file';
const USSA = 'U.S. Standard Atmosphere, 1976, Table I, quoted in a public test file';
const CIPM =
  'Formula for the density of moist air (CIPM-2007), Metrologia 45 (2008) 149: about 1.1992 kg/m³ at 20 °C, 101 325 Pa, 50 %, from memory';
const ROOT = 'Exact arithmetic: area as the root of density, a bore as the root of its area';

const check = (
  id: string,
  says: string,
  given: Record<string, string>,
  output: string,
  expected: number,
  unit: UnitId,
  tolerance: number,
  source: string,
  mark: Mark,
): PublishedCheck => ({ id, says, given, output, expected, unit, tolerance, source, mark });

const SEA = { altitudeThen: '0 m', temperatureThen: '288.15 K' };

/** What the calculator's page prints under "checked against" and the tests run. */
export const airAndJetsChecks: readonly PublishedCheck[] = [
  check(
    'iso-500',
    'Density at 500 m',
    { ...SEA, altitude: '500 m', temperature: '284.9003 K' },
    'density',
    1.16727,
    'kg/m3',
    2e-5,
    ISO,
    'found',
  ),
  check(
    'iso-1000',
    'Density at 1000 m',
    { ...SEA, altitude: '1000 m', temperature: '281.651 K' },
    'density',
    1.11166,
    'kg/m3',
    2e-5,
    ISO,
    'found',
  ),
  check(
    'iso-3000',
    'Density at 3000 m',
    { ...SEA, altitude: '3000 m', temperature: '268.6592 K' },
    'density',
    0.909254,
    'kg/m3',
    2e-5,
    ISO,
    'found',
  ),
  check(
    'iso-2000-p',
    'Pressure at 2000 m',
    { ...SEA, altitude: '2000 m', temperature: '15 degC' },
    'pressure',
    795.014,
    'hPa',
    0.005,
    ISO,
    'found',
  ),
  check(
    'ussa-1000',
    'Pressure at 1000 m',
    { ...SEA, altitude: '1000 m', temperature: '15 degC' },
    'pressure',
    89876.3,
    'Pa',
    0.5,
    USSA,
    'found',
  ),
  check(
    'cipm-50',
    'Moist air at 20 °C, 101 325 Pa, 50 %',
    { ...SEA, pressure: '101325 Pa', temperature: '20 degC', humidity: '50 %' },
    'density',
    1.1992,
    'kg/m3',
    0.001,
    CIPM,
    'memory',
  ),
  check(
    'half',
    'Air of 0.4 of the density: 0.632 of the jet area',
    { pressureThen: '1000 hPa', temperatureThen: '250 K', pressure: '400 hPa', temperature: '250 K' },
    'area',
    0.632456,
    '1',
    1e-6,
    ROOT,
    'derived',
  ),
  check(
    'bore',
    'Jet 100 by bore in air of 0.4 of the density',
    {
      pressureThen: '1000 hPa',
      temperatureThen: '250 K',
      pressure: '400 hPa',
      temperature: '250 K',
      jet: '100',
    },
    'jet',
    79.5271,
    'n',
    1e-4,
    ROOT,
    'derived',
  ),
  check(
    'flow',
    'The same numbered by flow',
    {
      pressureThen: '1000 hPa',
      temperatureThen: '250 K',
      pressure: '400 hPa',
      temperature: '250 K',
      jet: '100',
      marking: 'flow',
    },
    'jet',
    63.2456,
    'n',
    1e-4,
    ROOT,
    'derived',
  ),
];
