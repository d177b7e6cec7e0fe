/** Copies of the demo with one thing changed: what the record must notice, and what it must stop saying. */
import { cpSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { expect, onTestFinished, test } from 'vitest';
import { livesOf } from '../../src/record/fault-life.ts';
import { offTheRoad } from '../../src/record/off-the-road.ts';
import { asPublished } from '../../src/record/publish.ts';
import { readSeries } from '../../src/record/read-series.ts';

const DEMO = fileURLToPath(new URL('../../content', import.meta.url));

async function demoWith(file?: string, from: string | RegExp = '', to = '') {
  const root = mkdtempSync(join(tmpdir(), 'oilway-'));
  onTestFinished(() => rmSync(root, { recursive: true, force: true }));
  const content = join(root, 'content');
  cpSync(DEMO, content, { recursive: true });
  if (file !== undefined) {
    const before = readFileSync(join(content, file), 'utf8');
    const after = before.replace(from, to);
    if (after === before) throw new Error(`${file} does not hold ${from}.`);
    writeFileSync(join(content, file), after);
  }
  const { series, problems } = await readSeries(content);
  if (!series) throw new Error('The demo series cannot be read.');
  return { series: asPublished(series), errors: problems.filter((one) => one.severity === 'error') };
}

const CURED = `  - chapter: 10-round-the-lane
    date: 2026-09-19
    what: cured
    text: New cylinder.
---
`;

test('The demo is not to be driven while its worst fault is open, and the sentence goes when that is cured', async () => {
  const open = await demoWith();
  expect(offTheRoad(open.series).text).toBe('Not to be driven: Front wheel cylinder weeps.');
  const cured = await demoWith('faults/front-cylinder-weeps.md', /\n---\n/, `\n${CURED}`);
  expect(cured.errors).toEqual([]);
  expect(offTheRoad(cured.series).text).toBe('Open faults that limit driving: King pin has play.');
});

test('A fault that came back has both lives', async () => {
  const { series } = await demoWith();
  const fault = series.faults.find((one) => one.id === 'weak-spark-two');
  const lives = fault ? livesOf(fault) : [];
  expect(lives.map((one) => [one.events.at(0)?.what, one.events.at(-1)?.what, one.cured])).toEqual([
    ['found', 'cured', true],
    ['came back', 'cured', true],
  ]);
});

test('A closing step taken away makes the first start fail the check', async () => {
  const { errors } = await demoWith('chapters/08-chain-and-sprockets/chapter.mdx', '"gearbox-oil"', '');
  expect(errors.map((one) => [one.file, one.rule])).toContainEqual([
    'content/chapters/09-first-start/chapter.mdx',
    'refit/open-at-start',
  ]);
});

test.each([
  ['torque', '03-bores-and-rings', 'torque="8, 15, then 22 N·m', 'torque="8, 15, then 27 N·m'],
  ['hazard', '09-first-start', '"engine-indoors", "under-raised', '"under-raised'],
])('A released %s changed without a correction fails the check', async (_what, id, from, to) => {
  const { errors } = await demoWith(`chapters/${id}/chapter.mdx`, from, to);
  expect(errors.some((one) => one.rule === 'released/changed' && one.file.includes(id))).toBe(true);
});

test.each([
  ['setting', 'machine.yaml', '"24 deg"', '"28 deg"', '04-where-the-spark-belongs'],
  ['limit', 'measurements.csv', '54.00,,54.15', '54.00,,54.25', '03-bores-and-rings'],
])('A released %s changed without a correction fails the check', async (_what, file, from, to, id) => {
  const { errors } = await demoWith(file, from, to);
  expect(errors.some((one) => one.rule === 'released/changed' && one.file.includes(id))).toBe(true);
});
