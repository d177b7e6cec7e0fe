/**
 * What a calculator declares and what it answers. Its page, MDX component, form, chart, working, print card and table of
 * published checks all follow from these types; nothing about a single calculator is written anywhere else.
 * Everything inside is SI (m, rad, m³, rad/s, N, kg, K, s, Pa …); units exist only at the edges: units.ts has the
 * factors, parse-figure.ts reads one figure, read-values.ts a whole form, print-figure.ts prints, working.ts sets formulas.
 *
 * A calculator's file `src/calc/<id>.ts` exports its declaration (a `Calculator`, for the server) and its `solve` (all that
 * a browser loads: labels, sources and published checks stay on the server; the facts that a form needs to read figures
 * travel in the page as `formFacts(calculator)`). A new one is that file and one line of contents.ts.
 */
import type { Quantity, UnitId } from './units.ts';

/** A figure in SI. `pm` is its half-width (±) at the same level of trust for every figure of a solve. */
export interface Figure {
  si: number;
  pm?: number;
}

/** A figure's doubt where ± would mislead: near top dead centre 0.02 ± 0.02 mm is 0 to 2.5°. SI. */
export interface Interval {
  low: number;
  high: number;
}

/** What a form field holds once read: a figure, a chosen option, free text (a tyre marking), or rows of figures. */
export type Value = Figure | string | readonly (readonly Figure[])[];
export type Values = Readonly<Record<string, Value | undefined>>;

interface FieldBase {
  /** Key in `Values`, in the address and in MDX attributes; lower camel case. */
  name: string;
  /** As the form shows it: "Rod length, centre to centre". */
  label: string;
  /** One sentence under the field; says from where to where a length is measured, which side is positive. */
  help?: string;
  /** Heading under which the form groups the field; fields of one group stand together. */
  group?: string;
  /** Left empty, the part of the answer that needs it is left out. */
  optional?: boolean;
  /**
   * Shown and read only while another choice field has one of these options. Given without that choice (an MDX attribute,
   * an address), the field itself makes the choice: `travel="4 mm"` means that the travel is what is known.
   */
  when?: { field: string; is: readonly string[] };
}

export interface FigureField extends FieldBase {
  kind: 'figure';
  quantity: Quantity;
  /** All units offered; the field starts in the first, which a bare figure is read in. */
  units: readonly UnitId[];
  /** Start value as it would be typed ("115 mm"); absent for optional fields. */
  start?: string;
  /** Where machine.yaml keeps it: "engine.stroke". */
  machine?: string;
  /** Accepted range in SI, ends included; outside it the reader is told in plain words, with the likely slip of unit named. */
  min?: number;
  max?: number;
  /** Whether the form offers a ± beside it. */
  takesPm?: boolean;
  /** Whole numbers only (teeth, cylinders). */
  whole?: boolean;
}

export interface ChoiceField extends FieldBase {
  kind: 'choice';
  options: readonly { value: string; label: string }[];
  start: string;
  machine?: string;
}

export interface TextField extends FieldBase {
  kind: 'text';
  start?: string;
  machine?: string;
  /** Sample shown as help, never as a value. */
  sample?: string;
}

export interface TableColumn {
  name: string;
  label: string;
  quantity: Quantity;
  /** The first is the one that a bare figure is read in. */
  units: readonly UnitId[];
  min?: number;
  max?: number;
}

/**
 * Rows of figures: an advance curve, gear ratios, a torque curve. Written one row a line, or parted by semicolons:
 * "1000 rpm 12 deg; 3000 24". A table of one column may stand on one line: "3.9 2.1 1.0".
 */
export interface TableField extends FieldBase {
  kind: 'table';
  columns: readonly TableColumn[];
  /** As it would be typed. */
  start?: string;
  machine?: string;
  maxRows: number;
}

export type Field = FigureField | ChoiceField | TextField | TableField;

export interface OutputField {
  name: string;
  label: string;
  quantity: Quantity;
  /** Unit printed first, then the others beside it. */
  units: readonly UnitId[];
  /** Significant figures of the value as printed when it carries no ±. */
  figures: number;
  /** Fixed decimals instead, where the trade reads it so (0.01 mm on a dial). */
  decimals?: number;
  help?: string;
}

/**
 * One line of working, shown as formula, figures put in, result. One tree gives both: a symbol knows its figure, so that
 * the two cannot differ, and tests work the tree out again. Print it with `workingMathml` or `workingText` (working.ts).
 */
export interface WorkingLine {
  /** "Rod angle from the bore axis" */
  says: string;
  /** What is worked out, with its figure: the left side and the result. */
  is: Sign;
  formula: Term;
}

/** A symbol and its figure. */
export interface Sign {
  k: 'v';
  /** "r", "α"; one or few letters. */
  text: string;
  sub?: string;
  /** SI, for working the tree out again. */
  si: number;
  /** As printed where figures are put in, unit and all. */
  figure: string;
}

/** A formula as a small tree (see working.ts), printed as MathML on server and in browser by one code. */
export type Term = Sign | { k: 'n'; si: number; figure: string } | { k: 'op'; op: Op; args: readonly Term[] };

export type Op = '+' | '-' | '*' | '/' | '^' | 'sqrt' | 'sin' | 'cos' | 'tan' | 'asin' | 'acos' | 'atan';

/** A table among the answers: one row a gear, one row a cylinder. Cells are printed text with their unit in the heading. */
export interface AnswerTable {
  name: string;
  caption: string;
  columns: readonly { label: string; numeric: boolean }[];
  rows: readonly (readonly string[])[];
}

/** One answer. Where `interval` stands, print it instead of the ±. */
export interface Output extends Figure {
  interval?: Interval;
}

export interface Answer {
  ok: true;
  /** By the names of the declared outputs; those that the given fields cannot answer are absent. */
  outputs: Readonly<Record<string, Output | undefined>>;
  working: readonly WorkingLine[];
  tables: readonly AnswerTable[];
  /** Plain sentences that belong beside the result: how closely it must be set, what it leaves out. */
  notes: readonly string[];
  /** The diagram or chart as SVG text with presentation attributes only (the site's policy forbids inline style). */
  drawings: readonly Drawing[];
}

export interface Drawing {
  name: string;
  /** What it shows, also for those who cannot see it. */
  title: string;
  desc: string;
  svg: string;
}

export interface InputError {
  field: string;
  /** Plain words: "The rod must be longer than half the stroke." */
  message: string;
}

export interface Refusal {
  ok: false;
  errors: readonly InputError[];
}

export type Solve = (values: Values) => Answer | Refusal;

/** How a published value came to us. `found` was read in the source; `derived` is exact arithmetic from it or a definition. */
export type Mark = 'found' | 'derived' | 'memory' | 'common practice';

/** One row of "checked against": the calculator's page prints these and the tests run the very same rows. */
export interface PublishedCheck {
  id: string;
  says: string;
  /** Fields as a reader would type them; fields left out are empty, not at their start values. */
  given: Readonly<Record<string, string>>;
  output: string;
  /** In `unit`; the test converts, the page prints. */
  expected: number;
  unit: UnitId;
  tolerance: number;
  /** Title, edition, place; "exact arithmetic" and "common practice" are said so. */
  source: string;
  mark: Mark;
}

export interface Calculator {
  id: string;
  /** MDX component's name: "Timing". */
  component: string;
  title: string;
  /** What it answers, in one sentence, as the trade asks it. */
  answers: string;
  fields: readonly Field[];
  outputs: readonly OutputField[];
  /** Signs and directions of the diagram: "Offset positive towards the thrust side, seen from the drive end." */
  conventions: readonly string[];
  /** Sentences of caution of this calculator; hazards carry the catalogue's notes. */
  cautions: readonly string[];
  /** Ids of the hazard catalogue. */
  hazards: readonly string[];
  sources: readonly string[];
  /** At least five; the calculator's page prints them and the tests run them. */
  checks: readonly PublishedCheck[];
  solve: Solve;
}

/** What a form needs to read figures and print answers, without the words: travels in the page as JSON. */
export interface FormFacts {
  id: string;
  fields: readonly Field[];
  outputs: readonly OutputField[];
}
