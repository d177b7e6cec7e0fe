import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { compressionRatio } from '../../src/calc/compression-ratio.ts';
import { asked } from './answers.ts';

const { answered, notes, output, refusals, typed } = asked(compressionRatio);
const TWIN = { bore: '54 mm', stroke: '58 mm', cylinders: '2', poured: '22.9 mL' };

describe('swept volume and compression', () => {
  test('54 × 58 mm, two cylinders: 265.7 cm³ and 6.8:1 on 22.9 mL (worked by hand)', () => {
    // π/4 × 5.4² × 5.8 = 132.83 cm³ each; (132.83 + 22.9) / 22.9
    expect(output(TWIN, 'swept', 'cm3')).toBeCloseTo(265.6656, 3);
    expect(output(TWIN, 'ratio', ':1')).toBeCloseTo(132.8325 / 22.9 + 1, 4);
  });

  test('ratio to room and back', () =>
    fc.assert(
      fc.property(
        fc.double({ min: 40, max: 90, noNaN: true }),
        fc.double({ min: 40, max: 90, noNaN: true }),
        fc.double({ min: 3, max: 14, noNaN: true }),
        (bore, stroke, ratio) => {
          const engine = { bore: `${bore.toFixed(6)} mm`, stroke: `${stroke.toFixed(6)} mm`, cylinders: '1' };
          const room = output({ ...engine, ratio: `${ratio.toFixed(9)}:1` }, 'clearance', 'mL');
          expect(output({ ...engine, poured: `${room.toFixed(9)} mL` }, 'ratio', ':1') / ratio).toBeCloseTo(
            1,
            6,
          );
        },
      ),
      { numRuns: 500 },
    ));

  test('the cut that it asks for gives the ratio that was wanted, full stroke or trapped', () =>
    fc.assert(
      fc.property(fc.double({ min: 7, max: 9, noNaN: true }), fc.boolean(), (full, trapped) => {
        const target = trapped ? full - 2 : full;
        const given = { ...TWIN, port: '38 mm', ...(trapped ? { aim: 'trapped' } : {}) };
        const skim = output({ ...given, target: `${target.toFixed(9)}` }, 'skimFor', 'mm');
        const after = output(
          { ...given, skim: `${skim.toFixed(9)} mm` },
          trapped ? 'trappedAfter' : 'ratioAfter',
          ':1',
        );
        expect(after / target).toBeCloseTo(1, 6);
      }),
      { numRuns: 300 },
    ));

  test('a lower ratio raises the head instead of cutting it', () => {
    const { outputs } = answered({ ...TWIN, target: '6' });
    expect(outputs['skimFor']).toBeUndefined();
    // 132.8325 / 5 − 22.9 = 3.6665 cm³ over 22.902 cm²
    expect(output({ ...TWIN, target: '6' }, 'raiseFor', 'mm')).toBeCloseTo(36.665 / 22.902, 3);
    expect(notes({ ...TWIN, target: '6' })).toContain('the head must rise by 1.60 mm');
  });

  test('a cut takes less where the squish band lies in the face, and then leaves the squish', () => {
    const given = { ...TWIN, squish: '1.2 mm', skim: '0.5 mm' };
    expect(output(given, 'squishAfter', 'mm')).toBeCloseTo(0.7, 9);
    expect(output({ ...given, mouth: '38 mm' }, 'squishAfter', 'mm')).toBeCloseTo(1.2, 9);
    expect(output({ ...given, mouth: '38 mm' }, 'lost', 'cm3')).toBeCloseTo(
      (Math.PI / 4) * 3.8 ** 2 * 0.05,
      9,
    );
    expect(notes({ ...given, mouth: '38 mm' })).toContain('the squish stays as it is');
  });

  test('gasket and deck are the squish where it was not measured; a dome takes room, a hollow gives it', () => {
    const parts = {
      bore: '54 mm',
      stroke: '58 mm',
      cylinders: '2',
      chamber: '18 mL',
      gasket: '1 mm',
      deck: '0.4 mm',
    };
    expect(output(parts, 'squish', 'mm')).toBeCloseTo(1.4, 9);
    const flat = output(parts, 'clearance', 'mL');
    expect(output({ ...parts, crown: '2 mL' }, 'clearance', 'mL')).toBeCloseTo(flat - 2, 9);
    expect(output({ ...parts, crown: '-2 mL' }, 'clearance', 'mL')).toBeCloseTo(flat + 2, 9);
  });

  test('a crown that would strike the head is refused', () => {
    expect(refusals({ ...TWIN, squish: '0.4 mm', skim: '0.5 mm' })).toEqual([
      'skim: Only 0.400 mm of squish is there: the crown would strike the head.',
    ]);
    expect(refusals({ ...TWIN, squish: '0.4 mm', target: '8' })[0]).toMatch(
      /^target: That takes more than the squish/,
    );
  });

  test('what geometry forbids is said', () => {
    expect(refusals({ ...TWIN, port: '60 mm' })).toEqual([
      'port: The port must lie within the stroke of 58.0 mm.',
    ]);
    expect(refusals({ ...TWIN, poured: '2 mL', plug: '3 mL' })[0]).toMatch(
      /^poured: No room is left above the piston/,
    );
    expect(refusals({ ...TWIN, target: '8', aim: 'trapped' })).toEqual([
      'target: The place of the exhaust port is needed for a trapped ratio.',
    ]);
  });

  test('a bore typed in the wrong unit is named: 54 in is likelier 54 mm', () =>
    expect(typed({ bore: '54 in' })).toEqual([
      'bore: 54 in? 54 mm is likelier; this must be between 20 mm and 200 mm.',
    ]));

  test('more room above the piston, less compression', () =>
    expect(output({ ...TWIN, poured: '25 mL' }, 'ratio', ':1')).toBeLessThan(output(TWIN, 'ratio', ':1')));
});
