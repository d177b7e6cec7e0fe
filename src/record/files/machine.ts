import { type DecimalMark, findDecimalMark } from '../money/decimal.ts';
import { unitNamed } from '../quantity/unit-named.ts';
import { given, needed, optional } from '../read/field.ts';
import { choice, line, readFigure, words, written } from '../read/kinds.ts';
import { type Mapping, readMapping } from '../read/yaml.ts';
import type { Report } from '../report-to.ts';
import { fieldRule } from '../rules/written.ts';
import { shown } from '../text/words.ts';
import type { Machine, MachineValue, Quantity } from '../types.ts';

/** Head of machine.yaml, one entry a key; every other key is a section. */
export const MACHINE = {
  name: needed(line, 'Name', 'What the machine is called.'),
  maker: optional(line, 'Maker', 'Who built it.'),
  year: optional(line, 'Year', 'When it was built.'),
  summary: optional(words, 'Summary', 'What it is, in a sentence or two.'),
};

const quantity = written('a figure and its unit, such as "58 mm"');
const plusMinus = written('a figure in the value’s unit, such as "0.05 mm"');

/** One value of a section, one entry a key. */
export const MACHINE_VALUE = {
  label: needed(line, 'Label', 'As the data sheet names it: "Stroke".'),
  as_built: optional(
    quantity,
    'As built',
    'Figure and unit, such as "58 mm", or a marking, such as "4.00-8".',
  ),
  altered: optional(quantity, 'As altered', 'Figure and unit after your change.'),
  pm: optional(plusMinus, '±', 'How far the figure may be off, such as "0.05 mm".'),
  source: optional(choice(["maker's book", 'measured', 'told']), 'Source', 'Where the figure comes from.'),
  note: optional(words, 'Note', 'Published with the value.'),
};

const FIGURE = String.raw`[\d.,]+(?:[ \u00a0\u2009\u202f'’]\d{3})*(?:[.,]\d+)?`;
/** A figure, then ± and a unit in either order. */
const QUANTITY = new RegExp(
  String.raw`^(?<written>[-−]?${FIGURE})(?:\s*±\s*(?<before>${FIGURE}))?(?:\s*(?<unit>[^\d\s.,:;+±-][^±]*?))?(?:\s*±\s*(?<after>${FIGURE})[^±\d]*)?$`,
  'u',
);

/** "58 mm", "58 ± 0.05 mm", "34": figure, ± and unit; undefined where the text is a marking such as "4.00-8". */
export function readQuantity(
  text: string,
  mark: DecimalMark | undefined,
): { quantity: Quantity } | { wrong: string } | undefined {
  const found = QUANTITY.exec(text.trim());
  if (!found) return undefined;
  const { written = '', before, after, unit = '' } = found.groups ?? {};
  const value = readFigure(written, mark);
  if (!value.ok) return { wrong: value.message };
  const pmText = before ?? after;
  const pm = pmText === undefined ? undefined : readFigure(pmText, mark);
  if (pm && !pm.ok) return { wrong: pm.message };
  return { quantity: given({ text: value.value, unit: unit.trim(), pm: pm?.value }) };
}

/** Reads machine.yaml: its head, then section by section in the author's order. */
export function readMachine(
  mapping: Mapping,
  stated: DecimalMark | undefined,
  report: Report,
): Machine | undefined {
  const sections = mapping.keys().filter((key) => !Object.hasOwn(MACHINE, key));
  const mark = stated ?? shownIn(mapping, sections);
  const head = readMapping(mapping, 'machine', MACHINE, { report, mark, others: sections });
  const machine: Machine = {
    ...given({ name: head?.name ?? '', maker: head?.maker, year: head?.year, summary: head?.summary }),
    sections: [],
    values: new Map(),
  };
  for (const id of sections) {
    const section = mapping.mapping(id);
    if (!section) {
      report.add(
        fieldRule('machine', 'section'),
        mapping.keyPlace(id),
        `"${id}" is neither a key of the sheet nor a section with values. Write its values under it, each with "label" and "as_built".`,
      );
      continue;
    }
    const values: MachineValue[] = [];
    for (const key of section.keys()) {
      if (key === 'title') continue;
      const value = readValue(section, id, key, mark, report);
      if (!value) continue;
      values.push(value);
      machine.values.set(value.path, value);
    }
    machine.sections.push({ id, title: section.text('title') ?? inWords(id), values });
  }
  return head && machine;
}

function readValue(
  section: Mapping,
  sectionId: string,
  key: string,
  mark: DecimalMark | undefined,
  report: Report,
): MachineValue | undefined {
  const item = section.mapping(key);
  const path = `${sectionId}.${key}`;
  if (!item) {
    report.add(
      fieldRule('machine', 'value'),
      section.at(key),
      `"${path}" has no keys of its own. Write { label: "…", as_built: "…" }.`,
    );
    return undefined;
  }
  const row = readMapping(item, 'machine', MACHINE_VALUE, { report, mark });
  if (!row) return undefined;
  const quantity = (field: 'as_built' | 'altered'): Quantity | undefined => {
    const text = row[field];
    const read = text === undefined ? undefined : readQuantity(text, mark);
    if (!read) return undefined;
    if ('wrong' in read) return report.add(fieldRule('machine', field), row.at(field), read.wrong);
    const { unit } = read.quantity;
    if (unit !== '' && !unitNamed(unit))
      report.add(
        'machine/unit',
        row.at(field),
        `${shown(unit)} is not a unit that is known here, so it is printed as it stands. Look whether it is a slip.`,
      );
    const pm = pmFor(read.quantity);
    return pm === undefined ? read.quantity : { ...read.quantity, pm };
  };
  const pmFor = (of: Quantity): string | undefined => {
    if (row.pm === undefined) return of.pm;
    const read = readQuantity(row.pm, mark);
    if (read && 'wrong' in read) return report.add(fieldRule('machine', 'pm'), row.at('pm'), read.wrong);
    if (!read || (read.quantity.unit !== '' && read.quantity.unit !== of.unit))
      return report.add(
        fieldRule('machine', 'pm'),
        row.at('pm'),
        `"${row.pm}" is not a ± of "${of.text} ${of.unit}". Write a figure in ${of.unit || 'no unit'}.`,
      );
    return read.quantity.text;
  };
  if (row.as_built === undefined && row.altered === undefined)
    return report.add(
      fieldRule('machine', 'as_built'),
      item.place,
      `"${path}" has no value. Write as_built, altered, or both.`,
    );
  const asBuilt = quantity('as_built');
  const altered = quantity('altered');
  const isText = (field: 'as_built' | 'altered') =>
    row[field] !== undefined && !readQuantity(row[field] ?? '', mark);
  const text = isText('altered')
    ? row.altered
    : row.altered === undefined && isText('as_built')
      ? row.as_built
      : undefined;
  const now = text === undefined ? (row.altered === undefined ? asBuilt : altered) : undefined;
  return given({
    path,
    label: row.label,
    asBuilt,
    altered,
    now,
    text,
    asBuiltText: isText('as_built') ? row.as_built : undefined,
    source: row.source,
    note: row.note,
    place: item.place,
  });
}

function shownIn(mapping: Mapping, sections: readonly string[]): DecimalMark | undefined {
  const figures = sections.flatMap((id) => {
    const section = mapping.mapping(id);
    return (section?.keys() ?? []).flatMap((key) => {
      const item = section?.mapping(key);
      return ['as_built', 'altered', 'pm'].map(
        (field) => /^[\d.,]+/.exec(item?.text(field) ?? '')?.[0] ?? '',
      );
    });
  });
  const found = findDecimalMark(figures);
  return found === 'mixed' ? undefined : found;
}

function inWords(id: string): string {
  const words = id.replace(/[-_]+/g, ' ');
  return words.charAt(0).toUpperCase() + words.slice(1);
}
