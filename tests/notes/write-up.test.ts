import { existsSync, mkdirSync, readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { readSource } from '../../src/notes/read/read-source.ts';
import { aWorkshop } from '../cli/a-workshop.ts';

const NOTES =
  '# 14 march - tank\n\n- tank off, about 3 L of old petrol drained into the red can\n- tap weeps at the lever, leave it till spring\n- ordered: 2 cork seals 4.80 EUR\n- thanks to Berta for the compressor\n';

function withNotes(text: string, name = 'evening.md') {
  const shop = aWorkshop({});
  mkdirSync(join(shop.root, 'content', 'notes'), { recursive: true });
  const file = join(shop.root, 'content', 'notes', name);
  writeFileSync(file, text);
  const chapters = () => readdirSync(join(shop.root, 'content', 'chapters'));
  const folder = () =>
    join(
      shop.root,
      'content',
      'chapters',
      chapters().find((one) => existsSync(join(shop.root, 'content', 'chapters', one, 'write-up.json'))) ??
        '',
    );
  return {
    ...shop,
    file,
    chapters,
    folder,
    chapter: () => readFileSync(join(folder(), 'chapter.mdx'), 'utf8'),
  };
}

test('notes become a held chapter that the check accepts, and nothing goes into a register', async () => {
  const shop = withNotes(NOTES);
  const names = shop.names();
  const { code, out } = await shop.run('write-up', shop.file);
  expect(code, out).toBe(0);
  expect(shop.names()).toEqual(names);
  expect(shop.chapter()).toContain('held: true');
  expect(shop.chapter()).toContain('petrol-vapour');
  const check = await shop.run('check');
  expect(check.out + check.err).not.toContain(' error ');
  shop.clear();
});

test('grown notes add what is new and leave the author’s edits alone', async () => {
  const shop = withNotes(NOTES);
  await shop.run('write-up', shop.file);
  const path = join(shop.folder(), 'chapter.mdx');
  writeFileSync(path, readFileSync(path, 'utf8').replace('about', 'very nearly'));
  writeFileSync(shop.file, `${NOTES}- charged the battery at 2 A for six hours\n`);
  const { out } = await shop.run('write-up', shop.file);
  expect(out).toContain('Added');
  expect(shop.chapter()).toContain('very nearly');
  expect(shop.chapter()).toContain('Charge the battery');
  const once = shop.chapter();
  expect((await shop.run('write-up', shop.file)).out).toContain('Nothing is new');
  expect(shop.chapter()).toBe(once);
  writeFileSync(path, once.replace('held: true', 'held: false'));
  writeFileSync(shop.file, `${NOTES}- charged the battery at 2 A for six hours\n- fitted the tap\n`);
  const refused = await shop.run('write-up', shop.file);
  expect(refused.code).toBe(1);
  expect(refused.err).toContain('released');
  shop.clear();
});

test('a proposal that the author marks goes to the end of its table, once', async () => {
  const shop = withNotes(NOTES);
  await shop.run('write-up', shop.file);
  const path = join(shop.folder(), 'proposals.yaml');
  writeFileSync(path, readFileSync(path, 'utf8').replace(/(kind: cost\n\s+accept: )no/, '$1yes'));
  const name = shop.folder().split('/').at(-1) ?? '';
  await shop.run('write-up', '--take', name);
  await shop.run('write-up', '--take', name);
  const ledger = shop.read('ledger.csv');
  expect(ledger.match(/4\.80/g)).toHaveLength(1);
  expect(shop.names()).not.toContain('supporters.csv.new');
  shop.clear();
});

test('an empty file, a binary file and a file named twice are refused in words, with nothing written', async () => {
  const shop = withNotes(' \n');
  const before = shop.chapters();
  expect((await shop.run('write-up', shop.file)).err).toContain('is empty');
  writeFileSync(shop.file, Buffer.from([80, 0, 1, 2]));
  expect((await shop.run('write-up', shop.file)).err).toContain('NUL byte');
  expect((await shop.run('write-up', shop.file, shop.file)).err).toContain('named twice');
  expect(shop.chapters()).toEqual(before);
  shop.clear();
});

test('cues that overlap or run backward are told with their line, and their words kept', () => {
  const text =
    'WEBVTT\n\n00:01.000 --> 00:05.000\nwheel off\n\n00:04.000 --> 00:06.000\nhub off\n\n00:03.000 --> 00:02.000\ndrum off\n';
  const { warnings, masked } = readSource({ name: 'a.vtt', text });
  expect(warnings.map(({ line }) => line)).toEqual([6, 9]);
  expect(masked).toContain('drum off');
});

test('a transcript of 10 MB is cut into blocks', () => {
  const line =
    'so the drum is scored and i measured it at one hundred and sixty point four millimetres and it leaks\n';
  let text = '';
  for (let at = 0; text.length < 10_000_000; at += 7)
    text += `[${Math.floor(at / 60)}:${String(at % 60).padStart(2, '0')}] ${line}`;
  const read = readSource({ name: 'long.txt', text });
  expect(read.blocks.length).toBeGreaterThan(1000);
});
