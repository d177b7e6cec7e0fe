import type { PublishedCheck } from './contract.ts';
import type { UnitId } from './units.ts';

const SCALED =
  'Absolute pressures in proportion; air pressure of ISO 2533:1975, Table 5 (found), rest exact arithmetic';
const ISO =
  'ISO 2533:1975, Standard atmosphere, Table 5, transcribed from the printed standard in a public test file';
const SP811 = 'Unit factors of NIST SP 811, App. B; exact arithmetic';
const SHARES = 'Exact arithmetic';

const check = (
  id: string,
  says: string,
  given: Record<string, string>,
  output: string,
  expected: number,
  unit: UnitId,
  tolerance: number,
  source: string,
): PublishedCheck => ({ id, says, given, output, expected, unit, tolerance, source, mark: 'derived' });

/** What the calculator's page prints under "checked against" and the tests run. */
export const compressionTestChecks: readonly PublishedCheck[] = [
  check(
    'sea-1500',
    '10 bar at the sea, read at 1500 m',
    { dry: '8', reference: '10 bar', altitude: '1500 m' },
    'expected',
    8.345,
    'bar',
    0.001,
    SCALED,
  ),
  check(
    'back-2000',
    '8 bar read at 2000 m, as at the sea',
    { dry: '8 bar', altitude: '2000 m' },
    'meanSea',
    10.1968,
    'bar',
    0.001,
    SCALED,
  ),
  {
    ...check(
      'iso-3000',
      'Air pressure at 3000 m',
      { dry: '8 bar', altitude: '3000 m' },
      'air',
      701.211,
      'hPa',
      0.005,
      ISO,
    ),
    mark: 'found',
  },
  {
    ...check(
      'iso-500',
      'Air pressure at 500 m',
      { dry: '8 bar', altitude: '500 m' },
      'air',
      954.613,
      'hPa',
      0.005,
      ISO,
    ),
    mark: 'found',
  },
  check('psi', '120 psi on the gauge', { dry: '120 psi' }, 'mean', 8.27371, 'bar', 0.00001, SP811),
  check('share', '7.2 and 8 bar: a tenth below', { dry: '7.2; 8' }, 'spreadShare', 10, '%', 1e-9, SHARES),
  check(
    'from-up',
    '8.345 bar, compared with 10 bar taken at the sea: as at 1500 m',
    { dry: '8.345', reference: '10 bar', altitude: '1500 m' },
    'below',
    0,
    '%',
    0.02,
    SCALED,
  ),
];
