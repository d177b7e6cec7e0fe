/**
 * A reader's own machine: figures as typed, by their place in a machine's sheet ("engine.stroke"). It is data from outside
 * (the browser's store, a file that somebody sent), so it is read with limits and only ever shown as text.
 */
export type OwnMachine = Readonly<Record<string, string>>;

/** A kept file is at most this long, in characters. */
export const MAX_FILE = 32_768;
const MAX_FIGURES = 100;
const PATH = /^[a-z][a-z0-9_]*(\.[a-z0-9_]+){1,3}$/;
const TEXT = /^[\n\P{Cc}]{1,400}$/u;

/** What could be read of a kept or imported file, and how many of its figures could not. */
export interface OwnMachineRead {
  machine: OwnMachine;
  leftOut: number;
}

/**
 * Reads a kept machine; undefined when it is no such thing at all. Figures with an unusable place or text, and those
 * beyond the hundredth, are left out and counted.
 */
export function readOwnMachine(json: string): OwnMachineRead | undefined {
  if (json.length > MAX_FILE) return undefined;
  try {
    const all = Object.entries<unknown>(JSON.parse(json).figures);
    const read = all.filter(
      (one): one is [string, string] => PATH.test(one[0]) && typeof one[1] === 'string' && TEXT.test(one[1]),
    );
    const kept = read.slice(0, MAX_FIGURES);
    return { machine: Object.fromEntries(kept), leftOut: all.length - kept.length };
  } catch {
    return undefined;
  }
}

/** The file that the reader exports and the browser keeps: figures in order of their place, so that two files compare. */
export function writeOwnMachine(machine: OwnMachine): string {
  const figures = Object.fromEntries(Object.entries(machine).sort());
  return JSON.stringify({ kind: 'own machine', figures }, null, 1);
}
