import { hole, lines, type Says } from './says.ts';

const volts = hole('voltage', 'V');
const supply = hole('voltage', 'V', 3, 'plain')('supply');
const percent = hole('share', '%');
const limit = hole('share', '%', 3, 'plain')('limit');

export const wrong = {
  needed: 'A figure is needed here.',
  drop: `The cable alone would lose ${volts('drop')} of ${supply}: check the length, the section and whether the load is in watts or amperes.`,
};

const symbols = {
  U: ['supply', 'voltage', 'V'],
  U_L: ['left', 'voltage', 'V'],
  I: ['current', 'current', 'A'],
  P: ['load', 'power', 'W'],
  R: ['resistance', 'resistance', 'ohm'],
  r: ['perMetre', '{perKilometre|count|n|3|bare}\u00a0Ω/km'],
  L: ['length', 'length', 'm'],
  D: ['drop', 'voltage', 'V'],
  J: ['joints', 'voltage', 'mV'],
  '#t': ['warmer', '{warmer|temperature step|K|3.0|bare}\u00a0K'],
} as const;

export const cableSays: Says = {
  wrong,
  notes: [
    `{?limit}For ${limit} the smallest section of the series is ${hole('section', 'mm2', 2)('least')}. What the insulation bears may ask for more.`,
    `{?limit}{?!least}No section up to 35 mm² keeps to ${limit}: shorten the run, carry the load by a relay near the battery, or mend the joints.`,
    '{?back=frame}{?perfect}The frame is counted as nothing. Rust and paint under an earth tag often lose more than the cable: measure from the lamp’s body to the battery with the load on.',
    '{?back=wire}{?perfect}Joints and switches are counted as nothing: measure across them with the load on.',
    `{?lamp}A filament lamp left with ${volts('atLoad')} of ${supply} gives about ${percent('light')} of its light.`,
    '{?load}The current is taken as at full voltage; a lamp on less draws a little less.',
    `A fuse guards the cable: near the battery, above ${hole('current', 'A')('current')}, below what the cable and its insulation bear. A dead short at the far end would draw at most ${hole('current', 'A')('short')}; the fuse must blow well below that.`,
  ],
  lines: lines(symbols, [
    ['Current', 'I = P / U', '{?load}'],
    ['Resistance, out', 'R = L r (1 + 0.00393 #t)', '{?back=frame}'],
    ['Resistance, out and back', 'R = 2 L r (1 + 0.00393 #t)', '{?back=wire}'],
    ['Voltage lost', 'D = I R + J', '{?joints}'],
    ['Voltage lost', 'D = I R', '{?!joints}'],
    ['Left at the load', 'U_L = U - D'],
  ]),
  tables: [
    {
      name: 'sizes',
      caption: 'The same run in other sections',
      columns: [
        ['Section, mm²', '{mm2}'],
        ['AWG', hole('section', 'AWG', 2, 'bare')('section')],
        ['Drop, V', hole('voltage', 'V', 3, 'bare')('drop')],
        ['Drop, %', hole('share', '%', 2, 'bare')('share')],
        ['Lost, W', hole('power', 'W', 2, 'bare')('lost')],
        ['{?lamp}Light left, %', hole('share', '%', 2, 'bare')('light')],
      ],
    },
  ],
  drawings: [
    {
      name: 'drop',
      title: 'Voltage lost against section',
      desc: `The thicker the cable, the less is lost: ${percent('share')} at {now} mm². The line is pure copper, the point the conductor chosen.`,
      x: 'section, mm²',
      y: 'lost, %',
      mark: percent('here'),
    },
  ],
};
