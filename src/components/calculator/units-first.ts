/** A series may show the units of the imperial and US systems first: in answers, and in the boxes of a form. */
import type { Field, OutputField } from '../../calc/contract.ts';
import { partsOfText } from '../../calc/parse-figure.ts';
import type { Texts } from '../../calc/read-values.ts';
import type { UnitId } from '../../calc/units.ts';
import { textOfParts } from './parts-of-text.ts';

type System = 'metric' | 'imperial';

/** Units of the imperial and US systems; all others are metric or of no system. */
const IMPERIAL = /(^|[ /])(in|thou|ft|yd|mi|mph|lb|lbf|oz|st|cwt|hp|psi|inHg|US|imp|degF)($|[ \d/])/;
const isImperial = (unit: UnitId) => unit !== '1 in' && IMPERIAL.test(unit);

const sorted = (units: readonly UnitId[]): readonly UnitId[] =>
  [...units].sort((a, b) => Number(isImperial(b)) - Number(isImperial(a)));

/** Outputs with the series' own units foremost, in the order in which the calculator names them. */
export function unitsFirst(outputs: readonly OutputField[], first: System): readonly OutputField[] {
  if (first === 'metric') return outputs;
  return outputs.map((field) => {
    const units = sorted(field.units);
    if (units[0] === field.units[0]) return field;
    // Decimals are fixed for the first unit that the calculator names.
    const { decimals: _decimals, ...rest } = field;
    return { ...rest, units };
  });
}

/**
 * Fields that offer the series' own units first, and start with one where they are empty. Rows of figures stay as the
 * calculator declares them: their text has no box for a unit.
 */
export const fieldsFirst = (fields: readonly Field[], first: System): readonly Field[] =>
  first === 'metric'
    ? fields
    : fields.map((field) => (field.kind === 'figure' ? { ...field, units: sorted(field.units) } : field));

/** What a log says without a unit is in the one that the calculator names first, whichever is offered first. */
export const withOwnUnits = (fields: readonly Field[], texts: Texts): Texts =>
  Object.fromEntries(
    Object.entries(texts).map(([name, text]) => {
      const field = fields.find((one) => one.name === name);
      if (field?.kind !== 'figure' || text === '') return [name, text];
      return [name, textOfParts(field, partsOfText(field, text))];
    }),
  );
