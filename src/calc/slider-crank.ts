/**
 * Exact geometry of crank, rod and piston, the gudgeon pin set off the crank's axis or not.
 * Angles are crank angles before true top dead centre, in rad; heights are measured along the bore.
 * Source: cosine rule on the crank triangle; J. B. Heywood, Internal Combustion Engine Fundamentals, 1988, eq. 2.5, for a
 * central pin; offset slider-crank of any text on mechanisms.
 */
export interface SliderCrank {
  /** Half of twice the throw: crank radius. */
  radius_m: number;
  /** Centre to centre. */
  rod_m: number;
  /**
   * Gudgeon pin from the crank's axis, positive to the side that the crankpin swings to after top dead centre; the thrust
   * side is the other one.
   */
  offset_m: number;
}

/**
 * Crank angle from the bore axis at true top dead centre, in the running direction.
 * @example
 * topAngle({ radius_m: 0.027, rod_m: 0.11, offset_m: 0.0015 }) // => 0.010949 rad
 */
export const topAngle = ({ radius_m: r, rod_m: l, offset_m: e }: SliderCrank): number =>
  Math.asin(e / (l + r));

const topHeight = ({ radius_m: r, rod_m: l, offset_m: e }: SliderCrank): number =>
  Math.sqrt((l + r) ** 2 - e ** 2);

/**
 * Piston's own stroke: with a pin offset a hair more than twice the crank radius.
 * @example
 * pistonStroke({ radius_m: 0.027, rod_m: 0.11, offset_m: 0.0015 }) // => 0.05400534 m
 */
export const pistonStroke = (engine: SliderCrank): number =>
  topHeight(engine) - Math.sqrt((engine.rod_m - engine.radius_m) ** 2 - engine.offset_m ** 2);

/** Crank angle from bottom dead centre up to top dead centre; half a turn only without offset. */
export const upstroke = (engine: SliderCrank): number =>
  Math.PI + topAngle(engine) - Math.asin(engine.offset_m / (engine.rod_m - engine.radius_m));

/**
 * How far the piston stands below the top at an angle before (positive) or after (negative) top dead centre.
 * @example
 * travelAt({ radius_m: 0.08, rod_m: 0.245, offset_m: 0 }, Math.PI / 3) // => 0.05 m
 */
export function travelAt(engine: SliderCrank, before_rad: number): number {
  const { radius_m: r, rod_m: l, offset_m: e } = engine;
  const angle = topAngle(engine) - before_rad;
  return topHeight(engine) - r * Math.cos(angle) - Math.sqrt(l ** 2 - (r * Math.sin(angle) - e) ** 2);
}

/** Crank angle between the crank and the line from its axis to the gudgeon pin; 0 at the top. */
function crankFromLine({ radius_m: r, rod_m: l }: SliderCrank, line_m: number, shortOf_m: number): number {
  // Half-angle form of the cosine rule: exact near the top, where the cosine itself has lost its digits.
  const half = (shortOf_m * (l + line_m - r)) / (4 * r * line_m);
  return 2 * Math.asin(Math.sqrt(Math.min(1, Math.max(0, half))));
}

/**
 * Crank angle before top dead centre at which the piston stands so far below the top, from 0 to its stroke.
 * A travel below 0 counts as 0: a reading cannot lie above the top.
 * @example
 * angleAt({ radius_m: 0.027, rod_m: 0.11, offset_m: 0 }, 0.003) // => 0.427433 rad
 */
export function angleAt(engine: SliderCrank, travel_m: number): number {
  const { radius_m: r, rod_m: l, offset_m: e } = engine;
  const x = Math.max(0, travel_m);
  const top = topHeight(engine);
  const height = top - x;
  const line = Math.hypot(height, e);
  const shortOf = (x * (2 * top - x)) / (l + r + line);
  return topAngle(engine) - Math.atan2(e, height) + crankFromLine(engine, line, shortOf);
}

/**
 * Where the piston touched a positive stop from both sides: the turn between the two marks tells how deep the stop reaches
 * and how far true top dead centre lies from half-way.
 * @param between_rad crank angle from one mark through top dead centre to the other
 * @returns depth of the stop below the top, and the angle from half-way to true top dead centre, positive in the running
 * direction; 0 without pin offset
 * @example
 * positiveStop({ radius_m: 0.027, rod_m: 0.11, offset_m: 0 }, 0.854866).depth_m // => 0.003 m
 */
export function positiveStop(
  engine: SliderCrank,
  between_rad: number,
): { depth_m: number; shift_rad: number } {
  const { radius_m: r, rod_m: l, offset_m: e } = engine;
  const half = between_rad / 2;
  const line = r * Math.cos(half) + Math.sqrt(l ** 2 - (r * Math.sin(half)) ** 2);
  return {
    depth_m: topHeight(engine) - Math.sqrt(line ** 2 - e ** 2),
    shift_rad: topAngle(engine) - Math.asin(e / line),
  };
}
