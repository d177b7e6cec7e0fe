import { expect, test } from 'vitest';
import { asPublished } from '../../src/record/publish.ts';
import { readSeries } from '../../src/record/read-series.ts';
import { chapter, madeSeries } from './made.ts';

const SECRET = 'zwetschge';
const held = chapter(
  `Held ${SECRET}`,
  '2026-03-07',
  `<Step title="Do the ${SECRET}" opens={["lid"]}>\n\nA ${SECRET}.\n\n</Step>\n`,
  'held: true\n',
);

/** Everything in a value as text, maps and money included. */
function allText(value: unknown): string {
  return JSON.stringify(value, (key, one) => {
    if (key === 'place' || key === 'path' || key === 'folder') return undefined;
    if (typeof one === 'bigint') return String(one);
    return one instanceof Map ? [...one] : one;
  });
}

async function published() {
  const content = madeSeries({
    'chapters/03-held-back/chapter.mdx': held,
    'faults/only-held.md': `---\ntitle: Fault ${SECRET}\nsystem: engine\nsymptom: ${SECRET}\nevents:\n  - { chapter: 03-held-back, date: 2026-03-01, what: found, text: ${SECRET}, severity: do not drive }\n---\n`,
    'faults/both.md': `---\ntitle: Rattle\nsystem: engine\nsymptom: It rattles.\nsuspects:\n  - { id: slip, name: My slip, step: 03-held-back/do-the-${SECRET} }\nevents:\n  - { chapter: 01-first-look, date: 2026-01-17, what: found, text: Heard it., severity: do not drive }\n  - { chapter: 03-held-back, date: 2026-03-01, what: cured, text: ${SECRET} }\n---\n\nThe ${SECRET} did it.\n`,
    'parts.csv': `part,name,system,status,fitted_in\nshoes,Shoes,brakes,fitted,03-held-back\npaint,Paint ${SECRET},body,fitted,03-held-back\n`,
    'orders.csv': 'order,date,supplier\nbook,2026-01-02,Shop\nlate,2026-03-02,Shop\n',
    'ledger.csv': `date,kind,item,part,order,amount,chapter,private_note\n2026-01-20,part,Shoes,shoes,book,12.50,,${SECRET}\n2026-03-01,part,${SECRET},,book,7.50,03-held-back,\n2026-03-01,part,${SECRET},,late,5.00,03-held-back,\n2026-03-01,tool,${SECRET},,,5.00,03-held-back,\n`,
    'supporters.csv': `name,kind,what,chapters,consent\nAda ${SECRET},paid,${SECRET},01-first-look,no\nBerta Ommen,help,Press,03-held-back,yes\n`,
    'refit.csv': `line,what,action,closed_in,how\nlid,${SECRET},removed,,\n`,
    'corrections.csv': `date,chapter,was,now,why,can_hurt\n2026-03-08,03-held-back,${SECRET},b,c,no\n`,
    'measurements.csv': `date,chapter,item,found,unit\n2026-03-07,03-held-back,${SECRET},54.1,mm\n`,
    'due.csv': `what,after,since,done_in\n${SECRET},30 days,03-held-back,\nChain,30 days,01-first-look,03-held-back\n`,
    'odometer.csv': 'date,chapter,reading,unit\n2026-03-07,03-held-back,12040,km\n',
    'notes/rough.md': SECRET,
  });
  const { series, problems } = await readSeries(content);
  expect(problems.filter((one) => one.severity === 'error')).toEqual([]);
  if (!series) throw new Error('The series cannot be read.');
  return { raw: series, series: asPublished(series) };
}

test('Nothing of a held chapter, a private note or an unnamed supporter is published', async () => {
  const { raw, series } = await published();
  expect(allText(raw)).toContain(SECRET);
  expect(allText(series).toLowerCase()).not.toContain(SECRET);
  expect(allText(series)).not.toContain('03-held-back');
});

test('A fault cured in a held chapter is still open for readers', async () => {
  const { series } = await published();
  expect(series.faults.map((fault) => [fault.id, fault.events.length])).toEqual([['both', 1]]);
});

test('A row of a held chapter that came with an order keeps its amount without a name, so that shares stay right', async () => {
  const { series } = await published();
  expect(
    series.orders.map((order) => [order.id, order.lines.map((line) => [line.item, line.home.minor])]),
  ).toEqual([
    [
      'book',
      [
        ['Shoes', 1250n],
        ['Not yet published', 750n],
      ],
    ],
  ]);
});

test('Unnamed supporters are counted, and that somebody paid is said without the name', async () => {
  const { series } = await published();
  expect(series.supporters.map((one) => [one.name, one.chapters])).toEqual([['Berta Ommen', []]]);
  expect(series.unnamedSupporters).toBe(1);
  expect(series.chapters[0]?.paidBy.map((one) => one.credit)).toEqual([
    'A supporter who does not wish to be named',
  ]);
});

test('A part that only a held chapter tells of is left out; one bought before has arrived', async () => {
  const { series } = await published();
  expect(series.parts.map((part) => [part.id, part.status, part.fittedIn])).toEqual([
    ['shoes', 'arrived', undefined],
  ]);
});
