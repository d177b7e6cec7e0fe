import { appendFileSync, mkdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { writeUpShop } from './write-up-shop.ts';

const fault = (review: string): string =>
  `---\ntitle: Horn dead\nsystem: electrics\nsymptom: No sound.\nevents:\n  - chapter: 01-first-look\n    date: 2026-01-01\n    what: found\n    severity: nuisance\n    text: No sound at all.\n  - chapter: 01-first-look\n    date: 2026-01-01\n    what: put off\n    text: Left for now.\n${review === '' ? '' : `    review: ${review}\n`}---\n`;

function shopAt(asOf: string, review: string) {
  const shop = writeUpShop();
  const file = join(shop.content, 'series.yaml');
  writeFileSync(file, `${readFileSync(file, 'utf8').replace(/^as_of:.*\n/m, '')}as_of: ${asOf}\n`);
  mkdirSync(join(shop.content, 'faults'), { recursive: true });
  writeFileSync(join(shop.content, 'faults', 'horn-dead.md'), fault(review));
  return shop;
}

test.each([
  ['today', '2026-06-01', true],
  ['yesterday', '2026-05-31', true],
  ['tomorrow', '2026-06-02', false],
  ['without a date', '', false],
])('a fault put off for a look %s', async (_, review, listed) => {
  const shop = shopAt('2026-06-01', review);
  const { code, out } = await shop.run(['desk']);
  expect(code).toBe(0);
  expect(out.includes(`horn-dead  since ${review}: Horn dead`)).toBe(listed);
  expect(out).toContain('2026-06-01');
  shop.clear();
});

test('a clear desk says so', async () => {
  const shop = writeUpShop();
  expect((await shop.run(['desk'])).out).toMatch(/^The desk is clear, as of \d{4}-\d\d-\d\d\.\n$/);
  shop.clear();
});

test('held chapters, words not placed, open proposals and wanted parts are listed', async () => {
  const shop = writeUpShop({
    notes: {
      'evening.md':
        '# Evening\n\n- took the tank off\n- horn dead\n- 12.5\n\n## Costs\n\n- see you next time\n',
    },
  });
  writeFileSync(
    join(shop.content, 'parts.csv'),
    'part,name,system,status\nstrainer,Fuel strainer,fuel,wanted\nseal,Cork seal,fuel,arrived\n',
  );
  await shop.run(['write-up', shop.files[0] ?? '']);
  const { out } = await shop.run(['desk']);
  expect(out).toContain('Held chapters (1)\n  03-evening  Evening\n');
  expect(out).toMatch(
    /Not placed \(3\)\n {2}content\/chapters\/03-evening\/chapter\.mdx:\d+ {2}notes\/evening\.md:5: 12\.5\n/,
  );
  expect(out).toMatch(/Open proposals \(1\)\n {2}03-evening {2}.*1 fault/);
  expect(out).toContain('Wanted parts (1)\n  strainer  Fuel strainer\n');
  shop.clear();
});

test('what is taken or put aside is no longer open', async () => {
  const shop = writeUpShop({ notes: { 'evening.md': '# Evening\n\n- horn dead\n' } });
  await shop.run(['write-up', shop.files[0] ?? '']);
  shop.write('proposals.yaml', shop.read('proposals.yaml').replaceAll('accept: no', 'accept: never'));
  expect((await shop.run(['desk'])).out).not.toContain('Open proposals');
  shop.clear();
});

test('proposals that are no YAML are told with their place', async () => {
  const shop = writeUpShop({ notes: { 'evening.md': '# Evening\n\n- horn dead\n' } });
  await shop.run(['write-up', shop.files[0] ?? '']);
  appendFileSync(shop.path('proposals.yaml'), '  - id: "open\n');
  const { out } = await shop.run(['desk']);
  expect(out).toMatch(/03-evening {2}proposals\.yaml:\d+:\d+ This is not YAML/);
  shop.clear();
});

test('a series in another language is refused politely by write-up, with nothing written', async () => {
  const shop = writeUpShop({ notes: { 'abend.md': '# Abend\n\n- Tank ab\n' } });
  const file = join(shop.content, 'series.yaml');
  writeFileSync(file, `${readFileSync(file, 'utf8').replace(/^language:.*\n/m, '')}language: de\n`);
  const before = shop.all();
  const { code, err } = await shop.run(['write-up', shop.files[0] ?? '']);
  expect(code).toBe(1);
  expect(err).toBe(
    'series.yaml says that the series is written in "de". Notes can be read in English only so far. Nothing was written.\n',
  );
  expect(shop.all()).toEqual(before);
  shop.clear();
});
