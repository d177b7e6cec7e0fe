import { compressionTestChecks } from './compression-test-checks.ts';
import { compressionTestSays } from './compression-test-says.ts';
import type { Field, FigureField, OutputField } from './contract.ts';
import { told } from './declare.ts';
import { solve } from './solve-compression-test.ts';
import type { UnitId } from './units.ts';

const GAUGE: readonly UnitId[] = ['bar', 'psi', 'kPa', 'kgf/cm2'];

const table = (name: string, label: string, help: string, more: Partial<Field> = {}): Field =>
  ({
    kind: 'table',
    name,
    label,
    help,
    group: 'Readings',
    columns: [{ name: 'reading', label: 'Reading', quantity: 'pressure', units: GAUGE, min: 0, max: 4e6 }],
    maxRows: 12,
    ...more,
  }) as Field;

const figure = (
  name: string,
  label: string,
  group: string,
  quantity: FigureField['quantity'],
  units: readonly UnitId[],
  range: readonly [number, number],
  help?: string,
): FigureField => ({
  kind: 'figure',
  name,
  label,
  group,
  quantity,
  units,
  min: range[0],
  max: range[1],
  takesPm: true,
  optional: true,
  ...(help ? { help } : {}),
});

const ROOM: readonly UnitId[] = ['mL', 'cm3', 'in3'];

const out = (name: string, label: string, more: Partial<OutputField> = {}): OutputField => ({
  name,
  label,
  quantity: 'pressure',
  units: ['bar', 'psi', 'kPa'],
  figures: 3,
  ...more,
});
const SHARE: Partial<OutputField> = { quantity: 'share', units: ['%'] };

export { solve };

/** Readings of a compression gauge; arithmetic in solve-compression-test.ts. */
export const compressionTest = told(
  {
    id: 'compression-test',
    component: 'CompressionTest',
    title: 'Compression test',
    answers:
      'What do the gauge’s readings say, cylinder against cylinder, dry against oiled, at this height above the sea?',
    fields: [
      table('dry', 'Dry, one reading a cylinder', 'As the gauge shows, in order of the cylinders.', {
        start: '6.8; 6.4',
      } as Partial<Field>),
      table('wet', 'With oil, in the same order', 'After a measured spoon of oil in each.', {
        optional: true,
      }),
      {
        kind: 'choice',
        name: 'strokes',
        label: 'Working cycle',
        group: 'Readings',
        start: '2',
        machine: 'engine.strokes',
        options: [
          { value: '2', label: 'Two-stroke' },
          { value: '4', label: 'Four-stroke' },
        ],
      },
      {
        ...figure('altitude', 'Height above the sea', 'The air', 'length', ['m', 'ft'], [-430, 6000]),
        start: '0 m',
      },
      figure(
        'pressure',
        'Air pressure, as it is there',
        'The air',
        'pressure',
        ['hPa', 'kPa', 'mmHg', 'inHg', 'psi', 'bar'],
        [40000, 110000],
        'Counts before the height. Not reduced to the sea.',
      ),
      figure(
        'reference',
        'Figure to compare with',
        'Compared with',
        'pressure',
        GAUGE,
        [1e5, 4e6],
        'The maker’s, or your own from when the engine was good. None is supplied here.',
      ),
      figure(
        'referenceAltitude',
        'Taken at a height of',
        'Compared with',
        'length',
        ['m', 'ft'],
        [-430, 6000],
        'Empty: at the sea.',
      ),
      figure('oil', 'Oil put in', 'Room that oil fills', 'volume', ROOM, [0, 1e-4]),
      figure(
        'room',
        'Room above the piston',
        'Room that oil fills',
        'volume',
        ROOM,
        [1e-6, 1e-3],
        'At top dead centre, one cylinder.',
      ),
      figure(
        'swept',
        'Swept by one piston',
        'Room that oil fills',
        'volume',
        ['cm3', 'mL', 'in3'],
        [1e-6, 5e-3],
        'Two-strokes: above the exhaust port.',
      ),
    ],
    outputs: [
      out('air', 'Air pressure here', { units: ['hPa', 'bar', 'psi'], figures: 4 }),
      out('share', 'Of the sea’s', { ...SHARE, figures: 3 }),
      out('mean', 'Mean of the cylinders'),
      out('meanSea', 'The same, as it would read at the sea'),
      out('low', 'Lowest'),
      out('high', 'Highest'),
      out('spread', 'Between them'),
      out('spreadShare', 'Lowest below highest', { ...SHARE, figures: 2 }),
      out('expected', 'Figure compared with, as it would read here'),
      out('below', 'Mean below that', { ...SHARE, figures: 2 }),
      out('byVolume', 'Rise that the oil’s room alone makes', { ...SHARE, figures: 2 }),
    ],
    conventions: [
      'Readings are gauge pressures, above the air’s own.',
      'Corrected for air by absolute pressures: both the trapped air and what it is pressed to go in proportion, so the gauge does too.',
    ],
    cautions: [
      'Every plug out, leads earthed or the ignition dead, fuel off, no flame: each stroke blows fuel mist out of the plug holes.',
      'Keep hands, face and loose cloth away from the plug holes and the fan.',
      'No more oil than a small spoon: an engine full of liquid locks and bends its rods.',
    ],
    hazards: ['cranking-fuel-mist', 'ht-spark', 'cylinder-pressure', 'hydraulic-lock'],
    sources: [
      'Absolute pressures in proportion to the air’s; ISO 2533:1975 for its pressure by height.',
      'Limits between cylinders, oil test: common practice, no source.',
      'Room filled by oil: polytropic compression with an exponent of 1.0 to 1.35, common practice.',
      'JCGM 100:2008 for the ±.',
    ],
    checks: compressionTestChecks,
    says: compressionTestSays,
  },
  solve,
);
