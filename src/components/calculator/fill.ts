/**
 * What a calculator's sheet starts with: the figures written on its tag, then those of the machine's sheet, then the
 * calculator's own start values. All are texts as they would be typed.
 */
import type { Calculator } from '../../calc/contract.ts';
import { fillTexts, type Texts } from '../../calc/read-values.ts';
import { typed } from '../../record/join/calculator-sheets.ts';
import type { Machine } from '../../record/types.ts';

/**
 * Texts for every field.
 * @throws {RangeError} an attribute that is no field of the calculator, or an option that a field does not offer
 */
export function fill(
  { component, fields }: Pick<Calculator, 'component' | 'fields'>,
  attributes: Readonly<Record<string, unknown>>,
  machine: Machine,
): Texts {
  const given: Record<string, string> = {};
  for (const [name, value] of Object.entries(attributes)) {
    const field = fields.find((one) => one.name === name);
    if (!field) {
      const names = fields.map((one) => one.name).join(', ');
      throw new RangeError(`<${component}> has no figure "${name}". Write one of ${names}.`);
    }
    given[name] = String(value);
    if (field.kind === 'choice' && !field.options.some((one) => one.value === given[name])) {
      const options = field.options.map((one) => `"${one.value}"`).join(', ');
      throw new RangeError(
        `<${component} ${name}="${given[name]}"> is not offered. Write one of ${options}.`,
      );
    }
  }
  const sheet = Object.fromEntries([...machine.values.values()].map((one) => [one.path, typed(one)]));
  return fillTexts({ fields }, given, sheet).texts;
}
