import { readdirSync, readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { expect, test } from 'vitest';
import { madeTranscript } from '../../src/cli/bench/made-transcript.ts';
import { draftOf } from '../../src/notes/draft.ts';
import { sharedDraft } from '../../src/notes/draft-shared.ts';
import { readSource } from '../../src/notes/read/read-source.ts';

const FIRST = fileURLToPath(new URL('labelled/first/', import.meta.url));
const labelled = (name: string) => readSource({ name, text: readFileSync(`${FIRST}${name}`, 'utf8') });

test('a long recording shared among cores is read as one reads it alone', async () => {
  const read = readSource({ name: 'long.txt', text: `Still to buy\n${madeTranscript(60_000)}` });
  const alone = draftOf([read], {});
  expect(alone.steps.length).toBeGreaterThan(50);
  expect(await sharedDraft([read], {}, { cores: 2, long: 50_000 })).toEqual(alone);
}, 30_000);

test('captions are not parted within a sentence, and more cores than blocks are no matter', async () => {
  const captions = readdirSync(FIRST).filter((name) => name.endsWith('.vtt'));
  const reads = [
    ...captions.map(labelled),
    readSource({ name: 'short.txt', text: '[0:01] wheel off\n[0:09] drum off\n' }),
  ];
  expect(reads.some(({ blocks }) => blocks.some(({ goesOn }) => goesOn))).toBe(true);
  expect(await sharedDraft(reads, {}, { cores: 3, long: 0 })).toEqual(draftOf(reads, {}));
}, 30_000);

test('notes under headings are read by one core, whatever their length', async () => {
  const names = readdirSync(FIRST).filter((name) => name.endsWith('.md'));
  expect(names.length).toBeGreaterThan(0);
  const reads = names.map(labelled);
  expect(await sharedDraft(reads, {}, { cores: 2, long: 0 })).toEqual(draftOf(reads, {}));
});

test('the share of a core that fails is read all the same', async () => {
  const captions = readdirSync(FIRST).filter((name) => name.endsWith('.vtt'));
  const reads = captions.map(labelled);
  const helper = new URL('data:text/javascript,throw new Error("no such core")');
  expect(await sharedDraft(reads, {}, { cores: 2, long: 0, helper })).toEqual(draftOf(reads, {}));
});
