import { compressionRatioChecks } from './compression-ratio-checks.ts';
import { compressionRatioSays } from './compression-ratio-says.ts';
import type { FigureField, OutputField } from './contract.ts';
import { told } from './declare.ts';
import { solve } from './solve-compression-ratio.ts';
import type { UnitId } from './units.ts';

const LONG: readonly UnitId[] = ['mm', 'in'];
const SMALL: readonly UnitId[] = ['mm', 'in', 'thou'];
const ROOM: readonly UnitId[] = ['mL', 'cm3', 'in3'];

/** A length of this calculator: all take a ±. */
const length = (
  name: string,
  label: string,
  group: string,
  range: readonly [number, number],
  more: Partial<FigureField> = {},
): FigureField => ({
  kind: 'figure',
  name,
  label,
  group,
  quantity: 'length',
  units: range[1] > 0.02 ? LONG : SMALL,
  min: range[0],
  max: range[1],
  takesPm: true,
  ...more,
});

const room = (name: string, label: string, min: number, more: Partial<FigureField> = {}): FigureField => ({
  kind: 'figure',
  name,
  label,
  group: 'Above the piston',
  quantity: 'volume',
  units: ROOM,
  min,
  max: 1e-3,
  takesPm: true,
  ...more,
});

const BY_BURETTE = { when: { field: 'known', is: ['burette'] } };
const BY_FIGURES = { when: { field: 'known', is: ['figures'] } };

const out = (name: string, label: string, more: Partial<OutputField> = {}): OutputField => ({
  name,
  label,
  quantity: 'ratio',
  units: [':1'],
  figures: 3,
  ...more,
});
const VOLUME: Partial<OutputField> = { quantity: 'volume', units: ['cm3', 'in3'], figures: 4 };
const LENGTH: Partial<OutputField> = { quantity: 'length', units: ['mm', 'in'], figures: 3, decimals: 2 };

export { solve };

/** Swept volume and compression; arithmetic in solve-compression-ratio.ts. */
export const compressionRatio = told(
  {
    id: 'compression-ratio',
    component: 'CompressionRatio',
    title: 'Swept volume and compression ratio',
    answers:
      'How large is the engine, how high is its compression, and what does a cut off the head make of it?',
    fields: [
      length('bore', 'Bore', 'The engine', [0.02, 0.2], { start: '54 mm', machine: 'engine.bore' }),
      length('stroke', 'Stroke', 'The engine', [0.01, 0.3], { start: '58 mm', machine: 'engine.stroke' }),
      {
        kind: 'figure',
        name: 'cylinders',
        label: 'Cylinders',
        group: 'The engine',
        quantity: 'count',
        units: ['n'],
        start: '2',
        machine: 'engine.cylinders',
        min: 1,
        max: 12,
        whole: true,
      },
      length('port', 'Top of the exhaust port', 'The engine', [0.001, 0.3], {
        help: 'Two-strokes: from the crown at top dead centre down to where the port begins to open. Gives the trapped ratio.',
        machine: 'engine.exhaust_port',
        optional: true,
      }),
      {
        kind: 'choice',
        name: 'known',
        label: 'What is known',
        group: 'Above the piston',
        start: 'burette',
        options: [
          { value: 'burette', label: 'Poured in from a burette' },
          { value: 'figures', label: 'Chamber, gasket, deck and crown' },
          { value: 'ratio', label: 'The ratio: how much room it leaves' },
        ],
      },
      room('poured', 'Poured in at top dead centre', 1e-6, {
        help: 'Thin oil from a burette through the plug hole, the head tightened down, up to the lowest thread.',
        start: '22.9 mL',
        ...BY_BURETTE,
      }),
      room('plug', 'Of that, in the plug hole', 0, {
        help: 'What the plug itself will fill again; 0 if filled only to its lowest thread.',
        optional: true,
        ...BY_BURETTE,
      }),
      room('chamber', 'Chamber in the head', 0, {
        help: 'Poured in with the head upside down under a plate, the plug in.',
        ...BY_FIGURES,
      }),
      length('gasket', 'Gasket, pressed', 'Above the piston', [0, 0.01], { optional: true, ...BY_FIGURES }),
      length('gasketBore', 'Hole of the gasket', 'Above the piston', [0.02, 0.25], {
        help: 'Empty: as wide as the bore.',
        optional: true,
        ...BY_FIGURES,
      }),
      length('deck', 'Crown’s edge below the barrel’s top', 'Above the piston', [-0.01, 0.02], {
        help: 'At top dead centre; minus if it stands above.',
        optional: true,
        ...BY_FIGURES,
      }),
      room('crown', 'Crown’s dome', -1e-4, {
        help: 'Above the plane of its edge; minus for a hollow.',
        optional: true,
        ...BY_FIGURES,
      }),
      {
        kind: 'figure',
        name: 'ratio',
        label: 'Ratio, full stroke',
        group: 'Above the piston',
        quantity: 'ratio',
        units: [':1'],
        machine: 'engine.compression',
        min: 1.5,
        max: 25,
        takesPm: true,
        when: { field: 'known', is: ['ratio'] },
      },
      length('squish', 'Squish, measured', 'Squish', [1e-4, 0.01], {
        help: 'Solder pressed between crown and head at the bore’s edge, above the pin on both sides. Empty: gasket and deck together.',
        optional: true,
      }),
      length('bowl', 'Inner edge of the squish band', 'Squish', [0.005, 0.2], {
        help: 'Its diameter, for the share of the bore that the band covers.',
        optional: true,
      }),
      {
        kind: 'choice',
        name: 'from',
        label: 'Cut off',
        group: 'A cut',
        start: 'head',
        options: [
          { value: 'head', label: 'The head’s joint face' },
          { value: 'barrel', label: 'The top of the barrel' },
        ],
      },
      length('skim', 'Depth of the cut', 'A cut', [0, 0.005], { optional: true }),
      length('mouth', 'Mouth of the chamber in the head’s face', 'A cut', [0.005, 0.2], {
        help: 'Only where the squish band lies level with the joint face. Empty: the head is hollow over the whole bore.',
        optional: true,
      }),
      {
        kind: 'figure',
        name: 'target',
        label: 'Ratio wanted',
        group: 'A cut',
        quantity: 'ratio',
        units: [':1'],
        min: 1.5,
        max: 25,
        optional: true,
      },
      {
        kind: 'choice',
        name: 'aim',
        label: 'That ratio is meant',
        group: 'A cut',
        start: 'full',
        options: [
          { value: 'full', label: 'Over the full stroke' },
          { value: 'trapped', label: 'Above the exhaust port' },
        ],
      },
    ],
    outputs: [
      out('swept', 'Swept volume of the engine', VOLUME),
      out('sweptOne', 'Of one cylinder', VOLUME),
      out('clearance', 'Above the piston at top dead centre', VOLUME),
      out('ratio', 'Compression ratio, full stroke'),
      out('trapped', 'Swept above the exhaust port', VOLUME),
      out('trappedRatio', 'Trapped ratio, above the exhaust port'),
      out('squish', 'Squish', LENGTH),
      out('squishShare', 'Squish band, share of the bore', { quantity: 'share', units: ['%'], figures: 2 }),
      out('lost', 'A cut so deep takes', VOLUME),
      out('ratioAfter', 'Ratio after the cut'),
      out('trappedAfter', 'Trapped ratio after the cut'),
      out('squishAfter', 'Squish after the cut', LENGTH),
      out('skimFor', 'Cut for the ratio wanted', LENGTH),
      out('squishFor', 'Squish then', LENGTH),
      out('raiseFor', 'Raise the head for the ratio wanted', LENGTH),
    ],
    conventions: [
      'All volumes of the chamber are of one cylinder.',
      'The port is measured along the bore, down from the crown’s edge at top dead centre.',
      'The full-stroke ratio counts the whole stroke; the trapped ratio only what is left once the exhaust port is shut.',
    ],
    cautions: [
      'The maker’s ratio comes first. More compression is more heat: knock holes pistons, a two-stroke’s above all.',
      'Before the engine is turned after any cut: press solder again and measure the squish.',
      'Empty the cylinder of all liquid before turning the crank with the plug in.',
    ],
    hazards: ['hydraulic-lock'],
    sources: [
      'J. B. Heywood, Internal Combustion Engine Fundamentals, McGraw-Hill, 1988, eq. 2.1 to 2.4.',
      'G. P. Blair, Design and Simulation of Two-Stroke Engines, SAE International, 1996, chapter 1: trapped ratio.',
      'Measuring by burette, squish by solder: common practice, no source.',
      'JCGM 100:2008 for the ±.',
    ],
    checks: compressionRatioChecks,
    says: compressionRatioSays,
  },
  solve,
);
