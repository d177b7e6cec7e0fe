import type { wrong } from './compression-ratio-says.ts';
import type { Found, FoundRows, Output, Refusal, Values } from './contract.ts';
import { reader, refusal, textOf } from './field-values.ts';
import { type Computed, spread } from './uncertainty.ts';

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
  return refusal<keyof typeof wrong>(
    {
      bore: !(bore > 0) && 'bore',
      stroke: !(stroke > 0) && 'stroke',
      [field]: !(clearance > 0) && (Number.isNaN(clearance) ? 'needed' : 'noRoom'),
      port: v('port') >= stroke && 'port',
      gasketBore: v('gasketBore') < bore && 'gasketBore',
      mouth: v('mouth') >= bore && 'mouth',
      bowl: v('bowl') >= bore && 'bowl',
      skim: (lost >= clearance && 'takesAll') || (squishAfter <= 0 && 'strikes'),
      target:
        (v('target') <= 1 && 'low') ||
        (squishFor < 0 && 'wouldStrike') ||
        (textOf(values, 'aim') === 'trapped' && v('target') > 1 && Number.isNaN(v('port')) && 'portNeeded'),
    },
    { clearance, squish },
  );
}

/** One cylinder at top dead centre: chamber, joint, piston, and the exhaust port where it is known. */
function section(values: Values, out: Record<string, Output>): FoundRows {
  const v = reader(values);
  const scale = 150 / v('stroke');
  const half = Math.min(90, Math.max(35, (v('bore') * scale) / 2));
  const [middle, joint] = [110, 66];
  const [left, edge] = [middle - half, middle + half];
  const crown = joint + Math.min(14, Math.max(5, (out['squish']?.si ?? 0) * scale));
  const bottom = crown + 150;
  const port = crown + v('port') * scale;
  return {
    at: {
      left,
      edge,
      rim: left - 18,
      h30: half * 0.3,
      h38: half * 0.38,
      h45: half * 0.45,
      h110: half * 1.1,
      side: left + 3,
      wide: 2 * half - 6,
      back: 6 - 2 * half,
      crown,
      bottom,
      port,
      portHeight: Math.max(8, bottom - port),
      words: edge + 22,
      portWords: Math.min(port + 4, bottom - 16),
      strokeWords: bottom + 4,
      sweptWords: bottom + 20,
    },
  };
}

/**
 * Swept volume, compression over the full stroke and above the exhaust port, and what a cut at the joint makes of them.
 * @returns refusals; ± carried to every output
 */
export function solve(values: Values): Found | Refusal {
  const refused = refuse(values);
  if (refused) return refused;
  const v = reader(values);
  const outputs = spread(compute, values);
  return {
    ok: true,
    outputs,
    figures: {
      known: knownOf(values),
      from: offBarrel(values) ? 'barrel' : 'head',
      cuts: outputs['lost'] ?? outputs['skimFor'],
      closes: closesSquish(values),
      plug: v('plug', 0),
      gasketBore: v('gasketBore', v('bore')),
      gasket: v('gasket', 0),
      deck: v('deck', 0),
      crown: v('crown', 0),
      portAt: v('port'),
    },
    shown: { section: section(values, outputs) },
  };
}
