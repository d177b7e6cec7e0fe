import { CLASSES, type Thread, threadNamed } from './bolt-loads.ts';
import type { wrong } from './bolt-tension-says.ts';
import type { Found, FoundChart, Output, Refusal, Values } from './contract.ts';
import { reader, refusal, textOf } from './field-values.ts';
import type { Point } from './svg.ts';
import { type Computed, spread } from './uncertainty.ts';

/** Nut factor of each state and how far the tension may then lie from the figure, as a share of it. */
const STATES: Readonly<Record<string, readonly [factor: number, scatter: number]>> = {
  oiled: [0.15, 0.25],
  dry: [0.2, 0.35],
};

/**
 * Tension from tightening torque: torque / (nut factor × diameter); N.
 * Source: Shigley, Mechanical Engineering Design, eq. 8-27.
 * @example
 * tensionOf(25, 0.2, 0.008) // => 15625 N
 */
export const tensionOf = (torque_Nm: number, nutFactor: number, diameter_m: number): number =>
  torque_Nm / (nutFactor * diameter_m);

const proofOf = (values: Values, thread: Thread) =>
  thread.proof_N[(CLASSES as readonly string[]).indexOf(textOf(values, 'grade') ?? '')] ?? Number.NaN;

function compute(values: Values, thread: Thread): Computed {
  const v = reader(values);
  const known = textOf(values, 'known') ?? 'torque';
  const factor = v('factor', STATES[textOf(values, 'state') ?? '']?.[0]);
  const proof = proofOf(values, thread);
  const aim = known === 'share' ? v('share') * proof : v('tension');
  const torque = known === 'torque' ? v('torque') : aim * factor * thread.diameter_m;
  const tension =
    known === 'torque' ? tensionOf(torque, factor, thread.diameter_m) * v('scatter') : aim * v('scatter');
  return { torque, tension, share: tension / proof, proof, area: thread.area_m2, factor };
}

const highest = (o: Output | undefined) => o?.interval?.high ?? (o?.si ?? 0) + (o?.pm ?? 0);

/** Tension against torque, with the band that friction leaves. */
function picture(out: Record<string, Output>): FoundChart {
  const { torque, tension: o, proof: held } = out;
  const [T, F, proof] = [torque?.si ?? 0, (o?.si ?? 0) / 1e3, (held?.si ?? 0) / 1e3];
  const most = Math.max(T * 1.5, (T / F) * proof * 1.1);
  const edge = (x: number): Point[] => [
    [0, 0],
    [most, (x / 1e3 / T) * most],
  ];
  const high = highest(o);
  const low = o?.interval?.low ?? (o?.si ?? 0) - (o?.pm ?? 0);
  return {
    x: { max: most },
    y: { max: (high / 1e3 / T) * most },
    curves: [
      { points: edge(F * 1e3) },
      { points: edge(high), dash: '2 3', label: 'slippery' },
      { points: edge(low), dash: '2 3', label: 'rough' },
      {
        points: [
          [0, proof],
          [most, proof],
        ],
        dash: '6 3',
        label: 'proof load',
        labelAt: [0, proof],
      },
    ],
    marks: [{ at: [T, F] }],
  };
}

/**
 * Tension from torque and back, against the proof load, with what friction leaves open.
 * @returns refusals; ± of friction carried to the tension
 */
export function solve(values: Values): Found | Refusal {
  const v = reader(values);
  const thread = threadNamed(textOf(values, 'thread') ?? '');
  const known = textOf(values, 'known') ?? 'torque';
  const state = textOf(values, 'state') ?? 'oiled';
  const own = state === 'own';
  const none = 'wrong' in thread ? thread : undefined;
  const lacks = refusal<keyof typeof wrong>(
    {
      thread: none?.wrong,
      [known]: !(v(known) > 0) && 'needed',
      factor: own && !(v('factor') > 0) && 'factor',
    },
    none?.says,
  );
  if (lacks || 'wrong' in thread) return lacks ?? { ok: false, errors: [] };
  const scatter = own ? 0 : (STATES[state]?.[1] ?? 0);
  const outputs = spread((moved) => compute(moved, thread), { ...values, scatter: { si: 1, pm: scatter } });
  const share = outputs['share']?.si ?? 0;
  const figures = { bolt: thread.name, share };
  const broken = refusal<keyof typeof wrong>({ [known]: share > 1.8 && 'breaks' }, figures);
  if (broken) return broken;
  const high = highest(outputs['share']);
  return {
    ok: true,
    outputs,
    figures: {
      bolt: thread.name,
      diameter: thread.diameter_m,
      tooHigh: high > 1 ? high : undefined,
      own,
      sure: !outputs['tension']?.pm,
      byTorque: Number(known === 'torque'),
      threeQuarters: 0.75 * proofOf(values, thread),
    },
    shown: { tension: picture(outputs) },
  };
}
