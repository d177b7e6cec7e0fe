import { type UnitId, unitSymbol } from '../calc/units.ts';
import type { Quantity } from '../record/types.ts';

/** Units written close to their figure. */
const CLOSE = new Set(['°', '′', ':1', '%']);

/**
 * A quantity as the author wrote it, digit for digit, with its unit's symbol and, where known, its ±.
 * @example quantityWords({ text: '58', unit: 'mm', pm: '0.05' }) // "58 ± 0.05 mm"
 */
export function quantityWords({ text, unit, pm }: Quantity): string {
  const symbol = unit === '' ? '' : unitSymbol(unit as UnitId);
  const figure = pm === undefined ? text : `${text} ± ${pm}`;
  if (symbol === '') return figure;
  return CLOSE.has(symbol) && pm === undefined ? `${figure}${symbol}` : `${figure}\u00a0${symbol}`;
}
