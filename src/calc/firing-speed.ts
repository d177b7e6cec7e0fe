import { figureField, outputField, published, told } from './declare.ts';
import { firingSpeedSays } from './firing-speed-says.ts';
import { solve } from './solve-firing-speed.ts';

export { solve };

const ARITHMETIC =
  'A two-stroke fires each cylinder every turn, a four-stroke every second turn: exact arithmetic';
const row = (id: string, says: string, cylinders: number, strokes: number, hertz: number, rpm: number) =>
  published(
    id,
    says,
    { cylinders: String(cylinders), strokes: String(strokes), frequency: `${hertz} Hz` },
    'speed',
    [rpm, 'rpm', 0.05],
    ARITHMETIC,
  );

/** Engine speed from a recording; arithmetic in solve-firing-speed.ts. */
export const firingSpeed = told(
  {
    id: 'firing-speed',
    component: 'FiringSpeed',
    title: 'Engine speed from its sound',
    answers: 'How fast does the engine turn if its firings are heard at so many hertz?',
    fields: [
      figureField('cylinders', 'Cylinders', 'count', ['n'], [1, 24], {
        group: 'The engine',
        start: '2',
        machine: 'engine.cylinders',
        whole: true,
      }),
      {
        kind: 'choice',
        name: 'strokes',
        label: 'Cycle',
        group: 'The engine',
        start: '2',
        machine: 'engine.strokes',
        options: [
          { value: '2', label: 'Two-stroke' },
          { value: '4', label: 'Four-stroke' },
        ],
      },
      {
        kind: 'choice',
        name: 'known',
        label: 'What is known',
        group: 'The sound',
        start: 'frequency',
        options: [
          { value: 'frequency', label: 'The tone' },
          { value: 'speed', label: 'The engine speed' },
        ],
      },
      figureField('frequency', 'Tone', 'frequency', ['Hz', 'kHz'], [0.5, 3000], {
        help: 'Read from a spectrum of the recording, or counted.',
        group: 'The sound',
        start: '25 Hz',
        takesPm: true,
        when: { field: 'known', is: ['frequency'] },
      }),
      figureField('speed', 'Engine speed', 'rotation', ['rpm'], [1, 2100], {
        group: 'The sound',
        start: '750 rpm',
        takesPm: true,
        when: { field: 'known', is: ['speed'] },
      }),
      {
        kind: 'choice',
        name: 'tone',
        label: 'The tone is',
        group: 'The sound',
        start: 'firing',
        options: [
          { value: 'firing', label: 'Every firing' },
          { value: 'one', label: 'One cylinder alone' },
          { value: 'half', label: 'Every second firing' },
          { value: 'twice', label: 'Twice the firings' },
        ],
      },
      figureField('window', 'Length of recording looked at', 'time', ['s', 'ms'], [0.005, 600], {
        help: 'Sets how finely tones are told apart; half a step is added as ±.',
        group: 'The sound',
        optional: true,
        when: { field: 'known', is: ['frequency'] },
      }),
    ],
    outputs: [
      outputField('speed', 'Engine speed', 'rotation', ['rpm'], 4),
      outputField('firing', 'Firings in a second', 'frequency', ['Hz'], 4),
      outputField('crank', 'Turns of the crank in a second', 'frequency', ['Hz'], 4),
      outputField('one', 'One cylinder alone', 'frequency', ['Hz'], 4),
      outputField('between', 'Between firings, if even', 'angle', ['deg'], 4),
      outputField('time', 'Between firings', 'time', ['ms'], 3),
    ],
    conventions: ['Firings of all cylinders together, evenly spaced. The crank’s own turns are named apart.'],
    cautions: [
      'Do not hold a telephone near belts, fans or the flywheel to record it. Lay it down, then start the engine.',
      'Run the engine out of doors: a recording is no reason to shut a door.',
    ],
    hazards: ['rotating-parts', 'engine-indoors'],
    sources: [
      'Firings a turn: exact arithmetic. Which tone is loudest: common practice, no source.',
      'Lines of a spectrum stand 1/T apart: property of the discrete Fourier transform.',
      'JCGM 100:2008 for the ±.',
    ],
    checks: [
      row('twin-two', 'Two-stroke twin at 25 Hz idles at 750 rev/min', 2, 2, 25, 750),
      row('single-two', 'Two-stroke single at 50 Hz', 1, 2, 50, 3000),
      row('single-four', 'Four-stroke single at 25 Hz', 1, 4, 25, 3000),
      row('four-four', 'Four-stroke four at 100 Hz', 4, 4, 100, 3000),
      row('six-four', 'Four-stroke six at 150 Hz', 6, 4, 150, 3000),
      row('three-two', 'Two-stroke three at 200 Hz', 3, 2, 200, 4000),
      published(
        'interval-eight',
        'A four-stroke eight fires every 90°',
        { cylinders: '8', strokes: '4', speed: '3000' },
        'between',
        [90, 'deg', 0.05],
        'Even firing: common practice, no source',
        'common practice',
      ),
    ],
    says: firingSpeedSays,
  },
  solve,
);
