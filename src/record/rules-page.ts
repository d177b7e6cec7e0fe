import { type Rule, WRITTEN_RULES } from './rules/written.ts';
import { AREAS, RULES } from './rules.ts';

const GROUPS: Record<string, string> = {
  file: 'Files',
  machine: 'Machine’s sheet',
  csv: 'Tables',
  yaml: 'YAML',
  chapters: 'Chapters',
  supporters: 'Supporters',
  ledger: 'Money',
  orders: 'Money',
  rates: 'Money',
  faults: 'Faults',
  refit: 'Refit list',
  measurements: 'Measurements',
  corrections: 'Corrections',
  due: 'Due list',
  odometer: 'Due list',
  released: 'Corrections',
  'road-tests': 'Road tests',
};

const cell = (text: string) => text.replaceAll('|', '\\|').replaceAll('\n', ' ');

/** docs/problems.md: what each rule of the check means. Written from the catalogue, and tested to be equal to it. */
export function rulesPage(): string {
  const written = Object.entries<Rule>(WRITTEN_RULES);
  const groups = Map.groupBy(written, ([id]) => GROUPS[id.split('/')[0] ?? ''] ?? 'Others');
  const chapters = [...groups].map(([title, rules]) => `## ${title}\n\n${rules.map(ruleText).join('\n')}`);
  const parts = [...RULES].filter(
    ([id, { why }]) => why.startsWith('What stands there') && !(id in WRITTEN_RULES),
  );
  return `# Problems

What the check can find. An error stops publishing; a warning is shown to you, and the site is published. Every problem
has a folder under \`tests/series/\` that shows it with the exact words.

${chapters.join('\n')}
## YAML of another form than expected

${parts.map(ruleText).join('\n')}
## Single columns and keys

A value that cannot be read, is missing although it is needed, or points to nothing is told under the file's and the
column's name: \`ledger/amount\`. All of these are errors.

${AREAS.map(areaText).join('\n')}`;
}

function ruleText([id, { title, why, severity, fixture }]: [string, Rule]): string {
  return `### ${title}\n\n\`${id}\`, ${severity === 'error' ? 'an error' : 'a warning'}. ${why} Shown by \`${fixture}\`.\n`;
}

function areaText({ area, file, fields }: (typeof AREAS)[number]): string {
  const rows = Object.entries(fields)
    .filter(([name]) => RULES.has(`${area}/${name}`))
    .map(
      ([name, { help, needed, kind }]) =>
        `| \`${area}/${name}\` | ${cell(kind.says)}${needed ? '' : ', or nothing'} | ${cell(help)} |`,
    );
  return `### ${file.charAt(0).toUpperCase()}${file.slice(1)}\n\n| rule | what is read | what it is |\n| --- | --- | --- |\n${rows.join('\n')}\n`;
}
