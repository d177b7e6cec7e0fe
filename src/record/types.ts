/**
 * The joined record: what pages, components and commands are handed. Dates are days, money is whole minor units, every
 * cross-reference has been followed. Private things (private notes, unnamed supporters' names, notes) are not in `Series`
 * as published: see publish.ts.
 */
import type { Mask, PictureMark } from './chapter/picture-marks.ts';
import type { Place } from './problem.ts';
import type { Recording } from './recording-file.ts';
import type { RoadTest } from './road-tests/road-test.ts';
import type { Cue } from './transcript.ts';

/** A calendar day as "2026-05-02"; sorts as text. Read and checked in day.ts only. */
export type Day = string;

/** Whole minor units of an ISO 4217 currency; never a float. */
export interface Money {
  minor: bigint;
  currency: string;
}

export type Severity = 'do not drive' | 'drive with care' | 'nuisance';
export type FaultEventKind = 'found' | 'tried' | 'put off' | 'worse' | 'better' | 'cured' | 'came back';
export type LedgerKind =
  | 'part'
  | 'consumable'
  | 'tool'
  | 'outside work'
  | 'freight'
  | 'duty'
  | 'fee'
  | 'refund'
  | 'sale';
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
  /** A text value as built, where an alteration replaced it or nothing did. */
  asBuiltText?: string;
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

/** A run of plain prose (a paragraph, a title, an attribute) and where it starts: what the gates and the search read. */
export interface Passage {
  text: string;
  place: Place;
}

export interface Step {
  /** Slug of the title, or the author's `id`; the link stays when numbers move. */
  id: string;
  title: string;
  /** 4 in "3.4". */
  number: number;
  tools: string[];
  torque?: string;
  /** Hazards named by the author, by id of the catalogue. */
  hazards: string[];
  /** Hazards that the step's words point to and that the author rules out, each with the reason. */
  notHazard: Map<string, string>;
  /** Set by `helper`: what the second person does. */
  helper?: string;
  expect?: string;
  otherwise?: string;
  /** Parts taken off, loosened, drained or disconnected, and lines closed, by refit line id. */
  opens: string[];
  closes: string[];
  /** Seconds into the chapter's recording. */
  at?: number;
  /** The step's words, paragraph by paragraph: title, body, expect, otherwise, torque. */
  prose: Passage[];
  place: Place;
}

export interface PhotoUse {
  src: string;
  /** Absolute path of the original; never published. */
  path: string;
  alt: string;
  caption: string;
  credit: string;
  /** Burnt out of every published size. */
  masks: Mask[];
  /** Drawn over it, numbered in this order. */
  marks: PictureMark[];
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
  /** Set on figures that show a picture file; figures drawn by a calculator have `of` instead. */
  src?: string;
  /** Absolute path of the picture file. */
  path?: string;
  alt?: string;
  /** Calculator whose diagram is drawn. */
  of?: string;
  place: Place;
}

/** A quantity as `<Qty of>` prints it: the author's figure first, the reader's other unit beside it. */
export interface QuantityText {
  /** "3.4 mm", with a no-break space before the unit; ± where known. */
  text: string;
  /** "0.134 in". */
  also?: string;
}

/** A link from a chapter to something else, kept so that the other side can show "mentioned in". */
export interface Mention {
  /** Id of the part or fault; "chapter-id" or "chapter-id/step-id" for an earlier step. */
  to: string;
  /** Number of the step it stands in; absent outside steps. */
  step?: number;
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
  /** Hazard ids of the whole chapter (its steps' and its <Safety>'s), in the catalogue's order, which is worst first. */
  hazards: string[];
  /** Parts, faults and earlier steps that the chapter links to. */
  parts: Mention[];
  faultLinks: Mention[];
  earlier: Mention[];
  /** Calculators used, by id. */
  calculators: string[];
  /** What its calculators start from, by the chapter's figures or the machine's: "timing.advance = 24 deg". */
  settings: string[];
  /** Results of <Sum>, keyed by `${of}|${to}`. */
  sums: Map<string, SumResult>;
  /** Results of <Qty>, keyed by `of`. */
  quantities: Map<string, QuantityText>;
  /** Prose outside steps, paragraph by paragraph. */
  prose: Passage[];
  /** Hours worked, as written. */
  hours?: number;
  /** Absolute path of captions.vtt, where there is one. */
  captions?: string;
  /** What its captions say. */
  cues: Cue[];
  recording?: Recording;
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
  /** Never published. */
  privateNote?: string;
  place: Place;
}

/** One published rate: 1 base = rate quote, in the direction that the source publishes. */
export interface RateRow {
  date: Day;
  base: string;
  quote: string;
  /** As written, with a decimal point. */
  rate: string;
  source: string;
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
  /** Ids of faults and refit lines that wait for it. */
  neededFor?: string[];
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
  /** What the next move waits for; for the author's bench list, never published. */
  waitsFor?: string;
  place: Place;
}

export interface Suspect {
  id: string;
  name: string;
  /** The author's own slip: the step it happened in. */
  step?: { chapter: string; step: string };
  place: Place;
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

/** Something taken off, loosened, drained or parted, from the step or row that opened it to the one that closed it. */
export interface RefitLine {
  id: string;
  /** What was removed: "Front brake drum". The line's id in words where only a step names it. */
  what: string;
  action: 'removed' | 'loosened' | 'drained' | 'disconnected';
  /** For the check-list by system; absent where the author gave none. */
  system?: string;
  opened: { chapter: string; step?: string };
  closed?: { chapter: string; step?: string };
  how?: 'refitted' | 'renewed' | 'filled' | 'left off';
  /** Why it was left off, or why it may stay open at a first start. */
  why?: string;
  place: Place;
}

/** A published figure or instruction that was wrong. */
export interface Correction {
  date: Day;
  chapter: string;
  step?: string;
  was: string;
  now: string;
  why: string;
  canHurt: boolean;
  place: Place;
}

export interface Measurement {
  date: Day;
  chapter: string;
  item: string;
  position?: string;
  /** Figures as written, all in `unit`. */
  found: string;
  foundPm?: string;
  asNew?: string;
  min?: string;
  max?: string;
  limitPm?: string;
  left?: string;
  unit: string;
  source?: string;
  note?: string;
  place: Place;
}

/** Something to do again after the refit: by distance, hours or days. */
export interface DueItem {
  what: string;
  after: {
    amount: number;
    per: 'distance' | 'hours' | 'days';
    text: string /** Metres, seconds or days. */;
    size: number;
  };
  /** Chapter from which it counts. */
  since: string;
  doneIn?: string;
  source?: string;
  place: Place;
}

export interface OdometerReading {
  date: Day;
  chapter: string;
  reading: string;
  unit: 'km' | 'mi' | 'h';
  place: Place;
}

/** What the series sets out to reach, before and after. */
export interface Aim {
  what: string;
  before: string;
  after?: string;
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
  place: Place;
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
  /** As published: how many supporters are not named. 0 as read. */
  unnamedSupporters: number;
  rates: RateRow[];
  refit: RefitLine[];
  corrections: Correction[];
  measurements: Measurement[];
  due: DueItem[];
  odometer: OdometerReading[];
  aims: Aim[];
  /** The rebuild is finished. */
  finished: boolean;
  /** Runs of road tests, fitted; cut to what may be shown, without places. */
  roadTests: RoadTest[];
  /** Address of the published site, where the author gave one: "https://example.org/van/". */
  address?: string;
  /** Whether figures in content/ are written with a decimal comma or point. */
  decimal: 'comma' | 'point';
  /** Absolute path of the content folder; never published. */
  folder: string;
  /** Set where only what readers may see is left (publish.ts): pages for the author alone are not made from it. */
  published?: true;
}
