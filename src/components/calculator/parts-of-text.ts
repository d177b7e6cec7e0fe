/** A figure's boxes joined to one text, as the address, the kept machine and print have it. */
import { type Parts, partsOfText } from '../../calc/parse-figure.ts';
import { withUnit } from '../../calc/print-figure.ts';
import { type Quantity, type UnitId, unitSymbol } from '../../calc/units.ts';

/** Digits, signs and marks: a figure that says nothing of its unit. */
const BARE = /^[\d\s.,'’+−–/-]+$/;

/** Between a figure and its doubt: ±, +/- or +-. */
const PM = /±|\+\s*\/?\s*[-−]/;

/** The text that the boxes say together; the unit is added where the figure brings none and several are offered. */
export function textOfParts(
  { units }: { units: readonly UnitId[] },
  { number, pm, unit = '' as UnitId }: Parts,
): string {
  const value = number.trim();
  // A ± typed into the figure's own box counts before that of the other box.
  const half = PM.test(value) || !pm.trim() ? '' : ` ± ${pm.trim()}`;
  const bare = BARE.test(value) && units.length > 1 && (unitSymbol(unit) || unit !== units[0]);
  if (!bare) return value + half;
  if (unit === '1 in') return `1 in ${value}${half}`;
  const after = unit === ':1' ? unit : ` ${unit}`;
  // "58 ± 0.05 mm", and with a ± in a unit of its own "120 kg ± 5 %".
  return !half || BARE.test(pm) ? value + half + after : value + after + half;
}

/** A figure for reading: "58 ± 0.05 mm", "24°"; what is no plain figure stands as it was typed. */
export function figureInWords(field: { quantity: Quantity; units: readonly UnitId[] }, text: string): string {
  const { number, pm, unit } = partsOfText(field, text);
  return unit && BARE.test(number) ? withUnit(pm ? `${number} ± ${pm}` : number, unit) : text;
}
