import type { FormFacts } from '../../calc/contract.ts';
import type { Quantity } from '../../calc/units.ts';

/** Every quantity that a calculator's form reads or its answer prints. */
export function quantitiesOf({ fields, outputs }: FormFacts): Quantity[] {
  const all = fields.flatMap((field) => {
    if (field.kind === 'figure') return [field.quantity];
    return field.kind === 'table' ? field.columns.map((column) => column.quantity) : [];
  });
  return [...new Set([...all, ...outputs.map((one) => one.quantity)])];
}
