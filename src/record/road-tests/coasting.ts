/** A vehicle that rolls with its engine uncoupled: what slows it, and its speed after a time. SI throughout. */
export const GRAVITY_mps2 = 9.80665;

export interface Coasting {
  /** Mass that weighs on the tyres. */
  mass_kg: number;
  /** What wheels and shafts add to the mass that is slowed down. */
  rotating_kg: number;
  drag_m2: number;
  rolling: number;
  density_kgpm3: number;
  /** Against the vehicle positive. */
  wind_mps: number;
  /** Rise over run, uphill positive; small. */
  slope: number;
}

/**
 * Force that slows a coasting vehicle: rolling, slope and air. The air's part is a parabola in speed through the air, which
 * holds while the vehicle is faster than a wind from behind.
 * Source: F = m g (f + s) + ρ A (v + w)² / 2, T. D. Gillespie, Fundamentals of Vehicle Dynamics, ch. 4, for small slopes.
 * @example
 * resistance({mass_kg: 650, rotating_kg: 0, drag_m2: 0.7, rolling: 0.015, density_kgpm3: 1.225, wind_mps: 0, slope: 0}, 80 / 3.6) // => 307.34 N
 */
export function resistance(one: Coasting, speed_mps: number): number {
  const air = speed_mps + one.wind_mps;
  return (
    one.mass_kg * GRAVITY_mps2 * (one.rolling + one.slope) + 0.5 * one.density_kgpm3 * one.drag_m2 * air ** 2
  );
}

/**
 * Speed after a time of coasting from `start_mps`, solved in closed form: with air speed x, dx/dt = −(a + b x²).
 */
export function speedAfter(one: Coasting, start_mps: number, time_s: number): number {
  const moved = one.mass_kg + one.rotating_kg;
  const a = (one.mass_kg * GRAVITY_mps2 * (one.rolling + one.slope)) / moved;
  const b = (0.5 * one.density_kgpm3 * one.drag_m2) / moved;
  const x = start_mps + one.wind_mps;
  return airSpeedAfter(a, b, x, time_s) - one.wind_mps;
}

function airSpeedAfter(a: number, b: number, x: number, t: number): number {
  const product = a * b;
  if (Math.abs(product) < 1e-12) return (x - a * t) / (1 + b * x * t);
  const q = Math.sqrt(Math.abs(a / b));
  const angle = Math.sqrt(Math.abs(product)) * t;
  if (product > 0) {
    const tan = Math.tan(angle);
    return (q * (x - q * tan)) / (q + x * tan);
  }
  // Rolling down a slope that is steeper than its rolling resistance: towards a steady speed.
  const tanh = Math.tanh(angle);
  return a < 0 ? (q * (x + q * tanh)) / (q + x * tanh) : (q * (x - q * tanh)) / (q - x * tanh);
}
