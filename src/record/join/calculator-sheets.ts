import type { InputError } from '../../calc/contract.ts';
import { calculator } from '../../calc/index.ts';
import { fillTexts, readValues, type Texts } from '../../calc/read-values.ts';
import type { Sheet } from '../chapter/chapter-text.ts';
import type { Report } from '../report-to.ts';
import { shown } from '../text/words.ts';
import type { Machine, MachineValue } from '../types.ts';

/** A value of the machine's sheet as it would be typed into a calculator: "58 ± 0.05 mm", "4.00-8". */
export function typed({ now, text, asBuiltText }: MachineValue): string {
  if (!now) return text ?? asBuiltText ?? '';
  const pm = now.pm === undefined ? '' : ` ± ${now.pm}`;
  return `${now.text}${pm} ${now.unit}`.trim();
}

/** What each calculator of a chapter starts from, by its own figures or the machine's: "timing.advance = 24 deg". */
export function settingsOf(sheets: readonly Sheet[], machine: Machine | undefined): string[] {
  if (sheets.length === 0) return [];
  const values = textsOf(machine);
  const all = sheets.flatMap((sheet) => {
    const found = calculator(sheet.calculator);
    if (!found) return [];
    const { texts, from } = fillTexts(found, givenTexts(sheet), values, false);
    return Object.entries(texts).flatMap(([name, text]) =>
      from[name] === undefined ? [] : [`${sheet.calculator}.${name} = ${text}`],
    );
  });
  return [...new Set(all)];
}

const textsOf = (machine: Machine | undefined): Texts =>
  Object.fromEntries([...(machine?.values.values() ?? [])].map((value) => [value.path, typed(value)]));

const givenTexts = ({ figures }: Sheet): Texts =>
  Object.fromEntries([...figures].map(([name, { text }]) => [name, text]));

const answered = new Map<string, readonly InputError[]>();

/** Lets each calculator of a chapter solve its figures, so that what it refuses is told here and not while pages are made. */
export function checkSheets(sheets: readonly Sheet[], machine: Machine | undefined, report: Report): void {
  if (!machine || sheets.length === 0) return;
  const values = textsOf(machine);
  for (const sheet of sheets) {
    const given = givenTexts(sheet);
    for (const { field, message } of errorsOf(sheet.calculator, given, values)) {
      const written = sheet.figures.get(field);
      const what = written ? `${field} ${shown(written.text)}` : `"${field}"`;
      report.add(
        'chapters/calculator',
        written?.place ?? sheet.place,
        `The calculator refuses ${what}: ${message}`,
      );
    }
  }
}

function errorsOf(id: string, given: Texts, machine: Texts): readonly InputError[] {
  const found = calculator(id);
  if (!found) return [];
  const { texts } = fillTexts(found, given, machine);
  const key = JSON.stringify([id, texts]);
  const known = answered.get(key);
  if (known) return known;
  const { values, errors } = readValues(found, texts, {}, false);
  const answer = errors.length > 0 ? undefined : found.solve(values);
  const all = answer && !answer.ok ? answer.errors : errors;
  if (answered.size > 2000) answered.clear();
  answered.set(key, all);
  return all;
}
