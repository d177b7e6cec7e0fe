import type { PublishedCheck } from './contract.ts';
import type { UnitId } from './units.ts';

const HEYWOOD =
  'Exact arithmetic from the definitions in J. B. Heywood, Internal Combustion Engine Fundamentals, 1988, eq. 2.1 to 2.4';
const BLAIR =
  'Exact arithmetic from the definition in G. P. Blair, Design and Simulation of Two-Stroke Engines, SAE, 1996, ch. 1';
const CYLINDER = 'Volume of a cylinder, exact arithmetic';

const derived = (
  id: string,
  says: string,
  given: Record<string, string>,
  output: string,
  expected: number,
  unit: UnitId,
  tolerance: number,
  source = HEYWOOD,
): PublishedCheck => ({ id, says, given, output, expected, unit, tolerance, source, mark: 'derived' });

const swept = (bore: number, stroke: number, cylinders: number, expected: number) =>
  derived(
    `swept-${bore}x${stroke}x${cylinders}`,
    `${bore} mm bore, ${stroke} mm stroke, ${cylinders === 1 ? 'one cylinder' : 'two cylinders'}`,
    { bore: `${bore} mm`, stroke: `${stroke} mm`, cylinders: String(cylinders), poured: '20 mL' },
    'swept',
    expected,
    'cm3',
    0.001,
  );

const ENGINE = { bore: '52 mm', stroke: '58 mm', cylinders: '1' };

/** What the calculator's page prints under "checked against" and the tests run. */
export const compressionRatioChecks: readonly PublishedCheck[] = [
  swept(54, 54, 1, 123.672),
  swept(72, 61, 2, 496.723),
  swept(47, 44, 1, 76.338),
  swept(68, 68.5, 2, 497.54),
  derived(
    'ratio-52x58',
    '52 mm bore, 58 mm stroke, 14 mL above the piston',
    { ...ENGINE, poured: '14 mL' },
    'ratio',
    9.7983,
    ':1',
    0.0005,
  ),
  derived(
    'trapped-52x58',
    'The same, exhaust port opening 36 mm down',
    { ...ENGINE, poured: '14 mL', port: '36 mm' },
    'trappedRatio',
    6.461,
    ':1',
    0.0005,
    BLAIR,
  ),
  derived(
    'back-52x58',
    'Room that 9.7983:1 leaves',
    { ...ENGINE, ratio: '9.7983:1' },
    'clearance',
    14,
    'cm3',
    0.001,
  ),
  derived(
    'gasket-1',
    'Chamber 12 mL, gasket 1 mm on the bore, deck 0.5 mm, dome 1 mL: 14.186 mL',
    { ...ENGINE, chamber: '12 mL', gasket: '1 mm', deck: '0.5 mm', crown: '1 mL' },
    'clearance',
    14.18558,
    'cm3',
    0.0001,
    CYLINDER,
  ),
  derived(
    'cut-0.5',
    '0.5 mm off a head hollow over the whole bore of 52 mm',
    { ...ENGINE, poured: '14 mL', skim: '0.5 mm' },
    'lost',
    1.061858,
    'cm3',
    0.00001,
    CYLINDER,
  ),
];
