import { describe, expect, test } from 'vitest';
import { hazard } from '../../../src/record/hazards/catalogue.ts';
import { mergeHazards } from '../../../src/record/hazards/merge.ts';
import { noteHtml, noteText } from '../../../src/record/hazards/note-text.ts';
import { noteAnchor, notesOfChapter } from '../../../src/record/hazards/notes-of-chapter.ts';

describe('Several hazards of one step', () => {
  test('stand in one block under the worst signal word, worst first', () => {
    const block = mergeHazards(['noise', 'brake-fluid', 'failed-brakes', 'under-raised-vehicle']);
    expect(block?.signal).toBe('DANGER');
    expect(block?.hazards.map((one) => one.id)).toEqual([
      'under-raised-vehicle',
      'failed-brakes',
      'noise',
      'brake-fluid',
    ]);
  });

  test('say once what they share', () => {
    const block = mergeHazards(['petrol-vapour', 'mixing-fuel', 'fuel-on-hot-engine']);
    for (const lines of [block?.avoid, block?.ifItHappens, block?.callLicensed, block?.defersTo, block?.wear])
      expect(new Set(lines).size).toBe(lines?.length);
    const apart = ['petrol-vapour', 'mixing-fuel', 'fuel-on-hot-engine'].flatMap(
      (id) => hazard(id)?.avoid ?? [],
    );
    expect(block?.avoid.length).toBeLessThan(apart.length);
    expect(new Set(block?.avoid)).toEqual(new Set(apart));
  });

  test('named twice count once, and unknown ones are left to the check', () => {
    expect(mergeHazards(['noise', 'noise', 'dragons'])?.hazards.length).toBe(1);
    expect(mergeHazards(['dragons'])).toBeUndefined();
    expect(mergeHazards([])).toBeUndefined();
  });

  test('carry the precautions of the place after those of the catalogue', () => {
    expect(mergeHazards(['noise'], ['The neighbour sleeps by day.'])?.avoid.at(-1)).toBe(
      'The neighbour sleeps by day.',
    );
  });
});

describe('In a chapter', () => {
  const notes = notesOfChapter([
    { id: 'lift', hazards: ['under-raised-vehicle', 'manual-lifting'] },
    { id: 'look', hazards: ['under-raised-vehicle', 'manual-lifting', 'wrong-polarity'] },
    { id: 'again', hazards: ['manual-lifting', 'wrong-polarity', 'petrol-vapour'] },
  ]);

  test('a danger or warning stands in full at every step', () => {
    expect(notes.get('lift')?.full).toContain('under-raised-vehicle');
    expect(notes.get('look')?.full).toContain('under-raised-vehicle');
    expect(notes.get('again')?.full).toEqual(['petrol-vapour']);
  });

  test('a caution or notice shrinks from its second step on, and leads back to its first', () => {
    expect(notes.get('lift')?.repeated).toEqual([]);
    expect(notes.get('look')?.repeated.map((one) => [one.hazard.id, one.firstStep])).toEqual([
      ['manual-lifting', 'lift'],
    ]);
    expect(notes.get('again')?.repeated.map((one) => [one.hazard.id, one.firstStep])).toEqual([
      ['manual-lifting', 'lift'],
      ['wrong-polarity', 'look'],
    ]);
    expect(noteAnchor('lift')).toBe('lift-safety');
  });
});

describe('The note in a feed', () => {
  const ORDER = ['DANGER: ', 'How to avoid it', 'What to wear', 'If it happens', 'When to stop'];

  test('as text and as HTML follows the order of the standards: signal and harm, avoid, wear, afterwards, call', () => {
    for (const note of [noteText(['petrol-vapour']), noteHtml(['petrol-vapour'])]) {
      const places = ORDER.map((part) => note.indexOf(part));
      expect(places.every((place) => place >= 0)).toBe(true);
      expect(places).toEqual([...places].sort((a, b) => a - b));
    }
  });

  test('escapes what an author adds, and carries no style and no script', () => {
    const html = noteHtml(['noise'], ['<img src=x onerror=alert(1)> & "so on"']);
    expect(html).toContain('&lt;img src=x onerror=alert(1)&gt; &amp; &quot;so on&quot;');
    expect(html).not.toMatch(/<img|<script| style=| class=/);
  });

  test('is a named region', () => {
    expect(noteHtml(['petrol-vapour'])).toMatch(/^<section aria-label="Danger: Petrol and its vapour">/);
  });

  test('is empty where the catalogue knows none of the ids', () => {
    expect(noteText(['dragons'])).toBe('');
    expect(noteHtml(['dragons'])).toBe('');
  });
});
