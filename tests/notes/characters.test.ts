import fc from 'fast-check';
import { mdxToJs } from 'satteri';
import { expect, test } from 'vitest';
import { readSource } from '../../src/notes/read/read-source.ts';
import { spansOf } from '../../src/notes/spans.ts';
import { headOf } from '../../src/notes/write/head.ts';
import { type Plan, writeUp } from '../../src/notes/write-up.ts';

const planFor = (name: string, text: string): Plan => ({
  chapter: '01-notes',
  title: headOf([readSource({ name, text })], '2026-05-02').title,
  date: '2026-05-02',
  currency: 'EUR',
  habits: {},
  around: { texts: new Map([[name, text]]) },
});
const write = (name: string, text: string) => writeUp([readSource({ name, text })], planFor(name, text));

const NASTY = [
  '{',
  '}',
  '<',
  '>',
  '</Step>',
  '<script>',
  'import x from "y"',
  'export const a = 1',
  '---',
  '```',
  '`',
  '$',
  '|',
  '&lt;',
  '<!--',
  '-->',
  '{/*',
  '*/}',
  '#',
  '- ',
  '* ',
  '1. ',
  '> ',
  '[a](b)',
  '![x](y)',
  'http://a.b',
  '\\',
  '\n',
  '\n\n',
  '    ',
  '\t',
  'wheel off',
  'drained the tank',
  '3.4 mm',
  '[0:10] ',
  '\ufdd0',
  '\ufdd1',
  '\ufeff',
  '\u2028',
  '| a | b |\n|---|---|\n| { | } |\n',
  'Łódź',
  '🛠',
  '"',
  "'",
  '=',
  '^',
  '~~',
  '[^1]: x',
  '00:00:01,000 --> 00:00:02,000\n',
];
const messy = fc
  .array(fc.oneof(fc.constantFrom(...NASTY), fc.string({ maxLength: 12, unit: 'grapheme' })), {
    maxLength: 30,
  })
  .map((parts) => parts.join(''));
const name = fc.constantFrom('a.md', 'a.txt', 'a.srt', 'a.vtt');

test('nothing in a note becomes code: every chapter compiles, with no import, export or expression of the notes', () => {
  fc.assert(
    fc.property(name, messy, (file, text) => {
      const { chapter } = write(file, text);
      const body = chapter.replace(/^---\n[\s\S]*?\n---\n/, '');
      expect(() => mdxToJs(body)).not.toThrow();
      expect(body).not.toMatch(/^(?:import|export)\b/m);
      expect(body.replace(/hazards=\{\[[^\]]*\]\}/g, '')).not.toMatch(/[{}]/);
      expect(body.replace(/<\/?(?:Step|Table|Safety|Timing|Premix|Gearing|Qty)\b[^>]*>/g, '')).not.toMatch(
        /[<]/,
      );
    }),
    { numRuns: 400 },
  );
});

test('the spans of any source join to it, and each has one home', () => {
  fc.assert(
    fc.property(name, messy, (file, text) => {
      const { draft } = write(file, text);
      const spans = spansOf(text, draft.statements);
      expect(spans.map(({ start, end }) => text.slice(start, end)).join('')).toBe(text);
      expect(spans.every(({ home }) => /^(?:step \d+|prose|proposal|not placed|heading)$/.test(home))).toBe(
        true,
      );
    }),
    { numRuns: 400 },
  );
});
