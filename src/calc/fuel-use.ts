import { figureField, outputField, published, told } from './declare.ts';
import { fuelUseSays } from './fuel-use-says.ts';
import { solve } from './solve-fuel-use.ts';
import type { UnitId } from './units.ts';

export { solve };

const USED = 'What was used';
const TANK = 'Tank and range';
const CAN: readonly UnitId[] = ['L', 'US gal', 'imp gal'];
const USE: readonly UnitId[] = ['L/100km', 'km/L', 'imp mpg', 'US mpg'];
const EXACT =
  'US gallon of 231 in³, imperial gallon of 4.54609 L, mile of 1.609344 km: exact (NIST Handbook 44, App. C)';

const turned = (use: string, unit: UnitId, expected: number) =>
  published(
    `${use}-${unit}`.replace(/[^\w.-]/g, '-').toLowerCase(),
    `${use} is ${expected} ${unit === 'US mpg' ? 'miles a US gallon' : 'miles an imperial gallon'}`,
    { use },
    'use',
    [expected, unit, 0.0001],
    EXACT,
  );

/** Fuel use and range; arithmetic in solve-fuel-use.ts. */
export const fuelUse = told(
  {
    id: 'fuel-use',
    component: 'FuelUse',
    title: 'Fuel use and range',
    answers: 'How much does it use, how sure is that, and how far is it to the reserve?',
    fields: [
      {
        kind: 'choice',
        name: 'known',
        label: 'What is known',
        group: USED,
        start: 'fills',
        options: [
          { value: 'fills', label: 'Fills: distance and fuel' },
          { value: 'use', label: 'The use itself' },
        ],
      },
      {
        kind: 'table',
        name: 'fills',
        label: 'Fills',
        help: 'One a line: distance since the last fill, then fuel filled in, each time to the same brim.',
        group: USED,
        start: '142 km 9.4 L; 118 km 7.6 L; 155 km 10.5 L',
        maxRows: 40,
        columns: [
          {
            name: 'distance',
            label: 'Distance',
            quantity: 'length',
            units: ['km', 'mi'],
            min: 1e3,
            max: 5e6,
          },
          { name: 'fuel', label: 'Fuel', quantity: 'volume', units: CAN, min: 1e-4, max: 0.5 },
        ],
        when: { field: 'known', is: ['fills'] },
      },
      figureField('use', 'Use', 'use', USE, [5e-9, 1e-6], {
        group: USED,
        start: '6.5 L/100km',
        machine: 'fuel.use',
        takesPm: true,
        when: { field: 'known', is: ['use'] },
      }),
      figureField('brim', 'The brim is met within', 'volume', ['L', 'mL', 'US gal', 'imp gal'], [0, 0.02], {
        help: 'How far one filling may differ from the next, plus or minus; counts once at the start, once at the end.',
        group: USED,
        start: '0.3 L',
        optional: true,
        when: { field: 'known', is: ['fills'] },
      }),
      figureField('odo', 'The odometer may be wrong by', 'share', ['%'], [0, 0.3], {
        group: USED,
        optional: true,
        when: { field: 'known', is: ['fills'] },
      }),
      figureField('tank', 'Tank, full', 'volume', CAN, [5e-4, 1], {
        group: TANK,
        machine: 'fuel.tank',
        takesPm: true,
        optional: true,
      }),
      figureField('reserve', 'Of that, reserve', 'volume', CAN, [0, 0.5], {
        group: TANK,
        machine: 'fuel.reserve',
        takesPm: true,
        optional: true,
      }),
      figureField('now', 'In the tank now', 'volume', CAN, [0, 1], {
        group: TANK,
        takesPm: true,
        optional: true,
      }),
      figureField('trip', 'A trip of', 'length', ['km', 'mi'], [100, 1e7], { group: TANK, optional: true }),
    ],
    outputs: [
      outputField('use', 'Fuel used', 'use', USE, 3),
      outputField('distance', 'Distance, all fills', 'length', ['km', 'mi'], 4),
      outputField('fuel', 'Fuel, all fills', 'volume', CAN, 4),
      outputField('range', 'Range of a full tank', 'length', ['km', 'mi']),
      outputField('toReserve', 'Full tank to the reserve', 'length', ['km', 'mi']),
      outputField('left', 'From now to the reserve', 'length', ['km', 'mi']),
      outputField('takes', 'The trip takes', 'volume', CAN),
    ],
    conventions: [
      'Fuel is what was filled in at the end of each distance. For a two-stroke it is the mixture.',
      'Miles a gallon: US and imperial differ by a fifth and are named apart.',
    ],
    cautions: [
      'A range is an estimate, not a promise: fill up before the reserve.',
      'Fill with the engine off and cool, away from flame; never fill a can on board the vehicle.',
    ],
    hazards: ['petrol-vapour', 'fuel-on-hot-engine'],
    sources: [`${EXACT}.`, 'JCGM 100:2008 for the ±.'],
    checks: [
      turned('5 L/100km', 'imp mpg', 56.4962),
      turned('8 L/100km', 'US mpg', 29.4018),
      turned('8 L/100km', 'imp mpg', 35.3101),
      turned('12.5 L/100km', 'US mpg', 18.8172),
      turned('12.5 L/100km', 'imp mpg', 22.5985),
      published(
        'trip',
        '24.29 L for 347 km',
        { fills: '347 km 24.29 L' },
        'use',
        [7, 'L/100km', 0.0005],
        'Fuel over distance: exact arithmetic',
      ),
      published(
        'two-legs',
        '5 L and 10 L for 100 km each, joined',
        { fills: '100 5; 100 10' },
        'use',
        [7.5, 'L/100km', 0.0005],
        'Fuel over distance: exact arithmetic',
      ),
    ],
    says: fuelUseSays,
  },
  solve,
);
