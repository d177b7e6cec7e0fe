/** A declaration's texts as they travel in a page: markup with holes, part by part of the sheet. Never in a browser. */

import type { Block, SaidOnPage } from './answer.ts';
import { chartBlock } from './chart-block.ts';
import type { FormFacts, OutputField } from './contract.ts';
import { figured, pictureBlock } from './picture-block.ts';
import type { SaidChart, SaidPicture, SaidTable, Says } from './says.ts';
import { escaped } from './svg.ts';
import { workingMathml } from './working.ts';

const li = (texts: readonly string[] = []): Block => ({ open: texts.map((text) => `<li>${text}</li>`) });

/** An output in its first unit, to the decimals that are fixed for it. */
const inFirstUnit = ({ name, quantity, units: [unit], figures, decimals }: OutputField, as = '') =>
  `{${name}|${quantity}|${unit}|${figures}${decimals === undefined ? '' : `.${decimals}`}${as}}`;

/** An output in its first unit, the others beside it. */
function result(output: OutputField): string {
  const { name, label, quantity, units, figures } = output;
  const first = inFirstUnit(output);
  const others = units.slice(1).map((unit) => `{${name}|${quantity}|${unit}|${figures}}`);
  const also = others.length > 0 ? ` <span class="also">${others.join(' · ')}</span>` : '';
  return `<div><dt>${escaped(label)}</dt><dd><b>${first}</b>${also}</dd></div>`;
}

/** Asks for whatever the text asks for or prints. */
const asks = (text: string) =>
  [...text.matchAll(/\{\??(!?\w+(?:=[^{}|]+)?)/g)].map(([, what]) => `{?${what}}`).join('');

function tableBlock({ name, caption, columns }: SaidTable): Block {
  const captions = [caption].flat().map(escaped);
  const kind = (words?: string) => (words ? '' : ' class="number"');
  const cells = columns.flatMap(([heading, cell, words]) => {
    const when = asks(heading);
    // A figure that is missing is a dash; of several texts one stands.
    if (typeof cell === 'string')
      return [`${when}<td${kind(words)}>${escaped(cell).replace('{', '{~')}</td>`];
    return [`${when}<td${kind(words)}>`, ...cell.map((text) => when + escaped(text)), `${when}</td>`];
  });
  return {
    name,
    open: [
      '<p class="sheet-caption">',
      ...captions,
      '</p><section class="sheet-table" tabindex="0" aria-label="',
      ...captions,
      `: {sheet}"><table><thead><tr>`,
      ...columns.map(([heading, , words]) => `<th scope="col"${kind(words)}>${escaped(heading)}</th>`),
      '</tr></thead><tbody>',
    ],
    each: ['<tr>', ...cells, '</tr>'],
    close: ['</tbody></table></section>'],
  };
}

const drawingBlock = (said: SaidPicture | SaidChart): Block =>
  figured('height' in said ? pictureBlock(said) : chartBlock(said), said.title);

export function pageSays(
  { fields, outputs }: Pick<FormFacts, 'fields' | 'outputs'>,
  { wrong = {}, notes = [], lists = {}, lines = [], tables = [], drawings = [] }: Says,
): SaidOnPage {
  const known = outputs.filter(({ name }) => fields.some((field) => field.name === name));
  const working = lines.map(
    (line) => `${line.when ?? ''}<span>${escaped(line.says)}</span>${workingMathml(line)}`,
  );
  return {
    wrong,
    carry: Object.fromEntries(known.map((output) => [output.name, inFirstUnit(output, '|plain')])),
    lists: Object.fromEntries(Object.entries(lists).map(([name, each]) => [name, [each].flat()])),
    parts: {
      results: [{ results: true, open: outputs.map(result) }],
      drawings: drawings.map(drawingBlock),
      notes: [li(notes.map(escaped))],
      tables: tables.map(tableBlock),
      working: [li(working)],
    },
  };
}
