import { cableChecks } from './cable-checks.ts';
import { cableSays } from './cable-says.ts';
import { figureField, outputField, told } from './declare.ts';
import { solve } from './solve-cable.ts';

export { solve };

const RUN = 'The run';
const LOAD = 'The load';

/** Voltage drop in a vehicle's cables; arithmetic in solve-cable.ts. */
export const cable = told(
  {
    id: 'cable',
    component: 'Cable',
    title: 'Cable and voltage drop',
    answers: 'How much voltage and light does this cable lose, and how thick must it be?',
    fields: [
      figureField('supply', 'Supply voltage', 'voltage', ['V'], [4, 60], {
        help: 'Measured at the battery with the load on, or 6, 12, 24.',
        group: LOAD,
        start: '12 V',
        machine: 'electrics.voltage',
        takesPm: true,
      }),
      {
        kind: 'choice',
        name: 'known',
        label: 'Load given in',
        group: LOAD,
        start: 'load',
        options: [
          { value: 'load', label: 'Watts' },
          { value: 'current', label: 'Amperes' },
        ],
      },
      figureField('load', 'Load', 'power', ['W', 'kW'], [0.1, 5000], {
        help: 'All that hangs on this cable, at the supply voltage.',
        group: LOAD,
        start: '35 W',
        machine: 'electrics.headlamp',
        takesPm: true,
        when: { field: 'known', is: ['load'] },
      }),
      figureField('current', 'Current', 'current', ['A', 'mA'], [0.01, 500], {
        group: LOAD,
        takesPm: true,
        when: { field: 'known', is: ['current'] },
      }),
      {
        kind: 'choice',
        name: 'kind',
        label: 'What it feeds',
        group: LOAD,
        start: 'lamp',
        options: [
          { value: 'lamp', label: 'Filament lamps' },
          { value: 'other', label: 'Something else' },
        ],
      },
      figureField('length', 'Length, one way', 'length', ['m', 'ft', 'cm'], [0.05, 40], {
        help: 'Along the loom from the battery to the load; the way back is added.',
        group: RUN,
        start: '3 m',
        takesPm: true,
      }),
      {
        kind: 'choice',
        name: 'back',
        label: 'Way back',
        group: RUN,
        start: 'cable',
        options: [
          { value: 'cable', label: 'By a second cable of the same section' },
          { value: 'frame', label: 'Through the frame (earth return)' },
        ],
      },
      figureField('section', 'Section of the conductor', 'section', ['mm2', 'AWG'], [0.2e-6, 120e-6], {
        help: 'Copper alone, without insulation. AWG 1/0 is written 0, 2/0 is −1.',
        group: RUN,
        start: '1.5 mm2',
      }),
      {
        kind: 'choice',
        name: 'conductor',
        label: 'Conductor',
        help: 'The table of IEC 60228 gives the largest resistance that new cable may have.',
        group: RUN,
        start: 'flexible',
        options: [
          { value: 'flexible', label: 'Fine strands (class 5), the worst permitted' },
          { value: 'coarse', label: 'Solid or coarse strands (class 1, 2), the worst permitted' },
          { value: 'ideal', label: 'Pure copper of exactly that section' },
        ],
      },
      figureField(
        'temperature',
        'Temperature of the conductor',
        'temperature',
        ['degC', 'degF'],
        [233.15, 378.15],
        {
          help: 'Empty for 20 °C; beside the engine 60 °C or more.',
          group: RUN,
          takesPm: true,
          optional: true,
        },
      ),
      figureField('joints', 'Lost in joints, switch and frame', 'voltage', ['mV', 'V'], [0, 6], {
        help: 'Measured across them with the load on; empty counts nothing.',
        group: RUN,
        takesPm: true,
        optional: true,
      }),
      figureField('limit', 'May lose at most', 'share', ['%'], [0.001, 0.3], {
        help: 'Of the supply. 3 % for lamps is common practice, no source.',
        group: LOAD,
        start: '3 %',
        optional: true,
      }),
    ],
    outputs: [
      outputField('drop', 'Voltage lost', 'voltage', ['V', 'mV']),
      outputField('share', 'Of the supply', 'share', ['%']),
      outputField('atLoad', 'Left at the load', 'voltage', ['V'], 4),
      outputField('current', 'Current', 'current', ['A']),
      outputField('lost', 'Heat in cable and joints', 'power', ['W']),
      outputField('light', 'Light left of a filament lamp', 'share', ['%'], 2),
      outputField('needed', 'Copper needed for the limit', 'section', ['mm2', 'AWG'], 2),
      outputField('least', 'Smallest section of the series', 'section', ['mm2', 'AWG'], 2),
      outputField('resistance', 'Resistance of the run', 'resistance', ['ohm']),
      outputField('short', 'A dead short at the far end draws at most', 'current', ['A'], 2, {
        help: 'By the cable alone; the battery and the joints make it less.',
      }),
    ],
    conventions: [
      'Length is one way. With a second cable the current runs through twice that; through the frame, once.',
      'A larger AWG number is a thinner wire.',
    ],
    cautions: [
      'A cable carries no more than its insulation bears, whatever the voltage drop allows. Follow the maker of vehicle and cable.',
      'Every feed from the battery needs a fuse at the battery end. Disconnect the battery, earth lead first, before work.',
      'The starter cable is not worked out here: the maker gives its section.',
    ],
    hazards: ['short-circuit'],
    sources: [
      'Copper: IEC 60028:1925, 1/58 Ω·mm²/m at 20 °C, rise 0.00393 per kelvin.',
      'IEC 60228:2004, largest resistance of classes 1, 2 and 5; the values of class 5 partly from memory.',
      'AWG: ASTM B258. Light of a filament lamp as voltage to the power 3.4: common practice, no source.',
      'JCGM 100:2008 for the ±.',
    ],
    checks: cableChecks,
    says: cableSays,
  },
  solve,
);
