import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { CLASSES, type Thread, threadNamed } from '../../src/calc/bolt-loads.ts';
import { boltTension } from '../../src/calc/bolt-tension.ts';
import { asked } from './answers.ts';

const { answered, notes, output, refusals } = asked(boltTension);
const M8 = { thread: 'M8', grade: '8.8', state: 'oiled' };
const SIZES =
  'M3 M4 M5 M6 M7 M8 M8x1 M10 M10x1.25 M10x1 M12 M12x1.5 M12x1.25 M14 M14x1.5 M16 M16x1.5 M18 M18x1.5 M20 M20x1.5 M22 M22x1.5 M24 M24x2'.split(
    ' ',
  );

const named = (size: string): Thread => {
  const thread = threadNamed(size);
  if ('wrong' in thread) throw new Error(thread.wrong);
  return thread;
};

describe('bolt tension', () => {
  test('22 N·m on an oiled M8 pulls 18.3 kN, 86 % of the proof load of 8.8 (worked by hand)', () => {
    expect(output({ ...M8, torque: '22 Nm' }, 'tension', 'N')).toBeCloseTo(22 / (0.15 * 0.008), 6);
    expect(output({ ...M8, torque: '22 Nm' }, 'share', '%')).toBeCloseTo((18333.33 / 21200) * 100, 3);
  });

  test.each(SIZES)('every tabled load of %s is within 1 % of stress area × proof stress', (size) => {
    const thread = named(size);
    const big = thread.diameter_m > 0.016;
    const stress = [225, 310, 280, 380, 440, big ? 600 : 580, 830, 970];
    CLASSES.forEach((_, i) => {
      const formula = thread.area_m2 * (stress[i] ?? 0) * 1e6;
      expect(Math.abs((thread.proof_N[i] ?? 0) / formula - 1), `${size} ${CLASSES[i]}`).toBeLessThan(0.01);
    });
  });

  test.each(SIZES)('the stress area of %s is that of its diameter and pitch', (size) => {
    const thread = named(size);
    const coarse = { 3: 0.5, 4: 0.7, 5: 0.8, 6: 1, 7: 1, 8: 1.25, 10: 1.5, 12: 1.75, 14: 2, 16: 2 };
    const d = thread.diameter_m * 1e3;
    const table: Readonly<Record<string, number>> = { ...coarse, 18: 2.5, 20: 2.5, 22: 2.5, 24: 3 };
    const pitch = Number(size.split('x')[1] ?? table[String(d)]);
    const area = (Math.PI / 4) * (d - 0.9382 * pitch) ** 2;
    expect(Math.abs((thread.area_m2 * 1e6) / area - 1)).toBeLessThan(0.006);
  });

  test('torque to tension and back', () =>
    fc.assert(
      fc.property(fc.double({ min: 2, max: 30, noNaN: true }), (torque) => {
        const F = output({ ...M8, torque: `${torque.toFixed(9)} Nm` }, 'tension', 'kN');
        expect(output({ ...M8, tension: `${F.toFixed(9)} kN` }, 'torque', 'Nm')).toBeCloseTo(torque, 6);
      }),
      { numRuns: 200 },
    ));

  test('friction alone leaves a quarter of the tension open when oiled, a third when dry', () => {
    const relative = (state: string) => {
      const o = answered({ ...M8, state, torque: '15 Nm' }).outputs['tension'];
      return (o?.pm ?? 0) / (o?.si ?? 1);
    };
    expect(relative('oiled')).toBeCloseTo(0.25, 9);
    expect(relative('dry')).toBeCloseTo(0.35, 9);
  });

  test('the ± of an own nut factor is carried, as an interval where it is wide', () => {
    const { outputs } = answered({ ...M8, state: 'own', factor: '0.15 ± 0.05', torque: '15 Nm' });
    expect(outputs['tension']?.interval?.high).toBeCloseTo(15 / (0.1 * 0.008), 3);
  });

  test('oil on a dry torque pulls a third more, and past the proof load it says so', () => {
    const dry = output({ ...M8, state: 'dry', torque: '22 Nm' }, 'tension', 'kN');
    expect(output({ ...M8, torque: '22 Nm' }, 'tension', 'kN') / dry).toBeCloseTo(4 / 3, 9);
    expect(notes({ ...M8, torque: '22 Nm' })).toContain('of the proof load of M8 8.8: the bolt may stretch');
  });

  test('a torque that breaks the bolt is refused, with the likely slip of unit', () =>
    expect(refusals({ ...M8, torque: '22 kgf m' })).toEqual([
      'torque: M8 8.8 would stretch for good or break: this is 848 % of its proof load. Is the unit N·m, kgf·m or lbf·ft, and the thread right?',
    ]));

  test.each([
    ['M9', 'thread: M9 is not in the table, which has M3 to M24 in the usual sizes.'],
    ['M12x1', 'thread: M12 is tabled with a pitch of 1.75 or 1.5 or 1.25 mm, not 1.'],
    ['3/8 UNF', 'thread: “3/8 UNF” is no ISO metric thread. Write M8, or M12x1.25 for a fine one.'],
  ])('“%s” is no thread of the table', (thread, message) =>
    expect(refusals({ ...M8, thread, torque: '10 Nm' })).toEqual([message]),
  );

  test('a coarse pitch may be written out, with comma or point', () =>
    expect(output({ ...M8, thread: 'm8 × 1,25', torque: '10 Nm' }, 'proof', 'N')).toBe(21200));
});
