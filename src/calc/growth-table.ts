/** Millionths a kelvin, with what alloys of the name differ by; 20 to 150 °C. Handbook figures, from memory. */
export const GROWTH: Readonly<Record<string, readonly [number, number]>> = {
  steel: [11.7, 0.6],
  iron: [10.5, 0.6],
  aluminium: [22.5, 1.5],
  piston: [20, 1.5],
  brass: [19, 1],
  bronze: [18, 0.7],
  magnesium: [26, 1],
};
