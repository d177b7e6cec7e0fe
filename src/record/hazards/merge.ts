/** Several hazards of one step as one block: worst first, and what they share said once. */
import { hazard } from './catalogue.ts';
import { type Hazard, rank, type Signal } from './hazard.ts';
import { type KitId, kitOf } from './kit.ts';

export interface Block {
  /** The worst of the hazards' signal words: the block stands under it. */
  signal: Signal;
  /** Worst first; within one signal word in the author's order. */
  hazards: readonly Hazard[];
  /** Precautions of all, each once, those against the worst first. */
  avoid: readonly string[];
  wear: readonly KitId[];
  ifItHappens: readonly string[];
  callLicensed: readonly string[];
  /** What comes before the note, each once. */
  defersTo: readonly string[];
}

/** The block of these hazards; undefined where the catalogue knows none of them. Unknown ids are the check's business. */
export function mergeHazards(ids: readonly string[], extra: readonly string[] = []): Block | undefined {
  const entries = [...new Set(ids)].map(hazard).filter((entry) => entry !== undefined);
  entries.sort((a, b) => rank(a.signal) - rank(b.signal));
  const worst = entries[0];
  if (worst === undefined) return undefined;
  return {
    signal: worst.signal,
    hazards: entries,
    avoid: once([...entries.flatMap((entry) => entry.avoid), ...extra]),
    wear: kitOf(entries.map((entry) => entry.wear)),
    ifItHappens: once(entries.flatMap((entry) => entry.ifItHappens)),
    callLicensed: once(entries.map((entry) => entry.callLicensed)),
    defersTo: once(entries.map((entry) => entry.defersTo)),
  };
}

const once = (lines: readonly string[]): string[] => [...new Set(lines)];

/** "Danger", as it is spoken and as it stands in a line of text. */
export const signalInText = (signal: Signal): string => signal.charAt(0) + signal.slice(1).toLowerCase();
