/**
 * What a calculator declares and what it answers. Its page, MDX component, form, chart, working, print card and table of
 * published checks all follow from these types; nothing about a single calculator is written anywhere else.
 * Everything inside is SI (m, rad, m³, rad/s, N, kg, K, s, Pa …); units exist only at the edges: units.ts has the
 * factors, parse-figure.ts reads one figure, read-values.ts a whole form, print-figure.ts prints, answer.ts says what was found.
 *
 * A calculator's file `src/calc/<id>.ts` exports its declaration (a `Calculator`, for the server) and its `solve`, which
 * works out figures and is all that a browser loads of it. Labels, sources and published checks stay on the server; fields
 * and whatever is said with the figures (says.ts) travel in the page. A new one is that file and one line of contents.ts.
 */
import type { Answer } from './answer.ts';
import type { Curve } from './chart.ts';
import type { Figures } from './holes.ts';
import type { Says } from './says.ts';
import type { Point } from './svg.ts';
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

/** A symbol and its figure. */
export interface Sign {
  k: 'v';
  /** "r", "α"; one or few letters. */
  text: string;
  sub?: string;
  /** SI, for working the tree out again; not a number where `of` names the figure. */
  si: number;
  /** Which figure it is, in a formula that is declared before there are figures. */
  of?: string;
  /** As printed where figures are put in, unit and all; or the hole for it. */
  figure: string;
}

/** A formula as a small tree (see formula.ts, which reads it, and working.ts, which sets it as MathML). */
export type Term =
  | Sign
  | { k: 'n'; si: number; of?: string; figure: string }
  | { k: 'op'; op: Op; args: readonly Term[] };

export type Op = '+' | '-' | '*' | '/' | '^' | 'sqrt' | 'sin' | 'cos' | 'tan' | 'asin' | 'acos' | 'atan';

/** One answer. Where `interval` stands, print it instead of the ±. */
export interface Output extends Figure {
  interval?: Interval;
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
  /** From `solve` itself each message is a name of the declared sentences, with holes for `figures`. */
  errors: readonly InputError[];
  figures?: Figures;
  outputs?: undefined;
}

/** Axes from and to, and what is drawn; a curve or mark that brings no label has the declared one, filled with its figures. */
export interface FoundChart {
  x: { min?: number; max: number };
  y: { min?: number; max: number };
  curves: readonly (Curve & Readonly<Record<string, unknown>>)[];
  marks?: readonly ({ at: Point; label?: string } & Readonly<Record<string, unknown>>)[];
}

/** Places and words for a drawing's parts, and the figures of each row of a table or drawing. */
export interface FoundRows {
  at?: Figures;
  /** A row with a number fills "{top_#}" with the figure of that number. */
  rows?: readonly Figures[];
}

/**
 * What `solve` gives: figures, and nothing that is said with them. What the reader put in, the outputs and `figures` fill the
 * holes of the declared texts, the later before the earlier.
 */
export interface Found {
  ok: true;
  outputs: Readonly<Record<string, Output | undefined>>;
  figures?: Figures;
  /** Tables and drawings by their names; those that it has nothing for are left out. */
  shown?: Readonly<Record<string, FoundChart | FoundRows | undefined>>;
  /** Members of the declared lists. */
  lists?: Readonly<Record<string, readonly Figures[] | undefined>>;
}

export type Solve = (values: Values) => Found | Refusal;

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
  says: Says;
  /** `solve` of the calculator's file, and the same said in plain words; both from `told` of declare.ts. */
  finds: Solve;
  solve: (values: Values) => Answer | Refusal;
}

/** What a form needs to read figures and print answers, without the words: travels in the page as JSON. */
export interface FormFacts {
  id: string;
  fields: readonly Field[];
  outputs: readonly OutputField[];
}
