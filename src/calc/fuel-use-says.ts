import { hole, lines, type Says } from './says.ts';

const use = hole('use', 'L/100km');
const litres = hole('volume', 'L');

export const wrong = {
  use: 'A figure is needed here, such as 6.5 L/100km.',
  fills: 'Write one fill a line: distance, then fuel, such as 210 km 13.4 L.',
  odd: `Row {row}: ${litres('oddFuel')} for ${hole('length', 'km')('oddDistance')} is ${use('oddUse')}. Distance comes first; a US gallon is 3.785 L, an imperial one 4.546 L, a mile 1.609 km.`,
  reserve: 'The reserve must be smaller than the tank.',
  over: `That is more than the tank holds, ${litres('tank')}.`,
  low: 'That is below the reserve already: fill up.',
};

const few = hole('use', 'L/100km', 2);
const rate = (unit: 'L/100km' | 'km/L' | 'imp mpg' | 'US mpg') => hole('use', unit, 3, 'bare')('rate');

export const fuelUseSays: Says = {
  wrong,
  notes: [
    '{?several}Joined is all the fuel over all the distance; the mean of the single figures would give short trips too much weight.',
    `The fills differ by ${few('leak')}, more than filling explains: load, road, weather, or a leak. Look under it.`,
    `The fills differ by ${few('chance')}, which filling alone may explain.`,
    '{?single}One fill says little: what was not filled to the brim counts in full. Join several.',
    '{?toReserve}Ranges are by the use above; head wind, hills and a cold engine take more. Fill up well before.',
    '{?toReserve}{?unreserved}No reserve was given: it is counted as nothing.',
  ],
  lines: lines(
    {
      q: ['use', 'use', 'L/100km'],
      F: ['fuel', 'volume', 'L'],
      d: ['distance', 'length', 'km'],
      R: ['reserve', 'volume', 'L', 3],
      s: ['toReserve', 'length', 'km', 3],
      s_n: ['left', 'length', 'km', 3],
      T: ['tank', 'volume', 'L', 3],
      N: ['now', 'volume', 'L', 3],
      F_t: ['takes', 'volume', 'L', 3],
      D: ['trip', 'length', 'km', 3],
    },
    [
      ['Fuel used for the distance', 'q = F / d'],
      ['Full tank to the reserve', 's = (T - R) / q'],
      ['From now to the reserve', 's_n = (N - R) / q'],
      ['Fuel for the trip', 'F_t = D q'],
    ],
  ),
  tables: [
    {
      name: 'table',
      caption: 'Fill by fill',
      columns: [
        ['Fill', '{fill}', 'words'],
        ['km', hole('length', 'km', 4, 'bare')('ridden')],
        ['L', hole('volume', 'L', 4, 'bare')('filled')],
        ['L/100 km', rate('L/100km')],
        ['km/L', rate('km/L')],
        ['mpg (imp)', rate('imp mpg')],
        ['mpg (US)', rate('US mpg')],
      ],
    },
  ],
  drawings: [
    {
      name: 'fills',
      title: 'Fuel use, fill by fill',
      desc: `Each fill is a level line as long as its distance; the dashed one is all together, ${hole('use', 'L/100km', 3, 'plain')('use')}.`,
      x: 'km',
      y: 'L/100 km',
    },
  ],
};
