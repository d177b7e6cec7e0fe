import type { FigureField } from '../../calc/contract.ts';
import { withUnit } from '../../calc/print-figure.ts';
import { type UnitId, unitSymbol } from '../../calc/units.ts';

/** A figure's text as its boxes hold it: "58 mm ± 0.05 mm" is 58, 0.05, mm. */
export interface Parts {
  number: string;
  pm: string;
  /** Chosen in the box of units. */
  unit: UnitId | undefined;
}

/** Digits, signs and marks: a figure that says nothing of its unit. */
const BARE = /^[\d\s.,'’+−–/-]+$/;

/** Between a figure and its doubt: ±, +/- or +-. */
const PM = /\s*(?:±|\+\s*\/?\s*[-−])\s*/;

function unitOf(text: string, units: readonly UnitId[]): { number: string; unit?: UnitId } {
  const lower = text.toLowerCase();
  for (const unit of units) {
    if (unit === '1 in' && lower.startsWith(unit)) return { number: text.slice(4).trim(), unit };
    for (const written of [unit, unitSymbol(unit)]) {
      const number = text.slice(0, -written.length).trim();
      if (written !== '' && lower.endsWith(written.toLowerCase()) && BARE.test(number))
        return { number, unit };
    }
  }
  return { number: text };
}

/**
 * Parts a text over its boxes. What does not part cleanly (a unit that is not offered, two units) stays whole in the first
 * box, where the reading of figures understands it or says what is wrong. `chosen` is the unit of a text without one.
 */
export function partsOfText(field: FigureField, text: string, chosen = field.units[0]): Parts {
  const [left = '', right = '', more] = text.trim().split(PM);
  const value = unitOf(left, field.units);
  const pm = unitOf(right, field.units);
  const unit = value.unit ?? pm.unit ?? chosen;
  const apart = more === undefined && (pm.unit ?? unit) === unit;
  return apart ? { number: value.number, pm: pm.number, unit } : { number: text.trim(), pm: '', unit };
}

/** The text that the boxes say together; the unit is added where the figure brings none and several are offered. */
export function textOfParts({ units }: FigureField, { number, pm, unit = '' as UnitId }: Parts): string {
  const value = number.trim();
  // A ± typed into the figure's own box counts before that of the other box.
  const half = PM.test(value) ? '' : pm.trim();
  const bare = BARE.test(value) && units.length > 1 && (unitSymbol(unit) !== '' || unit !== units[0]);
  const before = bare && unit === '1 in' ? `${unit} ` : '';
  const after = !bare || before ? '' : unit === ':1' ? unit : ` ${unit}`;
  // "58 ± 0.05 mm", and with a ± in a unit of its own "120 kg ± 5 %".
  if (half === '' || !BARE.test(half)) return `${before}${value}${after}${half && ` ± ${half}`}`;
  return `${before}${value} ± ${half}${after}`;
}

/** A figure for reading: "58 ± 0.05 mm", "24°"; what is no plain figure stands as it was typed. */
export function figureInWords(field: FigureField, text: string): string {
  const { number, pm, unit } = partsOfText(field, text);
  if (!unit || !BARE.test(number)) return text;
  return withUnit(pm === '' ? number : `${number} ± ${pm}`, unit);
}
