/**
 * A set-up in the address: `?stroke=58+mm~0.05&rod=115+mm`. Texts stand as they were typed, so that the address says what
 * the form said. "~" stands for ± and ";" for the next line, which addresses would otherwise spell as %C2%B1 and %0A.
 */
import type { Field } from '../../calc/contract.ts';
import { stands, type Texts } from '../../calc/read-values.ts';

function packed(kind: Field['kind'], text: string): string {
  const plain = text.trim().replace(/[ \t]+/g, ' ');
  if (kind === 'text') return plain;
  const line = kind === 'table' ? plain.replace(/ ?\n ?/g, ';') : plain;
  return line.replace(/ ?± ?/g, '~');
}

/**
 * The query without "?", fields in the calculator's own order: those that stand, and the emptied ones that the log's texts
 * would fill again.
 */
export function writeAddress(fields: readonly Field[], texts: Texts, logs: Texts = {}): string {
  const said = fields.flatMap((field) => {
    const { kind, name } = field;
    const text = texts[name];
    return text === undefined || !stands(field, texts) || !(text || logs[name])
      ? []
      : [[name, packed(kind, text)]];
  });
  // Only these characters of a query may stand in one unescaped, besides letters and digits.
  return String(new URLSearchParams(said)).replace(/%(3A|2C|3B|2F|7E)/g, decodeURIComponent);
}
