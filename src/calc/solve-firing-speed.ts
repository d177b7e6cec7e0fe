import { chart } from './chart.ts';
import type { Answer, Refusal, Values } from './contract.ts';
import { reader, refusal, textOf } from './field-values.ts';
import { printer } from './print-figure.ts';
import { type Computed, spread } from './uncertainty.ts';
import { line, over, sign, times } from './working.ts';

const TURN = 2 * Math.PI;
const rpm = printer('rotation', 'rpm', 4);
const hertz = printer('frequency', 'Hz', 4);

/**
 * Firings in one turn of the crank: every cylinder once a turn in a two-stroke, once in two turns in a four-stroke.
 * @example
 * firingsPerTurn(4, 4) // => 2
 */
export const firingsPerTurn = (cylinders: number, strokes: number): number => (2 * cylinders) / strokes;

function compute(values: Values): Computed {
  const v = reader(values);
  const per = firingsPerTurn(v('cylinders'), Number(textOf(values, 'strokes') ?? 4));
  /** What is heard, as a multiple of the firing frequency. */
  const heard =
    { firing: 1, one: 1 / v('cylinders'), half: 1 / 2, twice: 2 }[textOf(values, 'tone') ?? 'firing'] ?? 1;
  const speed =
    textOf(values, 'known') === 'speed'
      ? v('speed')
      : ((v('frequency') + v('line', 0)) * TURN) / (per * heard);
  const crank = speed / TURN;
  return {
    speed,
    firing: crank * per,
    crank,
    one: (crank * per) / v('cylinders'),
    tone: crank * per * heard,
    between: TURN / per,
    time: 1 / (crank * per),
  };
}

/**
 * Engine speed from the frequency of its firings, and back.
 * @returns refusals in plain words; ± carried to every output
 */
export function solve(values: Values): Answer | Refusal {
  const v = reader(values);
  const known = textOf(values, 'known') === 'speed' ? 'speed' : 'frequency';
  const refused = refusal({
    cylinders: !(v('cylinders') >= 1) && 'The number of cylinders is needed.',
    [known]: !(v(known) > 0) && 'A figure is needed here.',
  });
  if (refused) return refused;
  // A spectrum shows lines 1/T apart: the true one lies within half of that.
  const apart = 1 / v('window');
  const read: Values = v('window') > 0 ? { ...values, line: { si: 0, pm: apart / 2 } } : values;
  const outputs = spread(compute, read);
  const N = outputs['speed']?.si ?? 0;
  if (N > 2100)
    return {
      ok: false,
      errors: [
        {
          field: known,
          message: `${rpm(N)} is more than engines turn: check the cylinders, the strokes and which tone was heard.`,
        },
      ],
    };
  const per = firingsPerTurn(v('cylinders'), Number(textOf(values, 'strokes') ?? 4));
  const f = sign('f', outputs['firing']?.si ?? 0, 'frequency', 'Hz');
  const n = sign('n', N, 'rotation', 'rpm');
  const turns = sign('c', N / TURN, 'frequency', 'Hz');
  const z = sign('z', per, 'count', 'n', 2);
  const tone = outputs['tone']?.si ?? 0;
  const could: [string, number][] = [
    ['every firing', per],
    ['one cylinder alone', per / v('cylinders')],
    ['the crank, once a turn', 1],
    ['every second firing', per / 2],
    ['twice the firings, an overtone', per * 2],
  ];
  const kinds = [...new Set(could.map(([, k]) => k))].map((k) => {
    const names = could.filter(([, other]) => other === k).map(([says]) => says);
    return [names.join('; or '), k] as const;
  });
  const most = tone * 1.5;
  return {
    ok: true,
    outputs,
    working: [
      line('Turns of the crank in a second', turns, over(f, z)),
      line('Firings in a second', f, times(z, turns)),
      line(
        'Degrees between firings',
        sign('φ', TURN / per, 'angle', 'deg'),
        over(sign('turn', TURN, 'angle', 'deg', 3), z),
      ),
      line('Engine speed', n, times(sign('turn', TURN, 'angle', 'rad'), turns)),
    ],
    tables: [
      {
        name: 'tones',
        caption: `If the tone of ${hertz(tone)} were`,
        columns: [
          { label: 'Tone', numeric: false },
          { label: 'A turn', numeric: true },
          { label: 'Engine, rev/min', numeric: true },
        ],
        rows: kinds.map(([says, k]) => [
          says,
          printer('count', 'n', 3)(k),
          printer('rotation', 'rpm', 4, true)((tone / k) * TURN),
        ]),
      },
    ],
    notes: [
      'The loudest tone need not be the firing: cylinders that fire unevenly add half of it, exhausts add overtones. See whether the other tones stand at whole multiples, and compare with the idle speed that you know.',
      ...(v('window') > 0
        ? [
            `A stretch of ${printer('time', 's')(v('window'))} parts tones no closer than ${hertz(apart)}: a longer stretch at a steadier speed tells more.`,
          ]
        : []),
      ...(known === 'speed'
        ? []
        : ['A recording that was slowed down, sped up or stretched in editing shifts every tone.']),
    ],
    drawings: [
      chart({
        name: 'orders',
        title: 'Engine speed for each tone',
        desc: `Straight lines from nothing: ${kinds.map(([says]) => says).join('; ')}.`,
        x: { label: 'tone, Hz', max: most },
        y: { label: 'engine, rev/min', max: (N / TURN) * 60 * 2.4 },
        curves: kinds
          .filter(([, k]) => (tone / k) * TURN <= N * 1.65)
          .map(([, k], i) => ({
            points: [
              [0, 0],
              [most, (most / k) * 60],
            ] as const,
            label: `${printer('count', 'n', 2)(k)} a turn`,
            ...(i ? { dash: '4 3' } : {}),
          })),
        marks: [{ at: [tone, (N / TURN) * 60], label: '' }],
      }),
    ],
  };
}
