import { hole, type Says } from './says.ts';
import { timingDrawings } from './timing-drawings.ts';
import { timingLines } from './timing-lines.ts';

const mm = hole('length', 'mm');
const deg = hole('angle', 'deg');

export const wrong = {
  stroke: 'The stroke is needed: twice the crank radius.',
  rod: 'The rod must be longer than half the stroke.',
  offset: 'The offset must be smaller than the rod less half the stroke.',
  crown:
    'On a domed crown a slanted gauge does not tell the travel: its tip moves over the dome. Measure straight down the bore, or use a degree disc.',
  rim: 'The diameter of the rim is needed for its degrees.',
  dial: 'The travel of one dial turn is needed, such as 0.1 in or 1 mm.',
  disc: 'Give the marks along the rim or in degrees, not both.',
  phase: 'Give one error for each cylinder after the first: {others}, not {phases}.',
  travel: `The piston travels only ${mm('whole')} in all.`,
  bottom: `That is past bottom dead centre, which lies ${deg('bottom')} before the top.`,
  marks: 'The marks must be less than half a turn apart: the stop stands near the top.',
};

const stop = (mark: string) =>
  `With the pin offset, true top dead centre lies ${deg('stopOff')} from half-way, towards the ${mark} mark reached in the running direction.`;

export const timingSays: Says = {
  wrong,
  lists: { rows: `${deg('advance')} at ${hole('rotation', 'rpm', 4)('speed')}` },
  notes: [
    `How closely: 0.1 mm of travel is ${deg('perTenth')} here. Near the top the piston hardly moves: 0.02 mm below it is already ${deg('nearTop')}, so the last degrees, and top dead centre itself, cannot be set by travel. Use a positive stop.`,
    `1 mm along the rim is ${deg('perMillimetre')}.`,
    `{?e}{?stopEarly}${stop('first')}`,
    `{?e}{?!stopEarly}${stop('second')}`,
    '{?!e}{?stopShift}Without pin offset true top dead centre lies half-way between the two marks.',
    `{several} cylinders fire every ${deg('interval')} of crank if evenly spaced; one fixed setting puts the others off by their phase error.`,
    `Set cylinder 1 to ${deg('reset')}, ${mm('resetTravel')} of travel: then no cylinder fires earlier than the figure.`,
  ],
  lines: timingLines,
  tables: [
    {
      name: 'speeds',
      caption: 'Advance at each speed',
      columns: [
        ['Speed', hole('rotation', 'rpm', 4)('speed')],
        ['Advance', deg('advance')],
        ['Travel', mm('travel')],
        ['{?rim}Along the rim', mm('arc')],
        ['Time before the top', hole('time', 'ms')('time')],
      ],
    },
    {
      name: 'cylinders',
      caption: 'Each cylinder, before its own top dead centre',
      columns: [
        ['Cylinder', '{cylinder}'],
        ['Even firing at', deg('even')],
        ['Fires now at', deg('angle')],
        ['travel', mm('travel')],
        ['After resetting', deg('reset')],
        ['travel', mm('resetTravel')],
      ],
    },
  ],
  drawings: timingDrawings,
};
