/** What the build of the scripts has for the pages: which script solves for a calculator, and the tables that it looks into. */
interface Carried {
  /** The script that solves, as a path from the site's root. */
  script: string;
  /** By the name of their file. */
  tables: Readonly<Record<string, object>>;
}

const CARRIED = Symbol.for('oilway.carried');
type Keeper = { [CARRIED]?: Map<string, Carried> };

/** Hands on what the scripts of a calculator need, from the build of the scripts to the drawing of the pages. */
export function keepCarried(calculator: string, carried: Carried): void {
  const keeper = globalThis as Keeper;
  keeper[CARRIED] ??= new Map();
  keeper[CARRIED].set(calculator, carried);
}

const carriedFor = (calculator: string) => (globalThis as Keeper)[CARRIED]?.get(calculator);

/** Tables for a page with these calculators that are not on it yet; undefined in dev, where the scripts hold them. */
export function pageTables(calculator: string, present: Set<string>): Record<string, object> | undefined {
  const carried = carriedFor(calculator);
  if (!carried) return undefined;
  const missing = Object.entries(carried.tables).filter(([name]) => !present.has(name));
  for (const [name] of missing) present.add(name);
  return Object.fromEntries(missing);
}

/** Path of the script that a calculator's sheet solves with, from the site's root; undefined in dev. */
export function solveScript(calculator: string): `/${string}` | undefined {
  const script = carriedFor(calculator)?.script;
  return script === undefined ? undefined : `/${script}`;
}
