import type { Calculator } from './contract.ts';
import * as index from './index.ts';

/** Every calculator of the index, for pages, MDX components and tests. */
export const calculators: readonly Calculator[] = Object.values(index);

/** A calculator by id ("timing") or by its component's name ("Timing"). */
export function calculator(name: string): Calculator | undefined {
  return calculators.find((c) => c.id === name || c.component === name);
}
