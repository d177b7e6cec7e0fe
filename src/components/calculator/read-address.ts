/** Reads a set-up from an address, as write-address.ts writes it. */
import type { Field } from '../../calc/contract.ts';
import type { Texts } from '../../calc/read-values.ts';

const MAX_TEXT = 2_000;

const unpacked = (field: Field, text: string) => {
  if (field.kind === 'table') return text.replace(/;/g, '\n').replace(/~/g, ' ± ');
  return field.kind === 'figure' ? text.replace(/~/g, ' ± ') : text;
};

/** Texts found in an address, and the names in it that this calculator does not know or whose text cannot be a figure. */
export interface AddressRead {
  texts: Texts;
  unknown: readonly string[];
}

/** Reads any query; never throws, and takes nothing that is not a field of this calculator. */
export function readAddress(fields: readonly Field[], query: string): AddressRead {
  const texts: Record<string, string> = {};
  const unknown: string[] = [];
  for (const [name, text] of new URLSearchParams(query)) {
    const field = fields.find((one) => one.name === name);
    const option = field?.kind !== 'choice' || field.options.some((one) => one.value === text);
    if (field && option && text.length <= MAX_TEXT && !(name in texts)) texts[name] = unpacked(field, text);
    else unknown.push(name.slice(0, 40));
  }
  return { texts, unknown };
}
