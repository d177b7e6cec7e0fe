import { hole, lines, type Says, type Symbols } from './says.ts';

const rpm = hole('rotation', 'rpm', 4);
const hertz = hole('frequency', 'Hz', 4);

export const wrong = {
  cylinders: 'The number of cylinders is needed.',
  needed: 'A figure is needed here.',
  fast: `${rpm('speed')} is more than engines turn: check the cylinders, the strokes and which tone was heard.`,
};

/** What a tone may be. */
const tones = [
  '{?is=firing}every firing',
  '{?is=one}one cylinder alone',
  '{?is=crank}the crank, once a turn',
  '{?is=half}every second firing',
  '{?is=twice}twice the firings, an overtone',
];

const symbols: Symbols = {
  c: ['crank', 'frequency', 'Hz'],
  f: ['firing', 'frequency', 'Hz'],
  z: ['per', 'count', 'n', 2],
  φ: ['between', 'angle', 'deg'],
  n: ['speed', 'rotation', 'rpm'],
};

export const firingSpeedSays: Says = {
  wrong,
  lists: { tones },
  notes: [
    'The loudest tone need not be the firing: cylinders that fire unevenly add half of it, exhausts add overtones. See whether the other tones stand at whole multiples, and compare with the idle speed that you know.',
    `A stretch of ${hole('time', 's')('window')} parts tones no closer than ${hertz('apart')}: a longer stretch at a steadier speed tells more.`,
    '{?!bySpeed}A recording that was slowed down, sped up or stretched in editing shifts every tone.',
  ],
  lines: [
    ...lines({ ...symbols, turn: [2 * Math.PI, 'angle', 'deg', 3] }, [
      ['Turns of the crank in a second', 'c = f / z'],
      ['Firings in a second', 'f = z c'],
      ['Degrees between firings', 'φ = turn / z'],
    ]),
    ...lines({ ...symbols, turn: [2 * Math.PI, 'angle', 'rad'] }, [['Engine speed', 'n = turn c']]),
  ],
  tables: [
    {
      name: 'tones',
      caption: `If the tone of ${hertz('heard')} were`,
      columns: [
        ['Tone', tones, 'words'],
        ['A turn', hole('count', 'n')('k')],
        ['Engine, rev/min', hole('rotation', 'rpm', 4, 'bare')('engine')],
      ],
    },
  ],
  drawings: [
    {
      name: 'orders',
      title: 'Engine speed for each tone',
      desc: 'Straight lines from nothing: {tones}.',
      x: 'tone, Hz',
      y: 'engine, rev/min',
      curve: `${hole('count', 'n', 2)('k')} a turn`,
    },
  ],
};
