import type { Answer, Drawing, Output, Refusal, Values, WorkingLine } from './contract.ts';
import { reader, refusal, textOf } from './field-values.ts';
import { printer } from './print-figure.ts';
import { drawing, lettering, path, r1 } from './svg.ts';
import { type Computed, spread } from './uncertainty.ts';
import { add, line, minus, num, over, power, sign, times } from './working.ts';

const mm = printer('length', 'mm');
const cm3 = printer('volume', 'cm3');
const ratio = printer('ratio', ':1');

/**
 * Area of a bore.
 * @example
 * circleArea(0.054) // => 2.29022e-3 m²
 */
export const circleArea = (diameter_m: number): number => (Math.PI / 4) * diameter_m ** 2;

const knownOf = (values: Values) => textOf(values, 'known') ?? 'burette';

/** Room above the piston at top dead centre, in one cylinder; m³. */
function clearanceOf(values: Values): number {
  const v = reader(values);
  const known = knownOf(values);
  const bore = circleArea(v('bore'));
  if (known === 'ratio') return (bore * v('stroke')) / (v('ratio') - 1);
  if (known === 'burette') return v('poured') - v('plug', 0);
  const gasket = v('gasketBore', v('bore'));
  return v('chamber') + circleArea(gasket) * v('gasket', 0) + bore * v('deck', 0) - v('crown', 0);
}

const offBarrel = (values: Values) => textOf(values, 'from') === 'barrel';

/** Squish as measured with solder, else gasket and deck together where both are known. */
function squishOf(values: Values): number {
  const v = reader(values);
  return v('squish', knownOf(values) === 'figures' ? v('gasket') + v('deck') : Number.NaN);
}

/** Whether a cut brings the head nearer to the crown: not where the squish band lies in the face that is cut. */
const closesSquish = (values: Values) => offBarrel(values) || Number.isNaN(reader(values)('mouth'));

function compute(values: Values): Computed {
  const v = reader(values);
  const bore = circleArea(v('bore'));
  const one = bore * v('stroke');
  const clearance = clearanceOf(values);
  const above = bore * v('port');
  const area = offBarrel(values) ? bore : circleArea(v('mouth', v('bore')));
  const lost = area * v('skim');
  const left = clearance - lost;
  const squish = squishOf(values);
  const stroke = textOf(values, 'aim') === 'trapped' ? above : one;
  const remove = clearance - stroke / (v('target') - 1);
  return {
    swept: one * v('cylinders', 1),
    sweptOne: one,
    clearance,
    ratio: 1 + one / clearance,
    trapped: above,
    trappedRatio: 1 + above / clearance,
    squish,
    squishShare: 1 - circleArea(v('bowl')) / bore,
    lost,
    ratioAfter: 1 + one / left,
    trappedAfter: 1 + above / left,
    squishAfter: squish - (closesSquish(values) ? v('skim') : 0 * v('skim')),
    skimFor: remove > 0 ? remove / area : undefined,
    squishFor: remove > 0 ? squish - (closesSquish(values) ? remove / area : 0) : undefined,
    raiseFor: remove <= 0 ? -remove / bore : undefined,
  };
}

function refuse(values: Values): Refusal | undefined {
  const v = reader(values);
  const known = knownOf(values);
  const [bore, stroke] = [v('bore'), v('stroke')];
  const { clearance = 0, lost = 0, squish = 0, squishAfter = 0, squishFor = 0 } = compute(values);
  const field = { burette: 'poured', figures: 'chamber', ratio: 'ratio' }[known] ?? known;
  return refusal({
    bore: !(bore > 0) && 'The bore is needed.',
    stroke: !(stroke > 0) && 'The stroke is needed.',
    [field]:
      !(clearance > 0) &&
      (Number.isNaN(clearance)
        ? 'A figure is needed here.'
        : `No room is left above the piston (${cm3(clearance)}): look at the signs of deck and crown.`),
    port: v('port') >= stroke && `The port must lie within the stroke of ${mm(stroke)}.`,
    gasketBore: v('gasketBore') < bore && 'A gasket hole smaller than the bore would stand in the fire.',
    mouth:
      v('mouth') >= bore &&
      'Smaller than the bore, or empty: a wider mouth means that the cut takes the whole bore.',
    bowl: v('bowl') >= bore && 'The bowl must be narrower than the bore.',
    skim:
      (lost >= clearance && `That would take all of the ${cm3(clearance)} above the piston.`) ||
      (squishAfter <= 0 && `Only ${mm(squish)} of squish is there: the crown would strike the head.`),
    target:
      (v('target') <= 1 && 'A ratio is above 1.') ||
      (squishFor < 0 &&
        `That takes more than the squish of ${mm(squish)}: the crown would strike the head.`) ||
      (textOf(values, 'aim') === 'trapped' &&
        v('target') > 1 &&
        Number.isNaN(v('port')) &&
        'The place of the exhaust port is needed for a trapped ratio.'),
  });
}

const NO_LIMIT = 'The maker of the engine sets how much: the head must stay thick enough to seal.';

function notes(values: Values, out: Record<string, Output>): string[] {
  const v = reader(values);
  const said = [
    out['trappedRatio'] &&
      `Full stroke ${ratio(out['ratio'])}, trapped ${ratio(out['trappedRatio'])}: ask which of the two a book means before comparing.`,
    out['lost'] &&
      `${mm(v('skim'))} off the ${offBarrel(values) ? 'barrel' : 'head'} takes ${cm3(out['lost'])} a cylinder: ${ratio(out['ratio'])} becomes ${ratio(out['ratioAfter'])}. ${NO_LIMIT}`,
    out['skimFor'] &&
      `${ratio(v('target'))} takes ${mm(out['skimFor'])} off the ${offBarrel(values) ? 'barrel' : 'head'}. ${NO_LIMIT}`,
    out['raiseFor'] &&
      `${ratio(v('target'))} is lower than now: the head must rise by ${mm(out['raiseFor'])}, as by a thicker gasket.`,
    (out['lost'] || out['skimFor']) &&
      !closesSquish(values) &&
      'The squish band lies in the face that is cut, so the squish stays as it is.',
    offBarrel(values) &&
      'A cut at the top of the barrel leaves the ports where they are; one at its foot lowers them.',
    knownOf(values) === 'burette' &&
      'A film of grease at the ring land, no bubble under the plug hole, the engine level: 0.2 mL more or less is usual.',
  ];
  return said.filter((note) => typeof note === 'string');
}

function working(values: Values, out: Record<string, Output>): WorkingLine[] {
  const v = reader(values);
  const si = (name: string) => out[name]?.si ?? 0;
  const length = (name: string, key: string) => sign(name, v(key), 'length', 'mm');
  const volume = (name: string, x: number) => sign(name, x, 'volume', 'cm3');
  const quarter = over(num(Math.PI, 'π'), 4);
  const [B, S] = [length('B', 'bore'), length('S', 'stroke')];
  const Vs = volume('V_s', si('sweptOne'));
  const Vc = volume('V_c', si('clearance'));
  const r = sign('r', si('ratio'), 'ratio', ':1');
  const lines = [line('Swept by one piston', Vs, times(quarter, power(B, 2), S))];
  const known = knownOf(values);
  if (known === 'burette')
    lines.push(
      line('Above the piston', Vc, minus(volume('V_p', v('poured')), volume('V_plug', v('plug', 0)))),
    );
  if (known === 'figures') {
    const disc = (name: string, d: number, h: number) =>
      times(quarter, power(sign('d', d, 'length', 'mm'), 2), sign(name, h, 'length', 'mm'));
    const sum = add(
      volume('V_k', v('chamber')),
      disc('g', v('gasketBore', v('bore')), v('gasket', 0)),
      disc('h', v('bore'), v('deck', 0)),
    );
    lines.push(line('Above the piston', Vc, minus(sum, volume('V_d', v('crown', 0)))));
  }
  lines.push(
    known === 'ratio'
      ? line('Above the piston', Vc, over(Vs, minus(r, 1)))
      : line('Ratio, full stroke', r, over(add(Vs, Vc), Vc)),
  );
  if (out['trapped']) {
    const Vt = volume('V_t', si('trapped'));
    lines.push(
      line('Swept above the exhaust port', Vt, times(quarter, power(B, 2), length('x', 'port'))),
      line('Trapped ratio', sign('r_t', si('trappedRatio'), 'ratio', ':1'), over(add(Vt, Vc), Vc)),
    );
  }
  if (out['lost']) {
    const left = minus(Vc, volume('V_x', si('lost')));
    lines.push(line('After the cut', sign('r_x', si('ratioAfter'), 'ratio', ':1'), add(1, over(Vs, left))));
  }
  return lines;
}

/** One cylinder at top dead centre: chamber, joint, piston, and the exhaust port where it is known. */
function section(values: Values, out: Record<string, Output>): Drawing {
  const v = reader(values);
  const scale = 150 / v('stroke');
  const half = Math.min(90, Math.max(35, (v('bore') * scale) / 2));
  const [cx, joint] = [110, 66];
  const gap = Math.min(14, Math.max(5, (out['squish']?.si ?? 0) * scale));
  const crown = joint + gap;
  const bottom = crown + 150;
  const port = out['trapped'] ? crown + v('port') * scale : undefined;
  const edge = cx + half;
  const text = (y: number, words: string) => lettering(edge + 22, y, words);
  const desc = `Piston at the top of its ${mm(v('stroke'))} stroke, ${cm3(out['clearance'])} above it.`;
  return drawing('section', 250, 'One cylinder at top dead centre', desc, [
    path(`M${r1(cx - half)} 245V${joint}M${r1(edge)} 245V${joint}`, 'stroke-width="2"'),
    path(
      `M${r1(cx - half - 18)} ${joint}h18c6 -2 14 -8 ${r1(half * 0.45)} -34h${r1(half * 1.1)}c${r1(half * 0.3)} 26 ${r1(half * 0.38)} 32 ${r1(half * 0.45)} 34h18`,
      'stroke-width="2"',
    ),
    path(`M${cx - 7} 32V12M${cx + 7} 32V12`),
    path(
      `M${r1(cx - half + 3)} ${r1(crown)}h${r1(2 * half - 6)}v62h${r1(6 - 2 * half)}z`,
      'stroke-width="1.6"',
    ),
    path(`M${r1(cx - half)} ${r1(bottom)}H${r1(edge)}`, 'stroke-dasharray="3 3"'),
    port === undefined
      ? ''
      : path(`M${r1(edge)} ${r1(port)}h14v${r1(Math.max(8, bottom - port))}h-14`, 'stroke-width="2"'),
    text(30, `${cm3(out['clearance'])} above the piston`),
    out['squish'] ? text(joint + 12, `squish ${mm(out['squish'])}`) : '',
    port === undefined ? '' : text(Math.min(port + 4, bottom - 16), `port opens at ${mm(v('port'))}`),
    text(bottom + 4, `stroke ${mm(v('stroke'))}`),
    text(bottom + 20, `${cm3(out['sweptOne'])} swept`),
  ]);
}

/**
 * Swept volume, compression over the full stroke and above the exhaust port, and what a cut at the joint makes of them.
 * @returns refusals in plain words; ± carried to every output
 */
export function solve(values: Values): Answer | Refusal {
  const refused = refuse(values);
  if (refused) return refused;
  const outputs = spread(compute, values);
  return {
    ok: true,
    outputs,
    working: working(values, outputs),
    tables: [],
    notes: notes(values, outputs),
    drawings: [section(values, outputs)],
  };
}
