import { fileURLToPath } from 'node:url';
import { describe, expect, test } from 'vitest';
import { hazard } from '../../../src/record/hazards/catalogue.ts';
import { findHazards } from '../../../src/record/hazards/find.ts';
import { exemptionsOf, type GateChapter, gateFindings } from '../../../src/record/hazards/gate.ts';
import { rank } from '../../../src/record/hazards/hazard.ts';
import { readSeries } from '../../../src/record/read-series.ts';

const called = (text: string) => findHazards({ text }).map((one) => one.hazard);

const place = { file: 'content/chapters/01-a/chapter.mdx', line: 9, column: 1 };
const step = (
  text: string,
  more: Partial<GateChapter['steps'][number]> = {},
): GateChapter['steps'][number] => ({
  title: 'A step',
  number: 1,
  tools: [],
  hazards: [],
  notHazard: new Map(),
  prose: [{ text, place }],
  place: { ...place, line: 5 },
  ...more,
});
const findings = (...steps: GateChapter['steps']) => gateFindings({ steps, photos: [], hazards: [] });

describe('The gate hears', () => {
  test.each([
    ['both rear wheels hanging, me on the creeper', 'under-raised-vehicle'],
    ['The drained tank lay open on the bench for a week and still smelt.', 'petrol-vapour'],
    ['a sniff of easy-start and she was away', 'starting-fluid'],
    ["now the linings i don't know what they are", 'brake-dust'],
    ['12 kV at the cap with the tester', 'ht-spark'],
    ['Blow it through at 6 bar.', 'compressed-air'],
    ['The axle weighs 48 kg and went up by hand.', 'manual-lifting'],
    ['twenty five to one, oil first', 'mixing-fuel'],
    ['ran it in the shed with the doors shut', 'engine-indoors'],
    ['plugs out, spin it over', 'cranking-fuel-mist'],
  ])('%s → %s', (text, id) => expect(called(text)).toContain(id));

  test('British and American words alike', () => {
    for (const [british, american] of [
      ['Syphon the petrol out of the tank.', 'Siphon the gasoline out of the tank.'],
      ['Lever the tyre off the rim.', 'Lever the tire off the rim.'],
      ['Put it on axle stands and crawl under.', 'Put it on jack stands and crawl under.'],
      ['Take the earth lead off the battery.', 'Take the ground cable off the battery.'],
      ['Soak the chain in paraffin.', 'Soak the chain in kerosene.'],
      ['Clean the carburettor in white spirit.', 'Clean the carburetor in mineral spirits.'],
    ] as const)
      expect(called(british)[0]).toBe(called(american)[0]);
  });

  test('every inflection of a verb', () => {
    for (const text of [
      'Weld the tank.',
      'He welds the tank.',
      'We welded the tank.',
      'Welding the tank again.',
    ])
      expect(called(text)).toContain('welding-near-tank');
    for (const text of ['Spill petrol.', 'spilt petrol', 'spilled petrol', 'spilling petrol'])
      expect(called(text)).toContain('petrol-vapour');
  });

  test('compound nouns apart, joined and hyphenated', () => {
    for (const text of [
      'blew it out with the air line',
      'blew it out with the airline',
      'blew it out with the air-line',
    ])
      expect(called(text)).toContain('compressed-air');
  });

  test('negations as what they are: the hazard is still there', () => {
    expect(called("Don't run the engine in the garage, not even for a minute.")).toContain('engine-indoors');
    expect(called('Never weld the fuel tank.')).toContain('welding-near-tank');
  });

  test('hazards spread over title, text, captions and tools of one step', () => {
    const ids = findHazards({
      title: 'Mend the seam of the tank',
      text: 'Run it along and let it cool.',
      tools: ['soldering iron'],
    }).map((one) => one.hazard);
    expect(ids).toContain('welding-near-tank');
    expect(findHazards({ text: 'Undo the hub nut.', tools: ['trolley jack'] })[0]?.field).toBe('tools');
  });
});

describe('The gate is not fooled by', () => {
  test.each([
    'That is a hot topic on the forum.',
    'Sorting the boxes drained my patience.',
    'I bought the parts in spring 2019.',
    'We gave it a battery of tests.',
    'The charge for postage was more than the seal.',
    'A jack of all trades, that was the previous owner.',
    'It was the tipping point for the whole project.',
    'Turn the crank by hand until the mark meets the pointer.',
    'Set the points gap to 0.4 mm with the feeler, engine at rest.',
    'Her tank as built holds 12 litres, the brochure says.',
    'Order seven has the lever and two cork seals, 158 crowns.',
    'Drill into the archives far enough and somebody kept the brochure.',
  ])('%s', (text) => expect(called(text)).toEqual([]));
});

describe('A finding', () => {
  test('names hazard, words and place, and what to write', () => {
    const [one] = findings(step('Lie on the creeper and look along the exhaust.'));
    expect(one).toMatchObject({ kind: 'missing', place, step: 1 });
    expect(one?.hazard.id).toBe('under-raised-vehicle');
    expect(one?.message).toContain('DANGER: Under a raised vehicle');
    expect(one?.message).toContain('Add "under-raised-vehicle" to the step\'s hazards');
  });

  test('is an error for a danger or warning and a warning for a caution', () => {
    expect(findings(step('Drill the stud out with a 5 mm bit.')).map((one) => one.kind)).toEqual([
      'missing caution',
    ]);
    expect(findings(step('Blow it out with the air line.')).map((one) => one.kind)).toEqual(['missing']);
  });

  test('is gone once the hazard is declared, or ruled out with a reason', () => {
    const text = 'Blow it out with the air line.';
    expect(findings(step(text, { hazards: ['compressed-air'] }))).toEqual([]);
    expect(
      findings(step(text, { notHazard: new Map([['compressed-air', 'A bellows, not a compressor.']]) })),
    ).toEqual([]);
  });

  test('tells an exemption that nothing calls for, and one that contradicts a declaration', () => {
    expect(
      findings(step('Two bolts and a washer.', { notHazard: new Map([['noise', 'Nothing runs.']]) })).map(
        (one) => one.kind,
      ),
    ).toEqual(['idle exemption']);
    expect(
      findings(
        step('Blow it out with the air line.', {
          hazards: ['compressed-air'],
          notHazard: new Map([['compressed-air', 'A bellows.']]),
        }),
      ).map((one) => one.kind),
    ).toEqual(['both']);
  });

  test('comes back under a lesser note once the greater is ruled out', () => {
    const text = 'Lever the tyre back over the rim, then the wheel nuts; one stud snapped.';
    expect(findings(step(text)).map((one) => one.hazard.id)).toEqual(['tyres-rims']);
    const ruledOut = step(text, { notHazard: new Map([['tyres-rims', 'The tyre stayed at the dealer.']]) });
    expect(findings(ruledOut).map((one) => one.hazard.id)).toEqual(['overstretched-bolt']);
  });

  test('asks for the note on the weld beside the note on the tank, for each tells of another harm', () => {
    expect(findings(step('Braze the patch on the sill.')).map((one) => one.hazard.id)).toEqual([
      'welding-near-tank',
      'hot-work',
    ]);
  });

  test('reads captions of pictures that stand outside steps', () => {
    const photo = { caption: 'Both wheels hanging, me on the creeper.', place };
    expect(gateFindings({ steps: [], photos: [photo], hazards: [] }).map((one) => one.hazard.id)).toEqual([
      'under-raised-vehicle',
    ]);
    expect(gateFindings({ steps: [], photos: [photo], hazards: ['under-raised-vehicle'] })).toEqual([]);
  });

  test('hears what the recording says, in the step that is shown then, and before the first one', () => {
    const cues = [
      { from: 4, text: 'so both wheels hanging and me on the creeper' },
      { from: 65, text: "a bit of air from the compressor and they're clean" },
    ];
    const spoken = { file: 'content/chapters/01-a/captions.vtt', cues };
    const chapter = { steps: [step('Clean the cover.', { at: 60 })], photos: [], hazards: [], spoken };
    const told = gateFindings(chapter);
    expect(told.map((one) => [one.hazard.id, one.step])).toEqual([
      ['compressed-air', 1],
      ['under-raised-vehicle', undefined],
    ]);
    expect(told[1]?.place).toEqual({ file: spoken.file });
    const noted = {
      ...chapter,
      hazards: ['under-raised-vehicle'],
      steps: [{ ...chapter.steps[0], hazards: ['compressed-air'] }],
    };
    expect(gateFindings(noted as GateChapter)).toEqual([]);
  });

  test('asks for nothing where a notice alone applies', () => {
    expect(findings(step('The polarity of the dynamo field was reversed.'))).toEqual([]);
  });
});

test('exemptions are listed with chapter, step and reason', () => {
  const notHazard = new Map([['noise', 'The pipe is on.']]);
  expect(exemptionsOf([{ id: '01-a', steps: [{ number: 3, notHazard }] }])).toEqual([
    { chapter: '01-a', step: 3, hazard: 'noise', reason: 'The pipe is on.' },
  ]);
});

test('taking any danger or warning whose words stand in its step away from a step of the demo makes the gate speak', async () => {
  const { series } = await readSeries(fileURLToPath(new URL('../../../content', import.meta.url)));
  let tried = 0;
  for (const chapter of series?.chapters ?? []) {
    for (const one of chapter.steps) {
      const text = one.prose.map((passage) => passage.text).join('\n');
      const here = new Set(findHazards({ text, tools: one.tools }).map((found) => found.hazard));
      for (const id of one.hazards) {
        const entry = hazard(id);
        if (entry === undefined || rank(entry.signal) > rank('WARNING') || !here.has(id)) continue;
        tried += 1;
        const without = { ...one, hazards: one.hazards.filter((other) => other !== id) };
        const told = gateFindings({ steps: [without], photos: [], hazards: [] });
        expect(
          told.map((finding) => finding.hazard.id),
          `${chapter.id} ${one.id}`,
        ).toContain(id);
      }
    }
  }
  expect(tried).toBeGreaterThan(40);
});

test('twice the steps take about twice the time', () => {
  const text =
    'Jack the front up, set the stands, drain the tank into a can and blow the jets out at 6 bar. '.repeat(6);
  const time = (steps: number) => {
    const begin = process.cpuUsage();
    for (let i = 0; i < steps; i++) findHazards({ text: `${text}${i}` });
    const used = process.cpuUsage(begin);
    return used.user + used.system;
  };
  time(1000);
  const once = time(1000);
  expect(time(2000)).toBeLessThan(once * 3.5);
});
