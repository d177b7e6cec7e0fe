/** The fields of a sheet with their boxes. */
import type { Field } from '../../calc/contract.ts';
import { partsOfText } from '../../calc/parse-figure.ts';
import type { UnitId } from '../../calc/units.ts';
import { textOfParts } from './parts-of-text.ts';
import { boxText } from './put-in.ts';

export type Box = HTMLInputElement;

export interface Line {
  field: Field;
  line: HTMLElement;
  number: Box;
  pm: Box | null;
  unit: Box | null;
}

export const linesOf = (sheet: HTMLElement, fields: readonly Field[]): Line[] =>
  fields.map((field) => {
    const line = sheet.querySelector(`[data-field="${field.name}"]`) as HTMLElement;
    const box = (name: string) => line.querySelector<Box>(`[data-box="${name}"]`);
    return { field, line, number: box('number') as Box, pm: box('pm'), unit: box('unit') };
  });

/** What the boxes of a field say together. */
export const textOf = ({ field, number, pm, unit }: Line): string =>
  field.kind === 'figure'
    ? textOfParts(field, {
        number: number.value,
        pm: pm?.value ?? '',
        unit: (unit?.value as UnitId | undefined) ?? field.units[0],
      })
    : number.value;

/** Parts a text over the boxes. */
export function put({ field, number, pm, unit }: Line, text: string): void {
  if (field.kind !== 'figure') {
    number.value = boxText(field, text);
    return;
  }
  const parts = partsOfText(field, text, (unit?.value || undefined) as UnitId | undefined);
  number.value = pm || !parts.pm ? parts.number : text;
  if (pm) pm.value = parts.pm;
  if (unit) unit.value = parts.unit ?? '';
}
