import { expect, test } from 'vitest';
import { bareTorque } from '../../../src/record/chapter/torque.ts';

test.each([
  ['40', '40'],
  ['40 ', '40'],
  ['12,5', '12,5'],
  ['8, 15, then 22', '8'],
  ["70, maker's book, taper dry", '70'],
  ['M8, 8.8: about 25 dry', '25'],
  ['40 kg', '40'],
  ['25 N', '25'],
])('"%s" has no unit of torque: %s is named', (text, bare) => {
  expect(bareTorque(text)).toBe(bare);
});

test.each([
  ['40 N m'],
  ['40Nm'],
  ['40 N·m'],
  ['4 kgf m'],
  ['4 m kg'],
  ['30 lbf ft'],
  ['30 ft lb'],
  ['30 ft-lbs'],
  ['180 in lb'],
  ['40 newton metres'],
  ['8, 15, then 22 N·m, maker’s book, threads oiled'],
  ['Two M6 nuts, snug; no figure in the book. A flange of this size bends before the thread complains.'],
  ['M10x1.25, class 10.9: hand tight, then 90 degrees'],
  ['Hand tight, then 1/4 turn'],
  ['As the book says on page 12.'],
  ['4 bolts, hand tight'],
  ['Nip up'],
  [''],
])('"%s" is left as it is', (text) => {
  expect(bareTorque(text)).toBeUndefined();
});
