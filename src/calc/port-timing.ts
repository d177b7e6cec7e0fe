import type { Field, FigureField, OutputField } from './contract.ts';
import { told } from './declare.ts';
import { portTimingChecks } from './port-timing-checks.ts';
import { portTimingSays } from './port-timing-says.ts';
import { solve } from './solve-port-timing.ts';
import type { UnitId } from './units.ts';

const LONG: readonly UnitId[] = ['mm', 'in'];

const length = (
  name: string,
  label: string,
  group: string,
  more: Partial<FigureField> = {},
): FigureField => ({
  kind: 'figure',
  name,
  label,
  group,
  quantity: 'length',
  units: LONG,
  min: 0,
  max: 0.3,
  takesPm: true,
  ...more,
});

const angle = (name: string, label: string, group: string, more: Partial<FigureField> = {}): FigureField => ({
  kind: 'figure',
  name,
  label,
  group,
  quantity: 'angle',
  units: ['deg'],
  min: 0.01,
  max: Math.PI * 1.95,
  takesPm: true,
  optional: true,
  ...more,
});

const known = (is: string) => ({ when: { field: 'known', is: [is] } });
const SKIRT = { when: { field: 'inletBy', is: ['piston'] } };
const DISC = { when: { field: 'inletBy', is: ['disc'] } };

const ports: readonly Field[] = [
  {
    kind: 'choice',
    name: 'known',
    label: 'What is known',
    group: 'The ports',
    start: 'heights',
    options: [
      { value: 'heights', label: 'Heights, measured in the barrel' },
      { value: 'angles', label: 'Crank degrees from top dead centre' },
      { value: 'durations', label: 'Degrees that each is open' },
    ],
  },
  length('exhaust', 'Top of the exhaust port', 'The ports', {
    help: 'Down from the crown at top dead centre, or from the barrel’s top if the deck is given.',
    start: '38 mm',
    optional: true,
    ...known('heights'),
  }),
  length('transfer', 'Top of the transfer ports', 'The ports', {
    help: 'From the same place.',
    start: '46 mm',
    optional: true,
    ...known('heights'),
  }),
  length('deck', 'Crown’s edge below the barrel’s top', 'The ports', {
    help: 'At top dead centre; minus if it stands above. Empty: heights are measured from the crown.',
    min: -0.01,
    max: 0.02,
    optional: true,
    ...known('heights'),
  }),
  angle('exhaustAngle', 'Exhaust opens after the top', 'The ports', {
    max: Math.PI * 1.1,
    ...known('angles'),
  }),
  angle('transferAngle', 'Transfers open after the top', 'The ports', {
    max: Math.PI * 1.1,
    ...known('angles'),
  }),
  angle('exhaustDuration', 'Exhaust is open for', 'The ports', known('durations')),
  angle('transferDuration', 'Transfers are open for', 'The ports', known('durations')),
];

const inlet: readonly Field[] = [
  {
    kind: 'choice',
    name: 'inletBy',
    label: 'Inlet governed by',
    group: 'The inlet',
    start: 'piston',
    options: [
      { value: 'piston', label: 'The piston’s skirt' },
      { value: 'disc', label: 'A turning disc' },
      { value: 'reed', label: 'Reeds' },
      { value: 'none', label: 'Left out here' },
    ],
  },
  length('inletFloor', 'Floor of the inlet port', 'The inlet', {
    help: 'Its lower edge, down from where the other heights are measured from. Read where heights are what is known.',
    start: '88 mm',
    optional: true,
    ...SKIRT,
  }),
  length('skirt', 'Skirt below the crown’s edge', 'The inlet', {
    help: 'Length of the piston on the inlet side, crown’s edge to skirt’s edge.',
    start: '70 mm',
    optional: true,
    ...SKIRT,
  }),
  angle('inletAngle', 'Inlet opens before the top', 'The inlet', {
    help: 'Read where crank degrees are what is known.',
    max: Math.PI * 1.1,
    ...SKIRT,
  }),
  angle('inletDuration', 'Inlet is open for', 'The inlet', {
    help: 'Read where the degrees open are what is known.',
    ...SKIRT,
  }),
  angle('discOpens', 'Disc opens before the top', 'The inlet', {
    max: Math.PI * 1.5,
    optional: false,
    ...DISC,
  }),
  angle('discCloses', 'Disc closes after the top', 'The inlet', { max: Math.PI, optional: false, ...DISC }),
  angle('discPort', 'Width of the port seen from the crank’s axis', 'The inlet', {
    help: 'For the angle to cut out of the disc.',
    max: Math.PI,
    ...DISC,
  }),
];

const out = (name: string, label: string, more: Partial<OutputField> = {}): OutputField => ({
  name,
  label,
  quantity: 'angle',
  units: ['deg'],
  figures: 4,
  ...more,
});
const LENGTH: Partial<OutputField> = { quantity: 'length', units: ['mm', 'in'], decimals: 2 };

export { solve };

/** Port timing of a two-stroke; arithmetic in solve-port-timing.ts, geometry in slider-crank.ts. */
export const portTiming = told(
  {
    id: 'port-timing',
    component: 'PortTiming',
    title: 'Port timing',
    answers:
      'When do a two-stroke’s exhaust, transfer and inlet open, and for how long: from heights to degrees and back?',
    fields: [
      length('stroke', 'Stroke', 'The engine', {
        help: 'Twice the crank radius.',
        start: '58 mm',
        machine: 'engine.stroke',
        min: 0.01,
      }),
      length('rod', 'Rod, centre to centre', 'The engine', {
        start: '115 mm',
        machine: 'engine.rod',
        min: 0.015,
        max: 0.8,
      }),
      length('offset', 'Gudgeon-pin offset', 'The engine', {
        help: '0 or empty for a central pin.',
        machine: 'engine.pin_offset',
        max: 0.02,
        optional: true,
      }),
      {
        kind: 'choice',
        name: 'side',
        label: 'Side of the offset',
        group: 'The engine',
        start: 'thrust',
        options: [
          { value: 'thrust', label: 'Towards the thrust side' },
          { value: 'away', label: 'Away from the thrust side' },
        ],
      },
      ...ports,
      ...inlet,
      {
        kind: 'figure',
        name: 'speed',
        label: 'Engine speed',
        help: 'For the time that the blowdown has.',
        group: 'At speed',
        quantity: 'rotation',
        units: ['rpm'],
        min: 1,
        max: 2200,
        takesPm: true,
        optional: true,
      },
    ],
    outputs: [
      out('exhaustOpens', 'Exhaust opens after the top'),
      out('exhaustDuration', 'Exhaust is open for'),
      out('exhaustTravel', 'Exhaust’s top below the crown at the top', LENGTH),
      out('transferOpens', 'Transfers open after the top'),
      out('transferDuration', 'Transfers are open for'),
      out('transferTravel', 'Transfers’ top below the crown at the top', LENGTH),
      out('blowdown', 'Blowdown: exhaust before transfers', { figures: 3 }),
      out('blowdownTime', 'Blowdown in time', { quantity: 'time', units: ['ms'], figures: 3 }),
      out('inletOpens', 'Inlet opens before the top'),
      out('inletCloses', 'Inlet closes after the top'),
      out('inletDuration', 'Inlet is open for'),
      out('inletTravel', 'Piston below the top as the inlet opens', LENGTH),
      out('discCut', 'Cut-out of the disc'),
      out('trappedStroke', 'Stroke left above the exhaust', LENGTH),
      out('perTenth', 'Exhaust 0.1 mm higher opens longer by', { figures: 2 }),
    ],
    conventions: [
      'Drawn so that the crank turns clockwise, top dead centre at the top; for an engine seen turning the other way, mirror it.',
      'Exhaust and transfer count after top dead centre, the inlet before it.',
      'Heights are measured along the bore, down from the crown’s edge at top dead centre, or from the barrel’s top with the deck given.',
      'A port is open from the first crack of its highest edge; the skirt opens the inlet from the port’s lower edge.',
    ],
    cautions: [
      'The maker’s heights come first. Metal filed off a port does not come back: a higher exhaust gives up pull low down.',
      'Ring ends must not run over a window; its edges want their chamfer again, or they catch the rings.',
    ],
    hazards: ['grinding'],
    sources: [
      'Exact geometry of the slider-crank; J. B. Heywood, Internal Combustion Engine Fundamentals, McGraw-Hill, 1988, section 2.2.',
      'Blowdown and trapped stroke as named in G. P. Blair, Design and Simulation of Two-Stroke Engines, SAE International, 1996.',
      'Ways of measuring: common practice, no source.',
      'JCGM 100:2008 for the ±.',
    ],
    checks: portTimingChecks,
    says: portTimingSays,
  },
  solve,
);
