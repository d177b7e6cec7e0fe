/**
 * mm², then the largest resistance permitted at 20 °C in Ω/km: solid or coarse strands, fine strands.
 * Source: IEC 60228.
 */
export const SIZES: readonly (readonly [mm2: number, coarse: number, fine: number])[] = [
  [0.5, 36, 39],
  [0.75, 24.5, 26],
  [1, 18.1, 19.5],
  [1.5, 12.1, 13.3],
  [2.5, 7.41, 7.98],
  [4, 4.61, 4.95],
  [6, 3.08, 3.3],
  [10, 1.83, 1.91],
  [16, 1.15, 1.21],
  [25, 0.727, 0.78],
  [35, 0.524, 0.554],
];
