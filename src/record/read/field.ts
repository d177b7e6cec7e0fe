import type { DecimalMark } from '../money/decimal.ts';
import type { Place } from '../problem.ts';
import type { Report } from '../report-to.ts';
import type { FieldRule } from '../rules/written.ts';

/** What an author wrote in one cell, value or attribute, and where. */
export interface Written {
  text: string;
  place: Place;
}

/** What a kind may use while it reads one value. */
export interface Reading {
  /** Tells the problem at the value's place under the field's own rule. */
  wrong(message: string): undefined;
  /** Decimal mark in force, where it is known. */
  mark: DecimalMark | undefined;
}

/** A way to read a value: text, a day, an amount, one of a list. */
export interface Kind<T> {
  /** For the guide: "a date, such as 2026-05-02". */
  says: string;
  /** Its cells are figures: they show which decimal mark a file uses, and a formula in one is an error. */
  numeric?: true;
  /** Any words will do: only a missing value can be wrong. */
  free?: true;
  /** A name that another file defines. */
  points?: true;
  /** A list may stand in its place in YAML. */
  several?: true;
  /** The value, or undefined once its problem is told. The text is trimmed and not empty. */
  read(text: string, reading: Reading): T | undefined;
}

/** One column of a table or one key of a YAML file: everything that reader, check, types and guide need to know of it. */
export interface Field<T, Needed extends boolean = boolean> {
  heading: string;
  /** One or two sentences in the author's language. */
  help: string;
  needed: Needed;
  /** Never published. */
  hidden?: true;
  kind: Kind<T>;
}

// biome-ignore lint/suspicious/noExplicitAny: a table of fields mixes value types; Values<> recovers each one.
export type Fields = Record<string, Field<any>>;

/** The values of one row: needed ones always there, others where the author wrote them. */
export type Values<F extends Fields> = {
  [K in keyof F]: F[K] extends Field<infer T, infer N> ? (N extends true ? T : T | undefined) : never;
};

/** A row with the place of each of its cells; a cell that was left out stands at its row's place. */
export type Row<F extends Fields> = Values<F> & { place: Place; at(column: keyof F & string): Place };

export const needed = <T>(kind: Kind<T>, heading: string, help: string): Field<T, true> => ({
  heading,
  help,
  needed: true,
  kind,
});

export const optional = <T>(kind: Kind<T>, heading: string, help: string): Field<T, false> => ({
  heading,
  help,
  needed: false,
  kind,
});

export const hidden = <T>(kind: Kind<T>, heading: string, help: string): Field<T, false> => ({
  ...optional(kind, heading, help),
  hidden: true,
});

/** What belongs in a field, for a problem: how to write it where that is a matter of form, else what it means. */
export function toWrite(field: Field<unknown> | undefined): string {
  if (!field) return '';
  return field.kind.free || field.kind.points ? field.help : `Write ${field.kind.says}.`;
}

/** What readers of one file share. */
export interface FileReading {
  report: Report;
  mark: DecimalMark | undefined;
}

/** Reads one written value by its field, telling problems under the field's rule. */
export function readField<T>(
  field: Field<T>,
  rule: FieldRule,
  { text, place }: Written,
  { report, mark }: FileReading,
): T | undefined {
  return field.kind.read(text, { mark, wrong: (message) => report.add(rule, place, message) });
}

/** The same object without the keys that are undefined, so that "not written" is one state and not two. */
export function given<T extends object>(values: T): Given<T> {
  return Object.fromEntries(Object.entries(values).filter(([, value]) => value !== undefined)) as Given<T>;
}

type Given<T> = { [K in keyof T as undefined extends T[K] ? never : K]: T[K] } & {
  [K in keyof T as undefined extends T[K] ? K : never]?: Exclude<T[K], undefined>;
};
