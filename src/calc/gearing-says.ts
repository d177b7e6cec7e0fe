import { driveLineWrong, tyreNotes } from './drive-line-says.ts';
import { hole, lines, type SaidTable, type Says } from './says.ts';

const change = hole('rotation', 'rpm', 4)('change');

export const wrong = {
  ...driveLineWrong,
  other: 'Give the other tyre or sprocket whose error is wanted.',
};

/** The gears of one set-up or the other; a column stands where its figure was asked for. */
function table(set: '' | '2', caption: SaidTable['caption']): SaidTable {
  const asks = (name: string) => `{?${name}${set}_0}`;
  const of = (name: string) => `${name}${set}_#`;
  const speed = hole('rotation', 'rpm', 4)('speed');
  const kmh = hole('speed', 'km/h', 3, 'bare');
  return {
    name: `gears${set}`,
    caption,
    columns: [
      ['Gear', `{${of('gear')}}`, 'words'],
      [`${asks('overall')}Overall`, hole('ratio', ':1', 4, 'bare')(of('overall'))],
      [`${asks('per1000')}km/h per 1000`, hole('speed per rev', 'km/h per 1000', 3, 'bare')(of('per1000'))],
      [`${asks('per1000')}mph per 1000`, hole('speed per rev', 'mph per 1000', 3, 'bare')(of('per1000'))],
      [`${asks('at')}km/h at ${speed}`, kmh(of('at'))],
      [`${asks('at')}mph at ${speed}`, hole('speed', 'mph', 3, 'bare')(of('at'))],
      [
        `${asks('engine')}rev/min at ${hole('speed', 'km/h')('road')}`,
        hole('rotation', 'rpm', 4, 'bare')(of('engine')),
      ],
      [`${asks('atChange')}km/h at the change, ${change}`, kmh(of('atChange'))],
      [`${asks('drop')}drop, rev/min`, hole('rotation', 'rpm', 3, 'bare')(of('drop'))],
    ],
  };
}

/** The overall ratio by what of it is given: gear, primary drive, sprockets or a ratio. */
const overall = [
  ['i p', '{?gearRatio}{?primary}'],
  ['i', '{?gearRatio}{?!primary}'],
  ['p', '{?!gearRatio}{?primary}'],
  ['', '{?!gearRatio}{?!primary}'],
].flatMap(([gears, when]) =>
  [
    ['z_2/z_1', '{?chained}'],
    ['f', '{?!chained}'],
  ].map(([chain, how]) => ['Overall, {topGear} gear', `G = ${gears} ${chain}`, `${when}${how}`] as const),
);

/** What the wheel rolls: measured, or worked out from the nominal diameter of a radial or a cross-ply. */
const [MEASURED, RADIAL, CROSS_PLY] = [
  '{?circumference}',
  '{?!circumference}{?radial}',
  '{?!circumference}{?!radial}',
];

export const gearingSays: Says = {
  wrong,
  notes: [
    `${MEASURED}Worked with the measured rolling circumference.`,
    `${RADIAL}Worked with 3.05 × the nominal diameter, an industry guideline for radials. Round the outside it is 2.9 % more. One measured turn of the loaded wheel is better than either.`,
    `${CROSS_PLY}Worked with π × the nominal diameter. A loaded cross-ply rolls some per cent less: measure one turn of the wheel.`,
    ...tyreNotes,
    ...['slower', 'faster'].map(
      (pace) =>
        `At the same road speed the other set-up turns the engine ${hole('share', '%')(pace)} ${pace}.`,
    ),
    '{?trueSpeed}The true speed holds if the speedometer was right before. Type approval (UN Regulation No. 39) lets one read 0 to 10 % + 4 km/h high and never low.',
  ],
  lines: lines(
    {
      d: ['diameter', 'length', 'mm', 5],
      U: ['roll', 'length', 'mm', 5],
      G: ['overall', 'count', 'n', 5],
      i: ['gearRatio', 'count', 'n'],
      p: ['primary', 'count', 'n'],
      f: ['drive', 'count', 'n'],
      z_1: ['sprocket', 'count', 'n', 2],
      z_2: ['axle', 'count', 'n', 2],
      v: ['at1000', 'speed', 'km/h'],
      v_n: ['at', 'speed', 'km/h'],
      '#n': ['turns', '{speed|rotation|rpm|4.0|bare}/min'],
    },
    [
      ['Rolled in a turn', 'U = 3.05 d', RADIAL],
      ['Rolled in a turn', 'U = π d', CROSS_PLY],
      ...overall,
      ['At 1000 rev/min', 'v = (1000/min U) / G'],
      ['At that engine speed, {topGear} gear', 'v_n = (#n U) / G', '{?turns}'],
    ],
  ),
  tables: [table('', ['{?!roll2}In each gear', '{?roll2}This set-up']), table('2', 'The other set-up')],
  drawings: [
    {
      name: 'saw',
      title: 'Engine speed against road speed',
      desc: [
        'One line a gear.',
        `Each is changed up at ${change}.`,
        `{?!change}Each is changed up at ${hole('rotation', 'rpm', 4)('speed')}.`,
        '{?roll2}The other set-up is dashed.',
      ],
      x: 'km/h',
      y: 'rev/min',
    },
  ],
};
