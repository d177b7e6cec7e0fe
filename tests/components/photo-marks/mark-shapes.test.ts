import { expect, test } from 'vitest';
import { markShapes } from '../../../src/components/photo-marks/mark-shapes.ts';
import { readMark } from '../../../src/record/chapter/picture-marks.ts';

const marks = (...written: string[]) => written.flatMap((one) => readMark(one) ?? []);

test('a ring lies where it was said, in hundredths of width and height', () => {
  const [ring] = markShapes(marks('circle 50 50 10: hub'), 1600, 1200);
  expect(ring?.line).toBe('M400 375a100 100 0 1 0 200 0a100 100 0 1 0 -200 0Z');
});

test('an arrow ends with its tip at the second place', () => {
  const [arrow] = markShapes(marks('arrow 20 50 60 50: line'), 1000, 1000);
  expect(arrow?.head?.startsWith('M600 500L')).toBe(true);
  expect(arrow?.line).toBe('M200 500L572.8 500');
});

test.each([
  'circle 99 1 5: corner',
  'circle 1 99 5: corner',
  'circle 99 99 20: corner',
  'arrow 0 0 50 50: corner',
  'arrow 100 100 50 50: corner',
])('the figure of "%s" stands inside the picture', (written) => {
  for (const [width, height] of [
    [4032, 3024],
    [3024, 4032],
    [4000, 400],
  ] as const) {
    const [{ x, y } = { x: -1, y: -1 }] = markShapes(marks(written), width, height);
    expect(x).toBeGreaterThanOrEqual(30);
    expect(x).toBeLessThanOrEqual(970);
    expect(y).toBeGreaterThanOrEqual(30);
    expect(y).toBeLessThanOrEqual((1000 * height) / width - 30);
  }
});
