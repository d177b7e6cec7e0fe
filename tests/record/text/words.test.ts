import { expect, test } from 'vitest';
import { meant } from '../../../src/record/text/words.ts';

const MANY = ['under-raised-vehicle', ...Array.from({ length: 12 }, (_, at) => `other-${at}`)];

test('a name with a letter wrong is answered with the nearest', () =>
  expect(meant('under-raised-vehicel', MANY)).toBe('The nearest is "under-raised-vehicle".'));

test('a name broken off is answered with the names that begin so', () =>
  expect(meant('under-raised', MANY)).toBe('Write "under-raised-vehicle".'));

test('two letters are too few to tell what was begun', () =>
  expect(meant('un', MANY)).toBe('None is near to it.'));
