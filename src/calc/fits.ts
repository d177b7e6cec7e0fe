import type { Field, FigureField, OutputField } from './contract.ts';
import { told } from './declare.ts';
import { fitsChecks } from './fits-checks.ts';
import { fitsSays } from './fits-says.ts';
import { solve } from './solve-fits.ts';
import type { UnitId } from './units.ts';

const FINE: readonly UnitId[] = ['mm', 'um', 'in', 'thou'];

const MATERIALS = [
  { value: 'steel', label: 'Steel' },
  { value: 'iron', label: 'Cast iron' },
  { value: 'aluminium', label: 'Aluminium casting' },
  { value: 'piston', label: 'Aluminium piston, rich in silicon' },
  { value: 'brass', label: 'Brass' },
  { value: 'bronze', label: 'Bronze' },
  { value: 'magnesium', label: 'Magnesium' },
  { value: 'own', label: 'Another: its growth below' },
];

const part = (name: 'outer' | 'inner', label: string, start: string): Field[] => [
  { kind: 'choice', name, label: `${label} is of`, group: 'Two parts', start, options: MATERIALS },
  {
    kind: 'figure',
    name: `${name}Growth`,
    label: `${label}: growth, millionths a kelvin`,
    help: 'The same as micrometres a metre and kelvin.',
    group: 'Two parts',
    quantity: 'count',
    units: ['n'],
    min: 0.5,
    max: 40,
    takesPm: true,
    when: { field: name, is: ['own'] },
  },
];

const heat = (name: string, label: string, more: Partial<FigureField> = {}): FigureField => ({
  kind: 'figure',
  name,
  label,
  group: 'Temperatures',
  quantity: 'temperature',
  units: ['degC', 'degF', 'K'],
  min: 73.15,
  max: 673.15,
  takesPm: true,
  optional: true,
  ...more,
});

const out = (name: string, label: string, more: Partial<OutputField> = {}): OutputField => ({
  name,
  label,
  quantity: 'length',
  units: ['um', 'thou'],
  figures: 3,
  ...more,
});
const SIZE: Partial<OutputField> = { units: ['mm', 'in'], figures: 5, decimals: 3 };

export { solve };

/** Fits and growth; arithmetic in solve-fits.ts, the table in limits-and-fits.ts. */
export const fits = told(
  {
    id: 'fits',
    component: 'Fits',
    title: 'Fits and growth with heat',
    answers:
      'How tight is the fit cold and hot, and how warm must the housing be for the bearing to drop in?',
    fields: [
      {
        kind: 'figure',
        name: 'size',
        label: 'Diameter',
        group: 'Two parts',
        quantity: 'length',
        units: ['mm', 'in'],
        start: '52 mm',
        min: 0.001,
        max: 0.5,
        takesPm: true,
      },
      ...part('outer', 'The outer part', 'aluminium'),
      ...part('inner', 'The inner part', 'steel'),
      {
        kind: 'text',
        name: 'fit',
        label: 'Fit, hole and shaft',
        sample: 'H7/k6',
        group: 'The fit, cold',
        start: 'N7/h6',
        optional: true,
      },
      {
        kind: 'figure',
        name: 'clearance',
        label: 'Clearance measured, cold',
        help: 'Hole less shaft at room temperature; minus for interference. Counts before the fit.',
        group: 'The fit, cold',
        quantity: 'length',
        units: FINE,
        min: -0.001,
        max: 0.002,
        takesPm: true,
        optional: true,
      },
      heat('room', 'Room, where it was measured', { help: 'Empty: 20 °C.', min: 233.15, max: 323.15 }),
      heat('outerHot', 'Outer part, hot', { help: 'Empty: as the room.' }),
      heat('innerHot', 'Inner part, hot or chilled', { help: 'Empty: as the room.' }),
      {
        kind: 'figure',
        name: 'gap',
        label: 'Clearance to drop it in with',
        help: 'So that it falls home before it warms: 20 to 50 µm, common practice.',
        group: 'Temperatures',
        quantity: 'length',
        units: ['um', 'mm', 'thou', 'in'],
        start: '30 um',
        min: 0,
        max: 0.0005,
        optional: true,
      },
    ],
    outputs: [
      out('cold', 'Clearance cold (− interference)', { units: ['um', 'mm', 'thou'] }),
      out('heatTo', 'Heat the outer part to', { quantity: 'temperature', units: ['degC', 'degF'] }),
      out('heatBy', 'That is a rise of', { quantity: 'temperature step', units: ['K', 'degF'] }),
      out('hot', 'Clearance at the temperatures given', { units: ['um', 'mm', 'thou'] }),
      out('outerGrowth', 'Outer part grows by'),
      out('innerGrowth', 'Inner part grows by'),
      out('tightest', 'Tightest that the fit allows (− interference)'),
      out('loosest', 'Loosest that the fit allows'),
      out('holeLeast', 'Hole, least', SIZE),
      out('holeMost', 'Hole, most', SIZE),
      out('shaftLeast', 'Shaft, least', SIZE),
      out('shaftMost', 'Shaft, most', SIZE),
    ],
    conventions: [
      'Clearance is positive, interference negative: hole less shaft, on the diameter.',
      'The outer part holds the hole: housing, barrel, drum. The inner goes in: bearing, piston, pin.',
      'Limits are by table to 120 mm, at 20 °C; growth is taken as straight.',
    ],
    cautions: [
      'Warm evenly in an oven or on a plate, and check with a thermometer; a flame warps castings and ruins bearings.',
      'Sealed bearings, and any bearing above about 120 °C, take harm: the maker’s limit comes first.',
      'Hot parts look like cold ones: heat gloves, a clear way to the bench, the tools laid out before.',
    ],
    hazards: ['heating-bearings', 'hot-parts'],
    sources: [
      'ISO 286-2:2010, limit deviations; figures as in JIS B 0401 (1999), partly from memory for J, K, M, N and P holes.',
      'ISO 1:2022, reference temperature 20 °C.',
      'Growth of materials: handbook figures for 20 to 150 °C, from memory, with what alloys of one name differ by as ±.',
      'JCGM 100:2008 for the ±.',
    ],
    checks: fitsChecks,
    says: fitsSays,
  },
  solve,
);
