import { airAndJetsChecks } from './air-and-jets-checks.ts';
import { airAndJetsSays } from './air-and-jets-says.ts';
import type { Field, OutputField } from './contract.ts';
import { told } from './declare.ts';
import { solve } from './solve-air-and-jets.ts';

/** Height, temperature, humidity and pressure of one place. */
const place = (when: '' | 'Then', group: string, height: string): Field[] => [
  {
    kind: 'figure',
    name: `altitude${when}`,
    label: 'Height above the sea',
    group,
    quantity: 'length',
    units: ['m', 'ft'],
    start: height,
    min: -430,
    max: 6000,
    takesPm: true,
    optional: true,
  },
  {
    kind: 'figure',
    name: `temperature${when}`,
    label: 'Air temperature',
    help: 'In the shade, where the carburettor draws it.',
    group,
    quantity: 'temperature',
    units: ['degC', 'degF'],
    start: '15 degC',
    min: 233.15,
    max: 333.15,
    takesPm: true,
  },
  {
    kind: 'figure',
    name: `humidity${when}`,
    label: 'Relative humidity',
    help: 'Empty: dry air.',
    group,
    quantity: 'share',
    units: ['%'],
    min: 0,
    max: 1,
    takesPm: true,
    optional: true,
  },
  {
    kind: 'figure',
    name: `pressure${when}`,
    label: 'Air pressure, as it is there',
    help: 'Counts before the height. Weather reports reduce it to the sea: that is not this figure.',
    group,
    quantity: 'pressure',
    units: ['hPa', 'kPa', 'mmHg', 'inHg', 'psi', 'bar'],
    min: 40000,
    max: 110000,
    takesPm: true,
    optional: true,
  },
];

const out = (name: string, label: string, more: Partial<OutputField> = {}): OutputField => ({
  name,
  label,
  quantity: 'share',
  units: ['%'],
  figures: 3,
  ...more,
});
const DENSITY: Partial<OutputField> = { quantity: 'density', units: ['kg/m3', 'lb/ft3'], figures: 4 };

export { solve };

/** Air and jets; arithmetic in solve-air-and-jets.ts, the air in moist-air.ts. */
export const airAndJets = told(
  {
    id: 'air-and-jets',
    component: 'AirAndJets',
    title: 'Air and jets',
    answers:
      'How much thinner or denser is the air here, what does that do to the mixture, and which jet brings it back?',
    fields: [
      ...place('Then', 'Where the jet was right', '0 m'),
      ...place('', 'Here, now', '1000 m'),
      {
        kind: 'figure',
        name: 'jet',
        label: 'Main jet that was right, its number',
        group: 'The jet',
        quantity: 'count',
        units: ['n'],
        machine: 'fuel.main_jet',
        min: 10,
        max: 1000,
        optional: true,
      },
      {
        kind: 'choice',
        name: 'marking',
        label: 'The number counts',
        group: 'The jet',
        start: 'bore',
        options: [
          { value: 'bore', label: 'The bore, such as 95 for 0.95 mm' },
          { value: 'flow', label: 'The flow, such as mL a minute' },
        ],
      },
    ],
    outputs: [
      out('densityThen', 'Density where the jet was right', DENSITY),
      out('density', 'Density here', DENSITY),
      out('change', 'Change of density'),
      out('pressure', 'Air pressure here', {
        quantity: 'pressure',
        units: ['hPa', 'mmHg', 'inHg'],
        figures: 4,
      }),
      out('dry', 'Change of the dry air in it, and its oxygen'),
      out('richer', 'Mixture with the same jet: richer (+), leaner (−)'),
      out('area', 'Jet area for the same mixture', { units: ['%'], figures: 4 }),
      out('jet', 'Jet for the same mixture', { quantity: 'count', units: ['n'], figures: 4 }),
    ],
    conventions: [
      'Richer means more fuel for the same air.',
      'Heights are geometric, in the standard atmosphere; a pressure given counts before them.',
    ],
    cautions: [
      'The maker’s jet for the place and season comes first. This figure is a start for trials from the rich side.',
      'Running lean holes and seizes two-strokes. Read the plug after a full-throttle run cut clean, before going further.',
      'Change jets with the engine cold, fuel off, away from flame.',
    ],
    hazards: ['petrol-vapour', 'fuel-on-hot-engine'],
    sources: [
      'ISO 2533:1975, Standard atmosphere.',
      'WMO-No. 8, Guide to Instruments and Methods of Observation: vapour pressure, from memory.',
      'Flow through an orifice goes as its area and the root of density times suction: J. B. Heywood, Internal Combustion Engine Fundamentals, 1988, section 7.2.',
      'Jet numbers by bore or by flow: common practice, no source.',
      'JCGM 100:2008 for the ±.',
    ],
    checks: airAndJetsChecks,
    says: airAndJetsSays,
  },
  solve,
);
