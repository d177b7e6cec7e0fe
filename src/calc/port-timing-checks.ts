import type { PublishedCheck } from './contract.ts';
import type { UnitId } from './units.ts';

const ROSE =
  'Rose-Hulman Institute of Technology, Calculus problems, Reciprocating engine (ENGINE_3): inputs; travel by exact geometry';
const TRIANGLE =
  'Cosine rule on the crank triangle; same relation as Heywood, Internal Combustion Engine Fundamentals, 1988, eq. 2.4 and 2.5';
const DISC = 'Definition: the disc is open from opening to closing, exact arithmetic';

const derived = (
  id: string,
  says: string,
  given: Record<string, string>,
  output: string,
  expected: number,
  unit: UnitId,
  tolerance: number,
  source = TRIANGLE,
): PublishedCheck => ({ id, says, given, output, expected, unit, tolerance, source, mark: 'derived' });

const ROSE_ENGINE = { stroke: '160 mm', rod: '245 mm', inletBy: 'none' };
const SMALL = { stroke: '54 mm', rod: '110 mm' };

/** What the calculator's page prints under "checked against" and the tests run. */
export const portTimingChecks: readonly PublishedCheck[] = [
  derived(
    'rose-120',
    '80 mm crank, 245 mm rod, exhaust 120° after the top',
    { ...ROSE_ENGINE, exhaustAngle: '120 deg' },
    'exhaustTravel',
    130,
    'mm',
    0.0005,
    ROSE,
  ),
  derived(
    'rose-150',
    'The same crank, exhaust open for 60°',
    { ...ROSE_ENGINE, exhaustDuration: '60 deg' },
    'exhaustTravel',
    152.5694,
    'mm',
    0.0005,
    ROSE,
  ),
  derived(
    'rose-130-mm',
    'The same crank, exhaust 130 mm down: open for 360° less twice 120°',
    { ...ROSE_ENGINE, exhaust: '130 mm' },
    'exhaustDuration',
    120,
    'deg',
    0.0005,
    ROSE,
  ),
  derived(
    'blowdown-rose',
    'Exhaust 130 mm, transfer 152.5694 mm down: 150° less 120°',
    { ...ROSE_ENGINE, exhaust: '130 mm', transfer: '152.5694 mm' },
    'blowdown',
    30,
    'deg',
    0.001,
    ROSE,
  ),
  derived(
    'skirt-3',
    '54 mm stroke, 110 mm rod: port’s floor 73 mm down, skirt 70 mm: opens 3 mm below the top',
    { ...SMALL, inletFloor: '73 mm', skirt: '70 mm' },
    'inletOpens',
    24.4901,
    'deg',
    0.001,
  ),
  derived(
    'skirt-4.5',
    'The same engine, 4.5 mm: open on both sides of the top',
    { ...SMALL, inletFloor: '74.5 mm', skirt: '70 mm' },
    'inletDuration',
    60.3566,
    'deg',
    0.002,
  ),
  derived(
    'skirt-58-105',
    '58 mm stroke, 105 mm rod, inlet opening 21.2536° before the top',
    { stroke: '58 mm', rod: '105 mm', known: 'angles', inletAngle: '21.2536 deg', inletBy: 'piston' },
    'inletTravel',
    2.5,
    'mm',
    0.0005,
  ),
  derived(
    'disc',
    'Disc open from 120° before to 60° after the top, port 30° wide: cut-out',
    { ...SMALL, inletBy: 'disc', discOpens: '120 deg', discCloses: '60 deg', discPort: '30 deg' },
    'discCut',
    150,
    'deg',
    1e-9,
    DISC,
  ),
];
