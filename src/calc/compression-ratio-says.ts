import { hole, lines, type Says } from './says.ts';
import { lettering, path } from './svg.ts';

const mm = hole('length', 'mm');
const cm3 = hole('volume', 'cm3');
const ratio = hole('ratio', ':1');

export const wrong = {
  bore: 'The bore is needed.',
  stroke: 'The stroke is needed.',
  needed: 'A figure is needed here.',
  noRoom: `No room is left above the piston (${cm3('clearance')}): look at the signs of deck and crown.`,
  port: `The port must lie within the stroke of ${mm('stroke')}.`,
  gasketBore: 'A gasket hole smaller than the bore would stand in the fire.',
  mouth: 'Smaller than the bore, or empty: a wider mouth means that the cut takes the whole bore.',
  bowl: 'The bowl must be narrower than the bore.',
  takesAll: `That would take all of the ${cm3('clearance')} above the piston.`,
  strikes: `Only ${mm('squish')} of squish is there: the crown would strike the head.`,
  low: 'A ratio is above 1.',
  wouldStrike: `That takes more than the squish of ${mm('squish')}: the crown would strike the head.`,
  portNeeded: 'The place of the exhaust port is needed for a trapped ratio.',
};

const NO_LIMIT = 'The maker of the engine sets how much: the head must stay thick enough to seal.';
const target = hole('ratio', ':1', 3, 'plain')('target');
const cut = hole('length', 'mm', 3, 'plain')('skim');
const stroke = hole('length', 'mm', 3, 'plain')('stroke');

/** The bore's walls, the head on its joint, the piston and what is written at their side. */
const section = [
  path('M{left} 245V66M{edge} 245V66', 'stroke-width="2"'),
  path('M{rim} 66h18c6 -2 14 -8 {h45} -34h{h110}c{h30} 26 {h38} 32 {h45} 34h18', 'stroke-width="2"'),
  path('M103 32V12M117 32V12'),
  path('M{side} {crown}h{wide}v62h{back}z', 'stroke-width="1.6"'),
  path('M{left} {bottom}H{edge}', 'stroke-dasharray="3 3"'),
  path('M{edge} {port}h14v{portHeight}h-14', 'stroke-width="2"'),
  lettering('{words}', 30, `${cm3('clearance')} above the piston`),
  lettering('{words}', 78, `squish ${mm('squish')}`),
  lettering('{words}', '{portWords}', `port opens at ${hole('length', 'mm', 3, 'plain')('portAt')}`),
  lettering('{words}', '{strokeWords}', `stroke ${stroke}`),
  lettering('{words}', '{sweptWords}', `${cm3('sweptOne')} swept`),
];

export const compressionRatioSays: Says = {
  wrong,
  notes: [
    `Full stroke ${ratio('ratio')}, trapped ${ratio('trappedRatio')}: ask which of the two a book means before comparing.`,
    ...['barrel', 'head'].map(
      (from) =>
        `{?from=${from}}${cut} off the ${from} takes ${cm3('lost')} a cylinder: ${ratio('ratio')} becomes ${ratio('ratioAfter')}. ${NO_LIMIT}`,
    ),
    ...['barrel', 'head'].map(
      (from) => `{?from=${from}}${target} takes ${mm('skimFor')} off the ${from}. ${NO_LIMIT}`,
    ),
    `${target} is lower than now: the head must rise by ${mm('raiseFor')}, as by a thicker gasket.`,
    '{?cuts}{?!closes}The squish band lies in the face that is cut, so the squish stays as it is.',
    '{?from=barrel}A cut at the top of the barrel leaves the ports where they are; one at its foot lowers them.',
    '{?known=burette}A film of grease at the ring land, no bubble under the plug hole, the engine level: 0.2 mL more or less is usual.',
  ],
  lines: [
    ...lines(
      {
        B: ['bore', 'length', 'mm'],
        S: ['stroke', 'length', 'mm'],
        V_s: ['sweptOne', 'volume', 'cm3'],
        V_c: ['clearance', 'volume', 'cm3'],
        V_p: ['poured', 'volume', 'cm3'],
        V_plug: ['plug', 'volume', 'cm3'],
        V_k: ['chamber', 'volume', 'cm3'],
        V_d: ['crown', 'volume', 'cm3'],
        V_t: ['trapped', 'volume', 'cm3'],
        V_x: ['lost', 'volume', 'cm3'],
        d_g: ['gasketBore', 'length', 'mm'],
        g: ['gasket', 'length', 'mm'],
        h: ['deck', 'length', 'mm'],
        x: ['portAt', 'length', 'mm'],
        r: ['ratio', 'ratio', ':1'],
        r_t: ['trappedRatio', 'ratio', ':1'],
        r_x: ['ratioAfter', 'ratio', ':1'],
      },
      [
        ['Swept by one piston', 'V_s = π/4 B^2 S'],
        ['Above the piston', 'V_c = V_p - V_plug', '{?known=burette}'],
        ['Above the piston', 'V_c = V_k + π/4 d_g^2 g + π/4 B^2 h - V_d', '{?known=figures}'],
        ['Above the piston', 'V_c = V_s / (r - 1)', '{?known=ratio}'],
        ['Ratio, full stroke', 'r = (V_s + V_c) / V_c', '{?known=burette}'],
        ['Ratio, full stroke', 'r = (V_s + V_c) / V_c', '{?known=figures}'],
        ['Swept above the exhaust port', 'V_t = π/4 B^2 x'],
        ['Trapped ratio', 'r_t = (V_t + V_c) / V_c'],
        ['After the cut', 'r_x = 1 + V_s / (V_c - V_x)', '{?lost}'],
      ],
    ),
  ],
  drawings: [
    {
      name: 'section',
      height: 250,
      title: 'One cylinder at top dead centre',
      desc: `Piston at the top of its ${stroke} stroke, ${cm3('clearance')} above it.`,
      parts: section,
    },
  ],
};
