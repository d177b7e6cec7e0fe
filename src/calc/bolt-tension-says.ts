import { hole, lines, type Says } from './says.ts';

const kN = hole('force', 'kN');
const plain = hole('force', 'kN', 3, 'plain');
const percent = hole('share', '%');

export const wrong = {
  noThread: '“{here}” is no ISO metric thread. Write M8, or M12x1.25 for a fine one.',
  pitch: 'M{size} is tabled with a pitch of {pitches} mm, not {pitch}.',
  untabled: 'M{size} is not in the table, which has M3 to M24 in the usual sizes.',
  needed: 'A figure is needed here.',
  factor: 'Your nut factor is needed, such as 0.15 ± 0.04.',
  breaks: `{bolt} {grade} would stretch for good or break: this is ${percent('share')} of its proof load. Is the unit N·m, kgf·m or lbf·ft, and the thread right?`,
};

export const boltTensionSays: Says = {
  wrong,
  notes: [
    `Where friction is least this reaches ${percent('tooHigh')} of the proof load of {bolt} {grade}: the bolt may stretch for good, or break. Check class, thread and oil against the maker’s word. A torque that the maker gives stands, whatever is worked out here.`,
    '{?!own}Most of the torque goes into friction under the head and in the thread. A torque wrench alone leaves the tension this uncertain; no cleverer arithmetic mends that.',
    '{?own}{?sure}Give your nut factor a ±: without one the answer looks surer than it is.',
    'A bolt without marks on its head counts as 4.6. The nut must be of the same class or better, and a thread in aluminium may strip long before the bolt’s proof load.',
    'Oil on a torque given for dry threads stretches the bolt by a third more: see which the maker means.',
  ],
  lines: lines(
    {
      F: ['tension', 'force', 'kN'],
      T: ['torque', 'torque', 'Nm'],
      K: ['factor', 'count', 'n', 3],
      d: ['diameter', 'length', 'mm', 3],
      s: ['share', 'share', '%', 3],
      F_p: ['proof', 'force', 'kN'],
      F_75: ['threeQuarters', 'force', 'kN'],
    },
    [
      ['Torque for that tension', 'T = K F d', '{?!byTorque}'],
      ['Tension', 'F = T / (K d)', '{?byTorque}'],
      ['Of the proof load', 's = F / F_p'],
      ['Three quarters of the proof load', 'F_75 = 0.75 F_p'],
    ],
  ),
  drawings: [
    {
      name: 'tension',
      title: 'Tension against torque',
      desc: `A straight line with the band that friction leaves: ${kN('tension')} at ${hole('torque', 'Nm', 3, 'plain')('torque')}. The level line is the proof load, ${plain('proof')}.`,
      x: 'torque, N·m',
      y: 'tension, kN',
      mark: plain('tension'),
    },
  ],
};
