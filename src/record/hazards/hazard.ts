/**
 * What an entry of the catalogue holds. The note, the hazards page, the kit list and the gate all read it; nothing about a
 * single hazard is written anywhere else.
 */
import type { KitId } from './kit.ts';
import type { SymbolId } from './symbols.ts';

/**
 * DANGER: death or serious injury will follow if it is not avoided, in the most extreme cases only. WARNING: could follow.
 * CAUTION: minor or moderate injury. NOTICE: damage only, never injury, and without the alert symbol.
 * Source: ANSI Z535.4-2007, 4.14.1 to 4.14.4 (memory); ISO 3864-2 has the first three by level of risk (memory).
 */
export const SIGNALS = ['DANGER', 'WARNING', 'CAUTION', 'NOTICE'] as const;
export type Signal = (typeof SIGNALS)[number];

/** How far a source was read: in it or a reproduction, recalled, or a habit of the trade without a publication. */
export type SourceMark = 'found' | 'memory' | 'common practice';

export interface HazardSource {
  title: string;
  publisher: string;
  edition?: string;
  locator?: string;
  address?: string;
  mark: SourceMark;
}

/** A published limit or effect, shown with the body that set it. */
export interface PublishedFigure {
  what: string;
  figure: string;
  body: string;
  mark: SourceMark;
}

export interface Hazard {
  /** Kebab-case, permanent: authors write it in `hazards`. */
  id: string;
  signal: Signal;
  title: string;
  /** The picture in front of the title. */
  symbol: SymbolId;
  /** What can happen, in one or two sentences; starts with the harm. */
  harm: string;
  /** How to avoid it, the strongest first. A precaution shared by several hazards is one constant of shared.ts. */
  avoid: readonly string[];
  /** Protective kit; empty where none helps. */
  wear: readonly KitId[];
  ifItHappens: readonly string[];
  /** When to stop and call a licensed person. */
  callLicensed: string;
  /** What comes before this note: the maker's data, local rules, licensed practice. Ends the sentence "First come …". */
  defersTo: string;
  sources: readonly HazardSource[];
  /** Published limits and effects, the most careful first. */
  figures?: readonly PublishedFigure[];
  /** Hazards whose note covers this one: where the words point to one of them, this one is not called as well. */
  coveredBy?: readonly string[];
  /** Words and figures that point to it, in the small language of words.ts. */
  words: readonly string[];
}

/** 0 is worst. */
export const rank = (signal: Signal): number => SIGNALS.indexOf(signal);
