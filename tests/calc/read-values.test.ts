import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { Field, Figure, Value } from '../../src/calc/contract.ts';
import { calculators } from '../../src/calc/index.ts';
import { bareFields, fillTexts, readValues, writeTexts } from '../../src/calc/read-values.ts';
import { fromSi, toSi } from '../../src/calc/units.ts';

const form = (id: string) => {
  const found = calculators.find((c) => c.id === id);
  if (!found) throw new Error(`no ${id}`);
  return found;
};
const errorsOf = (id: string, texts: Record<string, string>) => readValues(form(id), texts).errors;
const messageOf = (id: string, field: string, text: string) =>
  errorsOf(id, { [field]: text }).find((e) => e.field === field)?.message ?? '';
const plain = (text: string) => text.replace(/[\u00a0\u202f]/g, ' ');

const MACHINE = {
  'engine.stroke': '58 mm',
  'engine.rod': '115 mm ± 0.1 mm',
  'ignition.advance': '24 deg',
  'ignition.phase_error': '1.6 deg',
  'engine.cylinders': '2',
  'engine.strokes': '2',
  'flywheel.diameter': '160 mm',
  'fuel.ratio': '25:1',
  'tyres.rear': '4.00-8',
};

describe('a form is filled from what is given, else the machine, else its start', () => {
  test('<Timing advance="24 deg" rim="160 mm" /> has the rest from the machine', () => {
    const read = readValues(form('timing'), { advance: '22 deg', rim: '6 in' }, MACHINE);
    expect(read.errors).toEqual([]);
    expect([read.from['advance'], read.from['rod'], read.from['side']]).toEqual([
      'given',
      'machine',
      'start',
    ]);
    expect(read.values['rod']).toMatchObject({ si: 0.115 });
    expect((read.values['rim'] as Figure).si).toBeCloseTo(0.1524, 10);
    expect((read.values['phase'] as Figure[][])[0]?.[0]?.si).toBeCloseTo((1.6 * Math.PI) / 180, 10);
  });

  test('a field given without its choice makes the choice', () => {
    const { texts } = fillTexts(form('timing'), { travel: '3.4 mm' }, MACHINE);
    expect(texts['known']).toBe('travel');
    expect(fillTexts(form('premix'), { can: '5 L' }).texts['known']).toBe('can');
  });

  test('a field that a choice hides is not read', () => {
    const read = readValues(form('timing'), { known: 'advance', travel: 'rubbish' }, MACHINE);
    expect(read.errors).toEqual([]);
    expect(read.values['travel']).toBeUndefined();
  });

  test('a field emptied by the reader stays empty, and says so where it is needed', () => {
    expect(errorsOf('timing', { rod: '' })).toEqual([
      { field: 'rod', message: 'A figure is needed here, such as 115 mm.' },
    ]);
  });
});

describe('wrong input is answered in plain words, with the likely slip of unit', () => {
  test('54 in of stroke', () =>
    expect(plain(messageOf('timing', 'stroke', '54 in'))).toBe(
      '54 in? 54 mm is likelier; this must be between 10 mm and 300 mm.',
    ));
  test('a bare 2.28 in a field of millimetres', () =>
    expect(plain(messageOf('timing', 'stroke', '2.28'))).toBe(
      '2.28 mm? 2.28 in is likelier; this must be between 10 mm and 300 mm.',
    ));
  test('5 mL of fuel', () =>
    expect(plain(messageOf('premix', 'ratio', '2:1'))).toContain('must be between 200:1 and 8:1'));
  test('half a tooth', () =>
    expect(messageOf('gearing', 'sprocket', '15.5')).toBe('A whole number is wanted here: 15 or 16.'));
  test('an option that is not offered', () =>
    expect(messageOf('timing', 'side', 'left')).toBe('Choose thrust or away.'));
  test('a row with one figure missing', () =>
    expect(messageOf('hills', 'torque', '1500 15; 2500')).toBe(
      'Row 2: write speed and torque, such as 1500 15.',
    ));
  test('a row with a figure out of range', () =>
    expect(plain(messageOf('hills', 'torque', '1500 15; 99999 18'))).toMatch(/^Row 2: This must be between/));
  test('too many rows', () =>
    expect(messageOf('timing', 'phase', '1 2 3 4 5 6 7 8')).toBe(
      'At most 7 rows are taken here; there are 8.',
    ));
});

describe('rows of figures', () => {
  const rows = (text: string) =>
    (readValues(form('hills'), { torque: text }).values['torque'] as Figure[][] | undefined) ?? [];
  test.each([
    '1500 15; 2500 18',
    '1500 rpm 15 Nm\n2500 rpm 18 Nm',
    '1500, 15; 2500, 18',
    '1500 | 15\n2500 | 18',
    '1500 15,0; 2500 18,0',
  ])('%j', (text) => {
    const found = rows(text).map(([w, t]) => [Math.round(fromSi(w?.si ?? 0, 'rotation', 'rpm')), t?.si]);
    expect(found).toEqual([
      [1500, 15],
      [2500, 18],
    ]);
  });
  test('a ± stands in any cell', () =>
    expect(rows('1500 15 ± 0.5; 2500 18')[0]?.[1]).toEqual({ si: 15, pm: 0.5 }));
});

describe.each(calculators.map((c) => [c.title, c] as const))('%s', (_, calculator) => {
  const figures = calculator.fields.filter((f) => f.kind === 'figure');

  test('values written as texts are read back to the last digit', () => {
    const values = fc.record(
      Object.fromEntries(
        figures.map((f) => {
          const unit = f.units[0] ?? 'n';
          const low = fromSi(f.min ?? 1, f.quantity, unit);
          const high = fromSi(f.max ?? 100, f.quantity, unit);
          const x = fc.double({ min: Math.min(low, high), max: Math.max(low, high), noNaN: true });
          return [f.name, x.map((v): Value => ({ si: toSi(f.whole ? Math.round(v) : v, f.quantity, unit) }))];
        }),
      ),
    );
    const choices: Record<string, Value> = {};
    fc.assert(
      fc.property(values, (all) => {
        const texts = writeTexts(calculator, { ...all, ...choices });
        for (const field of figures) {
          const only = { fields: [{ ...field, when: undefined } as unknown as Field] };
          const back = readValues(only, texts, {}, false);
          const [was, is] = [all[field.name] as Figure, back.values[field.name] as Figure | undefined];
          const shown = (f: Figure) => fromSi(f.si, field.quantity, field.units[0] ?? 'n');
          const close = is && Math.abs(shown(is) - shown(was)) <= 1e-9 * Math.abs(shown(was)) + 1e-14;
          if (!close)
            throw new Error(
              `${field.name}: ${texts[field.name]} → ${JSON.stringify(back.errors)} ${is?.si} for ${was.si}`,
            );
        }
      }),
      { numRuns: 1000 },
    );
  });

  test('whatever is typed, the answer is figures or plain words, never NaN', () => {
    const alphabet = [
      ...'0123456789.,:/ ±-%',
      ' mm',
      ' in',
      ' L',
      ' deg',
      '4.00-8',
      '155/80 R 13',
      '; ',
      '1 in 7',
      'x',
    ];
    const text = fc.array(fc.constantFrom(...alphabet), { maxLength: 6 }).map((a) => a.join(''));
    const names = calculator.fields.map((f) => f.name);
    const texts = fc.dictionary(fc.constantFrom(...names), text, { maxKeys: 6 });
    fc.assert(
      fc.property(texts, (given) => {
        const read = readValues(calculator, given, MACHINE);
        for (const { message } of read.errors) {
          const own = Object.values(given).reduce((m, t) => m.split(t.trim() || '\0').join(''), message);
          if (/NaN|Infinity|undefined/.test(own)) throw new Error(message);
        }
        if (read.errors.length) return;
        const answer = calculator.solve(read.values);
        if (!answer.ok && answer.errors.some(({ message }) => message === ''))
          throw new Error(`refused without a word: ${JSON.stringify([given, answer])}`);
        const said = JSON.stringify(answer);
        if (/NaN|Infinity|undefined|null/.test(said)) throw new Error(said.slice(0, 3000));
      }),
      { numRuns: 1500 },
    );
  });

  test('the fields for the page carry no help', () => {
    const said = JSON.stringify(bareFields(calculator.fields));
    expect(said).not.toContain('"help"');
    expect(said.length).toBeLessThan(12_000);
  });
});
