import { brakeDrumSays } from './brake-drum-says.ts';
import { figureField, outputField, published, told } from './declare.ts';
import { solve } from './solve-brake-drum.ts';

export { solve };

const DRUM = 'The drum';
const TURNING = 'Machining';
const LINING = 'The lining';
const LENGTH = ['mm', 'in', 'thou'] as const;
const EXACT = 'Difference of two diameters: exact arithmetic';
const MEASURED = { across: '150.42 150.55 150.48 150.50', fresh: '150 mm', discard: '151 mm' };

/** Wear of a brake drum and its lining; arithmetic in solve-brake-drum.ts. */
export const brakeDrum = told(
  {
    id: 'brake-drum',
    component: 'BrakeDrum',
    title: 'Brake drum and lining',
    answers: 'How worn and how oval is the drum, and what would machining leave before it is scrap?',
    fields: [
      {
        kind: 'table',
        name: 'across',
        label: 'Diameters as measured',
        help: 'In four directions at least, in the swept track, not at the lip; in one line or one a line.',
        group: DRUM,
        start: '150.42 150.55 150.48 150.50',
        maxRows: 24,
        columns: [
          {
            name: 'diameter',
            label: 'Diameter',
            quantity: 'length',
            units: ['mm', 'in'],
            min: 0.06,
            max: 0.6,
          },
        ],
      },
      figureField('fresh', 'Diameter, new', 'length', ['mm', 'in'], [0.06, 0.6], {
        help: 'The maker’s figure.',
        group: DRUM,
        start: '150 mm',
      }),
      figureField('discard', 'Discard diameter', 'length', ['mm', 'in'], [0.06, 0.6], {
        help: 'As cast or stamped on the drum (“MAX”), else the maker’s.',
        group: DRUM,
        start: '151 mm',
        machine: 'brakes.drum_limit',
        optional: true,
      }),
      figureField('runOut', 'Run-out', 'length', LENGTH, [0, 0.005], {
        help: 'Whole travel of a dial on the track in one turn on its own hub.',
        group: DRUM,
        start: '0.10 mm',
        takesPm: true,
        optional: true,
      }),
      figureField('ovalLimit', 'The maker’s limit of ovality', 'length', LENGTH, [1e-6, 0.002], {
        group: DRUM,
        optional: true,
      }),
      figureField('runOutLimit', 'The maker’s limit of run-out', 'length', LENGTH, [1e-6, 0.002], {
        group: DRUM,
        optional: true,
      }),
      figureField('cut', 'Last cut, on the radius', 'length', LENGTH, [0, 0.002], {
        help: 'What the machinist takes below the lowest place, for a clean face.',
        group: TURNING,
        start: '0.05 mm',
        optional: true,
      }),
      figureField('keep', 'To be kept for wear, on the diameter', 'length', LENGTH, [0, 0.005], {
        help: 'Your own choice or the maker’s; half a millimetre and more is common practice, no source.',
        group: TURNING,
        optional: true,
      }),
      figureField('lining', 'Lining, at its thinnest', 'length', LENGTH, [0, 0.03], {
        group: LINING,
        takesPm: true,
        optional: true,
      }),
      figureField('liningLimit', 'Thinnest permitted', 'length', LENGTH, [1e-4, 0.02], {
        help: 'The maker’s; above the rivets where it is riveted.',
        group: LINING,
        machine: 'brakes.lining_limit',
        optional: true,
      }),
    ],
    outputs: [
      outputField('most', 'Largest diameter', 'length', ['mm', 'in'], 5, { decimals: 2 }),
      outputField('ovality', 'Ovality, largest less smallest', 'length', ['mm', 'thou'], 2, { decimals: 2 }),
      outputField('wear', 'Wear on the diameter', 'length', ['mm', 'in'], 3, { decimals: 2 }),
      outputField('left', 'Left before discard', 'length', ['mm', 'in'], 3, { decimals: 2 }),
      outputField('clean', 'Turned clean, at the most', 'length', ['mm', 'in'], 5, { decimals: 2 }),
      outputField('leftAfter', 'Left after turning', 'length', ['mm', 'in'], 3, { decimals: 2 }),
      outputField('spare', 'Of that, beyond what is to be kept', 'length', ['mm', 'in'], 3, { decimals: 2 }),
      outputField('liningLeft', 'Lining left before its limit', 'length', ['mm', 'in'], 3, { decimals: 2 }),
      outputField('allowance', 'From new to discard', 'length', ['mm', 'in'], 3, { decimals: 2 }),
    ],
    conventions: [
      'All wear is counted on the diameter, a cut on the radius; ovality is a difference of diameters, run-out the whole travel of the dial.',
      'Turned clean: the largest diameter plus the whole run-out, which is never too little.',
    ],
    cautions: [
      'A drum at or beyond the diameter cast on it is scrap, also if it looks well. So is one with cracks, blue spots or a loose liner, which no figure here sees.',
      'Dust of old linings may hold asbestos: no compressed air, no dry brush.',
      'After any work on brakes test them standing, then at walking pace, away from traffic. These figures are no permission to drive.',
    ],
    hazards: ['brake-dust', 'failed-brakes'],
    sources: [
      'Discard diameter as embossed on the drum, else the maker’s: 49 CFR 570.5, from memory. No rule makes a maker stamp it: NHTSA interpretation 7871 (1992).',
      'Bound of the cleaned diameter: own geometry, in the code beside it. Ovality as difference of diameters, both drums alike: common practice, no source.',
      'JCGM 100:2008 for the ±.',
    ],
    checks: [
      published(
        'tm-allowance',
        'A drum may grow by 0.120 in from new to discard',
        { across: '16.55 in', fresh: '16.5 in', discard: '16.62 in' },
        'allowance',
        [0.12, 'in', 0.0005],
        'US Army TM 9-2330-326-14&P, p. 0325: 0.120 in over nominal',
        'found',
      ),
      published(
        'tm-left',
        'Of that drum at 16.55 in',
        { across: '16.55 in', fresh: '16.5 in', discard: '16.62 in' },
        'left',
        [0.07, 'in', 0.0005],
        'US Army TM 9-2330-326-14&P, p. 0325, limit; answer by arithmetic',
      ),
      published('ovality', '150.42 to 150.55 mm', MEASURED, 'ovality', [0.13, 'mm', 0.0005], EXACT),
      published('wear', 'Against 150 mm new', MEASURED, 'wear', [0.55, 'mm', 0.0005], EXACT),
      published(
        'eccentric',
        'A round drum of 150.50 mm, 0.05 mm off its hub’s axis (run-out 0.10), turned clean',
        { ...MEASURED, across: '150.50 150.50', runOut: '0.10 mm' },
        'clean',
        [150.6, 'mm', 0.0005],
        'Eccentric circle: radius + offset, exact geometry',
      ),
      published(
        'lining',
        'A lining of 3.2 mm with a limit of 1.5 mm',
        { ...MEASURED, lining: '3.2 mm', liningLimit: '1.5 mm' },
        'liningLeft',
        [1.7, 'mm', 0.0005],
        'Wear counted to the limit: common practice, no source',
        'common practice',
      ),
    ],
    says: brakeDrumSays,
  },
  solve,
);
