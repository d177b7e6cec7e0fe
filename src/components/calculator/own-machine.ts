/**
 * A reader's own machine: figures as typed, by their place in a machine's sheet ("engine.stroke"). It is data from outside
 * (the browser's store, a file that somebody sent), so it is read with limits and only ever shown as text.
 */
export type OwnMachine = Readonly<Record<string, string>>;

/** A kept file is at most this long, in characters. */
export const MAX_FILE = 32_768;
const MAX_FIGURES = 100;
const MAX_TEXT = 400;
const PATH = /^[a-z][a-z0-9_]*(\.[a-z0-9_]+){1,3}$/;

/** What could be read of a kept or imported file, and how many of its figures could not. */
export interface OwnMachineRead {
  machine: OwnMachine;
  leftOut: number;
}

const printable = (text: string) =>
  text !== '' && text.length <= MAX_TEXT && ![...text].some((one) => one < ' ' && one !== '\n');

/**
 * Reads a kept machine; undefined when it is no such thing at all. Figures with an unusable place or text, and those
 * beyond the hundredth, are left out and counted.
 */
export function readOwnMachine(json: string): OwnMachineRead | undefined {
  if (json.length > MAX_FILE) return undefined;
  let file: unknown;
  try {
    file = JSON.parse(json);
  } catch {
    return undefined;
  }
  const figures = (file as { figures?: unknown } | null)?.figures;
  if (typeof figures !== 'object' || figures === null || Array.isArray(figures)) return undefined;
  const machine: Record<string, string> = {};
  let kept = 0;
  const entries = Object.entries(figures);
  for (const [path, text] of entries) {
    if (kept === MAX_FIGURES || !PATH.test(path) || typeof text !== 'string' || !printable(text)) continue;
    machine[path] = text;
    kept += 1;
  }
  return { machine, leftOut: entries.length - kept };
}

/** The file that the reader exports and the browser keeps: figures in order of their place, so that two files compare. */
export function writeOwnMachine(machine: OwnMachine): string {
  const figures = Object.fromEntries(Object.entries(machine).sort(([a], [b]) => (a < b ? -1 : 1)));
  return JSON.stringify({ kind: 'own machine', figures }, null, 1);
}
