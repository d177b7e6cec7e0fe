import type { Found, Refusal, Values } from './contract.ts';
import { reader, refusal, textOf } from './field-values.ts';
import type { wrong } from './firing-speed-says.ts';
import { type Computed, spread } from './uncertainty.ts';

const TURN = 2 * Math.PI;

/**
 * Firings in one turn of the crank: every cylinder once a turn in a two-stroke, once in two turns in a four-stroke.
 * @example
 * firingsPerTurn(4, 4) // => 2
 */
export const firingsPerTurn = (cylinders: number, strokes: number): number => (2 * cylinders) / strokes;

const perTurn = (values: Values) =>
  firingsPerTurn(reader(values)('cylinders'), Number(textOf(values, 'strokes') ?? 4));

/** Tones in a turn of the crank, by what a tone may be. */
function tonesOf(values: Values): Record<string, number> {
  const per = perTurn(values);
  return { firing: per, one: per / reader(values)('cylinders'), crank: 1, half: per / 2, twice: per * 2 };
}

function compute(values: Values): Computed {
  const v = reader(values);
  const per = perTurn(values);
  const heard = (tonesOf(values)[textOf(values, 'tone') ?? 'firing'] ?? per) / per;
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
 * @returns refusals; ± carried to every output
 */
export function solve(values: Values): Found | Refusal {
  const v = reader(values);
  const bySpeed = textOf(values, 'known') === 'speed';
  const known = bySpeed ? 'speed' : 'frequency';
  const refused = refusal<keyof typeof wrong>({
    cylinders: !(v('cylinders') >= 1) && 'cylinders',
    [known]: !(v(known) > 0) && 'needed',
  });
  if (refused) return refused;
  // A spectrum shows lines 1/T apart: the true one lies within half of that.
  const apart = 1 / v('window');
  const read: Values = v('window') > 0 ? { ...values, line: { si: 0, pm: apart / 2 } } : values;
  const outputs = spread(compute, read);
  const [speed = 0, heard = 0] = [outputs['speed']?.si, outputs['tone']?.si];
  const fast = refusal<keyof typeof wrong>({ [known]: speed > 2100 && 'fast' }, { speed });
  if (fast) return fast;
  const tones = Object.entries(tonesOf(values)).map(([is, k]) => ({ is, k, engine: (heard / k) * TURN }));
  const most = heard * 1.5;
  return {
    ok: true,
    outputs,
    figures: { heard, apart, bySpeed, per: perTurn(values) },
    lists: { tones },
    shown: {
      tones: { rows: tones },
      orders: {
        x: { max: most },
        y: { max: (speed / TURN) * 60 * 2.4 },
        curves: [...new Map(tones.map((one) => [one.k, one])).values()]
          .filter(({ engine }) => engine <= speed * 1.65)
          .map(({ k }, i) => ({
            k,
            points: [
              [0, 0],
              [most, (most / k) * 60],
            ],
            ...(i && { dash: '4 3' }),
          })),
        marks: [{ at: [heard, (speed / TURN) * 60] }],
      },
    },
  };
}
