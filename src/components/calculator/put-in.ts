import type { Field } from '../../calc/contract.ts';
import { figureInWords } from './parts-of-text.ts';

/** What was put into a field, as the sheet's lines and its print show it. */
export function putInText(field: Field, text: string): string {
  if (field.kind === 'figure') return figureInWords(field, text);
  if (field.kind === 'choice') return field.options.find((one) => one.value === text)?.label ?? text;
  return boxText(field, text);
}

/** A text as its box holds it: a table's rows one a line. */
export function boxText(field: Field, text: string): string {
  return field.kind === 'table' ? text.replace(/\s*;\s*/g, '\n') : text;
}
