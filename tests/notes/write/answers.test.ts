import { writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { afterEach, beforeEach, expect, test } from 'vitest';
import { writeUpShop } from '../../cli/write-up-shop.ts';

const NOTES = `# Drive

- drained two gallons of petrol into the can
- drove it up the lane, 55 on the level and 40 uphill in third
- took the wheel off
`;
let shop: ReturnType<typeof writeUpShop>;
beforeEach(async () => {
  shop = writeUpShop({ notes: { 'drive.md': NOTES } });
  await shop.run(['write-up', shop.files[0] ?? '']);
});
afterEach(() => shop.clear());

const answer = (id: string, said: string): void => {
  const text = shop.read('proposals.yaml');
  const next = text.replace(
    new RegExp(`(id: "?${id}"?\\n(?:.*\\n)*?\\s+answer: )""`),
    (_, lead: string) => lead + said,
  );
  expect(next).not.toBe(text);
  shop.write('proposals.yaml', next);
};
const again = () => shop.run(['write-up', shop.files[0] ?? '']);

test('a gallon and a bare speed are asked for, once each, with the lines that they stand in', () => {
  const text = shop.read('proposals.yaml');
  expect(text.match(/kind: question/g)).toHaveLength(2);
  expect(text).toContain('Which gallon, quart or pint is meant? Write imperial or US.');
  expect(text).toContain('asked_in: "notes/drive.md:3"');
  expect(shop.read('chapter.mdx')).not.toContain('gal"');
});

test('an answer gives the chapter’s figures their unit and proposes the speeds, and is remembered', async () => {
  answer('which-gallon', 'imperial');
  answer('which-speed', 'km/h');
  const { out } = await again();
  expect(out).toContain('Your answers were used in 2 statements');
  expect(shop.read('chapter.mdx')).toContain('<Qty of="2 imp gal" />');
  expect(shop.read('chapter.mdx')).toContain('<Qty of="55 km/h" />');
  expect(shop.read('proposals.yaml')).toMatch(/kind: road-test point[\s\S]*value: "55"[\s\S]*unit: km\/h/);
  const once = shop.read('chapter.mdx');
  shop.note('drive.md', `${NOTES}- put another gallon in\n`);
  const grown = await again();
  expect(grown.out).toContain('Added');
  expect(shop.read('chapter.mdx')).toContain('1 imp gal');
  expect(shop.read('chapter.mdx')).toContain(once.trimEnd().slice(0, -9));
  expect(shop.read('proposals.yaml').match(/kind: question/g)).toHaveLength(2);
});

test('--take uses the answers too, from the notes in the author’s folder', async () => {
  answer('which-gallon', 'US');
  const name = shop.folder().split('/').at(-1) ?? '';
  const { out } = await shop.run(['write-up', '--take', name]);
  expect(out).toContain('Your answers were used');
  expect(shop.read('chapter.mdx')).toContain('<Qty of="2 US gal" />');
});

test('a wrong answer is told with its place and what to write, and nothing is written', async () => {
  answer('which-gallon', 'the big one');
  const before = shop.all();
  const line =
    shop
      .read('proposals.yaml')
      .split('\n')
      .findIndex((one) => one.includes('the big one')) + 1;
  const { code, err } = await again();
  expect(code).toBe(1);
  expect(err).toContain(
    `proposals.yaml:${line}:15 "the big one" is no answer to "Which gallon, quart or pint is meant?" Write imperial or US.`,
  );
  expect(shop.all()).toEqual(before);
});

test('words that the author changed meanwhile stay, and that the unit is wanted there is said', async () => {
  answer('which-gallon', 'US');
  shop.write('chapter.mdx', shop.read('chapter.mdx').replaceAll('into the can', 'into a clean can'));
  const { out } = await again();
  expect(out).toContain('Write the unit there yourself.');
  expect(shop.read('chapter.mdx')).toContain('two gallons of petrol into a clean can');
});

test('a question without its answer stays open, and the desk lists it', async () => {
  answer('which-gallon', 'US');
  await again();
  const { out } = await shop.run(['desk']);
  expect(out).toMatch(
    /Questions without an answer \(1\)\n {2}03-drive {2}In which unit did the instrument show these speeds\?/,
  );
});

test('series.yaml answers for every chapter', async () => {
  const file = join(shop.content, 'series.yaml');
  const yaml = shop.all().get('series.yaml') ?? '';
  writeFileSync(file, `${yaml}gallon: imperial\n`);
  await shop.run([
    'write-up',
    shop.note('next.md', '# Next\n\n- took the tank off\n- drained two gallons of petrol\n'),
  ]);
  const text = [...shop.all()].find(([name]) => /04-next\/chapter/.test(name))?.[1];
  expect(text).toContain('2 imp gal');
});
