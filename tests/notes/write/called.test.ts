import { expect, test } from 'vitest';
import { readSource } from '../../../src/notes/read/read-source.ts';
import { writeUp } from '../../../src/notes/write-up.ts';

const calledIn = (text: string) =>
  writeUp([readSource({ name: 'notes.md', text })], {
    chapter: '03-silencer',
    title: 'Silencer',
    date: '2026-05-02',
    currency: 'EUR',
    habits: {},
    around: { texts: new Map([['notes.md', text]]) },
  });

test('work that is told with thanks goes into the register, and its note stays with the step before it', () => {
  const { chapter, called } = calledIn(
    '# Silencer\n\n- bolts out, bracket off, 13 mm\n- cleaned the seat with a cloth\n- thanks to Edric, who welded the slit in three short runs\n- bolted it back, 22 Nm\n',
  );
  expect(chapter).toMatch(/<Step title="Clean the seat[^>]*"hot-work"/);
  expect(called.find(({ hazard }) => hazard === 'hot-work')?.words).toContain('welded');
});

test('what is only bought calls for no note', () => {
  const { called } = calledIn(
    '# Paint\n\n- bolts out, bracket off, 13 mm\n- bought: a litre of thinners, 6.50 EUR, and a tin of brake cleaner, 4.20 EUR\n- bolted it back, 22 Nm\n',
  );
  expect(called.map(({ hazard }) => hazard)).not.toContain('solvents');
});
