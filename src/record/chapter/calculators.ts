import { calculators } from '../../calc/index.ts';

/** Calculators as a chapter names them, by component: their ids, and their fields, which are their attributes. */
export interface CalculatorComponent {
  id: string;
  fields: readonly string[];
}

export const CALCULATOR_COMPONENTS: ReadonlyMap<string, CalculatorComponent> = new Map(
  calculators.map(({ component, id, fields }) => [
    component,
    { id, fields: fields.map((field) => field.name) },
  ]),
);
