import { figureField, outputField, published, told } from './declare.ts';
import { solve } from './solve-speed-check.ts';
import { speedCheckSays } from './speed-check-says.ts';

export { solve };

const RUN = 'Against the stopwatch';
const ODO = 'The odometer';
const R39 = 'UN Regulation No. 39, Rev. 1, 5.3 (OJ L 120, 13.5.2010)';
const LENGTHS = ['km', 'm', 'mi', 'yd'] as const;

const shown = (kmh: number, most: number, seconds: number) =>
  published(
    `r39-${kmh}`,
    `At a true ${kmh} km/h at most ${most} km/h may be shown`,
    { distance: '1 km', time: `${seconds} s` },
    'most',
    [most, 'km/h', 0.01],
    R39,
  );

/** Speedometer and odometer against distance and stopwatch; arithmetic in solve-speed-check.ts. */
export const speedCheck = told(
  {
    id: 'speed-check',
    component: 'SpeedCheck',
    title: 'Speedometer and odometer check',
    answers: 'How fast was it really, and how wrong are the speedometer and the odometer?',
    fields: [
      figureField('distance', 'Measured distance', 'length', LENGTHS, [20, 2e5], {
        help: 'Between two marks, such as kilometre posts; from a map or a tape.',
        group: RUN,
        start: '1000 ± 5 m',
        takesPm: true,
        optional: true,
      }),
      figureField('time', 'Time for it', 'time', ['s', 'min'], [1, 7200], {
        help: 'At a steady speed; a passenger holds the watch. 1 min 12 s may be written so.',
        group: RUN,
        start: '84 ± 0.4 s',
        takesPm: true,
        optional: true,
      }),
      figureField('indicated', 'Speedometer showed', 'speed', ['km/h', 'mph'], [0.5, 80], {
        group: RUN,
        start: '45 ± 1 km/h',
        takesPm: true,
        optional: true,
      }),
      figureField('odoTrue', 'Distance in truth', 'length', ['km', 'mi'], [500, 2e6], {
        help: 'By posts or a map, over as long a way as can be.',
        group: ODO,
        takesPm: true,
        optional: true,
      }),
      figureField('odoShown', 'Odometer counted', 'length', ['km', 'mi'], [500, 2e6], {
        group: ODO,
        takesPm: true,
        optional: true,
      }),
      figureField('reading', 'A distance that it shows', 'length', ['km', 'mi'], [0, 2e9], {
        help: 'Put right with the odometer’s factor; of no use for what ran before with other tyres.',
        group: ODO,
        optional: true,
      }),
    ],
    outputs: [
      outputField('speed', 'True speed', 'speed', ['km/h', 'mph'], 4),
      outputField('off', 'Speedometer shows too much by', 'speed', ['km/h', 'mph'], 2),
      outputField('share', 'Of the true speed', 'share', ['%'], 2),
      outputField('most', 'The most that may be shown then', 'speed', ['km/h', 'mph'], 3, {
        help: 'UN Regulation No. 39, for new vehicles; the least is the true speed.',
      }),
      outputField('factor', 'Odometer’s factor', 'count', ['n'], 4),
      outputField('odoShare', 'Odometer counts too much by', 'share', ['%'], 2),
      outputField('really', 'That distance in truth', 'length', ['km', 'mi'], 4),
    ],
    conventions: ['A plus means that the instrument shows more than is true; a minus, less.'],
    cautions: [
      'A passenger reads watch and dial; the driver drives. Use a quiet level road, within its limit.',
      'A speedometer that reads low is no defence. Whether yours must keep to UN Regulation No. 39 is for your law and inspection to say.',
    ],
    hazards: ['road-test', 'slow-vehicle', 'filming-driving'],
    sources: [`${R39}: 0 ≤ shown − true ≤ true / 10 + 4 km/h.`, 'JCGM 100:2008 for the ±.'],
    checks: [
      shown(40, 48, 90),
      shown(80, 92, 45),
      shown(120, 136, 30),
      published(
        'post-72',
        '1 km in 72 s',
        { distance: '1 km', time: '72 s' },
        'speed',
        [50, 'km/h', 0.005],
        'Distance over time: exact arithmetic',
      ),
      published(
        'mile-90',
        'A mile in 90 s',
        { distance: '1 mi', time: '90 s' },
        'speed',
        [40, 'mph', 0.005],
        'Distance over time: exact arithmetic',
      ),
      published(
        'mile-km',
        '1 mi is 1.609344 km: an odometer in miles over 10 km',
        { odoTrue: '10 km', odoShown: '6.2137119 mi' },
        'factor',
        [1, 'n', 0.0001],
        'International yard of 1959: exact',
      ),
    ],
    says: speedCheckSays,
  },
  solve,
);
