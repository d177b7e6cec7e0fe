import { HOLES, SHAFTS } from './limits-and-fits.ts';
import { hole, lines, type Says } from './says.ts';

const mm = hole('length', 'mm', 5);
const um = hole('length', 'um', 3);
const celsius = hole('temperature', 'degC');

export const wrong = {
  size: 'The size is needed.',
  large: 'The table ends at 120 mm.',
  fit: `Write hole and shaft, such as H7/k6: holes ${HOLES.join(', ')}; shafts ${SHAFTS.join(', ')}.`,
  clearance: 'The fit, or the clearance cold, is needed; minus for interference.',
  growth: 'Its growth is needed.',
};

/** One of two figures stands: how much clearance, or how much interference. */
const clear = (name: string, sentence: (said: string) => string) => [
  sentence(`${um(name)} of clearance`),
  sentence(`${um(`${name}Tight`)} of interference`),
];
const size = hole('length', 'mm', 5, 'plain')('size');
const room = hole('temperature', 'degC', 3, 'plain')('room');

export const fitsSays: Says = {
  wrong,
  notes: [
    ...['a clearance', 'an interference', 'a transition'].flatMap((kind) =>
      clear('from', (from) => `{?kind=${kind}}{fit} at ${size} is ${kind} fit: from ${from}`).flatMap(
        (start) => clear('upTo', (to) => `${start} to ${to}.`),
      ),
    ),
    '{?assumed}What follows takes the tightest pair that the fit allows; measured parts tell better.',
    '{?tightest}A bearing’s own rings are made to the bearing standard, not to these classes: take its measured size.',
    ...clear('coldNow', (cold) => `Cold ${cold}`).flatMap((start) =>
      clear('hotNow', (hot) => `${start}, at these temperatures ${hot}.`),
    ),
    '{?seizes}It would seize: the clearance is used up.',
    '{?heatTo}{?!heats}It goes in cold.',
    `{?heats}Heat the outer part right through to ${celsius('heatTo')}: the inner drops in with ${hole('length', 'um', 3, 'plain')('gap')} to spare, for as long as both keep their temperatures.`,
    '{?tooHot}That is above about 120 °C, where bearings and hardened alloys begin to change (common practice): ask the maker, chill the inner part, or press it.',
    'A piston is not one temperature: its crown grows most, so pistons are turned tapered and oval. The maker’s clearance comes first.',
  ],
  lines: lines(
    {
      D: ['size', 'length', 'mm', 5],
      α_o: ['outerExpansion', '{outerMillionths|count|n|3.1|bare}\u00a0×\u00a010⁻⁶/K'],
      α_i: ['innerExpansion', '{innerMillionths|count|n|3.1|bare}\u00a0×\u00a010⁻⁶/K'],
      ΔT_o: ['outerWarmer', 'temperature step', 'K'],
      ΔT_i: ['innerWarmer', 'temperature step', 'K'],
      ΔT: ['rise', 'temperature step', 'K'],
      g_o: ['outerGrown', 'length', 'um'],
      g_i: ['innerGrown', 'length', 'um'],
      c: ['cold', 'length', 'um'],
      c_h: ['hot', 'length', 'um'],
      s: ['gap', 'length', 'um'],
    },
    [
      ['Outer part grows', 'g_o = D α_o ΔT_o'],
      ['Inner part grows', 'g_i = D α_i ΔT_i'],
      ['Clearance then', 'c_h = c + g_o - g_i'],
      ['To heat the outer part by', 'ΔT = (s + g_i - c) / (D α_o)'],
    ],
  ),
  tables: [
    {
      name: 'limits',
      caption: 'Limits by table, at 20 °C',
      columns: [
        ['Part', ['{?shaft}Shaft', '{?!shaft}Hole'], 'words'],
        ['Least', mm('low')],
        ['Most', mm('high')],
      ],
    },
  ],
  drawings: [
    {
      name: 'heat',
      title: 'Clearance against the temperature of the outer part',
      desc: `Rises straight from ${um('start')} at ${room}.`,
      x: 'outer part, °C',
      y: 'µm of clearance',
      mark: [`${um('here')} at ${celsius('warm')}`, `{?only}${celsius('warm')}`],
    },
  ],
};
