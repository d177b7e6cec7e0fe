import fc from 'fast-check';
import { expect, test } from 'vitest';
import { parse } from 'yaml';
import { proposalsText, readProposals } from '../../src/notes/proposals-file.ts';
import { openSource, readSource } from '../../src/notes/read/read-source.ts';
import { reportOf, spansOf } from '../../src/notes/spans.ts';
import { headOf } from '../../src/notes/write/head.ts';
import { type Plan, writeUp } from '../../src/notes/write-up.ts';

const planFor = (name: string, text: string): Plan => ({
  chapter: '03-notes',
  title: headOf([readSource({ name, text })], '2026-05-02').title,
  date: '2026-05-02',
  currency: 'EUR',
  habits: {},
  around: { texts: new Map([[name, text]]) },
});
const NAMES = ['a.md', 'a.txt', 'a.srt', 'a.vtt'] as const;
const piece = fc.oneof(
  fc.constantFrom(
    '# Tank\n',
    '- took the tank off\n',
    '- 12.5\n',
    'see you next time\n',
    '## Nothing under this\n',
    '| a | b |\n|---|---|\n| play | 0.6 mm |\n',
    '```\ncode\n```\n',
    '<b>bold</b>\n',
    '[0:10] wheel off\n',
    '00:00:01,000 --> 00:00:02,000\nhub off\n\n',
    'WEBVTT\n\n',
    'Łódź, 12 °C, ½ turn — 🛠️ done\n',
    '- thanks to Berta for the press\n',
    '\n',
  ),
  fc.string({ unit: 'binary', maxLength: 10 }).map((text) => text.replaceAll('\0', '')),
);
const source = fc
  .tuple(fc.constantFrom(...NAMES), fc.array(piece, { maxLength: 20 }), fc.boolean(), fc.boolean())
  .map(([name, parts, crlf, bom]) => ({
    name,
    bytes: Buffer.from(
      `${bom ? '\ufeff' : ''}${crlf ? parts.join('').replaceAll('\n', '\r\n') : parts.join('')}`,
    ),
  }));

test('the spans of a source join to it byte for byte, with any line ends, a byte-order mark and any script', () => {
  fc.assert(
    fc.property(source, ({ name, bytes }) => {
      const opened = openSource(name, bytes);
      if (!opened.ok) {
        expect(opened.message).toMatch(/is empty/);
        return;
      }
      const { text } = opened.source;
      const { draft } = writeUp([readSource(opened.source)], planFor(name, text));
      const spans = spansOf(text, draft.statements);
      expect(Buffer.concat(spans.map(({ start, end }) => Buffer.from(text.slice(start, end))))).toEqual(
        bytes,
      );
      for (const { home } of spans) expect(home).toMatch(/^(?:step \d+|prose|proposal|not placed|heading)$/);
    }),
    { numRuns: 400 },
  );
});

test('bytes that are no text are refused with where and what to do', () => {
  expect(openSource('a.md', Buffer.from([65, 0, 66]))).toEqual({
    ok: false,
    message: 'a.md holds a NUL byte after 1 bytes, so it is no text. Save it again as plain UTF-8 text.',
  });
  expect(openSource('a.md', Buffer.from([0xc4, 0x28]))).toMatchObject({ ok: false });
});

const words = (text: string): string[] => text.toLowerCase().match(/[\p{L}\p{N}]+/gu) ?? [];

test('every word of the notes stands in the chapter or among the proposals', () => {
  fc.assert(
    fc.property(
      fc.array(
        fc.constantFrom(
          '- took the tank off and the strap\n',
          '- horn dead, put off\n',
          '- 12.5\n',
          '- thanks to Berta for the press\n',
          '- I owe her a cake\n',
          '- ordered: seals EUR 4.80\n',
          'see you next time\n\n',
          '## Empty heading\n\n',
          'The weather was bad.\n\n',
          '- [ ] find a strainer\n',
          '| what | found |\n|---|---|\n| lever | loose |\n\n',
          '```\nsome code\n```\n\n',
        ),
        { minLength: 1, maxLength: 14 },
      ),
      (lines) => {
        const text = lines.join('');
        const made = writeUp([readSource({ name: 'a.md', text })], planFor('a.md', text));
        const there = new Set(
          words(
            `${made.chapter.replace(/&#(\d+);/g, (_, code: string) => String.fromCodePoint(Number(code)))} ${proposalsText(made.proposals)}`,
          ),
        );
        expect(words(text).filter((word) => !there.has(word))).toEqual([]);
      },
    ),
    { numRuns: 200 },
  );
});

test('chatter, a figure alone and a heading with nothing under it are not placed; what stands above them is', () => {
  const text =
    '# Tank\n\n- took the tank off\n\n- 12.5\n\n## Costs\n\n## Wheels\n\n### Left\n\n- jacked up the front\n\nsee you next time\n';
  const { chapter } = writeUp([readSource({ name: 'a.md', text })], planFor('a.md', text));
  const [body, rest] = chapter.split('## Not placed');
  expect(rest).toBe('\n\n- a.md:5: 12.5\n- a.md:7: Costs\n- a.md:15: see you next time\n');
  expect(body).toContain('## Wheels');
  expect(body).toContain('## Left');
});

test('the report tells for each line of the source where it went', () => {
  const text = '# Tank\n\n- took the tank off\n- see you next time\n';
  const { draft, proposals } = writeUp([readSource({ name: 'a.md', text })], planFor('a.md', text));
  const kinds = new Map([[3, proposals.map(({ kind }) => kind)]]);
  expect(reportOf(text, draft.statements, kinds)).toMatch(
    /^ {4}1 {2}heading\n {4}3 {2}(?:step 1, "Take the tank off"|prose) · proposed: refit\n {4}4 {2}not placed$/,
  );
});

test('any words come back from proposals.yaml as they were', () => {
  fc.assert(
    fc.property(
      fc.array(fc.string({ unit: 'binary', maxLength: 20 }), { minLength: 4, maxLength: 4 }),
      ([words = '', because = '', item = '', place = '']) => {
        const one = { id: 'a1', kind: 'cost' as const, place, words, because, row: { item, note: words } };
        const text = proposalsText([one]);
        const [kept] = readProposals(text).kept;
        expect(kept).toMatchObject(one);
        expect(parse(text)).toHaveProperty('proposals');
        expect(proposalsText([one], text)).toBe(text);
      },
    ),
    { numRuns: 1000 },
  );
});
