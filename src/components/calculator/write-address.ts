/**
 * A set-up in the address: `?stroke=58+mm~0.05&rod=115+mm`. Texts stand as they were typed, so that the address says what
 * the form said. "~" stands for ± and ";" for the next line, which addresses would otherwise spell as %C2%B1 and %0A.
 */
import type { Field } from '../../calc/contract.ts';
import type { Texts } from '../../calc/read-values.ts';

/** Only these characters of a query are kept apart from letters and digits; all of them may stand in one unescaped. */
const readable = (text: string) =>
  encodeURIComponent(text)
    .replace(/%20/g, '+')
    .replace(/%(3A|2C|3B|2F)/g, decodeURIComponent);

const packed = (field: Field, text: string) => {
  const trimmed = text.trim().replace(/[ \t]+/g, ' ');
  if (field.kind === 'table') return trimmed.replace(/ ?\n ?/g, ';').replace(/ ?± ?/g, '~');
  return field.kind === 'figure' ? trimmed.replace(/ ?± ?/g, '~') : trimmed;
};

/** The query that holds `texts`, without "?", fields in the calculator's own order. */
export function writeAddress(fields: readonly Field[], texts: Texts): string {
  return fields
    .flatMap((field) => {
      const text = texts[field.name];
      return text === undefined ? [] : [`${field.name}=${readable(packed(field, text))}`];
    })
    .join('&');
}
