import { hole, lines, type Says } from './says.ts';

const kmh = hole('speed', 'km/h');

export const wrong = {
  nothing: 'Give a distance and its time, or two distances for the odometer.',
  needed: 'This is needed as well.',
  fast: `That would be ${kmh('speed')}: check the time, and whether the distance is in m, km or miles.`,
  slow: `That would be ${kmh('speed')}, slower than walking: check metres against kilometres, seconds against minutes.`,
  noRide: 'To check it, a distance and its time are needed.',
  unlikely: `It shows ${kmh('indicated')} at a true ${kmh('speed')}: km/h against mph, or a wrong distance?`,
  factor: `The two differ by a factor of ${hole('count', 'n')('factor')}; a mile is 1.609 km.`,
  noOdometer: 'Give the two distances that compare the odometer first.',
};

const factor = hole('count', 'n', 4)('factor');

export const speedCheckSays: Says = {
  wrong,
  notes: [
    '{?side=low}It reads low: the vehicle is faster than it shows. UN Regulation No. 39 allows that at no speed.',
    '{?side=high}It reads higher than UN Regulation No. 39 allows a new vehicle at this speed.',
    '{?side=open}The ± of this run is too wide to tell which side of the limit it lies: take a longer distance.',
    '{?side=within}At this speed it lies where UN Regulation No. 39 puts a new vehicle’s. Old vehicles have rules of their own.',
    '{?off}One run says what it shows at one speed. A needle may be right at 30 and wrong at 60: take three speeds, both ways.',
    '{?watch}The stopwatch is the larger doubt: twice the distance at the same speed halves its share.',
    '{?sure}Give the time a ± of 0.3 s or more for the thumb, and the distance its own.',
    ...['little', 'much'].map(
      (too) =>
        `{?counts=${too}}The odometer counts ${hole('share', '%')('odoBy')} too ${too}: multiply what it shows by ${factor}.`,
    ),
  ],
  lines: lines(
    {
      v: ['speed', 'speed', 'km/h'],
      d: ['distance', 'length', 'm'],
      t: ['time', 'time', 's'],
      V: ['indicated', 'speed', 'km/h'],
      V_max: ['most', 'speed', 'km/h'],
      e: ['off', 'speed', 'km/h', 3],
      k: ['factor', 'count', 'n'],
      D: ['odoTrue', 'length', 'km'],
      D_o: ['odoShown', 'length', 'km'],
      '#m': [4 / 3.6, 'speed', 'km/h', 1],
    },
    [
      ['True speed', 'v = d / t'],
      ['The most that may be shown', 'V_max = 1.1 v + #m'],
      ['Shown too high', 'e = V - v'],
      ['Odometer’s factor', 'k = D / D_o'],
    ],
  ),
  drawings: [
    {
      name: 'band',
      title: 'Shown against true speed',
      desc: [
        'The lower line is right, the upper the most that UN Regulation No. 39 allows.',
        `{?indicated}This run stands at ${hole('speed', 'km/h', 3, 'plain')('speed')} true, ${kmh('indicated')} shown.`,
      ],
      x: 'true, km/h',
      y: 'shown, km/h',
      mark: kmh('indicated'),
    },
  ],
};
