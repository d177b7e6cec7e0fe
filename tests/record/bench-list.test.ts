import { fileURLToPath } from 'node:url';
import { expect, test } from 'vitest';
import { benchSheet } from '../../src/cli/bench-list.ts';
import { benchList, RANKS } from '../../src/record/bench-list.ts';
import { asPublished } from '../../src/record/publish.ts';
import { readSeries } from '../../src/record/read-series.ts';
import { chapter, madeSeries } from './made.ts';

const read = async (folder: string) => {
  const { series } = await readSeries(folder);
  if (!series) throw new Error('The series cannot be read.');
  return series;
};
const demo = await read(fileURLToPath(new URL('../../content', import.meta.url)));

test('The demo’s next work comes worst first, with the parts that are on their way and those to be ordered', () => {
  const list = benchList(demo);
  expect(list.map((one) => RANKS.indexOf(one.rank))).toEqual(
    list.map((one) => RANKS.indexOf(one.rank)).toSorted((a, b) => a - b),
  );
  expect(list[0]).toMatchObject({ id: 'front-cylinder-weeps', rank: 'do not drive' });
  expect(list[0]?.waitsFor).toEqual([
    'Front wheel cylinder (on its way)',
    'Front shoes, second pair (on its way)',
  ]);
  expect(list.find((one) => one.id === 'king-pin-rocks')?.waitsFor).toEqual([
    'King pin bushes (to be ordered)',
    'its review on 2026-10-24',
  ]);
  expect(list.filter((one) => one.rank === 'overdue').map((one) => one.what)).toEqual([
    'Look at the chain: sag at the tightest place',
  ]);
  expect(list.filter((one) => one.kind === 'measurement').map((one) => one.waitsFor)).toEqual(
    Array(3).fill(['a finer measurement']),
  );
});

const waiting = () =>
  madeSeries({
    'chapters/02-second-look/chapter.mdx': chapter('Second look', '2026-02-07'),
    'faults/drag.md': `---
title: Brake drags
system: brakes
symptom: Hot.
suspects: [{ id: hose, name: Hose }, { id: shoe, name: Shoe }]
events:
  - { chapter: 01-first-look, date: 2026-01-17, what: found, severity: nuisance, text: Hot. }
  - { chapter: 02-second-look, date: 2026-02-07, what: tried, text: Cool., rules_out: shoe, waits_for: "Zora, to press the pedal" }
---
`,
    'refit.csv': 'line,removed_in,what,action\nbox,02-second-look,Tool box,removed\n',
    'parts.csv': 'part,name,system,status,needed_for\nlid,Lid,body,returned,box\n',
  });

test('What an author wrote under "waits_for" stands on the sheet, and readers never get it', async () => {
  const series = await read(waiting());
  expect(benchSheet(series)).toBe(`Bench list, Tarn 265 Carrier. State of ${series.asOf}.
This log records no open fault that forbids driving; inspection and law decide.

TO BE CLOSED
[ ] Seat (removed)
[ ] Tool box (removed)
      waits for: Lid (sent back: another is needed)

NUISANCE
[ ] Brake drags: not yet tried Hose
      waits for: Zora, to press the pedal
`);
  expect(JSON.stringify(asPublished(series).faults)).not.toContain('Zora');
});

test('Nothing to do is said', async () => {
  const series = await read(
    madeSeries({ 'chapters/02-second-look/chapter.mdx': chapter('Second look', '2026-02-07') }),
  );
  expect(benchSheet({ ...series, refit: [] })).toContain('Nothing is waiting.');
});
