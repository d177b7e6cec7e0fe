/** Calculators as a chapter names them: component, id, and the names of its fields where they are known. */
export interface CalculatorComponent {
  id: string;
  fields?: readonly string[];
}

export const CALCULATOR_COMPONENTS: ReadonlyMap<string, CalculatorComponent> = new Map([
  ['Timing', { id: 'timing' }],
  ['Premix', { id: 'premix' }],
  ['Gearing', { id: 'gearing' }],
  ['Hills', { id: 'hills' }],
]);
