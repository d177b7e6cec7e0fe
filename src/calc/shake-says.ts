import { hole, lines, type Says } from './says.ts';

const hertz = hole('frequency', 'Hz');
const felt = hole('frequency', 'Hz', 3, 'plain')('felt');

export const wrong = {
  road: 'The road speed is needed.',
  circumference: 'The rolling circumference is needed: roll the wheel one turn.',
  teeth: 'The teeth of both sprockets are needed.',
  links: 'A chain with so few links does not reach round these sprockets.',
};

/** What shakes so often: a part, and the multiple of its turns that a fault of such a part commonly makes. */
const names = [
  '{?is=wheel}wheel, once a turn',
  '{?is=wheel2}wheel, twice a turn',
  '{?is=shaft}shaft before the final drive, once a turn',
  '{?is=shaft2}that shaft, twice a turn',
  '{?is=chain}chain, once round',
  '{?is=link}chain links on the sprocket',
  '{?is=engine}engine, once a turn',
  '{?is=engine2}engine, twice a turn',
  '{?is=firing}engine, every firing',
  '{?is=firing0.5}engine, every second firing',
];
const named = names.map((name) => `${name} (${hertz('f')})`);

export const shakeSays: Says = {
  wrong,
  lists: { fits: named, nearest: named, parts: '{part}' },
  notes: [
    `A shake of ${felt} fits: {fits}.`,
    `{?felt}{?!fits}Nothing that is counted here turns at ${felt}; nearest is {nearest}.`,
    '{?!felt}Give the frequency of the shake to see what fits it.',
    '{?several}Several fit: try another road speed, another gear at the same speed, and coasting with the clutch out. What stays with the road speed is wheel or chain; what follows the engine is engine.',
    'The figures name what turns, not what is wrong. A part may also shake at a frequency of its own, whatever turns.',
  ],
  lines: lines(
    {
      v: ['road', 'speed', 'm/s'],
      U: ['circumference', 'length', 'm'],
      f_w: ['wheel', 'frequency', 'Hz'],
      f_s: ['shaft', 'frequency', 'Hz'],
      f_l: ['link', 'frequency', 'Hz'],
      f_c: ['chain', 'frequency', 'Hz'],
      f_e: ['engine', 'frequency', 'Hz'],
      z_1: ['sprocket', 'count', 'n'],
      z_2: ['axle', 'count', 'n'],
      i: ['final', 'count', 'n'],
      m: ['links', 'count', 'n'],
      g: ['gear', 'count', 'n'],
      p: ['primary', 'count', 'n'],
    },
    [
      ['Wheel', 'f_w = v / U'],
      ['Gearbox sprocket', 'f_s = f_w z_2/z_1', '{?link}'],
      ['Chain links', 'f_l = f_s z_1'],
      ['Shaft before the final drive', 'f_s = f_w i', '{?!link}'],
      ['Chain, once round', 'f_c = f_l / m'],
      ['Engine', 'f_e = f_s g p'],
    ],
  ),
  tables: [
    {
      name: 'parts',
      caption: 'What turns how often at this road speed',
      columns: [
        ['What turns', names, 'words'],
        ['Hz', hole('frequency', 'Hz', 3, 'bare')('f')],
        ['a minute', hole('count', 'n')('minute')],
        ['{?felt}against what is felt', hole('share', '%', 2)('off')],
        ['{?felt}fits', ['{?fit}yes', '{?!fit}no'], 'words'],
      ],
    },
  ],
  drawings: [
    {
      name: 'speeds',
      title: 'What turns how often against road speed',
      desc: ['Lines from nothing for {parts}.', `{?felt}The point is the shake of ${felt}.`],
      x: 'km/h',
      y: 'Hz',
      mark: felt,
    },
  ],
};
