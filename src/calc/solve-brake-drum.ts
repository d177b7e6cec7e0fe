import type { Answer, Drawing, Output, Refusal, Values, WorkingLine } from './contract.ts';
import { reader, refusal, rowsOf } from './field-values.ts';
import { printer } from './print-figure.ts';
import { drawing, lettering, path, r1, solid } from './svg.ts';
import { type Computed, spread } from './uncertainty.ts';
import { add, line, minus, sign, times } from './working.ts';

const mm = printer('length', 'mm', 5);
const fine = printer('length', 'mm', 2);

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

function notes(values: Values, out: Record<string, Output>): string[] {
  const v = reader(values);
  const { left, leftAfter, spare, ovality, liningLeft } = out;
  const over = (name: string, o: number | undefined) => v(name) > 0 && (o ?? 0) > v(name);
  const said = [
    left &&
      (left.si < 0
        ? 'The drum is beyond its discard diameter: it is scrap. Machining cannot help.'
        : least(left) <= 0
          ? 'Within the ± of the measurement the discard diameter may be passed already: treat the drum as scrap until a better gauge says otherwise.'
          : ''),
    left && left.si >= 0 && leftAfter && leftAfter.si < 0
      ? `Turned until clean it would pass its discard diameter by ${fine(-leftAfter.si)}: do not machine it.`
      : '',
    spare &&
      leftAfter &&
      leftAfter.si >= 0 &&
      (spare.si < 0
        ? 'It could be turned, but less is left for wear than you wish to keep.'
        : `Turned until clean it keeps ${fine(leftAfter)} on the diameter.`),
    !(v('discard') > 0) &&
      'No discard diameter was given. It is cast or stamped on most drums, or in the maker’s book; without either there is no figure to work to.',
    (over('ovalLimit', ovality?.si) && 'Ovality is beyond the limit given.') || '',
    (over('runOutLimit', v('runOut')) &&
      'Run-out is beyond the limit given: clean the hub’s face and try again before blaming the drum.') ||
      '',
    !(v('ovalLimit') > 0) &&
      ovality &&
      'The maker’s limit of ovality is not known here, and none is assumed.',
    liningLeft &&
      (least(liningLeft) <= 0
        ? 'The lining is at or below its limit, or may be: renew it on both sides of the axle.'
        : 'Measure the lining where it is thinnest; on a riveted one from the rivet heads’ side too.'),
    'Turn both drums of an axle to the same diameter, then fit shoes that match them: common practice, no source.',
  ];
  return said.filter((note): note is string => Boolean(note));
}

function working(values: Values, out: Record<string, Output>): WorkingLine[] {
  const v = reader(values);
  const length = (name: string, si: number, figures = 5) => sign(name, si, 'length', 'mm', figures);
  const D = length('D_max', out['most']?.si ?? 0);
  const discard = length('D_dis', v('discard'));
  const clean = length('D_c', out['clean']?.si ?? 0);
  const lines: WorkingLine[] = [];
  if (out['ovality'])
    lines.push(
      line(
        'Ovality',
        length('o', out['ovality'].si, 2),
        minus(D, length('D_min', Math.min(...across(values)))),
      ),
    );
  if (out['wear'])
    lines.push(
      line('Wear on the diameter', length('w', out['wear'].si, 3), minus(D, length('D_0', v('fresh')))),
    );
  if (out['left']) lines.push(line('Left before discard', length('l', out['left'].si, 3), minus(discard, D)));
  const runOut = length('t', v('runOut', 0), 2);
  lines.push(
    line(
      'Turned clean, at the most',
      clean,
      v('cut', 0) > 0 ? add(D, runOut, times(2, length('c', v('cut'), 2))) : add(D, runOut),
    ),
  );
  if (out['leftAfter'])
    lines.push(line('Left after turning', length('l_c', out['leftAfter'].si, 3), minus(discard, clean)));
  if (out['liningLeft'])
    lines.push(
      line(
        'Lining left',
        length('b', out['liningLeft'].si, 3),
        minus(length('B', v('lining'), 3), length('B_min', v('liningLimit'), 3)),
      ),
    );
  return lines;
}

/** The diameters on one line from new to discard. */
function picture(values: Values, out: Record<string, Output>): Drawing {
  const v = reader(values);
  const read = across(values);
  const ends = [v('fresh'), v('discard'), out['clean']?.si ?? Number.NaN, ...read].filter((x) => x > 0);
  const [low, high] = [Math.min(...ends), Math.max(...ends)];
  const at = (d: number) => 24 + ((d - low) / (high - low || 1)) * 292;
  const mark = (d: number, name: string, y: number, up: boolean) => {
    if (!(d > 0)) return '';
    const x = at(d);
    const anchor = x > 200 ? 'end' : x < 140 ? 'start' : 'middle';
    return (
      path(
        `M${r1(x)} 70V${up ? y + 4 : y - 11}`,
        name === 'discard' ? 'stroke-width="2"' : 'stroke-dasharray="2 2"',
      ) + lettering(x, y, `${name} ${mm(d)}`, anchor)
    );
  };
  const dot = (d: number) => solid(`M${r1(at(d) - 3)} 66h6v8h-6z`);
  return drawing(
    'diameters',
    132,
    'Diameters from new to discard',
    `New ${mm(v('fresh'))}, largest measured ${mm(out['most'])}, clean after turning ${mm(out['clean'])}, discard ${mm(v('discard'))}. The blocks are the measurements.`,
    [
      path('M24 70H316', 'stroke-width="1.5"'),
      ...read.map(dot),
      mark(v('fresh'), 'new', 40, true),
      mark(v('discard'), 'discard', 20, true),
      mark(out['most']?.si ?? Number.NaN, 'largest', 104, false),
      mark(out['clean']?.si ?? Number.NaN, 'clean', 124, false),
    ],
  );
}

/**
 * Wear, ovality and what machining leaves of a drum, and the lining left.
 * @returns refusals in plain words; ± carried to every output
 */
export function solve(values: Values): Answer | Refusal {
  const v = reader(values);
  const read = across(values);
  const [fresh, discard] = [v('fresh'), v('discard')];
  const odd = read.find((d) => d < fresh * 0.99 || d > fresh * 1.06);
  const small = read.find((d) => d < fresh - 3e-4);
  const refused = refusal({
    across: !read.length
      ? 'Write the diameters as measured, two at least, such as 150.42 150.55.'
      : odd !== undefined
        ? `${mm(odd)} is far from a new drum’s ${mm(fresh)}: is one of the two in inches, or a digit missing?`
        : small !== undefined && `${mm(small)} is smaller than new: rust, a lip at the edge, or the gauge.`,
    discard:
      discard <= fresh
        ? 'The discard diameter must be larger than the new one.'
        : discard > fresh * 1.05 &&
          `${mm(discard)} is far from a new drum’s ${mm(fresh)}: read the casting again, it may be in inches.`,
    lining:
      v('liningLimit') > 0 && !(v('lining') > 0) && v('lining') === 0 && 'No lining is left: do not drive.',
  });
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
    working: working(values, outputs),
    tables: [],
    notes: notes(values, outputs),
    drawings: [picture(values, outputs)],
  };
}
