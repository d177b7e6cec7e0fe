/** Air, resistance and pull of a vehicle on a road: SI throughout, speeds along the road. */

const GRAVITY = 9.80665;
/** Dry air, J/(kg·K), and the standard's sea level. Source: ISO 2533:1975. */
const GAS = 287.05287;
const EARTH = 6356766;
/** Density that a torque curve is taken to be measured in: sea level, 15 °C. */
export const STANDARD_DENSITY = 1.225;

/**
 * Pressure of the standard atmosphere at a geometric altitude, to 11 km. Source: ISO 2533:1975.
 * @example
 * airPressure(2000) // => 79501.4 Pa
 */
export function airPressure(altitude_m: number): number {
  const geopotential = (EARTH * altitude_m) / (EARTH + altitude_m);
  return 101325 * (1 - (0.0065 * geopotential) / 288.15) ** 5.2558797;
}

/**
 * Density of dry air at a temperature, under the standard's pressure for the altitude.
 * @example
 * airDensity(0, 303.15) // => 1.1644 kg/m³
 */
export const airDensity = (altitude_m: number, temperature_K: number): number =>
  airPressure(altitude_m) / (GAS * temperature_K);

export interface Road {
  mass_kg: number;
  /** Drag coefficient times frontal area. */
  drag_m2: number;
  rolling: number;
  /** Against the vehicle positive. */
  wind_mps: number;
  density_kgpm3: number;
}

const steep = (slope: number) => 1 / Math.hypot(1, slope);

export const rollingForce = ({ mass_kg, rolling }: Road, slope: number): number =>
  mass_kg * GRAVITY * rolling * steep(slope);

export const climbForce = ({ mass_kg }: Road, slope: number): number =>
  mass_kg * GRAVITY * slope * steep(slope);

/** What a slope takes at any speed: rolling and climbing. */
export const holdForce = (road: Road, slope: number): number =>
  rollingForce(road, slope) + climbForce(road, slope);

/** Drag of the air; a wind from behind that is faster than the vehicle pushes. */
export const dragForce = ({ drag_m2, density_kgpm3, wind_mps }: Road, speed_mps: number): number => {
  const air = speed_mps + wind_mps;
  return 0.5 * density_kgpm3 * drag_m2 * air * Math.abs(air);
};

/** The slope (tangent) that a pull left over from drag just holds; undefined where it would lift the vehicle upright. */
export function slopeHeld({ mass_kg, rolling }: Road, pull_N: number): number | undefined {
  const part = pull_N / (mass_kg * GRAVITY * Math.hypot(1, rolling));
  return part < 1 ? Math.tan(Math.asin(Math.max(-1, part)) - Math.atan(rolling)) : undefined;
}

/** Driving force of one gear at the speeds of the curve's rows, straight between them; rising speed. */
export type Pull = readonly (readonly [speed_mps: number, force_N: number])[];

export const highest = (pull: Pull): number => pull.at(-1)?.[0] ?? Number.NaN;

/** Force at a speed: below the first row the clutch slips at that row's force; beyond the last there is none. */
export function pullAt(pull: Pull, speed_mps: number): number | undefined {
  const i = pull.findIndex(([v]) => v >= speed_mps * (1 - 1e-12));
  const [a, b] = [pull[Math.max(0, i - 1)], pull[i]];
  if (!a || !b) return undefined;
  return a === b ? b[1] : a[1] + ((b[1] - a[1]) * (speed_mps - a[0])) / (b[0] - a[0]);
}

/** The stretches between rows, cut where the wind stands still against the vehicle: drag is one parabola in each. */
function stretches(pull: Pull, road: Road): { from: number; to: number; a: number; b: number; c: number }[] {
  const still = -road.wind_mps;
  const all = [];
  for (const [i, [v1, f1]] of pull.entries()) {
    const [v0, f0] = pull[i - 1] ?? [v1, f1];
    if (v1 <= v0) continue;
    const rise = (f1 - f0) / (v1 - v0);
    for (const [from, to] of still > v0 && still < v1
      ? [[v0, still] as const, [still, v1] as const]
      : [[v0, v1] as const]) {
      const k = 0.5 * road.density_kgpm3 * road.drag_m2 * ((from + to) / 2 > still ? 1 : -1);
      // Pull less drag = a v² + b v + c
      const w = road.wind_mps;
      all.push({ from, to, a: -k, b: rise - 2 * k * w, c: f0 - rise * v0 - k * w * w });
    }
  }
  return all;
}

/**
 * The highest steady speed in one gear on a slope: where pull and resistance meet, or the end of the curve.
 * @returns undefined where the gear cannot hold any speed on that slope
 */
export function steadySpeed(pull: Pull, road: Road, slope: number): number | undefined {
  const hold = holdForce(road, slope);
  for (const { from, to, a, b, c } of stretches(pull, road).reverse()) {
    const rest = (v: number) => (a * v + b) * v + c - hold;
    if (rest(to) >= 0) return to;
    const half = Math.sqrt(b * b - 4 * a * (c - hold));
    const q = -0.5 * (b + (b < 0 ? -half : half));
    const roots = [q / a, (c - hold) / q].filter((v) => v >= from && v <= to);
    if (roots.length) return Math.max(...roots);
  }
  return undefined;
}

/** The most that one gear pulls beyond drag, at whichever of its speeds. */
export const greatestPull = (pull: Pull, road: Road): number =>
  Math.max(
    ...stretches(pull, road).flatMap(({ from, to, a, b, c }) =>
      [from, to, Math.min(to, Math.max(from, -b / (2 * a) || from))].map((v) => (a * v + b) * v + c),
    ),
  );

/** The speed above which the higher gear pulls more: where the two forces cross, else the end of the lower gear. */
export function changeSpeed(low: Pull, high: Pull): number {
  const end = highest(low);
  const knots = [...low, ...high].map(([v]) => v).filter((v) => v >= (high[0]?.[0] ?? end) && v <= end);
  const gain = (v: number) => (pullAt(high, v) ?? 0) - (pullAt(low, v) ?? 0);
  let from: number | undefined;
  for (const v of knots.sort((a, b) => a - b)) {
    const now = gain(v);
    if (now >= 0) {
      if (from === undefined) return v;
      const before = gain(from);
      return from + ((v - from) * before) / (before - now);
    }
    from = v;
  }
  return end;
}
