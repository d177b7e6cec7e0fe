import { describe, expect, test } from 'vitest';
import { deedIn } from '../../../src/notes/say/deed.ts';
import { taggedWords } from '../../../src/notes/say/words.ts';

const title = (text: string): string | undefined => deedIn(taggedWords(text))?.title;

describe('work that is told becomes a title in the imperative', () => {
  test.each([
    ['drained the gearbox oil into the pan', 'Drain the gearbox oil into the pan'],
    ['I undid the four nuts and lifted the head', 'Undo the four nuts'],
    ['tank off, two bolts and the strap', 'Take the tank off'],
    ['so first thing the chain has to come off', 'Take the chain off'],
    ['wheels back on', 'Put the wheels back on'],
    ['so trolley jack under the cross member', 'Jack up the cross member'],
    ['about 3 L of old petrol drained', 'Drain the old petrol'],
    ["we'll set the points next", 'Set the points'],
    ['now we measure the bore at the top', 'Measure the bore'],
    ['Old mounts out, two bolts each', 'Take the old mounts out'],
    ['engine up now', 'Lift the engine'],
    ['greased the kingpins', 'Grease the kingpins'],
  ])('%s → %s', (text, wanted) => expect(title(text)).toBe(wanted));
});

describe('what was not done is no work', () => {
  test.each([
    'the crankshaft is bent',
    'it came undone by hand',
    'the seal was four ninety',
    'if you drain the tank first',
    'I would never weld the tank',
    'next time we bleed the brakes',
    'wheel cylinder pushes back by hand',
    'the paint was blistered along the sill',
    'we have a long way to go',
  ])('%s', (text) => expect(title(text)).toBeUndefined());
});
