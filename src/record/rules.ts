import { CHAPTER } from './chapter/frontmatter.ts';
import { EVENT, FAULT, SUSPECT } from './files/faults.ts';
import { MACHINE, MACHINE_VALUE } from './files/machine.ts';
import { AIM, SERIES } from './files/series-file.ts';
import type { Fields } from './read/field.ts';
import { type Rule, WRITTEN_RULES } from './rules/written.ts';
import { TABLES } from './tables.ts';

/** Every set of fields by the area that its rules are named after, and the file it stands in. */
export const AREAS: { area: string; file: string; fields: Fields }[] = [
  { area: 'series', file: 'series.yaml', fields: SERIES },
  { area: 'aims', file: 'series.yaml, under "aims"', fields: AIM },
  { area: 'machine', file: 'machine.yaml', fields: { ...MACHINE, ...MACHINE_VALUE } },
  { area: 'chapters', file: 'a chapter’s frontmatter', fields: CHAPTER },
  { area: 'faults', file: 'a fault’s file', fields: { ...FAULT, ...EVENT } },
  { area: 'suspects', file: 'a fault’s file, under "suspects"', fields: SUSPECT },
  ...Object.entries(TABLES).map(([area, fields]) => ({
    area,
    file: `${area}.csv`,
    fields: fields as Fields,
  })),
];

/** Rules about the form of a part of a YAML file as a whole, which no single field has. */
const PARTS: Record<string, Rule> = {
  'series/aims': part('An aim is not written as keys', 'yaml-wrong-shape'),
  'machine/section': part('A section of the machine’s sheet is not written as values', 'yaml-wrong-shape'),
  'machine/value': part('A value of the machine’s sheet has no keys', 'yaml-wrong-shape'),
  'faults/suspects': part('The suspects of a fault are not a list', 'yaml-wrong-shape'),
  'faults/events': part('The events of a fault are missing or no list', 'yaml-wrong-shape'),
};

function part(title: string, fixture: string): Rule {
  return { title, why: 'What stands there cannot be read, so it would be lost.', severity: 'error', fixture };
}

/** The rules of single fields: whatever a field cannot read, or lacks though it is needed, is told under its own id. */
function* fieldRules(): Iterable<[string, Rule]> {
  for (const { area, file, fields } of AREAS)
    for (const [name, { heading, help, needed, kind }] of Object.entries(fields)) {
      if (!needed && kind.free) continue;
      const title = `"${name}" of ${file} cannot be used`;
      const why = `${heading}. ${help} Write ${kind.says}.`;
      yield [`${area}/${name}`, { title, why, severity: 'error', fixture: `${area}-fields-wrong` }];
    }
}

/** Every rule of the check by its id, in the order of the guide: files, chapters and state first, then field by field. */
export const RULES: ReadonlyMap<string, Rule> = new Map<string, Rule>([
  ...Object.entries<Rule>(WRITTEN_RULES),
  ...Object.entries(PARTS),
  ...fieldRules(),
]);
