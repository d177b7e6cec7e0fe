import type { Rule } from './written.ts';

/** Runs of a road test and what is said of them. */
export const ROAD_TEST_RULES = {
  'road-tests/columns': {
    title: 'A run has no time or no speed with its unit',
    why: 'Without the unit a speed may be off by a factor of three.',
    severity: 'error',
    fixture: 'run-wrong',
  },
  'road-tests/figure': {
    title: 'A figure of a run cannot be read',
    why: 'A point left out in silence would change what is fitted.',
    severity: 'error',
    fixture: 'run-wrong',
  },
  'road-tests/backwards': {
    title: 'Time stands still or runs backwards in a run',
    why: 'Two runs were probably joined, or rows moved.',
    severity: 'error',
    fixture: 'run-wrong',
  },
  'road-tests/hole': {
    title: 'A run has a hole',
    why: 'Nothing is known of what happened there, so figures across it are a guess.',
    severity: 'warning',
    fixture: 'run-with-hole',
  },
  'road-tests/speed': {
    title: 'A speed that no small old vehicle reaches, or a change that none can make',
    why: 'The unit is probably another one, or two units stand in one column.',
    severity: 'error',
    fixture: 'run-wrong',
  },
  'road-tests/short': {
    title: 'A run has too few points',
    why: 'Nothing can be drawn or fitted through a handful of points.',
    severity: 'error',
    fixture: 'run-wrong',
  },
  'road-tests/gpx': {
    title: 'A GPX file cannot be read',
    why: 'Only GPX 1.1 with a track whose points have times gives a speed.',
    severity: 'error',
    fixture: 'gpx-wrong',
  },
  'road-tests/apart': {
    title: 'Runs of one test do not belong together',
    why: 'They are drawn and fitted as one.',
    severity: 'error',
    fixture: 'runs-apart',
  },
  'road-tests/cannot-tell': {
    title: 'Coast-down runs cannot tell drag and rolling resistance',
    why: 'Readers are shown the reason in place of figures.',
    severity: 'warning',
    fixture: 'runs-one-way',
  },
  'road-tests/read-aloud': {
    title: 'No speeds can be taken from the words of a recording',
    why: 'A road test of speeds that were read aloud needs their captions, with times that can be read.',
    severity: 'error',
    fixture: 'points-wrong',
  },
  'road-tests/said-in': {
    title: 'A speed is read aloud without its unit',
    why: 'Nobody can tell 45 km/h from 45 mph by the words; the two differ by more than half.',
    severity: 'error',
    fixture: 'points-wrong',
  },
  'road-tests/slope': {
    title: 'What was noted of the slope is not one of three words',
    why: 'Readers compare points of the same slope alone.',
    severity: 'error',
    fixture: 'points-wrong',
  },
  'road-tests/speedometer': {
    title: 'The speedometer’s error on the sheet is no share of the true speed',
    why: 'Speeds as indicated are put right with it.',
    severity: 'error',
    fixture: 'speedometer-wrong',
  },
  'road-tests/unknown': {
    title: 'A chapter shows a road test that is not there',
    why: 'Nothing would be drawn in its place.',
    severity: 'error',
    fixture: 'run-wrong',
  },
} satisfies Record<string, Rule>;
