import type { Calculator, Field, FigureField, PublishedCheck } from './contract.ts';
import { solve } from './solve-premix.ts';
import type { UnitId } from './units.ts';

const CAN: readonly UnitId[] = ['L', 'US gal', 'imp gal', 'US qt', 'imp pt'];
const JUG: readonly UnitId[] = ['mL', 'L', 'US fl oz', 'imp fl oz', 'US pt', 'imp pt'];

const VILLAGE =
  'Village Math: Mixing gas and oil, Alaska Native Knowledge Network, University of Alaska Fairbanks: question and unit factor; answer by arithmetic';
const HANDBOOK = 'Exact arithmetic, oil = fuel / ratio; unit factors of NIST Handbook 44, App. C';

const derived = (
  id: string,
  says: string,
  given: Record<string, string>,
  output: string,
  expected: number,
  unit: UnitId,
  tolerance: number,
  source = HANDBOOK,
): PublishedCheck => ({ id, says, given, output, expected, unit, tolerance, source, mark: 'derived' });

const checks: readonly PublishedCheck[] = [
  derived(
    'us-20',
    '1 US gallon of fuel at 20:1',
    { ratio: '20:1', fuel: '1 US gal' },
    'oil',
    6.4,
    'US fl oz',
    0.005,
    VILLAGE,
  ),
  derived(
    'us-100',
    '1 US gallon of fuel at 100:1',
    { ratio: '100:1', fuel: '1 US gal' },
    'oil',
    1.28,
    'US fl oz',
    0.005,
    VILLAGE,
  ),
  derived(
    'us-15-50',
    '15 US gallons of fuel at 50:1',
    { ratio: '50:1', fuel: '15 US gal' },
    'oil',
    1.2,
    'US qt',
    0.001,
    VILLAGE,
  ),
  derived(
    'us-50',
    '1 US gallon of fuel at 50:1 (often printed 2.6)',
    { ratio: '50:1', fuel: '1 US gal' },
    'oil',
    2.56,
    'US fl oz',
    0.0005,
  ),
  derived(
    'added-5-25',
    'Oil added to 5 L of fuel at 25:1',
    { ratio: '25:1', fuel: '5 L' },
    'oil',
    200,
    'mL',
    0.001,
  ),
  derived(
    'inside-5-25',
    'Oil inside 5 L of finished mixture at 25:1',
    { ratio: '25:1', can: '5 L' },
    'oil',
    192.3077,
    'mL',
    0.001,
  ),
  derived('litres-33', '5 L of fuel at 33:1', { ratio: '33:1', fuel: '5 L' }, 'oil', 151.515, 'mL', 0.001),
  derived(
    'imperial-20',
    '1 imperial gallon of fuel at 20:1',
    { ratio: '20:1', fuel: '1 imp gal' },
    'oil',
    8,
    'imp fl oz',
    0.0001,
  ),
  derived(
    'correct-lean',
    '5 L of fuel with 100 mL of oil, to become 25:1',
    { ratio: '25:1', fuel: '5 L', tank: '5.1 L', tankRatio: '50:1' },
    'addOil',
    100,
    'mL',
    0.001,
  ),
  derived(
    'correct-rich',
    '5 L of fuel with 250 mL of oil, to become 40:1',
    { ratio: '40:1', fuel: '5 L', tank: '5.25 L', tankRatio: '20:1' },
    'addFuel',
    5,
    'L',
    0.001,
  ),
  derived(
    'fill-up',
    '3 L at 50:1 filled to 8 L at 33:1: fuel to pour in',
    { ratio: '33:1', fuel: '5 L', tank: '3 L', tankRatio: '50:1', fill: '8 L' },
    'fillFuel',
    4823.529,
    'mL',
    0.002,
  ),
  derived(
    'two-ratios',
    '2 L at 25:1 and 3 L at 50:1 together',
    { ratio: '25:1', fuel: '5 L', tank: '2 L', tankRatio: '25:1', added: '3 L', addedRatio: '50:1' },
    'blendRatio',
    35.8333,
    ':1',
    0.0005,
  ),
  {
    ...derived(
      'parts',
      '50:1 is one part of oil to fifty of fuel by volume',
      { ratio: '50:1', oil: '100 mL' },
      'fuel',
      5,
      'L',
      1e-9,
      'Reading of a ratio in the trade: common practice, no source',
    ),
    mark: 'common practice',
  },
];

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
export const premix: Calculator = {
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
    { name: 'oilCost', label: 'Of that, the oil', quantity: 'money', units: ['n'], figures: 3, decimals: 2 },
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
  checks,
  solve,
};
