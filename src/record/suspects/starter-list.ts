/** What a starter list of suspects holds. Its page, the open-a-fault command and its tests all read it from here. */

/** Where a suspect belongs, in the order in which the lists and their pages group them. */
export const GROUPS = [
  'fuel',
  'air',
  'spark',
  'compression',
  'timing',
  'cooling',
  'clutch',
  'driveline',
  'brakes',
  'steering',
  'wheels',
  'frame',
] as const;
export type SuspectGroup = (typeof GROUPS)[number];

export interface StarterSuspect {
  /** Kebab-case; written as the suspect's id in the fault's file. */
  id: string;
  name: string;
  group: SuspectGroup;
  /** The first and cheapest check that rules it in or out, in one or two sentences. */
  check: string;
  /** Hazards of that check, by id of the catalogue; empty where a look is enough. */
  hazards: readonly string[];
}

export interface StarterList {
  /** Kebab-case: the list's address, and its name for the command. */
  id: string;
  /** "Will not start" */
  title: string;
  /** The symptom in a driver's words; a first wording for the fault's own. */
  symptom: string;
  /** Where the fault most often belongs; the author writes another where it does not. */
  system: string;
  /** What narrows the search most, before any single check. */
  first: string;
  /** In the order of GROUPS. */
  suspects: readonly StarterSuspect[];
}

/** Printed with every list. */
export const MARK = 'Common practice of the trade, no source.';

/** The lists of one file: suspects as rows of group, id, name, check and hazards. */
type SuspectRow = readonly [
  group: SuspectGroup,
  id: string,
  name: string,
  check: string,
  ...hazards: readonly string[],
];

export const list = (head: Omit<StarterList, 'suspects'>, rows: readonly SuspectRow[]): StarterList => ({
  ...head,
  suspects: rows.map(([group, id, name, check, ...hazards]) => ({ group, id, name, check, hazards })),
});
