/**
 * A reader's browser loads the arithmetic; the sentences it may have to say, and the units it may be asked for, travel in
 * the page that uses them. While the browser's scripts are built, every longer text in them becomes `_said[n]`, and the page
 * gets just the texts that its scripts still hold. Nothing is written differently for it in a calculator, and in dev
 * everything stays where it is.
 */
import type { Quantity, Scale } from '../../calc/units.ts';
import { SPELLINGS, SYMBOLS, UNITS } from '../../calc/units.ts';

/** What a page carries for the scripts of one calculator. */
export interface PageWords {
  /** By number, as the scripts ask for them. */
  said: Record<number, string>;
  units: Partial<Record<Quantity, Record<string, Scale>>>;
  /** Of those units, as printed where that is not the id. */
  symbols: Record<string, string>;
  /** Other ways to write them. */
  spellings: Record<string, string>;
}

interface Spoken {
  said: Record<number, string>;
  /** Names of quantities that stand in the scripts themselves. */
  quantities: readonly string[];
  /** The script that solves, as a path from the site's root. */
  script: string;
}

const SPOKEN = Symbol.for('oilway.spoken');
type Keeper = { [SPOKEN]?: Map<string, Spoken> };

/** Hands on what the scripts of a calculator say, from the build of the scripts to the drawing of the pages. */
export function keepSpoken(calculator: string, spoken: Spoken): void {
  const keeper = globalThis as Keeper;
  keeper[SPOKEN] ??= new Map();
  keeper[SPOKEN].set(calculator, spoken);
}

/** Texts and units for a page with this calculator; undefined in dev, where the scripts hold them. */
export function pageWords(calculator: string, quantities: readonly Quantity[]): PageWords | undefined {
  const spoken = (globalThis as Keeper)[SPOKEN]?.get(calculator);
  if (!spoken) return undefined;
  const wanted = new Set<string>([...quantities, ...spoken.quantities]);
  const units = Object.fromEntries(Object.entries(UNITS).filter(([quantity]) => wanted.has(quantity)));
  const ids = new Set(Object.values(units).flatMap((one) => Object.keys(one)));
  const symbols = Object.fromEntries(Object.entries(SYMBOLS).filter(([unit]) => ids.has(unit)));
  // "usgal" has the spellings of "gal".
  const squashed = new Set([...ids].map((id) => id.toLowerCase().replace(/^(us|imp) |[\s.·*]/g, '')));
  const spellings = Object.fromEntries(Object.entries(SPELLINGS).filter(([, id]) => squashed.has(id)));
  return { said: spoken.said, units, symbols, spellings };
}

/** Path of the script that a calculator's sheet solves with, from the site's root; undefined in dev. */
export function solveScript(calculator: string): `/${string}` | undefined {
  const script = (globalThis as Keeper)[SPOKEN]?.get(calculator)?.script;
  return script === undefined ? undefined : `/${script}`;
}
