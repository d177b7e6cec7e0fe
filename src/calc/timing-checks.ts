import type { PublishedCheck } from './contract.ts';

/** Inputs read in the source; the travel follows by exact geometry. */
const ROSE =
  'Rose-Hulman Institute of Technology, Calculus problems, Reciprocating engine (ENGINE_3): inputs';
const TRIANGLE =
  'Cosine rule on the crank triangle; same relation as Heywood, Internal Combustion Engine Fundamentals, 1988, eq. 2.4 and 2.5';
const MECHANISM = 'Offset slider-crank, position analysis, as in R. L. Norton, Design of Machinery, 2nd ed.';
const exact = (
  id: string,
  says: string,
  given: Record<string, string>,
): Omit<PublishedCheck, 'output' | 'expected' | 'unit' | 'tolerance' | 'source'> => ({
  id,
  says,
  given,
  mark: 'derived',
});

/** What the calculator's page prints under "checked against" and the tests run. */
export const timingChecks: readonly PublishedCheck[] = [
  {
    ...exact('rose-30', '80 mm crank, 245 mm rod, 30° before the top', {
      stroke: '160 mm',
      rod: '245 mm',
      advance: '30 deg',
    }),
    output: 'travel',
    expected: 14.0053,
    unit: 'mm',
    tolerance: 0.0005,
    source: ROSE,
  },
  {
    ...exact('rose-60', '80 mm crank, 245 mm rod, 60° before the top', {
      stroke: '160 mm',
      rod: '245 mm',
      advance: '60 deg',
    }),
    output: 'travel',
    expected: 50,
    unit: 'mm',
    tolerance: 0.0005,
    source: ROSE,
  },
  {
    ...exact('rose-150', '80 mm crank, 245 mm rod, 150° before the top', {
      stroke: '160 mm',
      rod: '245 mm',
      advance: '150 deg',
    }),
    output: 'travel',
    expected: 152.5694,
    unit: 'mm',
    tolerance: 0.0005,
    source: ROSE,
  },
  {
    ...exact('travel-1', '54 mm stroke, 110 mm rod, 1 mm of travel', {
      stroke: '54 mm',
      rod: '110 mm',
      travel: '1 mm',
    }),
    output: 'advance',
    expected: 14.0274,
    unit: 'deg',
    tolerance: 0.001,
    source: TRIANGLE,
  },
  {
    ...exact('travel-3', '54 mm stroke, 110 mm rod, 3 mm of travel', {
      stroke: '54 mm',
      rod: '110 mm',
      travel: '3 mm',
    }),
    output: 'advance',
    expected: 24.4901,
    unit: 'deg',
    tolerance: 0.001,
    source: TRIANGLE,
  },
  {
    ...exact('travel-2.5', '58 mm stroke, 105 mm rod, 2.5 mm of travel', {
      stroke: '58 mm',
      rod: '105 mm',
      travel: '2.5 mm',
    }),
    output: 'advance',
    expected: 21.2536,
    unit: 'deg',
    tolerance: 0.001,
    source: TRIANGLE,
  },
  {
    ...exact('offset-stroke', '27 mm crank, 110 mm rod, pin offset 1.5 mm', {
      stroke: '54 mm',
      rod: '110 mm',
      offset: '1.5 mm',
      side: 'away',
      advance: '20 deg',
    }),
    output: 'stroke',
    expected: 54.00534,
    unit: 'mm',
    tolerance: 0.0005,
    source: MECHANISM,
  },
  {
    ...exact(
      'offset-top',
      '27 mm crank, 110 mm rod, pin offset 1.5 mm: crank from the bore axis at the top',
      { stroke: '54 mm', rod: '110 mm', offset: '1.5 mm', side: 'away', advance: '20 deg' },
    ),
    output: 'topAngle',
    expected: 0.6273,
    unit: 'deg',
    tolerance: 0.002,
    source: MECHANISM,
  },
  {
    ...exact('rim-86.5', '24° on a rim of 86.5 mm', {
      stroke: '54 mm',
      rod: '110 mm',
      advance: '24 deg',
      rim: '86.5 mm',
    }),
    output: 'arc',
    expected: 18.1165,
    unit: 'mm',
    tolerance: 0.0005,
    source: 'Arc length, π d α / 360°: exact geometry',
  },
  {
    ...exact('time-3000', '24° at 3000 rev/min', {
      stroke: '54 mm',
      rod: '110 mm',
      advance: '24 deg',
      speed: '3000 rpm',
    }),
    output: 'time',
    expected: 1.33333,
    unit: 'ms',
    tolerance: 1e-4,
    source: '360° a turn, 60 s a minute: exact arithmetic',
  },
  {
    id: 'dial-inch',
    says: '4 mm of travel on a dial of 0.1 in a turn',
    given: { stroke: '54 mm', rod: '110 mm', travel: '4 mm', dial: '0.1 in' },
    output: 'dialTurns',
    expected: 1.575,
    unit: 'n',
    tolerance: 0.0005,
    source:
      'Dial of 0.100 in a turn: Machinery Repairman, NAVEDTRA 14345, p. 1-9; 1.575 turns: common practice',
    mark: 'common practice',
  },
];
