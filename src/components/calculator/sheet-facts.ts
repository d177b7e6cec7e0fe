import type { Field } from '../../calc/contract.ts';
import { bareFields, type Texts } from '../../calc/read-values.ts';

/** What travels in the page beside the drawn sheet. */
export interface SheetFacts {
  /** Without their words. */
  fields: readonly Field[];
  /** The log's own figures, as the sheet was drawn with. */
  texts: Texts;
  /** Path of the calculator's own page. */
  page: string;
  /** Whether this is that page: only there does the sheet read and write the address. */
  own: boolean;
  /** The sheet's name on its page: the calculator's title, numbered from the second of its kind on. */
  name: string;
}

export function sheetFacts(
  fields: readonly Field[],
  texts: Texts,
  page: string,
  own: boolean,
  name: string,
): SheetFacts {
  return { fields: bareFields(fields), texts, page, own, name };
}
