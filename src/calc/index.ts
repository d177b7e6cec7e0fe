import * as contents from './contents.ts';
import type { Calculator } from './contract.ts';

/**
 * Every calculator of contents.ts with all its words, for pages, MDX components and tests. A browser loads no more than
 * the `solve` that each calculator's file exports, so that labels, sources and checks stay on the server.
 */
export const calculators: readonly Calculator[] = Object.values(contents);

/** A calculator by id ("timing") or by its component's name ("Timing"). */
export function calculator(name: string): Calculator | undefined {
  return calculators.find((c) => c.id === name || c.component === name);
}
