import type { Rule } from './written.ts';

/** What holds between files: money, faults, refit list, measurements, corrections, due list. */
export const STATE_RULES = {
  'machine/unit': {
    title: 'A unit of the machine’s sheet that is not known',
    why: 'It is printed as it stands, and can neither be given in the reader’s unit nor reckoned with.',
    severity: 'warning',
    fixture: 'machine-unit-unknown',
  },
  'ledger/rate-doubtful': {
    title: 'A row’s own rate is doubtful',
    why: 'It is not needed, or so far from the published one that it was probably written the wrong way round.',
    severity: 'warning',
    fixture: 'rate-wrong-way-round',
  },
  'rates/contradiction': {
    title: 'Two rates of one day differ',
    why: 'Which one holds would be chance.',
    severity: 'error',
    fixture: 'rates-contradict',
  },
  'faults/order': {
    title: 'An event of a fault is out of order',
    why: 'Whether the fault was open in a chapter would be wrong.',
    severity: 'error',
    fixture: 'fault-events-out-of-order',
  },
  'faults/life': {
    title: 'An event does not fit the fault’s life',
    why: 'A fault cannot be cured before it is found, or come back before it is cured.',
    severity: 'error',
    fixture: 'fault-life-wrong',
  },
  'faults/severity-missing': {
    title: 'A fault is found without a severity',
    why: 'Whether the machine may be driven follows from it.',
    severity: 'error',
    fixture: 'fault-life-wrong',
  },
  'faults/frontmatter': {
    title: 'A fault has no frontmatter',
    why: 'Title, symptom and events stand there.',
    severity: 'error',
    fixture: 'no-frontmatter',
  },
  'refit/no-row': {
    title: 'A step opens a refit line that has no row in refit.csv',
    why: 'Readers are told by a bare name that something was removed, whether or not it was; a mistyped name opens a line of its own.',
    severity: 'warning',
    fixture: 'refit-without-row',
  },
  'refit/opened-twice': {
    title: 'A refit line is opened twice',
    why: 'One closing step would hide that the other is still open.',
    severity: 'error',
    fixture: 'refit-opened-twice',
  },
  'refit/closed-twice': {
    title: 'A refit line is closed twice',
    why: 'One of the two steps refits something else.',
    severity: 'error',
    fixture: 'refit-closed-twice',
  },
  'refit/never-opened': {
    title: 'A refit line is never opened',
    why: 'Nothing says where it was taken off.',
    severity: 'error',
    fixture: 'refit-never-opened',
  },
  'refit/order': {
    title: 'A refit line is closed before it is opened',
    why: 'The list would be wrong at every chapter between.',
    severity: 'error',
    fixture: 'refit-closed-before-opened',
  },
  'refit/left-off': {
    title: 'Something is left off without a reason',
    why: 'A reader who copies the work must know why.',
    severity: 'error',
    fixture: 'refit-left-off',
  },
  'refit/open-at-start': {
    title: 'The engine is to run, or the machine to be driven, with refit lines open',
    why: 'What is still off or loose hurts somebody when the engine runs.',
    severity: 'error',
    fixture: 'refit-open-at-first-start',
  },
  'measurements/limits': {
    title: 'Limits are the wrong way round or contradict each other',
    why: 'Every verdict from them would be wrong.',
    severity: 'error',
    fixture: 'limits-wrong-way-round',
  },
  'corrections/same': {
    title: 'A correction changes nothing',
    why: 'Was and now are the same.',
    severity: 'error',
    fixture: 'correction-wrong',
  },
  'due/reading': {
    title: 'A due item cannot be followed',
    why: 'No reading says how far the machine has gone since.',
    severity: 'warning',
    fixture: 'due-without-reading',
  },
  'odometer/backwards': {
    title: 'A reading is lower than the one before',
    why: 'Distances since would be wrong.',
    severity: 'error',
    fixture: 'odometer-backwards',
  },
  'released/changed': {
    title: 'A figure of a released chapter was changed without a correction',
    why: 'Readers who worked by the old figure must be told.',
    severity: 'error',
    fixture: 'released-figure-changed',
  },
} satisfies Record<string, Rule>;
