import type { Refusal, Values } from './contract.ts';
import type { Figures } from './holes.ts';

/** A field's figure in SI; an empty one is `otherwise`, and without that not a number, as is all that follows from it. */
export type Reader = (name: string, otherwise?: number) => number;

export function reader(values: Values): Reader {
  return (name, otherwise = Number.NaN) => {
    const value = values[name];
    return typeof value === 'object' && 'si' in value ? value.si : otherwise;
  };
}

/** The choice or text of a field. */
export function textOf(values: Values, name: string): string | undefined {
  const value = values[name];
  return typeof value === 'string' ? value : undefined;
}

/** The rows of a table field as plain SI figures. */
export function rowsOf(values: Values, name: string): number[][] {
  const value = values[name];
  if (typeof value !== 'object' || 'si' in value) return [];
  return value.map((row) => row.map((f) => f.si));
}

/** By the first column. */
export const byFirst = (a: readonly number[], b: readonly number[]): number => (a[0] ?? 0) - (b[0] ?? 0);

/** Names of sentences by field; fields without one drop out. `figures` fill the sentences. */
export function refusal<Wrong extends string>(
  wrong: Readonly<Record<string, Wrong | false | undefined>>,
  figures: Figures = {},
): Refusal | undefined {
  const errors = Object.entries(wrong).flatMap(([field, message]) => (message ? [{ field, message }] : []));
  return errors.length ? { ok: false, errors, figures } : undefined;
}
