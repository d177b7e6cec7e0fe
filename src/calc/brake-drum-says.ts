import { hole, lines, type Says } from './says.ts';
import { lettering, path, solid } from './svg.ts';

const mm = hole('length', 'mm', 5);
const fine = hole('length', 'mm', 2);
const plain = hole('length', 'mm', 5, 'plain');

export const wrong = {
  across: 'Write the diameters as measured, two at least, such as 150.42 150.55.',
  odd: `${mm('odd')} is far from a new drum’s ${plain('fresh')}: is one of the two in inches, or a digit missing?`,
  small: `${mm('small')} is smaller than new: rust, a lip at the edge, or the gauge.`,
  discardSmall: 'The discard diameter must be larger than the new one.',
  discardOdd: `${plain('discard')} is far from a new drum’s ${plain('fresh')}: read the casting again, it may be in inches.`,
  lining: 'No lining is left: do not drive.',
};

const marks = (name: string, word: string, y: number, more: string) => [
  path(`M{${name}X} 70V${y < 70 ? y + 4 : y - 11}`, more),
  lettering(`{${name}X}`, y, `${word} ${plain(name)}`, `{${name}Anchor}`),
];
const DOTTED = 'stroke-dasharray="2 2"';

export const brakeDrumSays: Says = {
  wrong,
  notes: [
    '{?scrap}The drum is beyond its discard diameter: it is scrap. Machining cannot help.',
    '{?unsure}Within the ± of the measurement the discard diameter may be passed already: treat the drum as scrap until a better gauge says otherwise.',
    `Turned until clean it would pass its discard diameter by ${fine('passes')}: do not machine it.`,
    '{?thin}It could be turned, but less is left for wear than you wish to keep.',
    `{?keeps}Turned until clean it keeps ${fine('leftAfter')} on the diameter.`,
    '{?!discard}No discard diameter was given. It is cast or stamped on most drums, or in the maker’s book; without either there is no figure to work to.',
    '{?oval}Ovality is beyond the limit given.',
    '{?wobbles}Run-out is beyond the limit given: clean the hub’s face and try again before blaming the drum.',
    '{?!ovalLimit}{?ovality}The maker’s limit of ovality is not known here, and none is assumed.',
    '{?worn}The lining is at or below its limit, or may be: renew it on both sides of the axle.',
    '{?liningLeft}{?!worn}Measure the lining where it is thinnest; on a riveted one from the rivet heads’ side too.',
    'Turn both drums of an axle to the same diameter, then fit shoes that match them: common practice, no source.',
  ],
  lines: lines(
    {
      D_max: ['most', 'length', 'mm', 5],
      D_min: ['least', 'length', 'mm', 5],
      D_dis: ['discard', 'length', 'mm', 5],
      D_c: ['clean', 'length', 'mm', 5],
      D_0: ['fresh', 'length', 'mm', 5],
      o: ['ovality', 'length', 'mm', 2],
      w: ['wear', 'length', 'mm', 3],
      l: ['left', 'length', 'mm', 3],
      l_c: ['leftAfter', 'length', 'mm', 3],
      t: ['runOut', 'length', 'mm', 2],
      c: ['cut', 'length', 'mm', 2],
      b: ['liningLeft', 'length', 'mm', 3],
      B: ['lining', 'length', 'mm', 3],
      B_min: ['liningLimit', 'length', 'mm', 3],
    },
    [
      ['Ovality', 'o = D_max - D_min'],
      ['Wear on the diameter', 'w = D_max - D_0'],
      ['Left before discard', 'l = D_dis - D_max'],
      ['Turned clean, at the most', 'D_c = D_max + t + 2 c', '{?cut}'],
      ['Turned clean, at the most', 'D_c = D_max + t', '{?!cut}'],
      ['Left after turning', 'l_c = D_dis - D_c'],
      ['Lining left', 'b = B - B_min'],
    ],
  ),
  drawings: [
    {
      name: 'diameters',
      height: 132,
      title: 'Diameters from new to discard',
      desc: [
        `New ${plain('fresh')}.`,
        `Largest measured ${mm('most')}, clean after turning ${mm('clean')}.`,
        `Discard ${plain('discard')}.`,
        'The blocks are the measurements.',
      ],
      parts: [
        path('M24 70H316', 'stroke-width="1.5"'),
        ...marks('fresh', 'new', 40, DOTTED),
        ...marks('discard', 'discard', 20, 'stroke-width="2"'),
        ...marks('most', 'largest', 104, DOTTED),
        ...marks('clean', 'clean', 124, DOTTED),
      ],
      each: [solid('M{x} 66h6v8h-6z')],
    },
  ],
};
