/**
 * The joined record: what pages, components and commands are handed. Dates are days, money is whole minor units, every
 * cross-reference has been followed. Private things (private notes, unnamed supporters' names, notes) are not in `Series`
 * as published: see publish.ts.
 */
import type { Place } from './problem.ts';

/** A calendar day as "2026-05-02"; sorts as text. Read and checked in day.ts only. */
export type Day = string;

/** Whole minor units of an ISO 4217 currency; never a float. */
export interface Money {
  minor: bigint;
  currency: string;
}

export type Severity = 'do not drive' | 'drive with care' | 'nuisance';
export type FaultEventKind = 'found' | 'tried' | 'put off' | 'worse' | 'better' | 'cured' | 'came back';
export type LedgerKind = 'part' | 'consumable' | 'tool' | 'outside work' | 'freight' | 'duty' | 'fee' | 'refund' | 'sale';
export type PartStatus = 'wanted' | 'ordered' | 'arrived' | 'fitted' | 'returned';
export type PartOrigin = 'bought' | 'own stock' | 'donor' | 'made' | 'given';
export type ShareBasis = 'value' | 'weight' | 'customs value' | 'even';

/** A value with its unit as the author wrote it, kept digit for digit so that print never invents precision. */
export interface Quantity {
  /** As written: "58", "0.35". */
  text: string;
  unit: string;
  /** As written after ±, in the same unit. */
  pm?: string;
}

export interface MachineValue {
  /** Path without "machine.": "engine.stroke". */
  path: string;
  label: string;
  asBuilt?: Quantity;
  altered?: Quantity;
  /** The value in force: as altered, else as built. Text values ("4.00-8") have `text` only. */
  now?: Quantity;
  text?: string;
  source?: string;
  note?: string;
  place: Place;
}

export interface Machine {
  name: string;
  maker?: string;
  year?: string;
  summary?: string;
  /** Sections in the author's order, each with its values. */
  sections: { id: string; title: string; values: MachineValue[] }[];
  /** By path. */
  values: Map<string, MachineValue>;
}

export interface Step {
  /** Slug of the title, or the author's `id`; the link stays when numbers move. */
  id: string;
  title: string;
  /** 4 in "3.4". */
  number: number;
  tools: string[];
  torque?: string;
  hazards: string[];
  /** Set by `helper`: what the second person does. */
  helper?: string;
  expect?: string;
  otherwise?: string;
  /** Parts taken off, loosened, drained or disconnected, and lines closed, by refit line id. */
  opens: string[];
  closes: string[];
  /** Seconds into the chapter's recording. */
  at?: number;
  place: Place;
}

export interface PhotoUse {
  src: string;
  /** Absolute path of the original; never published. */
  path: string;
  alt: string;
  caption: string;
  credit: string;
  /** 2 in "Figure 3.2"; photos and drawn figures are numbered together. */
  number: number;
  width: number;
  height: number;
  place: Place;
}

/** A drawn diagram or a titled table of a chapter, found again by its id. */
export interface Numbered {
  id: string;
  title: string;
  number: number;
  place: Place;
}

export interface Chapter {
  /** Folder name: "03-the-mark". */
  id: string;
  /** Without the number: "the-mark"; the page's address. */
  slug: string;
  /** From the folder's number; order is by number. */
  number: number;
  title: string;
  date: Day;
  summary: string;
  held: boolean;
  /** Absolute path of chapter.mdx. */
  path: string;
  file: string;
  steps: Step[];
  photos: PhotoUse[];
  figures: Numbered[];
  tables: Numbered[];
  /** Hazard ids of the whole chapter, worst first. */
  hazards: string[];
  /** Calculators used, by id. */
  calculators: string[];
  /** Results of <Sum>, keyed by `${of}|${to}`. */
  sums: Map<string, SumResult>;
  /** Words of prose, for reading time and the summary. */
  words: number;
  /** Paid supporters concerned, for the disclosure above the first paragraph. */
  paidBy: Supporter[];
  firstStart: boolean;
  firstDrive: boolean;
}

export interface SumResult {
  /** Printed result with unit in the author's `to`, and the reader's other unit beside it where there is one. */
  text: string;
  also?: string;
  /** The formula as MathML with the figures put in. */
  mathml: string;
}

export interface LedgerLine {
  date: Day;
  kind: LedgerKind;
  item: string;
  part?: string;
  order?: string;
  supplier?: string;
  qty: number;
  /** As paid, in the row's currency; positive. */
  amount: Money;
  /** In home money at the day's rate; negative for refunds and sales. */
  home: Money;
  /** The rate used, as printed, and where it came from. */
  rate?: { text: string; date: Day; source: string };
  weight_kg?: number;
  chapter?: string;
  place: Place;
}

export interface Order {
  id: string;
  date: Day;
  supplier: string;
  freightBy: ShareBasis;
  dutyBy: ShareBasis;
  feeBy: ShareBasis;
  note?: string;
  lines: LedgerLine[];
  place: Place;
}

export interface Part {
  id: string;
  name: string;
  system: string;
  makerNumber?: string;
  qty: number;
  status: PartStatus;
  origin: PartOrigin;
  fittedIn?: string;
  estimate?: { low: Money; high: Money };
  note?: string;
  lines: LedgerLine[];
  place: Place;
}

export interface FaultEvent {
  chapter: string;
  date: Day;
  what: FaultEventKind;
  text: string;
  /** From this event on. */
  severity?: Severity;
  rulesOut: string[];
  rulesIn: string[];
  review?: Day;
  place: Place;
}

export interface Suspect {
  id: string;
  name: string;
  /** The author's own slip: the step it happened in. */
  step?: { chapter: string; step: string };
}

export interface Fault {
  id: string;
  title: string;
  system: string;
  symptom: string;
  suspects: Suspect[];
  events: FaultEvent[];
  /** Story as sanitised HTML. */
  story: string;
  place: Place;
}

/** A fault as it stood at one moment. */
export interface FaultState {
  fault: Fault;
  open: boolean;
  severity: Severity;
  since: Day;
  /** How often it had been cured before. */
  lives: number;
  putOff?: { reason: string; review?: Day };
}

export interface Supporter {
  name: string;
  credit: string;
  kind: 'help' | 'gift' | 'loan' | 'paid';
  what: string;
  from?: Day;
  until?: Day;
  chapters: string[];
  consent: boolean;
  link?: string;
}

export interface Series {
  title: string;
  summary: string;
  byline: string;
  /** BCP 47: "en-GB". */
  language: string;
  homeCurrency: string;
  budget?: Money;
  unitsFirst: 'metric' | 'imperial';
  licence?: string;
  publishLedger: 'lines' | 'totals' | 'nothing';
  /** Today, for every age and overdue: no output reads the clock. */
  asOf: Day;
  machine: Machine;
  /** In order of number. As read: held ones included. As published: without them. */
  chapters: Chapter[];
  orders: Order[];
  parts: Part[];
  ledger: LedgerLine[];
  faults: Fault[];
  supporters: Supporter[];
}
