/** An answer as HTML, part by part. The server and the browser draw with this one code, so their digits cannot differ. */
import type { Answer, AnswerTable, Drawing } from '../../calc/contract.ts';
import { printOutput } from '../../calc/print-figure.ts';
import { escaped } from '../../calc/svg.ts';
import { workingMathml } from '../../calc/working.ts';
import type { SheetFacts } from './sheet-facts.ts';

/** By the name of the place on the sheet; an empty part is not shown. */
export interface AnswerParts {
  results: string;
  tables: string;
  drawings: string;
  notes: string;
  working: string;
}

function tableHtml({ caption, columns, rows }: AnswerTable, sheet: string): string {
  const kind = columns.map(({ numeric }) => (numeric ? ' class="number"' : ''));
  const heads = columns.map(({ label }, i) => `<th scope="col"${kind[i]}>${escaped(label)}</th>`).join('');
  const body = rows
    .map((row) => `<tr>${row.map((cell, i) => `<td${kind[i]}>${escaped(cell)}</td>`).join('')}</tr>`)
    .join('');
  const name = escaped(caption);
  return `<p class="sheet-caption">${name}</p><section class="sheet-table" tabindex="0" aria-label="${name}: ${escaped(sheet)}"><table><thead><tr>${heads}</tr></thead><tbody>${body}</tbody></table></section>`;
}

const drawingHtml = ({ title, svg }: Drawing) =>
  `<figure class="sheet-drawing">${svg}<figcaption>${escaped(title)}</figcaption></figure>`;

export function answerParts(
  { outputs, name }: Pick<SheetFacts, 'outputs' | 'name'>,
  answer: Answer,
): AnswerParts {
  const results = outputs.map((field) => {
    const output = answer.outputs[field.name];
    if (!output) return '';
    const [first = '', ...others] = printOutput(field, output).map(escaped);
    const also = others.length > 0 ? ` <span class="also">${others.join(' · ')}</span>` : '';
    return `<div><dt>${escaped(field.label)}</dt><dd><b>${first}</b>${also}</dd></div>`;
  });
  return {
    results: results.join(''),
    tables: answer.tables.map((table) => tableHtml(table, name)).join(''),
    drawings: answer.drawings.map(drawingHtml).join(''),
    notes: answer.notes.map((note) => `<li>${escaped(note)}</li>`).join(''),
    working: answer.working
      .map((line) => `<li><span>${escaped(line.says)}</span>${workingMathml(line)}</li>`)
      .join(''),
  };
}
