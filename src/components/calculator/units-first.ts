import type { OutputField } from '../../calc/contract.ts';
import type { UnitId } from '../../calc/units.ts';

/** Units of the imperial and US systems; all others are metric or of no system. */
const IMPERIAL = /(^|[ /])(in|thou|ft|yd|mi|mph|lb|lbf|oz|st|cwt|hp|psi|inHg|US|imp|degF)($|[ \d/])/;
const isImperial = (unit: UnitId) => unit !== '1 in' && IMPERIAL.test(unit);

/** Outputs with the series' own units foremost, in the order in which the calculator names them. */
export function unitsFirst(
  outputs: readonly OutputField[],
  first: 'metric' | 'imperial',
): readonly OutputField[] {
  if (first === 'metric') return outputs;
  return outputs.map((field) => {
    const units = [...field.units].sort((a, b) => Number(isImperial(b)) - Number(isImperial(a)));
    if (units[0] === field.units[0]) return field;
    // Decimals are fixed for the first unit that the calculator names.
    const { decimals: _decimals, ...rest } = field;
    return { ...rest, units };
  });
}
