import type { Field } from '../../calc/contract.ts';
import { stands, type Texts } from '../../calc/read-values.ts';

/** Texts that describe a set-up: those that stand, and the emptied ones that the log would fill again. */
export function setUp(fields: readonly Field[], texts: Texts, logs: Texts): Texts {
  const said = fields.filter(
    (field) =>
      stands(field, texts) && (texts[field.name] || logs[field.name]) && texts[field.name] !== undefined,
  );
  return Object.fromEntries(said.map(({ name }) => [name, texts[name] ?? '']));
}
