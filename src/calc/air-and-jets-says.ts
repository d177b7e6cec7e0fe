import { hole, lines, type Says } from './says.ts';

const percent = hole('share', '%', 2);
const size = hole('count', 'n', 4);

export const wrong = {
  place: 'Height or air pressure is needed.',
  temperature: 'The temperature is needed.',
};

export const airAndJetsSays: Says = {
  wrong,
  notes: [
    '{?mixture=same}The mixture hardly changes: leave the jet.',
    `{?mixture=richer}With the same jet the mixture is ${percent('shift')} richer here: it fouls plugs and loses power, but does not seize.`,
    `{?mixture=leaner}With the same jet the mixture is ${percent('shift')} leaner here. A lean two-stroke runs hot, holes its piston or seizes: fit the larger jet before riding, not after.`,
    `{?marking=flow}Numbered by flow, the jet’s number goes as its area: ${size('jet')}.`,
    `{?marking=bore}Numbered by bore, the jet’s number goes as the root of its area: ${size('jet')}.`,
    '{?jet}Between two sizes take the larger, the richer. Sizes of two makers are not comparable: one counts the bore, another the flow.',
    'On the way down into denser air change back before the descent.',
    `About so much power as well: ${percent('dry')} of the oxygen, which no jet brings back.`,
    'Holds for jets at full throttle. Slide, needle and idle follow the same root; their own screws and clips come after.',
  ],
  lines: lines(
    {
      ρ: ['density', 'density', 'kg/m3'],
      ρ_0: ['densityThen', 'density', 'kg/m3'],
      a: ['area', 'share', '1'],
      R: [287.05287, 'count', 'n', 6],
      T: ['temperature', 'temperature', 'K', 5],
      p: ['pressure', 'pressure', 'Pa', 6],
      j: ['jet', 'count', 'n'],
      j_0: ['ownJet', 'count', 'n'],
    },
    [
      ['Density here, R in J/(kg·K)', 'ρ = p / (R T)', '{?!humidity}'],
      // A root as a power: a radical is not drawn where the reader's device has no font for formulas.
      ['Area of the jet, for the same mixture', 'a = (ρ / ρ_0)^½'],
      ['Jet', 'j = j_0 a', '{?marking=flow}'],
      ['Jet', 'j = j_0 a^½', '{?marking=bore}'],
    ],
  ),
  drawings: [
    {
      name: 'height',
      title: ['{?jet}Jet for the same mixture, by height', '{?!jet}Jet area for the same mixture, by height'],
      desc: `Falls with height; ${hole('density', 'kg/m3', 4)('density')} here.`,
      x: 'm above the sea',
      y: ['{?jet}jet number', '{?!jet}jet area, %'],
      mark: `here ${size('here')}`,
    },
  ],
};
