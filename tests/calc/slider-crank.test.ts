import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  angleAt,
  pistonStroke,
  positiveStop,
  type SliderCrank,
  topAngle,
  travelAt,
  upstroke,
} from '../../src/calc/slider-crank.ts';

const DEG = Math.PI / 180;
const RUNS = { numRuns: 4000 };

/** Crank of 10 to 150 mm, rod of 1.5 to 6 times that, pin offset up to a tenth of the crank to either side. */
const engines = fc
  .record({
    radius_m: fc.double({ min: 0.01, max: 0.15, noNaN: true }),
    ratio: fc.double({ min: 1.5, max: 6, noNaN: true }),
    share: fc.double({ min: -0.1, max: 0.1, noNaN: true }),
  })
  .map(
    ({ radius_m, ratio, share }): SliderCrank => ({
      radius_m,
      rod_m: radius_m * ratio,
      offset_m: radius_m * share,
    }),
  );

const part = fc.double({ min: 0, max: 1, noNaN: true });

describe('published positions of a crank of 80 mm with a rod of 245 mm (Rose-Hulman, ENGINE_3; exact geometry)', () => {
  const engine = { radius_m: 0.08, rod_m: 0.245, offset_m: 0 };
  test.each([
    [30, 14.0053],
    [60, 50],
    [120, 130],
    [150, 152.5694],
  ])('%i° from the top: %f mm', (deg, mm) => expect(travelAt(engine, deg * DEG) * 1e3).toBeCloseTo(mm, 3));
});

describe('what holds for every engine', () => {
  test('degrees to travel and back give the degrees', () =>
    fc.assert(
      fc.property(engines, part, (engine, p) => {
        const angle = p * upstroke(engine);
        const back = angleAt(engine, travelAt(engine, angle));
        // At either end the travel hardly moves, so its last digit is worth more degrees there.
        const blunt = p < 0.01 || p > 0.99 ? 1e-4 : 1e-7;
        return Math.abs(back - angle) < blunt;
      }),
      RUNS,
    ));

  test('travel to degrees and back gives the travel, down to a hundredth of a micrometre below the top', () =>
    fc.assert(
      fc.property(engines, fc.double({ min: -8, max: 0, noNaN: true }), (engine, decade) => {
        const travel = 10 ** decade * pistonStroke(engine);
        return (
          Math.abs(travelAt(engine, angleAt(engine, travel)) - travel) < 1e-12 * engine.rod_m + 1e-10 * travel
        );
      }),
      RUNS,
    ));

  test('the further before the top, the lower the piston', () =>
    fc.assert(
      fc.property(engines, part, part, (engine, a, b) => {
        const [early, late] = [Math.max(a, b), Math.min(a, b)].map((p) => p * upstroke(engine));
        return early === late || travelAt(engine, early ?? 0) >= travelAt(engine, late ?? 0) - 1e-15;
      }),
      RUNS,
    ));

  test('the top is the highest place and the bottom the lowest', () =>
    fc.assert(
      fc.property(engines, fc.double({ min: -Math.PI, max: Math.PI, noNaN: true }), (engine, angle) => {
        const x = travelAt(engine, angle);
        return x >= -1e-12 && x <= pistonStroke(engine) + 1e-12;
      }),
      RUNS,
    ));

  test('with an endless rod the piston moves as a simple harmonic', () =>
    fc.assert(
      fc.property(fc.double({ min: 0.01, max: 0.15, noNaN: true }), part, (radius_m, p) => {
        const angle = p * Math.PI;
        const engine = { radius_m, rod_m: radius_m * 1e6, offset_m: 0 };
        return Math.abs(travelAt(engine, angle) - radius_m * (1 - Math.cos(angle))) < radius_m * 1e-5;
      }),
      RUNS,
    ));

  test('the offset to one side going down is the offset to the other going up', () =>
    fc.assert(
      fc.property(engines, part, (engine, p) => {
        const angle = p * 2;
        const mirrored = { ...engine, offset_m: -engine.offset_m };
        return Math.abs(travelAt(engine, angle) - travelAt(mirrored, -angle)) < 1e-12;
      }),
      RUNS,
    ));

  test('two marks of a positive stop give true top dead centre back, offset or not', () =>
    fc.assert(
      fc.property(engines, fc.double({ min: 0.02, max: 0.6, noNaN: true }), (engine, p) => {
        const depth = p * pistonStroke(engine);
        const before = angleAt(engine, depth);
        // The same depth after the top is that before it of the mirrored engine.
        const after = angleAt({ ...engine, offset_m: -engine.offset_m }, depth);
        const stop = positiveStop(engine, before + after);
        const fromFirst = (before + after) / 2 + stop.shift_rad;
        return Math.abs(stop.depth_m - depth) < 1e-9 && Math.abs(fromFirst - before) < 1e-8;
      }),
      RUNS,
    ));

  test('without offset the marks stand the same on either side', () =>
    expect(positiveStop({ radius_m: 0.029, rod_m: 0.115, offset_m: 0 }, 1).shift_rad).toBe(0));
});

test('a pin towards the side that the crank swings to puts the top later: 0.6273° for 1.5 mm', () => {
  const engine = { radius_m: 0.027, rod_m: 0.11, offset_m: 0.0015 };
  expect(topAngle(engine) / DEG).toBeCloseTo(0.6273, 4);
  expect(upstroke(engine) / DEG).toBeCloseTo(180 + 0.6273 - 1.0355, 3);
});
