import type { wrong } from './brake-drum-says.ts';
import type { Found, FoundRows, Output, Refusal, Values } from './contract.ts';
import { reader, refusal, rowsOf } from './field-values.ts';
import type { Figures } from './holes.ts';
import { type Computed, spread } from './uncertainty.ts';

/**
 * The diameter at which a drum turned about its hub is clean all round, at the most: with r the radius from the hub's
 * axis, r_max + r_opposite ≤ D_max and r_opposite ≥ r_max − run-out, so that 2 r_max ≤ D_max + run-out.
 * @example
 * cleanDiameter(0.15055, 0.0001) // => 0.15065 m
 */
export const cleanDiameter = (largest_m: number, runOut_m: number): number => largest_m + runOut_m;

const across = (values: Values) => rowsOf(values, 'across').map(([d = Number.NaN]) => d);

function compute(values: Values): Computed {
  const v = reader(values);
  const read = across(values);
  const most = Math.max(...read);
  const clean = cleanDiameter(most, v('runOut', 0)) + 2 * v('cut', 0);
  const [lining, thin] = [v('lining'), v('liningLimit')];
  return {
    most,
    ovality: read.length > 1 ? most - Math.min(...read) : undefined,
    wear: most - v('fresh'),
    left: v('discard') - most,
    clean,
    leftAfter: v('discard') - clean,
    spare: v('discard') - clean - v('keep'),
    liningLeft: lining - thin,
    allowance: v('discard') - v('fresh'),
  };
}

/** The careful end of a figure: what is left at the least. */
const least = (o: Output | undefined) => (o ? (o.interval?.low ?? o.si - (o.pm ?? 0)) : Number.NaN);

/** What the figures say of the drum and its lining; the sentences ask for these. */
function verdict(values: Values, out: Record<string, Output>): Figures {
  const v = reader(values);
  const { left, leftAfter, spare, ovality, liningLeft } = out;
  const [now, after] = [left?.si ?? Number.NaN, leftAfter?.si ?? Number.NaN];
  const over = (name: string, x = 0) => v(name) > 0 && x > v(name);
  return {
    scrap: now < 0,
    unsure: now >= 0 && least(left) <= 0,
    passes: now >= 0 && after < 0 ? -after : undefined,
    thin: after >= 0 && spare && spare.si < 0,
    keeps: after >= 0 && spare && spare.si >= 0,
    oval: over('ovalLimit', ovality?.si),
    wobbles: over('runOutLimit', v('runOut')),
    worn: least(liningLeft) <= 0,
  };
}

/** The diameters on one line from new to discard. */
function picture(values: Values, out: Record<string, Output>): FoundRows {
  const v = reader(values);
  const read = across(values);
  const marks = {
    fresh: v('fresh'),
    discard: v('discard'),
    most: out['most']?.si ?? Number.NaN,
    clean: out['clean']?.si ?? Number.NaN,
  };
  const ends = [...Object.values(marks), ...read].filter((x) => x > 0);
  const [low, high] = [Math.min(...ends), Math.max(...ends)];
  const at = (d: number) => 24 + ((d - low) / (high - low || 1)) * 292;
  const places = Object.entries(marks).flatMap(([name, d]) => {
    const x = at(d);
    return [
      [`${name}X`, x],
      [`${name}Anchor`, x > 200 ? 'end' : x < 140 ? 'start' : 'middle'],
    ];
  });
  return { at: Object.fromEntries(places), rows: read.map((d) => ({ x: at(d) - 3 })) };
}

/**
 * Wear, ovality and what machining leaves of a drum, and the lining left.
 * @returns refusals; ± carried to every output
 */
export function solve(values: Values): Found | Refusal {
  const v = reader(values);
  const read = across(values);
  const [fresh, discard] = [v('fresh'), v('discard')];
  const odd = read.find((d) => d < fresh * 0.99 || d > fresh * 1.06);
  const small = read.find((d) => d < fresh - 3e-4);
  const refused = refusal<keyof typeof wrong>(
    {
      across: !read.length ? 'across' : odd !== undefined ? 'odd' : small !== undefined && 'small',
      discard: discard <= fresh ? 'discardSmall' : discard > fresh * 1.05 && 'discardOdd',
      lining: v('liningLimit') > 0 && v('lining') === 0 && 'lining',
    },
    { odd, small },
  );
  if (refused) return refused;
  const outputs = spread(compute, values);
  // The dots of one gauge move together and cancel in a difference; its scatter does not.
  const { ovality } = outputs;
  const pm = Math.max(
    ...(Array.isArray(values['across']) ? values['across'].flat().map((f) => f.pm ?? 0) : [0]),
  );
  if (ovality && pm) outputs['ovality'] = { si: ovality.si, pm: pm * Math.SQRT2 };
  return {
    ok: true,
    outputs,
    figures: { ...verdict(values, outputs), least: Math.min(...read), runOut: v('runOut', 0) },
    shown: { diameters: picture(values, outputs) },
  };
}
