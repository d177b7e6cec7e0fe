import type { Rule } from './written.ts';

/** Hazards: steps whose words point to one without its note, and exemptions. */
export const HAZARD_RULES = {
  'hazards/missing': {
    title: 'Words point to a danger or warning whose note is not shown',
    why: 'People copy what they read; a step that can kill or maim goes out with its note or not at all.',
    severity: 'error',
    fixture: 'hazard-without-note',
  },
  'hazards/missing-caution': {
    title: 'Words point to a caution whose note is not shown',
    why: 'A lesser injury is still one.',
    severity: 'warning',
    fixture: 'caution-without-note',
  },
  'hazards/idle-exemption': {
    title: 'A hazard is ruled out that nothing points to any more',
    why: 'A forgotten exemption would hide the hazard when the words come back.',
    severity: 'warning',
    fixture: 'exemption-without-need',
  },
  'hazards/both': {
    title: 'A hazard is declared and ruled out in one step',
    why: 'Only one of the two can be meant, and readers would see the note without its doubt.',
    severity: 'error',
    fixture: 'hazard-declared-and-ruled-out',
  },
} satisfies Record<string, Rule>;
