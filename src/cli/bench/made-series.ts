import { mkdir, rm, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import sharp from 'sharp';

/** How large a made series is. */
export interface MadeSize {
  chapters: number;
  steps: number;
  ledgerRows: number;
  faults: number;
  /** Photos a chapter; 0 for none. */
  pictures: number;
}

export const LARGE: MadeSize = { chapters: 1000, steps: 12, ledgerRows: 10_000, faults: 500, pictures: 1 };

/** A size of which everything but the steps of a chapter is scaled: 100 chapters have 1,000 rows and 50 faults. */
export function scaled(chapters: number): MadeSize {
  return { ...LARGE, chapters, ledgerRows: chapters * 10, faults: Math.ceil(chapters / 2) };
}

/** The same figures for the same seed, everywhere. */
function dice(seed: number): (below: number) => number {
  let state = seed >>> 0;
  return (below) => {
    state = (Math.imul(state, 1664525) + 1013904223) >>> 0;
    return Math.floor((state / 2 ** 32) * below);
  };
}

const NOUNS = ['bracket', 'lever', 'bush', 'shim', 'spacer', 'clip', 'hinge', 'panel', 'washer', 'cover'];
const VERBS = ['Measure', 'Mark', 'Fit', 'Clean', 'Align', 'Note', 'Check', 'Label', 'Sort', 'Set'];
const SAID = [
  'The book gives one figure and the part gives another, so both are written down before anything is decided.',
  'It sat a little proud on the near side, which a straight edge shows better than the eye does.',
  'Go from the middle outwards, and stop once it moves freely between two fingers.',
  'What came off first goes on last, and its box has the number of this step.',
  'A second look an hour later found nothing new, which is a finding too.',
];

const pick = <T>(list: readonly T[], roll: (below: number) => number): T =>
  list[roll(list.length)] ?? (list[0] as T);
const two = (number: number) => String(number).padStart(2, '0');
const day = (after: number) => new Date(Date.UTC(2020, 0, 1 + after)).toISOString().slice(0, 10);
const chapterId = (at: number) => `${String(at).padStart(4, '0')}-part-${at}`;

/** Writes a whole series of the size into a folder, which is emptied first. The same size gives the same bytes. */
export async function writeMadeSeries(folder: string, size: MadeSize = LARGE): Promise<void> {
  await rm(folder, { recursive: true, force: true });
  const put = async (path: string, data: string | Uint8Array) => {
    const file = join(folder, path);
    await mkdir(join(file, '..'), { recursive: true });
    await writeFile(file, data);
  };
  await put('series.yaml', SERIES);
  await put('machine.yaml', MACHINE);
  const picture = await sharp({ create: { width: 1200, height: 900, channels: 3, background: '#b8b2a6' } })
    .jpeg()
    .toBuffer();
  for (let at = 1; at <= size.chapters; at++) {
    await put(`chapters/${chapterId(at)}/chapter.mdx`, chapter(at, size));
    for (let photo = 1; photo <= size.pictures; photo++)
      await put(`chapters/${chapterId(at)}/plate-${photo}.jpg`, picture);
  }
  for (let at = 1; at <= size.faults; at++) await put(`faults/fault-${at}.md`, fault(at, size));
  const roll = dice(7);
  const parts = Math.max(1, Math.floor(size.ledgerRows / 5));
  const orders = Math.max(1, Math.floor(size.ledgerRows / 10));
  await put(
    'parts.csv',
    table(
      'part,name,system,qty,status,origin,fitted_in',
      parts,
      (at) =>
        `part-${at},${pick(NOUNS, roll)} ${at},engine,1,fitted,bought,${chapterId(1 + roll(size.chapters))}`,
    ),
  );
  await put(
    'orders.csv',
    table('order,date,supplier', orders, (at) => `order-${at},${day(at % 2000)},Supplier ${at % 40}`),
  );
  await put(
    'rates.csv',
    table(
      'date,base,quote,rate,source',
      2100,
      (at) => `${day(at - 10)},EUR,GBP,0.8${two(at % 100)}5,made for measuring`,
    ),
  );
  await put(
    'ledger.csv',
    table('date,kind,item,part,order,qty,amount,currency,chapter,private_note', size.ledgerRows, (at) => {
      const amount = `${1 + roll(90)}.${two(roll(100))}`;
      const of = `part-${1 + (at % parts)},order-${1 + (at % orders)}`;
      return `${day(at % 2000)},part,"${pick(NOUNS, roll)}, size ${roll(20)}",${of},1,${amount},${at % 4 === 0 ? 'GBP' : 'EUR'},${chapterId(1 + roll(size.chapters))},`;
    }),
  );
}

function table(heading: string, rows: number, row: (at: number) => string): string {
  return `${heading}\n${Array.from({ length: rows }, (_, at) => row(at + 1)).join('\n')}\n`;
}

function chapter(at: number, { steps, pictures, faults }: MadeSize): string {
  const roll = dice(at);
  const prose = () => [pick(SAID, roll), pick(SAID, roll), pick(SAID, roll)].join(' ');
  const blocks = [
    `---\ntitle: Part ${at}\ndate: ${day(at)}\nsummary: ${pick(SAID, roll)}\n---\n`,
    `${prose()}\n`,
  ];
  for (let step = 1; step <= steps; step++) {
    const noun = pick(NOUNS, roll);
    blocks.push(
      `<Step title="${pick(VERBS, roll)} the ${noun} number ${step}" tools={["rule", "scriber"]} expect="The ${noun} lies flat." otherwise="Start again.">\n`,
      `${prose()} It is <Qty of="${1 + roll(80)}.${roll(10)} mm" /> wide and <Sum of="machine.engine.stroke / ${2 + roll(9)}" to="mm" /> high.\n`,
      `1. ${pick(SAID, roll)}\n2. ${pick(SAID, roll)}\n`,
      '</Step>\n',
    );
  }
  for (let photo = 1; photo <= pictures; photo++)
    blocks.push(
      `<Photo src="./plate-${photo}.jpg" alt="A plain plate." caption="Plate ${photo} of part ${at}." />\n`,
    );
  blocks.push(
    '| item | found | left |\n| --- | --- | --- |\n| width | 1.2 | 1.1 |\n| height | 3.4 | 3.3 |\n',
  );
  if (at > 1)
    blocks.push(
      `As in <Earlier chapter="${chapterId(at - 1)}">the part before</Earlier>, and see <Part id="part-${1 + (at % 20)}" />.\n`,
    );
  if (faults > 0) blocks.push(`This is about <FaultLink id="fault-${1 + (at % faults)}" />.\n`);
  return blocks.join('\n');
}

function fault(at: number, { chapters, faults }: MadeSize): string {
  const first = 1 + Math.floor(((at - 1) * chapters) / faults);
  const later = Math.min(chapters, first + 1 + (at % 9));
  const cured =
    at % 5 === 0
      ? ''
      : `\n  - { chapter: ${chapterId(later)}, date: ${day(later)}, what: cured, text: It went in. }`;
  return `---
title: Fault number ${at}
system: ${at % 2 === 0 ? 'engine' : 'brakes'}
symptom: Something rattles at ${at} revolutions.
suspects:
  - { id: bush, name: Bush worn }
  - { id: clip, name: Clip loose }
events:
  - { chapter: ${chapterId(first)}, date: ${day(first)}, what: found, text: Heard it., severity: nuisance, rules_in: [bush] }
  - { chapter: ${chapterId(first)}, date: ${day(first)}, what: tried, text: Held it., rules_out: [clip] }${cured}
---

It rattled **here** and [there](https://example.org/).
`;
}

const SERIES = `title: A series made for measuring
summary: As large as a rebuild can get.
byline: Nobody
language: en-GB
home_currency: EUR
decimal: point
rate_max_days: 30
`;

const MACHINE = `name: Machine made for measuring
engine:
  stroke: { label: Stroke, as_built: "58 mm", source: measured }
  bore: { label: Bore, as_built: "54 mm", source: measured }
`;
