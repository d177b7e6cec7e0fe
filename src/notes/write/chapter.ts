/** The draft as MDX: steps with their hazards, tables, calculators, and at the end what could not be placed. */

import { hazard } from '../../record/hazards/catalogue.ts';
import { findAll } from '../../record/hazards/find.ts';
import { gateFindings } from '../../record/hazards/gate.ts';
import type { MachineValue } from '../../record/types.ts';
import type { Draft, DraftStep, Statement } from '../draft.ts';
import { plain, quoted } from './plain.ts';
import { proseOf, wordsOf } from './prose.ts';

export interface Called {
  step: string;
  hazard: string;
  words: string;
  place: string;
}

export interface Head {
  title: string;
  date: string;
  summary: string;
}

/** What is needed of the series: texts of the sources by name, and the machine's values by path. */
export interface Around {
  texts: ReadonlyMap<string, string>;
  machine?: ReadonlyMap<string, MachineValue>;
  captions?: boolean;
}

export const NOT_PLACED = '## Not placed';

export function frontmatter({ title, date, summary }: Head): string {
  return `---\ntitle: ${JSON.stringify(title)}\ndate: ${date}\nsummary: ${JSON.stringify(summary)}\nheld: true\n---\n`;
}

export function bodyOf(
  draft: Draft,
  around: Around,
  taken: ReadonlySet<string> = new Set(),
): { body: string; notPlaced: string[]; called: Called[] } {
  const blocks: string[] = [];
  const notPlaced: string[] = [];
  const called: Called[] = [];
  const used = new Set(taken);
  const drawn = new Set<string>();
  let row: Statement[] = [];
  let prose: string[] = [];
  let open: DraftStep | undefined;
  const calculators = (said: readonly Statement[]): void => {
    for (const one of calculatorsFor(said, around.machine))
      if (!drawn.has(one)) {
        drawn.add(one);
        blocks.push(one);
      }
  };
  const flush = (): void => {
    if (prose.length > 0) blocks.push(prose.join(' '));
    prose = [];
    if (row.length > 0) blocks.push(table(row, used));
    row = [];
  };
  const written = new Set<DraftStep>();
  for (const one of draft.statements) {
    const { home } = one;
    if (home.kind === 'step') {
      const step = draft.steps[home.step - 1];
      if (step && !written.has(step)) {
        flush();
        written.add(step);
        open = step;
        blocks.push(stepOf(step, around, used, called));
        calculators(step.statements);
      }
      continue;
    }
    if (one.kind === 'row') {
      if (prose.length > 0) {
        blocks.push(prose.join(' '));
        prose = [];
      }
      row.push(one);
      continue;
    }
    if (home.kind === 'heading') {
      flush();
      if (blocks.length > 0 || open) blocks.push(`## ${plain(one.text)}`);
      continue;
    }
    if (home.kind === 'not placed') {
      notPlaced.push(`- ${plain(`${one.source}:${one.line}`)}: ${plain(one.text)}`);
      continue;
    }
    if (home.kind === 'prose') {
      if (row.length > 0 || (one.opens && prose.length > 0)) flush();
      prose.push(proseOf(one, around.texts.get(one.source) ?? ''));
    }
  }
  flush();
  return { body: blocks.map((block) => `${block}\n`).join('\n'), notPlaced, called };
}

function stepOf(step: DraftStep, around: Around, used: Set<string>, called: Called[]): string {
  step.title = unique(step.title, used);
  const paragraphs: string[][] = [];
  let words = 0;
  for (const one of step.statements) {
    if (
      paragraphs.length === 0 ||
      (one.opens &&
        (one.kind === 'item' || one.kind === 'task' || one.kind === 'done' || one.kind === 'prose')) ||
      words > 70
    ) {
      paragraphs.push([]);
      words = 0;
    }
    paragraphs.at(-1)?.push(proseOf(one, around.texts.get(one.source) ?? ''));
    words += one.text.split(' ').length;
  }
  const asRead = paragraphs.map((list) => readBack(list.join(' ')));
  const texts = step.statements.map((one) => one.text);
  const found = [
    ...findAll({ title: step.title, text: texts.join('\n') }),
    ...findAll({ title: step.title, text: texts.join(' ') }),
    ...findAll({ title: step.title, text: step.statements.map(wordsOf).join(' ') }),
  ];
  const place = { file: step.source, line: step.line, column: 1 };
  const asGate = (lines: string[]) =>
    gateFindings({
      steps: [
        {
          title: step.title,
          number: 1,
          tools: [],
          hazards: [],
          notHazard: new Map(),
          prose: [{ text: step.title, place }, ...lines.map((text) => ({ text, place }))],
          place,
        },
      ],
      photos: [],
      hazards: [],
    });
  const wanted = new Map<string, string>();
  for (const one of [
    ...asGate(asRead),
    ...asGate(texts),
    ...asGate([step.statements.map(wordsOf).join(' ')]),
  ])
    if (!wanted.has(one.hazard.id)) wanted.set(one.hazard.id, one.words);
  for (const one of found)
    if (
      hazard(one.hazard)?.signal !== 'NOTICE' &&
      !wanted.has(one.hazard) &&
      !hazard(one.hazard)?.coveredBy?.some((id) => wanted.has(id) || found.some((more) => more.hazard === id))
    )
      wanted.set(one.hazard, one.words);
  for (const [id, words] of wanted)
    called.push({ step: step.title, hazard: id, words, place: `${step.source}:${step.line}` });
  const attributes = [`title=${quoted(step.title)}`];
  if (step.at !== undefined) attributes.push(`at="${clock(step.at)}"`);
  if (wanted.size > 0)
    attributes.push(`hazards={[${[...wanted.keys()].map((id) => JSON.stringify(id)).join(', ')}]}`);
  const open = `<Step ${attributes.join(' ')}>`;
  return `${open.length > 110 ? `<Step\n  ${attributes.join('\n  ')}\n>` : open}\n\n${paragraphs.map((list) => list.join(' ')).join('\n\n')}\n\n</Step>`;
}

function unique(title: string, used: Set<string>): string {
  let one = title;
  for (let n = 2; used.has(key(one)); n++) one = `${title} (${n})`;
  used.add(key(one));
  return one;
}

/** A paragraph as the chapter's reader will see it, marked figures in digits. */
const readBack = (paragraph: string): string =>
  paragraph
    .replace(/<Qty of="([^"]*)" \/>/g, '$1')
    .replace(/&#(\d+);/g, (_, code: string) => String.fromCodePoint(Number(code)));

const key = (title: string): string =>
  title
    .toLowerCase()
    .replace(/[^\p{L}\p{N}]+/gu, '-')
    .replace(/^-+|-+$/g, '');

function clock(at: number): string {
  const two = (value: number): string => String(Math.floor(value)).padStart(2, '0');
  return at >= 3600
    ? `${Math.floor(at / 3600)}:${two((at % 3600) / 60)}:${two(at % 60)}`
    : `${Math.floor(at / 60)}:${two(at % 60)}`;
}

function table(rows: readonly Statement[], used: Set<string>): string {
  const width = Math.max(...rows.map((one) => one.cells?.length ?? 0), 1);
  const line = (cells: readonly string[]): string =>
    `| ${Array.from({ length: width }, (_, at) => plain(cells[at] ?? '') || ' ').join(' | ')} |`;
  const [head, ...rest] = rows;
  const title = unique(`From the notes, line ${head?.line ?? 1}`, used);
  return `<Table id=${quoted(key(title))} title=${quoted(title)}>\n\n${[line(head?.cells ?? []), `|${' --- |'.repeat(width)}`, ...rest.map((one) => line(one.cells ?? []))].join('\n')}\n\n</Table>`;
}

/** Calculators whose question the words raise. The machine's sheet fills what the words do not say. */
function calculatorsFor(said: readonly Statement[], machine: Around['machine']): string[] {
  const text = ` ${said.map((one) => one.text.toLowerCase()).join(' ')} `;
  const figures = said.flatMap((one) => one.figures);
  const has = (path: string): boolean => machine?.has(path) ?? false;
  const out: string[] = [];
  if (
    /before top dead cent|\bbtdc\b|\btdc\b|firing mark|ignition timing|\badvance\b/.test(text) &&
    has('engine.stroke') &&
    has('engine.rod')
  ) {
    const figure = figures.find(({ unit }) => unit === 'deg');
    const travel = figures.find(({ unit, value }) => unit === 'mm' && value < 15);
    if (figure && figure.value > 0 && figure.value < 90) out.push(`<Timing advance="${figure.value} deg" />`);
    else if (travel) out.push(`<Timing known="travel" travel="${travel.value} mm" />`);
  }
  const ratio = figures.find(({ unit, value }) => unit === 'ratio' && value >= 10 && value <= 100);
  if (ratio && /\boil\b|mix|two-?stroke|petrol|fuel/.test(text))
    out.push(`<Premix ratio="${ratio.value}:1" />`);
  const speed = figures.find(({ unit }) => unit === 'km/h' || unit === 'mph');
  if (
    speed &&
    /\b(?:first|second|third|top|gear|gears)\b/.test(text) &&
    /gear|sprocket|rpm|revs/.test(text) &&
    has('gearbox.first') &&
    has('drive.axle_sprocket')
  )
    out.push('<Gearing />');
  return out;
}
