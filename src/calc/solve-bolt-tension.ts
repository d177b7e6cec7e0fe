import { CLASSES, type Thread, threadNamed } from './bolt-loads.ts';
import { chart } from './chart.ts';
import type { Answer, Drawing, Output, Refusal, Values, WorkingLine } from './contract.ts';
import { reader, refusal, textOf } from './field-values.ts';
import { printer } from './print-figure.ts';
import type { Point } from './svg.ts';
import { type Computed, spread } from './uncertainty.ts';
import { line, num, over, sign, times } from './working.ts';

const kN = printer('force', 'kN');
const Nm = printer('torque', 'Nm');
const percent = printer('share', '%');

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

function notes(values: Values, thread: Thread, out: Record<string, Output>): string[] {
  const high = highest(out['share']);
  const own = textOf(values, 'state') === 'own';
  const said = [
    high > 1 &&
      `Where friction is least this reaches ${percent(high)} of the proof load of ${thread.name} ${textOf(values, 'grade')}: the bolt may stretch for good, or break. Check class, thread and oil against the maker’s word. A torque that the maker gives stands, whatever is worked out here.`,
    !own &&
      'Most of the torque goes into friction under the head and in the thread. A torque wrench alone leaves the tension this uncertain; no cleverer arithmetic mends that.',
    own && !out['tension']?.pm && 'Give your nut factor a ±: without one the answer looks surer than it is.',
    'A bolt without marks on its head counts as 4.6. The nut must be of the same class or better, and a thread in aluminium may strip long before the bolt’s proof load.',
    'Oil on a torque given for dry threads stretches the bolt by a third more: see which the maker means.',
  ];
  return said.filter((note) => typeof note === 'string');
}

function working(values: Values, thread: Thread, out: Record<string, Output>): WorkingLine[] {
  const F = sign('F', out['tension']?.si ?? 0, 'force', 'kN');
  const T = sign('T', out['torque']?.si ?? 0, 'torque', 'Nm');
  const K = sign('K', out['factor']?.si ?? 0, 'count', 'n', 3);
  const d = sign('d', thread.diameter_m, 'length', 'mm', 3);
  const proof = sign('F_p', proofOf(values, thread), 'force', 'kN');
  const share = sign('s', out['share']?.si ?? 0, 'share', '%', 3);
  return [
    textOf(values, 'known') === 'tension' || textOf(values, 'known') === 'share'
      ? line('Torque for that tension', T, times(K, F, d))
      : line('Tension', F, over(T, times(K, d))),
    line('Of the proof load', share, over(F, proof)),
    line(
      'Three quarters of the proof load',
      sign('F_75', 0.75 * proof.si, 'force', 'kN'),
      times(num(0.75), proof),
    ),
  ];
}

function picture(values: Values, thread: Thread, out: Record<string, Output>): Drawing {
  const [T, F] = [out['torque']?.si ?? 0, (out['tension']?.si ?? 0) / 1e3];
  const proof = proofOf(values, thread) / 1e3;
  const most = Math.max(T * 1.5, (T / F) * proof * 1.1);
  const o = out['tension'];
  const edge = (x: number | undefined): Point[] => [
    [0, 0],
    [most, ((x ?? 0) / 1e3 / T) * most],
  ];
  const high = highest(o);
  const low = o?.interval?.low ?? (o?.si ?? 0) - (o?.pm ?? 0);
  return chart({
    name: 'tension',
    title: 'Tension against torque',
    desc: `A straight line with the band that friction leaves: ${kN(o)} at ${Nm(T)}. The level line is the proof load, ${kN(proof * 1e3)}.`,
    x: { label: 'torque, N·m', max: most },
    y: { label: 'tension, kN', max: (high / 1e3 / T) * most },
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
    marks: [{ at: [T, F], label: kN(F * 1e3) }],
  });
}

/**
 * Tension from torque and back, against the proof load, with what friction leaves open.
 * @returns refusals in plain words; ± of friction carried to the tension
 */
export function solve(values: Values): Answer | Refusal {
  const v = reader(values);
  const thread = threadNamed(textOf(values, 'thread') ?? '');
  const known = textOf(values, 'known') ?? 'torque';
  const own = textOf(values, 'state') === 'own';
  const lacks = refusal({
    thread: typeof thread === 'string' && thread,
    [known]: !(v(known) > 0) && 'A figure is needed here.',
    factor: own && !(v('factor') > 0) && 'Your nut factor is needed, such as 0.15 ± 0.04.',
  });
  if (lacks || typeof thread === 'string') return lacks ?? { ok: false, errors: [] };
  const scatter = own ? 0 : (STATES[textOf(values, 'state') ?? 'oiled']?.[1] ?? 0);
  const outputs = spread((moved) => compute(moved, thread), { ...values, scatter: { si: 1, pm: scatter } });
  const share = outputs['share']?.si ?? 0;
  const slip = `${thread.name} ${textOf(values, 'grade')} would stretch for good or break: this is ${percent(share)} of its proof load.`;
  const broken = refusal({
    [known]: share > 1.8 && `${slip} Is the unit N·m, kgf·m or lbf·ft, and the thread right?`,
  });
  if (broken) return broken;
  return {
    ok: true,
    outputs,
    working: working(values, thread, outputs),
    tables: [],
    notes: notes(values, thread, outputs),
    drawings: [picture(values, thread, outputs)],
  };
}
