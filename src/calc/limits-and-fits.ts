import { IT, STEPS, UPPER } from './fit-table.ts';

export const HOLES = Object.keys(UPPER).filter((name) => /^[A-Z]/.test(name));
export const SHAFTS = Object.keys(UPPER).filter((name) => /^[a-z]/.test(name));

/**
 * Lower and upper deviation of a class at a nominal size, m; undefined outside the table (to 120 mm).
 * @example
 * limitsOf('g6', 0.025)[1] // => -7e-6 m
 */
export function limitsOf(name: string, size_m: number): readonly [number, number] | undefined {
  const step = STEPS.findIndex((most) => size_m * 1e3 <= most * (1 + 1e-12));
  const upper = UPPER[name]?.[step];
  const grade = IT[Number(name.at(-1))]?.[step];
  if (upper === undefined || grade === undefined) return undefined;
  return [(upper - grade) * 1e-6, upper * 1e-6];
}
