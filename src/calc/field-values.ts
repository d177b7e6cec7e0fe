import type { Figure, Refusal, Values } from './contract.ts';

/** The figure of a field, in SI; undefined where it is empty. */
export function figureOf(values: Values, name: string): number | undefined {
  const value = values[name];
  return typeof value === 'object' && 'si' in value ? value.si : undefined;
}

/** The choice or text of a field. */
export function textOf(values: Values, name: string): string | undefined {
  const value = values[name];
  return typeof value === 'string' ? value : undefined;
}

/** The rows of a table field as plain SI figures. */
export function rowsOf(values: Values, name: string): number[][] {
  const value = values[name];
  return typeof value === 'object' && !('si' in value)
    ? value.map((row) => row.map((f: Figure) => f.si))
    : [];
}

/** Sentences by field; fields without one drop out. */
export function refusal(wrong: Readonly<Record<string, string | false | undefined>>): Refusal | undefined {
  const errors = Object.entries(wrong).flatMap(([field, message]) => (message ? [{ field, message }] : []));
  return errors.length ? { ok: false, errors } : undefined;
}
