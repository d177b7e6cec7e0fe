/**
 * Tyre sizes as marked on the side wall. The marking gives a nominal diameter; what a wheel rolls in a turn is less, and
 * a measured one is better than both.
 */
export interface Tyre {
  /** Overall diameter of the new, unloaded tyre. */
  diameter_m: number;
  /** How far that may be off. */
  pm_m: number;
  /** Where the diameter comes from, for the reader. */
  rule: string;
  radial: boolean;
}

/**
 * Nominal rolling circumference of a radial tyre for its overall diameter; 2.9 % less than round its outside.
 * Source: tyre industry guideline (ETRTO Standards Manual, general notes), from memory.
 */
export const ROLLING_RADIAL = 3.05;

/**
 * Overall diameters in mm where the rule is known to be off. Source: UN Regulation No. 30, 02 series, Annex 5, from memory,
 * ± 3 mm.
 */
const TABLE = `sizes of UN Regulation No. 30: 125R13 536, 135R13 548, 145R13 566, 155R13 578, 165R13 596, 145R10 492,
145R12 542, 145R15 616, 5.20-10 508, 5.20-13 582, 5.60-13 600`;

/**
 * Rim diameter for a code, in whole millimetres as UN Regulation No. 30 prints it (13 is 330).
 * @example
 * rimDiameter(13) // => 0.33 m
 */
export const rimDiameter = (code: number): number => Math.round(code * 25.4) / 1000;

const SAMPLES = '155/80 R 13, 145 R 10, 4.00-8 or 3.25 x 19';

/**
 * The tyre that a marking names, or what is wrong with the marking.
 * Metric with an aspect ratio: rim + 2 × aspect × width (UN Regulation No. 30, 6.1.2; No. 75 for motorcycles).
 * Metric without one: tabled, else 82 % of the width. Inch: tabled, else twice the width on the rim; the low series of the
 * 1950s, whose widths end in .20, .40, .60, .70 and .90, 95 % of that. Old sizes such as 26 x 3: the first is the diameter.
 * The rules without a table are common practice and estimates.
 * @example
 * tyreOf('155/80 R 13').diameter_m // => 0.578 m
 */
export function tyreOf(marking: string): Tyre | string {
  const text = marking.toUpperCase().replace(/,/g, '.').replace(/\s+/g, ' ').trim();
  if (/^[A-Z]{2} ?\d\d/.test(text))
    return `Sizes in letters are not worked out here. Look up the metric size of “${marking.trim()}” and write that, such as 130/90-16.`;
  const m =
    /^P?(\d+(?:\.\d+)?)(?: ?\/ ?(\d+))? ?(?:(ZR|R|B|-|X|–) ?)(\d+(?:\.\d+)?)(?: ?(?:C|M\/C|TT|TL|\d?PR|\d+ ?PR|\d{2,3}[A-Z]))*$/.exec(
      text,
    );
  const width = Number(m?.[1]);
  const aspect = m?.[2] === undefined ? undefined : Number(m[2]) / 100;
  const sort = m?.[3] ?? '';
  const last = Number(m?.[4]);
  if (!m || !(width > 0 && last > 0))
    return `“${marking.trim()}” is no tyre size known here. Write it as on the side wall, such as ${SAMPLES}.`;
  const radial = sort.endsWith('R');
  const millimetres = width >= 50;
  if (sort === 'X' && !millimetres && width >= 12 && last < 6)
    return made(width * 0.0254, 0.02, 'the overall diameter that an old size begins with', false);
  if (last < 4 || last > 24 || width > 400 || (!millimetres && width > 12))
    return `“${marking.trim()}” does not look right: after the width comes the rim, 4 to 24 inches, as in ${SAMPLES}.`;
  if (aspect !== undefined && (aspect < 0.2 || aspect > 1.1))
    return `The figure behind the stroke is the height in per cent of the width, 20 to 110, as in 155/80 R 13.`;
  const rim = rimDiameter(last);
  const key = millimetres ? `${width}R${last}` : `${width.toFixed(2)}-${last}`;
  const tabled =
    aspect === undefined && (radial || !millimetres) && Number(TABLE.split(` ${key} `)[1]?.slice(0, 3));
  if (tabled)
    return made(tabled / 1000, 0.003 / (tabled / 1000), 'UN Regulation No. 30, Annex 5, from memory', radial);
  if (millimetres) {
    const height = (width / 1000) * (aspect ?? 0.82);
    const rule =
      aspect === undefined ? 'rim + 2 × 82 % of the width, an estimate' : 'rim + 2 × height of the side wall';
    return made(rim + 2 * height, aspect === undefined ? 0.015 : 0.01, rule, radial);
  }
  const low = /\.[24679]0$/.test(width.toFixed(2)) && aspect === undefined;
  const height = width * 0.0254 * (aspect ?? (low ? 0.95 : 1));
  // Inch sizes keep the exact inch of the rim: 4.00-8 is 16 in.
  return made(
    last * 0.0254 + 2 * height,
    0.02,
    `rim + 2 × ${low ? '95 % of the ' : ''}width in inches, an estimate`,
    radial,
  );
}

function made(diameter_m: number, share: number, rule: string, radial: boolean): Tyre {
  return { diameter_m, pm_m: diameter_m * share, rule, radial };
}

/**
 * What the wheel is taken to roll in a turn, from the nominal diameter: 3.05 × diameter for radials, else π × diameter
 * (a loaded cross-ply rolls some per cent less: common practice; measure it).
 */
export const nominalRoll = (diameter_m: number, radial: boolean): number =>
  diameter_m * (radial ? ROLLING_RADIAL : Math.PI);
