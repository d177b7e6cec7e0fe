import fc from 'fast-check';
import { mdxToJs } from 'satteri';
import { expect, test } from 'vitest';
import { readSource } from '../../../src/notes/read/read-source.ts';
import { type Memory, readMemory } from '../../../src/notes/write/memory.ts';
import { addTo, type Plan, writeUp } from '../../../src/notes/write-up.ts';

const readsOf = (texts: Record<string, string>) =>
  Object.entries(texts).map(([name, text]) => readSource({ name, text }));
const planFor = (texts: Record<string, string>): Plan => ({
  chapter: '03-tank',
  title: 'Tank',
  date: '2026-05-02',
  currency: 'EUR',
  habits: {},
  around: { texts: new Map(Object.entries(texts)) },
});
const first = (texts: Record<string, string>) => writeUp(readsOf(texts), planFor(texts));
const again = (chapter: string, memory: Memory, texts: Record<string, string>) =>
  addTo(chapter, memory, readsOf(texts), planFor(texts));

const NOTES =
  '# Tank\n\n- drained the tank into the red can\n- the cork was as hard as wood\n- took the tap out and rinsed it\n- charged the battery at 2 A for six hours\n';

test('words put into the middle of the notes go into their step, behind what they follow', () => {
  const made = first({ 'a.md': NOTES });
  const { chapter, notes } = again(made.chapter, made.memory, {
    'a.md': NOTES.replace('wood\n', 'wood\n- and it crumbled in the hand\n'),
  });
  expect(notes).toEqual([]);
  expect(chapter).toMatch(
    /as hard as wood\.[\s\S]{0,6}And it crumbled in the hand\.[\s\S]*<\/Step>[\s\S]*Charge/,
  );
});

test('a step that the notes gain stands where the notes have it', () => {
  const made = first({ 'a.md': NOTES });
  const { chapter } = again(made.chapter, made.memory, {
    'a.md': NOTES.replace('- charged', '- removed the float bowl and cleaned the jets\n- charged'),
  });
  expect(chapter.indexOf('float bowl')).toBeGreaterThan(chapter.indexOf('rinsed'));
  expect(chapter.indexOf('float bowl')).toBeLessThan(chapter.indexOf('Charged the battery'));
});

test('a statement that was changed in the notes is changed in the chapter where the author left it alone', () => {
  const made = first({ 'a.md': NOTES });
  const grown = again(made.chapter, made.memory, { 'a.md': NOTES.replace('red can', 'green can') });
  expect(grown.chapter).toContain('green can');
  expect(grown.chapter).not.toContain('red can');
});

test('a statement that was changed in the notes and by the author stays the author’s; the new words are not placed', () => {
  const made = first({ 'a.md': NOTES });
  const edited = made.chapter.replace('red can', 'blue bucket');
  const grown = again(edited, made.memory, { 'a.md': NOTES.replace('red can', 'green can') });
  expect(grown.chapter).toContain('blue bucket');
  expect(grown.chapter).toMatch(/## Not placed\n\n- a\.md:3: drained the tank into the green can/);
  expect(grown.notes.join()).toContain('no longer in the chapter as they were written');
});

test('notes in another order add nothing, and that is said', () => {
  const made = first({ 'a.md': NOTES });
  const lines = NOTES.trimEnd().split('\n');
  const grown = again(made.chapter, made.memory, {
    'a.md': `${[...lines.slice(0, 2), lines[5], ...lines.slice(2, 5)].join('\n')}\n`,
  });
  expect(grown.added).toBe(0);
  expect(grown.chapter).toBe(made.chapter);
  expect(grown.notes.join()).toContain('another order');
});

/** Whatever step holds the words, however the reader cuts them. */
const STEP_WITH_TAP = /<Step (?:(?!<\/Step>)[\s\S])*?rinsed it[\s\S]*?<\/Step>\n/;
const WITH_CRUMBS = NOTES.replace('rinsed it\n', 'rinsed it\n- and it crumbled in the hand\n');

test('what is new of a step that the author deleted stands at the end, and the deleted words do not come back', () => {
  const made = first({ 'a.md': NOTES });
  const without = made.chapter.replace(STEP_WITH_TAP, '');
  expect(without).not.toBe(made.chapter);
  const grown = again(without, made.memory, { 'a.md': WITH_CRUMBS });
  expect(grown.chapter).toContain('crumbled in the hand');
  expect(grown.chapter).not.toContain('rinsed');
  expect(grown.notes.join()).toContain('no longer in the chapter');
});

test('a step that the author renamed is still found by its words', () => {
  const made = first({ 'a.md': NOTES });
  const renamed = made.chapter.replace(STEP_WITH_TAP, (step) =>
    step.replace(/title="[^"]*"/, 'title="Empty it"'),
  );
  const grown = again(renamed, made.memory, { 'a.md': WITH_CRUMBS });
  expect(grown.chapter).toMatch(/title="Empty it"[\s\S]*?crumbled in the hand[\s\S]*?<\/Step>/);
});

test('new words that call for a hazard declare it in the step they come to', () => {
  const text = '# Box\n\n- took the cover off the box\n- it was dirty inside\n';
  const made = first({ 'a.md': text });
  expect(made.chapter).not.toContain('hazards=');
  const grown = again(made.chapter, made.memory, {
    'a.md': text.replace('inside\n', 'inside\n- cleaned it with petrol and a brush\n'),
  });
  expect(grown.chapter).toMatch(/hazards=\{\["petrol-vapour"/);
  expect(() => mdxToJs(grown.chapter)).not.toThrow();
});

test('of two sources of one chapter each adds its own, also when named alone', () => {
  const made = first({ 'a.md': NOTES, 'b.md': '# Wheels\n\n- jacked up the front\n' });
  const grown = again(made.chapter, made.memory, {
    'b.md': '# Wheels\n\n- jacked up the front\n- took the wheel off\n',
  });
  expect(grown.added).toBe(1);
  expect(grown.chapter).toContain('ook the wheel off');
  expect(grown.memory.sources.map(({ name }) => name).sort()).toEqual(['a.md', 'b.md']);
  expect(readMemory(JSON.stringify(grown.memory))).toEqual(grown.memory);
});

test('the same notes once more change nothing', () => {
  const made = first({ 'a.md': NOTES });
  const more = { 'a.md': `${NOTES}- fitted the tap\n` };
  const grown = again(made.chapter, made.memory, more);
  expect(again(grown.chapter, grown.memory, more).chapter).toBe(grown.chapter);
});

/** Letters that no note of this test has: what the author types into the chapter. */
const typed = fc.string({ unit: fc.constantFrom(...'αβγδεζηθ ΩΨ'), minLength: 1, maxLength: 8 });
const line = fc.constantFrom(
  '- took the wheel off\n',
  '- drained the oil, 0.6 L\n',
  '- horn dead, put off\n',
  '- thanks to Berta for the press\n',
  'The weather was bad.\n\n',
  '## Later\n\n',
  '- 12.5\n',
  '- cleaned it with petrol\n',
  '| what | found |\n|---|---|\n| play | 0.6 mm |\n\n',
  '- see you next time\n',
);
const notes = fc.array(line, { minLength: 1, maxLength: 8 });

test('whatever is edited in the notes and in the chapter, no character of the author’s is lost, and the chapter can be read', () => {
  fc.assert(
    fc.property(
      notes,
      notes,
      fc.array(fc.tuple(fc.nat(), typed), { maxLength: 5 }),
      fc.boolean(),
      fc.array(fc.nat(), { maxLength: 3 }),
      (before, more, edits, crlf, moved) => {
        const text = `# Tank\n\n${before.join('')}`;
        const made = first({ 'a.md': text });
        // Between words of the body, as somebody types: tags and the head stay whole.
        let chapter = made.chapter;
        for (const [at, words] of edits) {
          const gaps = [...chapter.matchAll(/(?<=^[^<>|#\n-][^<>|\n]*) (?=[^<>|\n]*$)/gm)]
            .map(({ index }) => index)
            .filter((index) => index > chapter.indexOf('\n---\n', 4));
          const place = gaps[at % Math.max(1, gaps.length)];
          if (place !== undefined)
            chapter = `${chapter.slice(0, place)} ${words.trim()}${chapter.slice(place)}`;
        }
        if (crlf) chapter = chapter.replaceAll('\n', '\r\n');
        const lines = [...before];
        for (const [n, at] of moved.entries()) {
          const one = more[n % more.length];
          if (one !== undefined) lines.splice(at % (lines.length + 1), n % 2, one);
        }
        const grown = again(chapter, made.memory, { 'a.md': `# Tank\n\n${lines.join('')}` });
        const authors = (all: string): string => all.replace(/[^αβγδεζηθΩΨ]/g, '');
        expect(authors(grown.chapter)).toBe(authors(chapter));
        expect(() => mdxToJs(grown.chapter)).not.toThrow();
        if (crlf) expect(grown.chapter.replaceAll('\r\n', '')).not.toContain('\n');
      },
    ),
    { numRuns: 300 },
  );
});
