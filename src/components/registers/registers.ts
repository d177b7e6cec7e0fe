/** The registers that have a page of their own at the site's root, by the name in their address. */
import Corrections from './Corrections.astro';
import DueList from './DueList.astro';
import FaultRegister from './FaultRegister.astro';
import Measurements from './Measurements.astro';
import Outcome from './Outcome.astro';
import RefitList from './RefitList.astro';
import Thanks from './Thanks.astro';

export const REGISTERS = {
  faults: {
    Body: FaultRegister,
    title: 'Faults',
    description: 'What is and was wrong with the machine, open faults first.',
    wide: false,
  },
  measurements: {
    Body: Measurements,
    title: 'Measurements',
    description: 'Dimensions as found, their limits, and as left.',
    wide: true,
  },
  refit: {
    Body: RefitList,
    title: 'Refit list',
    description: 'Everything taken off, loosened, drained or parted, until a step closes it.',
    wide: true,
  },
  due: {
    Body: DueList,
    title: 'To do again',
    description: 'What has to be done again after the refit, and what is overdue.',
    wide: true,
  },
  outcome: {
    Body: Outcome,
    title: 'Outcome',
    description: 'What was to be reached, before and after, hours of work, finished or not.',
    wide: false,
  },
  corrections: {
    Body: Corrections,
    title: 'Corrections',
    description: 'Published figures and instructions that were wrong: was, now, why.',
    wide: false,
  },
  thanks: { Body: Thanks, title: 'Thanks', description: 'Who helped, and how.', wide: false },
};
