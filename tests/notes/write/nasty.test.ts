import { readFileSync, writeFileSync } from 'node:fs';
import { parse as parseCsv } from 'csv-parse/sync';
import fc from 'fast-check';
import { mdxToJs, mdxToMdast } from 'satteri';
import { expect, test } from 'vitest';
import { parse as parseYaml } from 'yaml';
import { readSource } from '../../../src/notes/read/read-source.ts';
import { writeUp } from '../../../src/notes/write-up.ts';
import { readSeries } from '../../../src/record/read-series.ts';
import { writeUpShop } from '../../cli/write-up-shop.ts';

interface Node {
  type: string;
  name?: string | null;
  value?: string;
  attributes?: { name?: string; value?: unknown }[];
  children?: Node[];
}

const written = (name: string, text: string, title = 'Notes') =>
  writeUp([readSource({ name, text })], {
    chapter: '03-notes',
    title,
    date: '2026-05-02',
    currency: 'EUR',
    habits: {},
    around: { texts: new Map() },
  });
const treeOf = (chapter: string): Node =>
  mdxToMdast(chapter.replace(/^---\n[\s\S]*?\n---\n/, '')) as unknown as Node;
const all = (node: Node, type: string): Node[] => [
  ...(node.type === type ? [node] : []),
  ...(node.children ?? []).flatMap((child) => all(child, type)),
];
const textOf = (node: Node): string => node.value ?? (node.children ?? []).map(textOf).join('');

const MARKS =
  '{ } < > " \' ` * _ ~ # & | \\ = + - @ $ ^ [ ] ( ) ! : ; / % &lt; &#123; </Step> {x} \x24{y} <b> *a* [a](b) ![x](y) =1+1 @cmd -- --- ``` import export'.split(
    ' ',
  );
const WORDS =
  'tank tap seal hub drum leaks worn took off the cracked fitted old new gasket Łódź 🛠 naïve'.split(' ');
const nasty = fc
  .array(fc.oneof(fc.constantFrom(...MARKS), fc.constantFrom(...WORDS)), { minLength: 1, maxLength: 8 })
  .map((parts) => parts.join(' '));
const withoutMoney = nasty.map((one) => one.replaceAll('$', ''));
const glued = fc
  .array(fc.oneof(fc.constantFrom(...MARKS), fc.constantFrom(...WORDS)), { minLength: 1, maxLength: 6 })
  .map((parts) => parts.join(''));

test('a step’s title comes out of a compiled chapter as the characters that it is, whatever the notes say', () => {
  fc.assert(
    fc.property(fc.oneof(nasty, glued), fc.oneof(nasty, glued), (thing, more) => {
      const { chapter, draft } = written(
        'a.md',
        `# Work\n\n- took the ${thing} off\n- fitted the ${more} to the hub\n`,
      );
      expect(() => mdxToJs(chapter.replace(/^---\n[\s\S]*?\n---\n/, ''))).not.toThrow();
      const titles = all(treeOf(chapter), 'mdxJsxFlowElement')
        .filter(({ name }) => name === 'Step')
        .map(({ attributes }) => attributes?.find(({ name }) => name === 'title')?.value);
      expect(titles).toEqual(
        draft.steps.filter(({ statements }) => statements.length > 0).map(({ title }) => title),
      );
      for (const title of titles) expect(title).toEqual(expect.stringMatching(/^[^<>{}`\\]+$/));
    }),
    { numRuns: 300 },
  );
});

test('a table of the notes keeps its columns, and its cells their characters', () => {
  const cell = fc.oneof(nasty, glued).map((one) => one.replace(/[|\\`]/g, '/').trim() || 'x');
  fc.assert(
    fc.property(fc.array(fc.tuple(cell, cell, cell), { minLength: 1, maxLength: 4 }), (rows) => {
      const lines = rows.map((row) => `| ${row.join(' | ')} |`);
      const text = `# Table\n\n| what | found | limit |\n|---|---|---|\n${lines.join('\n')}\n`;
      const { chapter, draft } = written('a.md', text);
      expect(() => mdxToJs(chapter.replace(/^---\n[\s\S]*?\n---\n/, ''))).not.toThrow();
      const [table] = all(treeOf(chapter), 'table');
      const told = draft.statements.filter(({ kind, home }) => kind === 'row' && home.kind === 'prose');
      expect(table?.children?.length).toBe(told.length);
      for (const [at, row] of (table?.children ?? []).entries()) {
        expect(row.children?.length).toBe(3);
        const cells = told[at]?.cells ?? [];
        for (const [n, one] of (row.children ?? []).entries())
          expect(textOf(one).replace(/\s+/g, ' ').trim()).toBe((cells[n] ?? '').replace(/\s+/g, ' ').trim());
      }
      const jsx = all(treeOf(chapter), 'mdxJsxFlowElement').find(({ name }) => name === 'Table');
      expect(jsx?.attributes?.find(({ name }) => name === 'id')?.value).toEqual(
        expect.stringMatching(/^[\p{L}\p{N}-]+$/u),
      );
    }),
    { numRuns: 200 },
  );
});

test('a chapter’s title and summary are plain text of its head, whatever stands in the heading', () => {
  fc.assert(
    fc.property(fc.oneof(nasty, glued), (heading) => {
      const { chapter } = written(
        'a.md',
        `# ${heading}\n\n- took the tank off\n`,
        heading.replace(/[\n\r]/g, ' '),
      );
      const head = /^---\n([\s\S]*?)\n---\n/.exec(chapter)?.[1] ?? '';
      const read = parseYaml(head) as Record<string, unknown>;
      expect(Object.keys(read)).toEqual(['title', 'date', 'summary', 'held']);
      expect(read['title']).toBe(heading);
      expect(read['held']).toBe(true);
    }),
    { numRuns: 300 },
  );
});

test('what proposals write stays data: every table has its columns, no cell is a formula, every fault is read back', async () => {
  await fc.assert(
    // A sum's sign beside a figure makes it a sum, which then wants its rate: no sign of money here.
    fc.asyncProperty(withoutMoney, withoutMoney, withoutMoney, async (fault, part, item) => {
      const shop = writeUpShop({
        notes: {
          'evening.md': `# Evening\n\n- the ${fault} tap leaks ${fault}\n- ordered: 2 ${part} seals 4.80 EUR\n- measured the ${item} drum: 160.4 mm\n- took the ${item} hub off\n- thanks to Berta for the ${part} press\n`,
        },
      });
      await shop.run(['write-up', shop.files[0] ?? '']);
      const file = shop.path('proposals.yaml');
      writeFileSync(file, readFileSync(file, 'utf8').replaceAll('consent: ""', 'consent: yes'));
      const { err } = await shop.run(['write-up', '--take', shop.folder().split('/').at(-1) ?? '', '--all']);
      expect(err).not.toMatch(/ at .*\.ts/);
      for (const [name, text] of shop.all()) {
        const utf8 = Buffer.from(text, 'latin1').toString('utf8');
        if (name.endsWith('.csv')) {
          const rows = parseCsv(utf8, { bom: true }) as string[][];
          for (const row of rows) {
            expect(row.length, name).toBe(rows[0]?.length);
            for (const cell of row) expect(cell, name).not.toMatch(/^\s*[=+@]|^-(?!\d)/);
          }
        }
        if (name.startsWith('faults/')) {
          const head = /^---\r?\n([\s\S]*?)\r?\n---/.exec(utf8)?.[1] ?? '';
          expect(Object.keys(parseYaml(head) as object)).toContain('title');
        }
      }
      const { problems } = await readSeries(shop.content, { root: shop.root });
      expect(problems.filter(({ severity }) => severity === 'error').map(({ message }) => message)).toEqual(
        [],
      );
      shop.clear();
    }),
    { numRuns: Number(process.env['OILWAY_FUZZ'] ?? 12) },
  );
}, 120_000);
