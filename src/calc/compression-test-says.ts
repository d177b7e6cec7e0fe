import { hole, lines, type Says } from './says.ts';
import { lettering, path } from './svg.ts';

const bar = hole('pressure', 'bar');
const percent = hole('share', '%', 2);

export const wrong = {
  dry: 'Give one reading for each cylinder, such as 7.5; 7.2.',
  wet: 'Give one for each dry reading: {dryCount}, not {wetCount}.',
  room: 'The oil fills all the room above the piston: the engine would lock solid.',
};

const number = hole('pressure', 'bar', 3, 'bare');

/** A cylinder's bar, beside it that with oil, its number below. */
const cylinder = [
  path('M{x} 190V{y}h{wide}V190', 'stroke-width="2"'),
  lettering('{mid}', '{over}', number('written'), 'middle'),
  path('M{wetX} 190V{wetY}h{wide}V190', 'stroke-dasharray="3 2"'),
  lettering('{wetMid}', '{wetOver}', number('wetWritten'), 'middle'),
  lettering('{centre}', 206, '{cylinder}', 'middle'),
];

export const compressionTestSays: Says = {
  wrong,
  lists: { readings: bar('dry') },
  notes: [
    `A gauge reads in proportion to the air: here ${percent('share')} of what it would read at the sea in the same engine.`,
    `The lowest is ${percent('spreadShare')} below the highest. Where the maker gives no limit, more than 10 to 15 % is looked into: common practice, no source.`,
    `The figure given for comparison would read ${bar('expected')} here.`,
    '{?!expected}Without the maker’s figure compare the cylinders, and each with its own earlier readings.',
    '{?wet}{?strokes=2}Oil tells little in a two-stroke: it fills up room above the piston and so raises any reading, runs away through the ports, and the crankcase is oily as it is. Take a rise for weak evidence of rings, and look through the exhaust port.',
    '{?wet}{?strokes=4}A clear rise with oil points to rings and bore, none to valves or gasket; part of any rise is the room that the oil fills.',
    `That oil would raise the reading by ${percent('byVolume')} by the room it fills alone. Only what goes beyond it speaks of sealing.`,
    'Gauge, hose and its valve, throttle, battery and warmth move the reading more than wear does: repeat it all the same way, throttle wide open, until it stops rising.',
  ],
  lines: lines(
    {
      p_a: ['air', 'pressure', 'bar'],
      p_0: [101325, 'pressure', 'bar'],
      p_r: ['referenceAir', 'pressure', 'bar'],
      m: ['mean', 'pressure', 'bar'],
      m_0: ['meanSea', 'pressure', 'bar'],
      l: ['low', 'pressure', 'bar'],
      h: ['high', 'pressure', 'bar'],
      s: ['spreadShare', 'share', '1', 3],
      g: ['reference', 'pressure', 'bar'],
      e: ['expected', 'pressure', 'bar'],
    },
    [
      ['Mean reading, as at the sea', 'm_0 = (m p_0) / p_a'],
      ['Lowest below highest', 's = 1 - l/h'],
      ['Expected here', 'e = (g p_a) / p_r'],
    ],
  ),
  tables: [
    {
      name: 'cylinders',
      caption: 'Each cylinder',
      columns: [
        ['Cylinder', '{cylinder}'],
        ['Dry', bar('dry')],
        ['As at the sea', bar('atSea')],
        ['Of the highest', percent('ofHigh')],
        ['{?wet}With oil', bar('wet')],
        ['{?wet}Rise', percent('gain')],
      ],
    },
  ],
  drawings: [
    {
      name: 'bars',
      height: 236,
      title: 'Reading of each cylinder',
      desc: 'Dry: {readings}.',
      parts: [
        path('M44 190H336'),
        path('M44 {expectedY}H336', 'stroke-dasharray="8 4" stroke-opacity=".6"'),
        lettering(4, '{expectedWords}', number('expected')),
        lettering(4, 12, 'bar on the gauge'),
        lettering(336, 226, '{?wet}cylinder; dashed: with oil', 'end'),
        lettering(336, 226, '{?!wet}cylinder', 'end'),
      ],
      each: cylinder,
    },
  ],
};
