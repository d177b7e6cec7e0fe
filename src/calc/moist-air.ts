/** Air with water in it. SI: Pa, K, kg/m³; humidity is relative, 0 to 1. */

/** Dry air, J/(kg·K). Source: ISO 2533:1975. */
const GAS = 287.05287;
/** Water vapour, J/(kg·K): 8.314463/0.018015. */
const VAPOUR = 461.523;

/**
 * Pressure of water vapour over water when the air holds all it can, −45 to 60 °C.
 * Source: Magnus form, WMO Guide to Instruments and Methods of Observation (WMO-No. 8), annex 4.B, from memory.
 * @example
 * vapourPressure(293.15) // => 2333.4 Pa
 */
export function vapourPressure(temperature_K: number): number {
  const t = temperature_K - 273.15;
  return 611.2 * Math.exp((17.62 * t) / (243.12 + t));
}

/**
 * Density of the air, and of the dry air in it, which carries the oxygen.
 * Both gases taken as ideal: 0.04 % too light at room conditions.
 * @example
 * moistAir(101325, 293.15, 0.5).density_kgpm3 // => 1.1989 kg/m³
 */
export function moistAir(pressure_Pa: number, temperature_K: number, humidity: number) {
  const water = humidity * vapourPressure(temperature_K);
  const dry_kgpm3 = (pressure_Pa - water) / (GAS * temperature_K);
  return { density_kgpm3: dry_kgpm3 + water / (VAPOUR * temperature_K), dry_kgpm3 };
}
