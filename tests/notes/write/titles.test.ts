import { describe, expect, test } from 'vitest';
import { draftOf } from '../../../src/notes/draft.ts';
import { readSource } from '../../../src/notes/read/read-source.ts';
import { deedIn } from '../../../src/notes/say/deed.ts';
import { taggedWords } from '../../../src/notes/say/words.ts';
import { faultTitle } from '../../../src/notes/write/proposals/fault-title.ts';
import { suspectsIn } from '../../../src/notes/write/proposals/suspects.ts';
import { writeUp } from '../../../src/notes/write-up.ts';
import { COST_NAMES, FAULT_TITLES, FAULTS_NOT_YET, NOT_YET, STEP_TITLES } from './titles.table.ts';

const written = (name: string, text: string) =>
  writeUp([readSource({ name, text })], {
    chapter: '03-notes',
    title: 'Notes',
    date: '2026-05-02',
    currency: 'EUR',
    habits: {},
    around: { texts: new Map([[name, text]]) },
  });

const title = (said: string): string => deedIn(taggedWords(said))?.title ?? '';

describe('a step is called by the work that is told, in the imperative', () => {
  test.each(STEP_TITLES)('%s → %s', (said, wanted) => expect(title(said)).toBe(wanted));
  test.fails.each(NOT_YET)('not yet: %s → %s', (said, wanted) => expect(title(said)).toBe(wanted));
});

describe('what is warned against, or was not done, is never ordered by a title', () => {
  test.each([
    "never take the cap off while it's hot",
    "don't take the cap off hot",
    'you must not weld the tank',
    "mind you don't put your hand near the fan",
    'I would not open the tap indoors',
    'do not undo the spring plate',
    "whatever you do don't undo the centre nut",
    "I didn't have the head off",
    'we never had the tank off',
    'no need to take the wheel off',
    "please don't ever run the engine indoors",
    'without taking the head off',
    'nobody puts a jack under the floor',
    "there's no need to have the gearbox out",
    "don't let the oil out on the grass",
    "i haven't taken the head off",
    "can't get the drum off",
    "clamp the hose no don't clamp the hose",
  ])('%s', (said) => expect(title(said)).toBe(''));
});

describe('a fault is called as a mechanic would write it on a card', () => {
  test.each(FAULT_TITLES)('%s (%s) → %s', (said, it, wanted) =>
    expect(faultTitle(said, '', it).title).toBe(wanted),
  );
  test.each([
    ['No spark on the right cylinder', 'No spark on right cylinder'],
    ['no earth at the lamp', 'No earth at lamp'],
    ["the tap doesn't shut", 'Tap does not shut'],
    ["it isn't charging", 'Dynamo not charging'],
    ['the lever will not come back', 'Lever will not come back'],
    ["can't get second", 'Dynamo cannot get second'],
  ])('what is denied stays denied: %s → %s', (said, wanted) =>
    expect(faultTitle(said, '', 'dynamo').title).toBe(wanted),
  );
  test.fails.each(FAULTS_NOT_YET)('not yet: %s (%s) → %s', (said, it, wanted) =>
    expect(faultTitle(said, '', it).title).toBe(wanted),
  );
});

describe('a sum is called by what was bought, not by where', () => {
  test.each(COST_NAMES)('%s → %j', (said, wanted) => {
    const { proposals } = written('a.md', `# Bought\n\n- ${said}\n`);
    expect(proposals.filter(({ kind }) => kind === 'cost').map(({ row }) => row['item'])).toEqual(wanted);
  });
});

describe('what "it" stands for is looked up in what was said before', () => {
  test.each([
    ['- the lower hose had gone soft\n- took it off and threw it away\n', 'Take the lower hose off'],
    ['- brushed the float bowl with petrol and rinsed it\n', 'Brush the float bowl with petrol'],
    [
      '- the near side drum is scored\n- measured it with the gauge\n',
      'Measure the near side drum with the gauge',
    ],
  ])('%j → %s', (text, wanted) => {
    const { draft } = written('a.md', `# Work\n\n${text}`);
    expect(draft.steps.map((step) => step.title)).toContain(wanted);
  });
});

describe('who is suspected is told by what somebody thinks, reckons or asks', () => {
  test.each([
    ["so i think it's the ball joints and not the box please", '', ['Ball joints']],
    ["so it might be that and i'll order one", 'detent spring', ['Detent spring']],
    ["i bet it's the bearing", '', ['Bearing']],
    ['drip at the water pump, one every 30 s, from the hole below = seal', '', ['Seal']],
    ['o/s flasher stays on, relay tired?', '', ['Relay']],
    ["I don't think it's the box", '', []],
    ["could be the neighbour's cat", '', []],
    ['it is the coil and nothing else', '', []],
  ] as const)('%s (%s) → %j', (said, it, wanted) => expect(suspectsIn(said, it)).toEqual(wanted));

  test('a suspect goes to the fault that is talked of', () => {
    const { proposals } = written(
      'a.md',
      '# Drive\n\n- third gear jumps out on the overrun\n- could be the detent spring\n',
    );
    expect(proposals.find(({ kind }) => kind === 'fault')?.row).toMatchObject({ suspects: 'Detent spring' });
  });
});

describe('a measurement is called by what was measured, with the figure of a new one and the figure as left', () => {
  test.each([
    [
      "the lining of the clutch measured five point six millimetres and a new one's eight millimetres",
      { found: '5.6', new: '8' },
    ],
    ['clearance of the pipe to the floor was 4 mm, now 12 mm', { item: 'Pipe', found: '4', left: '12' }],
    ['wall thickness measured 0.7 mm, it was 1.0 mm new', { item: 'Wall thickness', found: '0.7', new: '1' }],
    ['brushes measured 7 mm, new is 14 mm, limit 6 mm', { item: 'Brushes', found: '7', new: '14', min: '6' }],
    ['drum measured 160.4 mm at the widest', { item: 'Drum', position: 'at the widest', found: '160.4' }],
    ['I measured the thrust washers, 1.9 mm and should be 2.5 mm', { item: 'Thrust washers', min: '2.5' }],
    ['with the micrometer the pin measured 15.61 mm', { item: 'Pin', found: '15.61' }],
  ])('%s → %j', (said, wanted) => {
    const { proposals } = written('a.md', `# Measured\n\n- ${said}\n`);
    expect(proposals.find(({ kind }) => kind === 'measurement')?.row).toMatchObject(wanted);
  });
});

test('a step without its thing is called by what was worked on before, not by what was named beside it', () => {
  const text =
    '- tank off, 2 bolts + the strap\n- rinsed w/ hot water and soda\n- battery reads 11.9 V after a week\n- charged at 2 A for six hours, terminals green\n';
  const draft = draftOf([readSource({ name: 'a.md', text })], {});
  const titles = draft.steps.map(({ title }) => title);
  expect(titles).toContain('Rinse the tank');
  expect(titles).toContain('Charge the battery');
});
