/** Quantities and their units, converted by the factors of unit-table.ts. */
import { type Scale, SYMBOLS, UNITS } from './unit-table.ts';

export { type Scale, UNITS };
export type Quantity = keyof typeof UNITS;
export type UnitId = { [Q in Quantity]: keyof (typeof UNITS)[Q] }[Quantity];

/**
 * The unit as printed: "mm²", "rev/min", "°"; empty for counts.
 * @example
 * unitSymbol('Nm') // => "N·m"
 */
export const unitSymbol = (unit: UnitId): string => SYMBOLS[unit] ?? unit;

/** The ids of a quantity's units, the commonest metric one first. */
export const unitsOf = (quantity: Quantity): readonly UnitId[] => Object.keys(UNITS[quantity]) as UnitId[];

/** The two ways of a unit: `x` of it in SI, or an SI figure in it. */
function convert(x: number, quantity: Quantity, unit: UnitId, toUnit?: boolean): number {
  const s = (UNITS[quantity] as Record<string, Scale>)[unit];
  if (s === undefined) throw new RangeError(`${unit} is no unit of ${quantity}`);
  const [kind, k, zero = 0] = typeof s === 'number' ? (['from', s] as const) : s;
  if (kind === 'per') return k / x;
  if (kind === 'pow') return toUnit ? Math.log(x / k) / Math.log(zero) : k * zero ** x;
  if (kind === 'tan') return toUnit ? Math.atan(x) / k : Math.tan(x * k);
  return toUnit ? (x - zero) / k : x * k + zero;
}

/**
 * A figure typed in `unit`, in SI.
 * @throws {RangeError} the quantity has no such unit
 * @example
 * toSi(0.157, 'length', 'in') // => 0.0039878 m
 */
export const toSi = (x: number, quantity: Quantity, unit: UnitId): number => convert(x, quantity, unit);

/**
 * An SI figure in `unit`, for printing.
 * @throws {RangeError} the quantity has no such unit
 * @example
 * fromSi(0.004, 'mixture', ':1') // => 250 parts of fuel to one of oil
 */
export const fromSi = (si: number, quantity: Quantity, unit: UnitId): number =>
  convert(si, quantity, unit, true);
