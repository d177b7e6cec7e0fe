import type { PublishedCheck } from './contract.ts';
import type { UnitId } from './units.ts';

const MORAN =
  'Moran, Shapiro, Boettner, Bailey, Fundamentals of Engineering Thermodynamics, 8th ed., problem 2.23: inputs; answer by its own formula';
const GILLESPIE =
  'Gillespie, Fundamentals of Vehicle Dynamics, 1992, ch. 4; Wong, Theory of Ground Vehicles, 3rd ed., ch. 3: formula; figures worked by hand';
const ISO = 'ISO 2533:1975, Standard atmosphere';

const sedan = { mass: '3040 lb', drag: '1.56 ft2', rolling: '0.02', air: '0.08 lb/ft3', road: '55 mph' };
const small = { mass: '650 kg', drag: '0.7 m2', rolling: '0.015', air: '1.225 kg/m3' };
const plain = { mass: '500 kg', drag: '1 m2', rolling: '0.015' };

const check = (
  id: string,
  says: string,
  given: Record<string, string>,
  output: string,
  expected: number,
  unit: UnitId,
  tolerance: number,
  source: string,
  mark: PublishedCheck['mark'] = 'derived',
): PublishedCheck => ({ id, says, given, output, expected, unit, tolerance, source, mark });

/** What the calculator's page prints under "checked against" and the tests run. */
export const hillsChecks: readonly PublishedCheck[] = [
  check(
    'sedan-rolling',
    '3040 lb, rolling coefficient 0.02: rolling resistance',
    sedan,
    'rollingForce',
    60.8,
    'lbf',
    0.001,
    MORAN,
  ),
  check(
    'sedan-power',
    'The same with 6.24 ft² at a drag coefficient of 0.25, 55 mph: power',
    sedan,
    'wheelPower',
    10.768,
    'hp',
    0.003,
    MORAN,
  ),
  check(
    'flat-80',
    '650 kg on the flat at 80 km/h: power at the wheels',
    { ...small, road: '80 km/h' },
    'wheelPower',
    6.8298,
    'kW',
    0.001,
    GILLESPIE,
  ),
  check(
    'slope-12kw',
    '650 kg at 40 km/h on 14.788 %: 12 kW at the wheels',
    { ...small, road: '40 km/h', slope: '14.788 %' },
    'wheelPower',
    12,
    'kW',
    0.005,
    GILLESPIE,
  ),
  check(
    'air-30',
    'Air at sea level and 30 °C',
    { ...plain, temperature: '30 degC' },
    'density',
    1.1644,
    'kg/m3',
    0.0001,
    `Ideal gas, R = 287.05287 J/(kg K) of ${ISO}`,
  ),
  check(
    'air-1000',
    'Air at 1000 m geometric, 8.501 °C',
    { ...plain, altitude: '1000 m', temperature: '8.501 degC' },
    'density',
    1.11166,
    'kg/m3',
    2e-5,
    'U.S. Standard Atmosphere, 1976, Table I, and ISO 2533:1975, Table 5 (value lists quoted in public test files)',
    'found',
  ),
  check(
    'air-3000',
    'Air at 3000 m geometric, −4.491 °C',
    { ...plain, altitude: '3000 m', temperature: '-4.491 degC' },
    'density',
    0.909254,
    'kg/m3',
    2e-5,
    `${ISO}, Table 5 (transcribed in a public test file)`,
    'found',
  ),
];
