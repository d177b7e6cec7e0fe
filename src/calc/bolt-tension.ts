import { CLASSES } from './bolt-loads.ts';
import { boltTensionChecks } from './bolt-tension-checks.ts';
import { boltTensionSays } from './bolt-tension-says.ts';
import { figureField, outputField, told } from './declare.ts';
import { solve } from './solve-bolt-tension.ts';

export { solve };

const BOLT = 'The bolt';
const PULL = 'Torque or tension';

/** Bolt tension and torque; arithmetic in solve-bolt-tension.ts, the table in bolt-loads.ts. */
export const boltTension = told(
  {
    id: 'bolt-tension',
    component: 'BoltTension',
    title: 'Bolt tension and torque',
    answers: 'How hard does this torque pull on the bolt, and how near is that to what it bears?',
    fields: [
      {
        kind: 'text',
        name: 'thread',
        label: 'Thread',
        group: BOLT,
        start: 'M8',
        sample: 'M8, or M12x1.25 for a fine one',
      },
      {
        kind: 'choice',
        name: 'grade',
        label: 'Property class',
        help: 'As marked on the head.',
        group: BOLT,
        start: '8.8',
        options: CLASSES.map((value) => ({ value, label: value })),
      },
      {
        kind: 'choice',
        name: 'state',
        label: 'Thread and under the head',
        group: BOLT,
        start: 'oiled',
        options: [
          { value: 'oiled', label: 'Oiled (nut factor 0.15, tension ± 25 %)' },
          { value: 'dry', label: 'Dry, clean (nut factor 0.20, tension ± 35 %)' },
          { value: 'own', label: 'My own nut factor' },
        ],
      },
      figureField('factor', 'Nut factor', 'count', ['n'], [0.05, 0.6], {
        help: 'Torque = nut factor × diameter × tension. Write its ± with it.',
        group: BOLT,
        takesPm: true,
        when: { field: 'state', is: ['own'] },
      }),
      {
        kind: 'choice',
        name: 'known',
        label: 'What is known',
        group: PULL,
        start: 'torque',
        options: [
          { value: 'torque', label: 'The torque' },
          { value: 'share', label: 'The tension, as a share of the proof load' },
          { value: 'tension', label: 'The tension' },
        ],
      },
      figureField('torque', 'Torque', 'torque', ['Nm', 'kgf m', 'lbf ft', 'lbf in'], [0.1, 1500], {
        help: 'The maker’s figure, where there is one.',
        group: PULL,
        start: '22 Nm',
        takesPm: true,
        when: { field: 'known', is: ['torque'] },
      }),
      figureField('share', 'Of the proof load', 'share', ['%'], [0.05, 1], {
        help: '75 % for joints that are opened again (Shigley).',
        group: PULL,
        start: '75 %',
        when: { field: 'known', is: ['share'] },
      }),
      figureField('tension', 'Tension', 'force', ['kN', 'N', 'kgf', 'lbf'], [50, 4e5], {
        group: PULL,
        start: '15 kN',
        takesPm: true,
        when: { field: 'known', is: ['tension'] },
      }),
    ],
    outputs: [
      outputField('tension', 'Tension in the bolt', 'force', ['kN', 'lbf']),
      outputField('share', 'Of the proof load', 'share', ['%']),
      outputField('torque', 'Torque', 'torque', ['Nm', 'kgf m', 'lbf ft', 'lbf in'], 4),
      outputField('proof', 'Proof load of the table', 'force', ['kN', 'lbf'], 4),
      outputField('area', 'Stress area', 'area', ['mm2'], 3),
    ],
    conventions: [
      'Proof load: what the bolt bears without stretching for good, by ISO 898-1 at room temperature.',
      'The ± of the tension is what friction leaves open at the same torque.',
    ],
    cautions: [
      'The maker’s torque for this joint comes first, with the maker’s word on oil. This page shows what a torque does; it does not set one.',
      'Where the maker tightens by an angle or asks for new bolts, do that: this arithmetic has no say there.',
      'Cylinder heads, flywheels, brakes, steering and wheels: use the maker’s figure and order, and nothing else.',
    ],
    hazards: ['overstretched-bolt'],
    sources: [
      'ISO 898-1:2013, proof loads and stress areas of coarse and fine threads; in part from memory, each within 1 % of area × proof stress.',
      'Torque = K·F·d, K about 0.20, three quarters of the proof load for reused joints: Shigley, Mechanical Engineering Design, 8-27 and 8-30. K of 0.15 oiled: common practice.',
      'Scatter of ± 35 % dry and ± 25 % oiled by torque wrench: NASA NSTS 08307, from memory.',
      'JCGM 100:2008 for the ±.',
    ],
    checks: boltTensionChecks,
    says: boltTensionSays,
  },
  solve,
);
