import { hole, lines, type Says } from './says.ts';

const litres = hole('volume', 'L', 4);
const millilitres = hole('volume', 'mL', 4);
const ratio = hole('mixture', ':1');
const target = hole('mixture', ':1', 3, 'plain')('ratio');

export const wrong = {
  ratio: 'A ratio is needed, such as 25:1.',
  volume: 'A volume is needed here, such as 5 L.',
  tankRatio: 'The ratio of what is in the tank is needed, such as 50:1.',
  tank: 'Say first how much mixture is in the tank, 0 if it is empty.',
  fill: `${target} cannot be reached in ${litres('fill')}: with what is in the tank it takes at least ${litres('least')}.`,
  reserve: 'The reserve must be smaller than the tank.',
};

export const premixSays: Says = {
  wrong,
  notes: [
    `Which is meant? ${millilitres('oil')} of oil is added to ${litres('fuel')} of fuel; if ${litres('fuel')} is to be the finished mixture, it holds ${millilitres('oilInside')}.`,
    `{?slips}Measured with these errors the mixture comes out at ${ratio('made')}. The smaller the can, the more a slip of the jug counts.`,
    `The tank holds ${litres('blend')} at ${ratio('blendRatio')}: the volumes of oil and of fuel add up; the mean of the two ratio numbers is not the ratio.`,
    `That is short of oil: add ${millilitres('addOil')} of oil for ${target}.`,
    `That has oil to spare: add ${litres('addFuel')} of plain fuel for ${target}.`,
    `To fill up to ${litres('fill')}: pour in ${litres('fillFuel')} of fuel and ${millilitres('fillOil')} of oil.`,
    '{?range}The consumption counts mixture, as it is drawn from the tank.',
  ],
  lines: lines(
    {
      F: ['fuel', 'volume', 'L', 5],
      O: ['oil', 'volume', 'mL', 5],
      V: ['mixture', 'volume', 'L', 5],
      n: ['parts', 'count', 'n'],
      T: ['tank', 'volume', 'L', 5],
      F_t: ['tankFuel', 'volume', 'L', 5],
      O_t: ['tankOil', 'volume', 'mL', 5],
      m: ['tankParts', 'count', 'n'],
      A_o: ['addOil', 'volume', 'mL', 5],
      A_f: ['addFuel', 'volume', 'L', 5],
    },
    [
      ['Oil to add', 'O = F / n', '{?known=fuel}'],
      ['Fuel for that oil', 'F = O n', '{?known=oil}'],
      ['Oil in that can', 'O = V / (n + 1)', '{?known=can}'],
      ['Fuel in that can', 'F = V - O', '{?known=can}'],
      ['Oil in the tank', 'O_t = T / (m + 1)', '{?asStands}'],
      ['Fuel in the tank', 'F_t = T - O_t', '{?asStands}'],
      ['Oil to add to the tank', 'A_o = F_t/n - O_t'],
      ['Fuel to add to the tank', 'A_f = O_t n - F_t'],
    ],
  ),
  tables: [
    {
      name: 'wall',
      caption: `For the wall: ${target}, fuel to oil by volume`,
      columns: [
        ['Fuel', '{can}'],
        ['Oil to add', millilitres('oil')],
        ['US', hole('volume', 'US fl oz')('oil')],
        ['imperial', hole('volume', 'imp fl oz')('oil')],
        ['Oil if that is finished mixture', millilitres('inside')],
      ],
    },
    {
      name: 'slips',
      caption: `What ${millilitres('oilError')} too little or too much oil does`,
      columns: [
        ['Fuel', '{can}'],
        ['Too little', [ratio('less'), '{?!less}no oil at all']],
        ['Too much', ratio('more')],
      ],
    },
  ],
  drawings: [
    {
      name: 'oil',
      title: `Oil for fuel at ${target}`,
      desc: `Straight lines from nothing: ${litres('fuel')} of fuel, ${millilitres('oil')} of oil.`,
      x: 'fuel, L',
      y: 'oil to add, mL',
      curve: ratio('one'),
      mark: millilitres('oil'),
    },
  ],
};
