import { COMPONENTS, type Component } from './chapter/components.ts';
import { CHAPTER } from './chapter/frontmatter.ts';
import type { Fields } from './read/field.ts';
import { TABLES } from './tables.ts';

const row = (...cells: string[]) => `| ${cells.join(' | ')} |`;
const cell = (text: string) => text.replaceAll('|', '\\|').replaceAll('\n', ' ');

function fieldsTable(fields: Fields): string {
  const rows = Object.entries(fields).map(([name, { help, needed, hidden, kind }]) => {
    const must = needed ? 'needed' : '';
    const seen = hidden ? ' Never published.' : '';
    return row(`\`${name}\``, cell(kind.says), must, cell(`${help}${seen}`));
  });
  return [row('name', 'write', '', 'what it is'), row('---', '---', '---', '---'), ...rows].join('\n');
}

function componentText([name, { help, attributes }]: [string, Component]): string {
  const rows = Object.entries(attributes).map(([attribute, one]) => {
    const must = one.needed ? 'needed' : '';
    const form = {
      text: '"…"',
      id: '"…"',
      note: '"…"',
      time: '"12:31"',
      texts: '{["…", "…"]}',
      reasons: '{{"id": "reason"}}',
    }[one.kind];
    return row(`\`${attribute}=${form}\``, must, cell(one.help));
  });
  const table =
    rows.length === 0
      ? 'It has no attributes.'
      : [row('attribute', '', 'what it is'), row('---', '---', '---'), ...rows].join('\n');
  return `### \`<${name}>\`\n\n${help}\n\n${table}`;
}

/** The reference part of the author's guide, from the very entries that the reader and the check use: Markdown. */
export function referenceGuide(): string {
  const tables = Object.entries(TABLES).map(([name, fields]) => `### ${name}.csv\n\n${fieldsTable(fields)}`);
  return `# Every file and field

What each column, key and attribute holds. The check reads from the same list, so this page is never behind it.
[writing.md](writing.md) tells how to go about it.

## A chapter's frontmatter

${fieldsTable(CHAPTER)}

## What a chapter may hold

Besides Markdown with tables, task lists, footnotes and strikethrough. Each calculator is a component too; its page lists its fields.

${Object.entries(COMPONENTS).map(componentText).join('\n\n')}

## Tables

Columns stand in any order; those not needed may be left out. Comma, semicolon or tab between them is found by looking.

${tables.join('\n\n')}
`;
}
