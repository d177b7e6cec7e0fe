import type { Output, OutputField } from './contract.ts';
import { fromSi, type Quantity, type UnitId, unitSymbol } from './units.ts';

/** Narrow no-break space: parts groups of three digits; a plain no-break space parts figure and unit. */
const THIN = '\u202f';
const NBSP = '\u00a0';
const MINUS = '\u2212';
/** Stands where there is no figure. */
export const DASH = '—';

/** Decimals that show `figures` significant digits of x. */
function decimalsFor(x: number, figures: number): number {
  if (x === 0 || !Number.isFinite(x)) return 0;
  // As rounded: 9.996 to three figures is 10.0, not 10.00.
  const lead = Number(x.toExponential(figures - 1).split('e')[1]);
  return Math.min(9, Math.max(0, figures - 1 - lead));
}

/**
 * Digits with a true minus, five and more grouped by narrow spaces.
 * @example
 * digits(-12345.678, 1) // => "−12 345.7"
 */
export function digits(x: number, decimals: number): string {
  const fixed = Math.abs(x).toFixed(decimals);
  const [whole = '', part] = fixed.split('.');
  const grouped = whole.length > 4 ? whole.replace(/\B(?=(\d{3})+$)/g, THIN) : whole;
  return (x < 0 && Number(fixed) !== 0 ? MINUS : '') + grouped + (part ? `.${part}` : '');
}

/** A figure's digits with the unit as it is set beside them. */
export function withUnit(text: string, unit: UnitId): string {
  if (unit === '1 in') return `1 in ${text}`;
  const symbol = unitSymbol(unit);
  return symbol === '' || /^[°′:](?!C|F)/.test(symbol) ? text + symbol : text + NBSP + symbol;
}

/**
 * A figure in one unit. With ± the figure ends where its doubt begins: 4.01 ± 0.05 mm. An interval prints as "0 to 2.5°".
 * @param figures significant digits of a figure without ±; `decimals`, where given, fixes the places instead
 * @example
 * printFigure({ si: 0.00401, pm: 0.00005 }, 'length', 'mm', 3) // => "4.01 ± 0.05 mm"
 */
export function printFigure(
  figure: Output,
  quantity: Quantity,
  unit: UnitId,
  figures = 3,
  decimals?: number,
): string {
  const text = printNumber(figure, quantity, unit, figures, decimals);
  return text === DASH ? text : withUnit(text, unit);
}

/** The same without its unit, for a column whose heading has it. */
export function printNumber(
  figure: Output,
  quantity: Quantity,
  unit: UnitId,
  figures = 3,
  decimals?: number,
): string {
  const inUnit = (si: number) => fromSi(si, quantity, unit);
  const { si, pm = 0, interval } = figure;
  const x = inUnit(si);
  if (!Number.isFinite(x)) return DASH;
  if (interval) {
    const [low = 0, high = 0] = [inUnit(interval.low), inUnit(interval.high)].sort((a, b) => a - b);
    const places = decimalsFor(high - low, 2);
    return `${digits(low, places)} to ${digits(high, places)}`;
  }
  // The half-width by the slope there, since a unit may run the other way (miles a gallon).
  const wide = Math.abs(inUnit(si + pm / 1e3) - inUnit(si - pm / 1e3)) * 500;
  // One figure of the ±, two where it starts with 1 or 2; but no more of the whole than two beyond those declared.
  const places = Math.min(
    decimalsFor(wide, /^[12]/.test(wide.toExponential(1)) ? 2 : 1),
    decimalsFor(x, figures + 2),
  );
  const half = digits(wide, places);
  return Number(half) === 0
    ? digits(x, decimals ?? decimalsFor(x, figures))
    : `${digits(x, places)}${NBSP}±${NBSP}${half}`;
}

/**
 * Prints figures of one kind, for sentences and cells; a dash where there is none.
 * @example
 * printer('length', 'mm')(0.0034) // => "3.40 mm"
 */
export const printer =
  (quantity: Quantity, unit: UnitId, figures = 3, bare = false) =>
  (figure: Output | number | undefined): string => {
    const o = typeof figure === 'number' ? { si: figure } : figure;
    return o ? (bare ? printNumber : printFigure)(o, quantity, unit, figures) : DASH;
  };

/**
 * An answer in each of its units, the first one foremost.
 * @example
 * printOutput({ name: 'travel', label: '', quantity: 'length', units: ['mm', 'in'], figures: 3 }, { si: 0.004 })[1] // => "0.157 in"
 */
export function printOutput(field: OutputField, output: Output): readonly string[] {
  return field.units.map((unit, i) =>
    printFigure(output, field.quantity, unit, field.figures, i === 0 ? field.decimals : undefined),
  );
}
