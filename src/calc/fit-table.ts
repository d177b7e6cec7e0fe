/**
 * Limits of the usual fits by table, in micrometres: a formula differs from the table by up to a micrometre.
 * Source: ISO 286-2:2010; shafts and H holes read in excerpts of JIS B 0401 (1999), which has the same figures; J, K, M, N
 * and P holes partly read there, partly from memory.
 */

/** Sizes up to and including, mm; each row of the table is one step. */
export const STEPS: readonly number[] = [3, 6, 10, 18, 30, 50, 80, 120];

/** For each step the upper deviation; the lower is that less the grade of tolerance. */
export const IT: Readonly<Record<number, readonly number[]>> = {
  6: [6, 8, 9, 11, 13, 16, 19, 22],
  7: [10, 12, 15, 18, 21, 25, 30, 35],
  8: [14, 18, 22, 27, 33, 39, 46, 54],
};

export const UPPER: Readonly<Record<string, readonly number[]>> = {
  f7: [-6, -10, -13, -16, -20, -25, -30, -36],
  g6: [-2, -4, -5, -6, -7, -9, -10, -12],
  h6: [0, 0, 0, 0, 0, 0, 0, 0],
  h7: [0, 0, 0, 0, 0, 0, 0, 0],
  js6: [3, 4, 4.5, 5.5, 6.5, 8, 9.5, 11],
  k6: [6, 9, 10, 12, 15, 18, 21, 25],
  m6: [8, 12, 15, 18, 21, 25, 30, 35],
  n6: [10, 16, 19, 23, 28, 33, 39, 45],
  p6: [12, 20, 24, 29, 35, 42, 51, 59],
  H6: [6, 8, 9, 11, 13, 16, 19, 22],
  H7: [10, 12, 15, 18, 21, 25, 30, 35],
  H8: [14, 18, 22, 27, 33, 39, 46, 54],
  J7: [4, 6, 8, 10, 12, 14, 18, 22],
  K7: [0, 3, 5, 6, 6, 7, 9, 10],
  M7: [-2, 0, 0, 0, 0, 0, 0, 0],
  N7: [-4, -4, -4, -5, -7, -8, -9, -10],
  P7: [-6, -8, -9, -11, -14, -17, -21, -24],
};
