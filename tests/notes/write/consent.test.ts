import { readdirSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { readSource } from '../../../src/notes/read/read-source.ts';
import { writeUp } from '../../../src/notes/write-up.ts';
import { writeUpShop } from '../../cli/write-up-shop.ts';

const HEAD = 'name,credit,kind,what,from,until,chapters,consent,link\n';
const NOTES = `# Saturday at Berta's bench

- took the lathe tool from Berta and turned the spacer
- fitted Berta's old coil in place of ours

## Berta

- drained the gearbox oil

| who | what | found |
|---|---|---|
| Berta | play at the rim | 3.4 mm |
| us | float | 0.2 mm |

- [ ] ring Berta about the bush
`;

const chapterOf = (text: string, unnamed: readonly string[], name = 'a.md') =>
  writeUp([readSource({ name, text })], {
    chapter: '03-notes',
    title: "At Berta's bench",
    date: '2026-05-02',
    currency: 'EUR',
    habits: {},
    around: { texts: new Map([[name, text]]) },
    unnamed,
  });

test('a name that may not be said stands in no title, heading, table row, summary or address of the chapter', async () => {
  const shop = writeUpShop({ notes: { 'bench.md': NOTES } });
  writeFileSync(join(shop.content, 'supporters.csv'), `${HEAD}Berta Quill,,help,Lathe,,,,no,\n`);
  await shop.run(['write-up', shop.files[0] ?? '']);
  expect(shop.read('chapter.mdx')).not.toMatch(/berta|quill/i);
  expect(readdirSync(join(shop.content, 'chapters')).join(' ')).not.toMatch(/berta/i);
  // What names her is not lost: it waits among the proposals.
  expect(shop.read('proposals.yaml')).toMatch(/Berta/);
  expect(shop.read('chapter.mdx')).toContain('| us | float | 0.2 mm |');
  const check = await shop.run(['check']);
  expect(check.out + check.err).not.toContain(' error ');
  shop.clear();
});

test('with consent, or where nobody of the name is in the register, the words stand as they were said', () => {
  expect(chapterOf(NOTES, []).chapter).toMatch(/Berta/);
});

test('the name is kept out of titles in speech too, where nobody writes a capital', () => {
  const talk =
    "[0:05] so took berta's drum off and it's scored\n[0:20] then i fitted the new seal from berta quill to the hub\n[0:40] and greased the hub\n";
  const { chapter, draft } = chapterOf(talk, ['Berta Quill'], 'talk.txt');
  expect(chapter).not.toMatch(/berta|quill/i);
  for (const step of draft.steps) expect(step.title).not.toMatch(/berta|quill/i);
});

test('wherever in the notes the name stands, the chapter is without it', () => {
  const line = fc.constantFrom(
    "- took Berta's tank off\n",
    '- the tank came from BERTA\n',
    '# Berta\n\n',
    '| Berta | 1.2 mm |\n|---|---|\n| lever | Berta |\n\n',
    'I thanked Quill for the press.\n\n',
    '- greased the berta-side hub\n',
    '- bled the brakes\n',
    '[0:10] berta held the pedal\n',
    '> Berta said so\n\n',
  );
  fc.assert(
    fc.property(fc.array(line, { minLength: 1, maxLength: 12 }), (lines) => {
      const { chapter } = chapterOf(lines.join(''), ['Berta Quill']);
      expect(chapter).not.toMatch(/(?<!\p{L})(?:berta|quill)(?!\p{L})/iu);
    }),
    { numRuns: 300 },
  );
});
