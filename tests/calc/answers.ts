import type { Answer } from '../../src/calc/answer.ts';
import type { Calculator, Refusal } from '../../src/calc/contract.ts';
import { readValues } from '../../src/calc/read-values.ts';
import { fromSi, type UnitId } from '../../src/calc/units.ts';

/** Text of a piece of markup, no-break spaces as plain ones. */
export const said = (markup: string): string =>
  markup
    .replace(/<[^>]*>/g, '')
    .replace(/&lt;/g, '<')
    .replace(/&quot;/g, '"')
    .replace(/&amp;/g, '&')
    .replace(/[\u00a0\u202f]/g, ' ');

const all = (markup: string | undefined, what: RegExp): string[] =>
  [...(markup ?? '').matchAll(what)].map(([, inner = '']) => inner);

export const notesOf = ({ parts }: Answer): string[] => all(parts.notes, /<li>(.*?)<\/li>/g).map(said);

/** Lines of working, as markup. */
export const linesOf = ({ parts }: Answer): string[] => all(parts.working, /<li>(.*?)<\/li>/g);

export const drawingsOf = ({ parts }: Answer) =>
  all(parts.drawings, /(<svg.*?<\/svg>)/g).map((svg) => ({
    svg,
    title: said(all(svg, /<title>(.*?)<\/title>/g)[0] ?? ''),
    desc: said(all(svg, /<desc>(.*?)<\/desc>/g)[0] ?? ''),
  }));

export const tablesOf = ({ parts }: Answer) =>
  all(parts.tables, /(<p class="sheet-caption">.*?<\/table>)/g).map((table) => ({
    caption: said(all(table, /<p class="sheet-caption">(.*?)<\/p>/g)[0] ?? ''),
    columns: all(table, /<th[^>]*>(.*?)<\/th>/g).map(said),
    rows: all(table.replace(/<thead>.*<\/thead>/, ''), /<tr>(.*?)<\/tr>/g).map((row) =>
      all(row, /<td[^>]*>(.*?)<\/td>/g).map(said),
    ),
  }));

/** An answer, or an error with what was refused. */
export function answerOf(answer: Answer | Refusal): Answer {
  if (!answer.ok) throw new Error(answer.errors.map((e) => `${e.field}: ${e.message}`).join('\n'));
  return answer;
}

/** What one calculator says to the fields given, the others empty. */
export function asked(calculator: Calculator) {
  const solved = (given: Record<string, string>) =>
    calculator.solve(readValues(calculator, given, {}, false).values);
  const answered = (given: Record<string, string>): Answer => answerOf(solved(given));
  return {
    answered,
    /** One output in a unit; not a number where there is none. */
    output(given: Record<string, string>, name: string, unit: UnitId): number {
      const field = calculator.outputs.find((o) => o.name === name);
      if (!field) throw new Error(`no output is called ${name}`);
      return fromSi(answered(given).outputs[name]?.si ?? Number.NaN, field.quantity, unit);
    },
    notes: (given: Record<string, string>): string => notesOf(answered(given)).join('\n'),
    /** What is refused, each as "field: sentence". */
    refusals(given: Record<string, string>): string[] {
      const answer = solved(given);
      return answer.ok ? [] : answer.errors.map((e) => said(`${e.field}: ${e.message}`));
    },
    /** What the form itself says of a text, before anything is worked out. */
    typed: (given: Record<string, string>): string[] =>
      readValues(calculator, given, {}, true).errors.map((e) => said(`${e.field}: ${e.message}`)),
    rows(given: Record<string, string>, table: string): string[][] {
      const caption = calculator.says.tables?.find((one) => one.name === table)?.caption ?? '';
      const start = ([caption].flat()[0] ?? '').split('{')[0] ?? '';
      return tablesOf(answered(given)).find((one) => one.caption.startsWith(start))?.rows ?? [];
    },
    drawings: (given: Record<string, string>) => drawingsOf(answered(given)),
  };
}
