import type { Field, FigureField } from './contract.ts';
import { told } from './declare.ts';
import { premixChecks } from './premix-checks.ts';
import { premixSays } from './premix-says.ts';
import { solve } from './solve-premix.ts';
import type { UnitId } from './units.ts';

const CAN: readonly UnitId[] = ['L', 'US gal', 'imp gal', 'US qt', 'imp pt'];
const JUG: readonly UnitId[] = ['mL', 'L', 'US fl oz', 'imp fl oz', 'US pt', 'imp pt'];

const RATIO = { kind: 'figure', quantity: 'mixture', units: [':1', '%'], min: 1 / 200, max: 1 / 8 } as const;
const MIX = { kind: 'figure', quantity: 'volume', units: CAN, min: 0, max: 1 } as const;

const amounts: readonly Field[] = [
  {
    ...RATIO,
    name: 'ratio',
    label: 'Fuel to oil',
    help: 'By volume: 25:1 is twenty-five parts of fuel to one of oil, 4 % of the fuel.',
    group: 'The mixture',
    start: '25:1',
    machine: 'fuel.ratio',
  },
  {
    kind: 'choice',
    name: 'known',
    label: 'What is known',
    group: 'The mixture',
    start: 'fuel',
    options: [
      { value: 'fuel', label: 'So much fuel: oil to add to it' },
      { value: 'oil', label: 'So much oil: fuel for it' },
      { value: 'can', label: 'So much finished mixture: both' },
    ],
  },
  ...(
    [
      ['fuel', 'Fuel', CAN, '5 L'],
      ['oil', 'Oil', JUG, undefined],
      ['can', 'Finished mixture', CAN, undefined],
    ] as const
  ).map(([name, label, units, start]): FigureField => {
    const field: FigureField = {
      kind: 'figure',
      name,
      label,
      group: 'The mixture',
      quantity: 'volume',
      units,
      min: name === 'oil' ? 1e-6 : 5e-5,
      max: name === 'oil' ? 0.1 : 1,
      takesPm: true,
      when: { field: 'known', is: [name] },
    };
    return start ? { ...field, start } : field;
  }),
];

const tank: readonly Field[] = [
  {
    ...MIX,
    name: 'tank',
    label: 'Mixture in the tank now',
    group: 'Correct a tank',
    takesPm: true,
    optional: true,
  },
  { ...RATIO, name: 'tankRatio', label: 'Its ratio', group: 'Correct a tank', optional: true },
  {
    ...MIX,
    name: 'added',
    label: 'Poured in on top',
    group: 'Correct a tank',
    takesPm: true,
    optional: true,
  },
  {
    ...RATIO,
    name: 'addedRatio',
    label: 'Ratio of that',
    help: 'Empty for plain fuel.',
    group: 'Correct a tank',
    optional: true,
  },
  {
    ...MIX,
    name: 'fill',
    label: 'Fill up to',
    help: 'Whole contents of the tank afterwards.',
    group: 'Correct a tank',
    optional: true,
  },
];

const PRICES: readonly UnitId[] = ['/L', '/US gal', '/imp gal', '/US qt', '/imp pt'];

const costs: readonly Field[] = [
  {
    kind: 'figure',
    name: 'oilError',
    label: 'Error of the oil measure',
    help: 'How far the jug may be read wrong, plus or minus.',
    group: 'Measuring',
    quantity: 'volume',
    units: JUG,
    min: 0,
    max: 0.001,
    optional: true,
  },
  {
    kind: 'figure',
    name: 'fuelError',
    label: 'Error of the fuel measure',
    group: 'Measuring',
    quantity: 'volume',
    units: ['mL', 'L', 'US fl oz', 'imp fl oz'],
    min: 0,
    max: 0.01,
    optional: true,
  },
  {
    ...MIX,
    name: 'capacity',
    label: 'Tank, full',
    group: 'Cost and range',
    machine: 'fuel.tank',
    optional: true,
  },
  {
    ...MIX,
    name: 'reserve',
    label: 'Of that, reserve',
    group: 'Cost and range',
    machine: 'fuel.reserve',
    optional: true,
  },
  {
    kind: 'figure',
    name: 'use',
    label: 'Consumption of mixture',
    group: 'Cost and range',
    quantity: 'use',
    units: ['L/100km', 'km/L', 'imp mpg', 'US mpg'],
    machine: 'fuel.use',
    min: 1e-9,
    max: 1e-6,
    takesPm: true,
    optional: true,
  },
  {
    kind: 'figure',
    name: 'fuelPrice',
    label: 'Price of fuel',
    help: 'In your money.',
    group: 'Cost and range',
    quantity: 'price',
    units: PRICES,
    min: 0,
    max: 1e6,
    optional: true,
  },
  {
    kind: 'figure',
    name: 'oilPrice',
    label: 'Price of oil',
    help: 'In the same money.',
    group: 'Cost and range',
    quantity: 'price',
    units: PRICES,
    min: 0,
    max: 1e6,
    optional: true,
  },
];

export { solve };

/** Two-stroke mixture; arithmetic in solve-premix.ts. */
export const premix = told(
  {
    id: 'premix',
    component: 'Premix',
    title: 'Fuel and oil mixture',
    answers:
      'How much oil goes with how much fuel, and how is a tank put right that was mixed at another ratio?',
    fields: [...amounts, ...tank, ...costs],
    outputs: [
      { name: 'oil', label: 'Oil', quantity: 'volume', units: ['mL', 'US fl oz', 'imp fl oz'], figures: 4 },
      { name: 'fuel', label: 'Fuel', quantity: 'volume', units: ['L', 'US gal', 'imp gal'], figures: 4 },
      {
        name: 'mixture',
        label: 'Finished mixture',
        quantity: 'volume',
        units: ['L', 'US gal', 'imp gal'],
        figures: 4,
      },
      {
        name: 'oilInside',
        label: 'Oil, if that volume is the finished mixture',
        quantity: 'volume',
        units: ['mL', 'US fl oz', 'imp fl oz'],
        figures: 4,
      },
      { name: 'ratio', label: 'Fuel to oil', quantity: 'mixture', units: [':1', '%'], figures: 3 },
      {
        name: 'made',
        label: 'What measuring makes of it',
        quantity: 'mixture',
        units: [':1', '%'],
        figures: 3,
      },
      {
        name: 'blend',
        label: 'In the tank, all together',
        quantity: 'volume',
        units: ['L', 'US gal', 'imp gal'],
        figures: 4,
      },
      { name: 'blendRatio', label: 'Its ratio', quantity: 'mixture', units: [':1', '%'], figures: 3 },
      {
        name: 'addOil',
        label: 'To put it right, add oil',
        quantity: 'volume',
        units: ['mL', 'US fl oz', 'imp fl oz'],
        figures: 4,
      },
      {
        name: 'addFuel',
        label: 'To put it right, add plain fuel',
        quantity: 'volume',
        units: ['L', 'US gal', 'imp gal'],
        figures: 4,
      },
      {
        name: 'fillFuel',
        label: 'To fill up, fuel',
        quantity: 'volume',
        units: ['L', 'US gal', 'imp gal'],
        figures: 4,
      },
      {
        name: 'fillOil',
        label: 'To fill up, oil',
        quantity: 'volume',
        units: ['mL', 'US fl oz', 'imp fl oz'],
        figures: 4,
      },
      {
        name: 'cost',
        label: 'Cost of a full tank, in your money',
        quantity: 'money',
        units: ['n'],
        figures: 4,
        decimals: 2,
      },
      {
        name: 'oilCost',
        label: 'Of that, the oil',
        quantity: 'money',
        units: ['n'],
        figures: 3,
        decimals: 2,
      },
      { name: 'range', label: 'Range of a full tank', quantity: 'length', units: ['km', 'mi'], figures: 3 },
      {
        name: 'rangeToReserve',
        label: 'Range before the reserve',
        quantity: 'length',
        units: ['km', 'mi'],
        figures: 3,
      },
      {
        name: 'cost100',
        label: 'Cost of 100 km, in your money',
        quantity: 'money',
        units: ['n'],
        figures: 3,
        decimals: 2,
      },
    ],
    conventions: [
      'The ratio is fuel to oil by volume; a per cent is of the fuel, not of the mixture.',
      'US and imperial gallons, pints and fluid ounces differ and are named apart.',
    ],
    cautions: [
      "The maker's ratio for this engine and this oil comes first. Too little oil seizes it, too much fouls the plug.",
      'Mix out of doors, away from flame and sparks, in a can made for petrol, standing on the ground.',
    ],
    hazards: ['mixing-fuel', 'petrol-vapour', 'fuel-on-hot-engine', 'oil-starved-overrun'],
    sources: [
      'Unit factors: NIST Handbook 44, App. C; Units of Measurement Regulations 1995 (UK).',
      'Order of mixing, reading of a ratio: common practice, no source.',
      'JCGM 100:2008 for the ±.',
    ],
    checks: premixChecks,
    says: premixSays,
  },
  solve,
);
