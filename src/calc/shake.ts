import type { FigureField } from './contract.ts';
import { figureField, outputField, published, told } from './declare.ts';
import { shakeSays } from './shake-says.ts';
import { solve } from './solve-shake.ts';

export { solve };

const DRIVE = 'The drive';
const ENGINE = 'The engine';
const EXACT = 'One turn a rolling circumference, ratios and teeth: exact arithmetic';

const teeth = (name: string, label: string, max: number, more: Partial<FigureField>) =>
  figureField(name, label, 'count', ['n'], [4, max], { group: DRIVE, whole: true, optional: true, ...more });

const ratio = (name: string, label: string, group: string, more: Partial<FigureField>) =>
  figureField(name, label, 'ratio', [':1'], [0.2, 20], { group, optional: true, ...more });

const CHAIN = { when: { field: 'drive', is: ['chain'] } };
const ROLLS = { road: '44.352 km/h', circumference: '1232 mm' };
const GEARED = { ...ROLLS, sprocket: '16', axle: '34', links: '102', gear: '1', primary: '2.13' };

/** Which part turns at the frequency of a shake; arithmetic in solve-shake.ts. */
export const shake = told(
  {
    id: 'shake',
    component: 'Shake',
    title: 'What shakes at this speed',
    answers: 'A shake of so many hertz at this road speed: wheel, chain, shaft or engine?',
    fields: [
      figureField('felt', 'The shake', 'frequency', ['Hz', 'kHz'], [0.2, 2000], {
        help: 'Counted, or read from a recording. Empty lists what turns how often.',
        group: 'The shake',
        start: '10 Hz',
        takesPm: true,
        optional: true,
      }),
      figureField('road', 'Road speed', 'speed', ['km/h', 'mph'], [0.3, 100], {
        help: 'The true one; speedometers read high.',
        group: 'The shake',
        start: '45 km/h',
        takesPm: true,
      }),
      figureField('circumference', 'Rolling circumference', 'length', ['mm', 'm', 'in'], [0.5, 4], {
        help: 'Of the loaded wheel: roll it one turn.',
        group: DRIVE,
        start: '1240 mm',
        machine: 'tyres.rolling_circumference',
        takesPm: true,
      }),
      {
        kind: 'choice',
        name: 'drive',
        label: 'Final drive',
        group: DRIVE,
        start: 'chain',
        options: [
          { value: 'chain', label: 'Chain' },
          { value: 'shaft', label: 'Shaft or gears' },
        ],
      },
      teeth('sprocket', 'Teeth, gearbox sprocket', 60, { machine: 'drive.gearbox_sprocket', ...CHAIN }),
      teeth('axle', 'Teeth, wheel or axle sprocket', 120, { machine: 'drive.axle_sprocket', ...CHAIN }),
      teeth('links', 'Links of the chain', 400, { machine: 'drive.chain_links', ...CHAIN }),
      ratio('final', 'Final drive ratio', DRIVE, { when: { field: 'drive', is: ['shaft'] } }),
      ratio('gear', 'Gearbox ratio in that gear', ENGINE, { machine: 'gearbox.third' }),
      ratio('primary', 'Primary reduction', ENGINE, {
        help: 'Between engine and gearbox; empty for 1.',
        machine: 'drive.primary',
      }),
      figureField('cylinders', 'Cylinders', 'count', ['n'], [1, 24], {
        group: ENGINE,
        machine: 'engine.cylinders',
        whole: true,
        optional: true,
      }),
      {
        kind: 'choice',
        name: 'strokes',
        label: 'Cycle',
        group: ENGINE,
        start: '2',
        machine: 'engine.strokes',
        options: [
          { value: '2', label: 'Two-stroke' },
          { value: '4', label: 'Four-stroke' },
        ],
      },
    ],
    outputs: [
      outputField('wheel', 'Wheel', 'frequency', ['Hz']),
      outputField('shaft', 'Gearbox sprocket, or propeller shaft', 'frequency', ['Hz']),
      outputField('link', 'Chain links', 'frequency', ['Hz']),
      outputField('chain', 'Chain, once round', 'frequency', ['Hz']),
      outputField('engine', 'Engine, once a turn', 'frequency', ['Hz']),
      outputField('firing', 'Engine, firings', 'frequency', ['Hz']),
    ],
    conventions: [
      'Ratios are turns of the driving part for one of the driven. No slip of clutch or tyre is counted.',
      'A part fits where it lies within twice the joint ± of the figures, a shake given without ± is taken as ± 5 %.',
    ],
    cautions: [
      'Do not look for a shake with a hand near a turning wheel or chain, nor by driving faster. Stop, switch off, chock, then look.',
      'A shake that is new, grows, or comes through steering or brakes: do not drive until its cause is found. Check wheel nuts first.',
    ],
    hazards: ['road-test', 'rotating-parts', 'filming-driving'],
    sources: [
      'Frequencies: exact arithmetic from speed, circumference, ratios and teeth.',
      'Once a turn for imbalance, twice for ovality or a cardan joint, half the firings for uneven firing: common practice, no source.',
      'JCGM 100:2008 for the ±.',
    ],
    checks: [
      published('wheel', '44.352 km/h on 1232 mm a turn', ROLLS, 'wheel', [10, 'Hz', 0.0005], EXACT),
      published('sprocket', 'The gearbox sprocket of 34/16', GEARED, 'shaft', [21.25, 'Hz', 0.0005], EXACT),
      published('links', 'Its links on the sprocket', GEARED, 'link', [340, 'Hz', 0.0005], EXACT),
      published(
        'round',
        'The chain of 102 links, once round',
        GEARED,
        'chain',
        [3.3333, 'Hz', 0.0005],
        EXACT,
      ),
      published('engine', 'The engine through 2.13:1', GEARED, 'engine', [45.2625, 'Hz', 0.0005], EXACT),
      published(
        'propshaft',
        'A shaft before 4.125:1 at the same speed',
        { ...ROLLS, final: '4.125' },
        'shaft',
        [41.25, 'Hz', 0.0005],
        EXACT,
      ),
      published(
        'firing',
        'A four-stroke four fires twice a turn',
        { ...GEARED, cylinders: '4', strokes: '4' },
        'firing',
        [90.525, 'Hz', 0.0005],
        'Even firing: common practice, no source',
        'common practice',
      ),
    ],
    says: shakeSays,
  },
  solve,
);
