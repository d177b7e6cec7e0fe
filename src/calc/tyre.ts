/**
 * Tyre sizes as marked on the side wall. The marking gives a nominal diameter; what a wheel rolls in a turn is less, and
 * a measured one is better than both.
 */
import { TYRES } from './tyre-table.ts';

export interface Tyre {
  /** Overall diameter of the new, unloaded tyre. */
  diameter_m: number;
  /** How far that may be off. */
  pm_m: number;
  /** Where the diameter comes from. */
  rule: TyreRule;
  radial: boolean;
}

/**
 * Nominal rolling circumference of a radial tyre for its overall diameter; 2.9 % less than round its outside.
 * Source: tyre industry guideline (ETRTO Standards Manual, general notes), from memory.
 */
export const ROLLING_RADIAL = 3.05;

export type TyreRule = 'old' | 'table' | 'aspect' | 'metric estimate' | 'low estimate' | 'inch estimate';

/** What is wrong with a marking. */
export type NoTyre = 'letters' | 'noTyre' | 'oddTyre' | 'aspect';

const INCH = 0.0254;

/**
 * Rim diameter for a code, in whole millimetres as UN Regulation No. 30 prints it (13 is 330).
 * @example
 * rimDiameter(13) // => 0.33 m
 */
export const rimDiameter = (code: number): number => Math.round(code * 25.4) / 1000;

/**
 * The tyre that a marking names, or what is wrong with the marking.
 * Metric with an aspect ratio: rim + 2 × aspect × width (UN Regulation No. 30, 6.1.2; No. 75 for motorcycles).
 * Metric without one: tabled, else 82 % of the width. Inch: tabled, else twice the width on the rim; the low series of the
 * 1950s, whose widths end in .20, .40, .60, .70 and .90, 95 % of that. Old sizes such as 26 x 3: the first is the diameter.
 * The rules without a table are common practice and estimates.
 * @example
 * tyreOf('155/80 R 13').diameter_m // => 0.578 m
 */
export function tyreOf(marking: string): Tyre | NoTyre {
  const text = marking.toUpperCase().replace(/,/g, '.').replace(/\s+/g, ' ').trim();
  if (/^[A-Z]{2} ?\d\d/.test(text)) return 'letters';
  const [, size, per, sort = '', last] =
    /^P?(\d+(?:\.\d+)?)(?: ?\/ ?(\d+))? ?(?:(ZR|R|B|-|X|–) ?)(\d+(?:\.\d+)?)(?: ?(?:C|M\/C|TT|TL|\d?PR|\d+ ?PR|\d{2,3}[A-Z]))*$/.exec(
      text,
    ) ?? [];
  const [width, rim, aspect] = [Number(size), Number(last), per ? Number(per) / 100 : undefined];
  if (!(width > 0 && rim > 0)) return 'noTyre';
  const radial = sort.endsWith('R');
  const metric = width >= 50;
  const made = (diameter_m: number, share: number, rule: TyreRule): Tyre => ({
    diameter_m,
    pm_m: diameter_m * share,
    rule,
    radial,
  });
  if (sort === 'X' && !metric && width >= 12 && rim < 6) return made(width * INCH, 0.02, 'old');
  if (rim < 4 || rim > 24 || width > 400 || (!metric && width > 12)) return 'oddTyre';
  if (aspect && (aspect < 0.2 || aspect > 1.1)) return 'aspect';
  const tabled =
    (radial || !metric) && !aspect && TYRES[metric ? `${width}R${rim}` : `${width.toFixed(2)}-${rim}`];
  if (tabled) return made(tabled / 1000, 3 / tabled, 'table');
  if (metric) {
    const diameter = rimDiameter(rim) + (2 * width * (aspect ?? 0.82)) / 1000;
    return aspect ? made(diameter, 0.01, 'aspect') : made(diameter, 0.015, 'metric estimate');
  }
  const low = !aspect && /\.[24679]0$/.test(width.toFixed(2));
  // Inch sizes keep the exact inch of the rim: 4.00-8 is 16 in.
  const diameter = (rim + 2 * width * (aspect ?? (low ? 0.95 : 1))) * INCH;
  return made(diameter, 0.02, low ? 'low estimate' : 'inch estimate');
}

/**
 * What the wheel is taken to roll in a turn, from the nominal diameter: 3.05 × diameter for radials, else π × diameter
 * (a loaded cross-ply rolls some per cent less: common practice; measure it).
 */
export const nominalRoll = (diameter_m: number, radial: boolean): number =>
  diameter_m * (radial ? ROLLING_RADIAL : Math.PI);
