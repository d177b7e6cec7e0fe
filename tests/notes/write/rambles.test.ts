import { existsSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { mdxToJs } from 'satteri';
import { describe, expect, test } from 'vitest';
import { readSource } from '../../../src/notes/read/read-source.ts';
import { spansOf } from '../../../src/notes/spans.ts';
import { writeUp } from '../../../src/notes/write-up.ts';
import { writeUpShop } from '../../cli/write-up-shop.ts';

/** Two long rambles without a stop: a transcript with times, and captions of two people. */
const NAMES = ['cooling-and-dynamo.txt', 'front-brakes-two.vtt'] as const;
const textOf = (name: string): string =>
  readFileSync(fileURLToPath(new URL(`rambles/${name}`, import.meta.url)), 'utf8');

const made = (name: string) => {
  const text = textOf(name);
  const read = readSource({ name, text });
  const written = writeUp([read], {
    chapter: '03-ramble',
    title: 'Ramble',
    date: '2026-05-02',
    currency: 'EUR',
    habits: {},
    around: { texts: new Map() },
  });
  const plain = written.chapter
    .replace(/^---\n[\s\S]*?\n---\n/, '')
    .replace(/&#(\d+);/g, (_, code: string) => String.fromCodePoint(Number(code)));
  const prose = (plain.split('## Not placed')[0] ?? '')
    .replace(/<Qty of="([^"]*)" \/>/g, '$1')
    .replace(/<\/?(?:Step|Safety|Table|Premix|Timing|Gearing)\b[^>]*>/g, '')
    .split(/\n\n+/)
    .map((one) => one.trim())
    .filter((one) => one !== '');
  return { ...written, text, read, plain, prose };
};

/** Said while thinking, or to begin with: all that prose may leave out, and what a figure's mark stands for. */
const LEFT_OUT = new Set(
  'um uh er erm hmm okay ok right alright anyway anyhow oh ah yeah you know i mean see basically well so and now then but sort kind of that'.split(
    ' ',
  ),
);
const wordsOf = (text: string): string[] => text.toLowerCase().match(/[\p{L}\p{N}']+/gu) ?? [];

describe.each(NAMES)('%s', (name) => {
  test('becomes a held chapter that the check accepts as it stands, and every step has a title of its own', async () => {
    const shop = writeUpShop({ notes: { [name]: textOf(name) } });
    const { code, out } = await shop.run(['write-up', shop.files[0] ?? '']);
    expect(code, out).toBe(0);
    expect(shop.read('chapter.mdx')).toContain('held: true');
    expect(existsSync(join(shop.folder(), 'proposals.yaml'))).toBe(true);
    const check = await shop.run(['check']);
    expect(check.out + check.err).not.toContain(' error ');
    expect(check.code).toBe(0);
    shop.clear();
  });

  test('loses no span, and no word but those said while thinking', () => {
    const { text, read, draft, chapter, proposals } = made(name);
    const spans = spansOf(text, draft.statements);
    expect(spans.map(({ start, end }) => text.slice(start, end)).join('')).toBe(text);
    for (const { home } of spans) expect(home).toMatch(/^(?:step \d+|prose|proposal|not placed|heading)$/);
    const there = new Set(
      wordsOf(
        `${chapter.replace(/&#(\d+);/g, (_, code: string) => String.fromCodePoint(Number(code)))} ${JSON.stringify(proposals)}`,
      ),
    );
    const figures = draft.statements.flatMap((one) =>
      one.figures.map(({ start, end }) => [start, end] as const),
    );
    const lost = [...read.masked.matchAll(/[\p{L}\p{N}']+/gu)].filter(
      ({ 0: word, index }) =>
        !there.has(word.toLowerCase()) &&
        !LEFT_OUT.has(word.toLowerCase()) &&
        !figures.some(([start, end]) => index >= start && index < end),
    );
    expect(lost.map(({ 0: word }) => word)).toEqual([]);
  });

  test('reads in sentences: each begins with a capital and ends with a stop, and nobody thinks aloud', () => {
    const { prose } = made(name);
    for (const paragraph of prose) {
      expect(paragraph).toMatch(/^[\p{Lu}\p{N}"]/u);
      expect(paragraph).toMatch(/[.!?…]["')]?$/);
      expect(paragraph).not.toMatch(/\b(?:um+|uh+|erm?)\b/i);
      expect(paragraph).not.toMatch(/\b(the|it's|and|i) \1\b/i);
      expect(paragraph).not.toMatch(/-->|<v\b/);
      // No sentence goes on without end.
      for (const sentence of paragraph.split(/(?<=[.!?]) /))
        expect(sentence.split(' ').length).toBeLessThan(60);
    }
  });

  test('has steps with titles in the imperative, told apart, none longer than nine words', () => {
    const { draft } = made(name);
    const titles = draft.steps.filter(({ statements }) => statements.length > 0).map((step) => step.title);
    expect(titles.length).toBeGreaterThanOrEqual(12);
    expect(new Set(titles.map((one) => one.toLowerCase())).size).toBe(titles.length);
    for (const title of titles) {
      expect(title).toMatch(/^\p{Lu}\p{Ll}+ /u);
      expect(title.split(' ').length).toBeLessThanOrEqual(9);
      expect(title).not.toMatch(/^See to it|\b(?:um|uh|i'm|it's)\b|\d/i);
    }
  });

  test('compiles, with nothing of the words as code', () => {
    const { chapter } = made(name);
    expect(() => mdxToJs(chapter.replace(/^---\n[\s\S]*?\n---\n/, ''))).not.toThrow();
  });
});
