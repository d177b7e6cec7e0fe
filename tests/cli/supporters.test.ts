import { writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { afterEach, expect, test } from 'vitest';
import { aWorkshop } from './a-workshop.ts';

let workshop: ReturnType<typeof aWorkshop>;
afterEach(() => workshop.clear());

const FROM = `columns: { name: Full name, kind: Sort, what: Message, from: Date, consent: May we name you }
words:
  kind: { Spare part: gift, Hours: help }
  consent: { "Yes, gladly": yes }
always: { chapters: 02-second-look }
days: day-month-year
`;
const HEAD = 'name,credit,kind,what,from,until,chapters,consent,link\n';
const PRESENT = `${HEAD}Berta Ommen,,help,Wheel and board,2026-01-17,,02-second-look,yes,\n`;
const LIST_HEAD = 'Full name;E-mail;Sort;Message;Date;May we name you\n';

/** A series with a list beside it; gives the list's path. */
function withList(list: string, files: Record<string, string> = {}) {
  workshop = aWorkshop({ 'supporters-from.yaml': FROM, 'supporters.csv': PRESENT, ...files });
  writeFileSync(join(workshop.root, 'list.csv'), list);
  return (...more: string[]) => workshop.run('supporters', 'list.csv', ...more);
}
const added = () => workshop.read('supporters.csv').slice(PRESENT.length);

test('a foreign list becomes rows, words and days turned into ours, and what was not mapped stays out', async () => {
  const run = withList(
    `${LIST_HEAD}Vashti Loor;v@example.org;Hours;Read the drawing;3.2.2026 14:05;Yes, gladly\n`,
  );
  const { code, out } = await run();
  expect(added()).toBe('Vashti Loor,,help,Read the drawing,2026-02-03,,02-second-look,yes,\n');
  expect(code).toBe(0);
  expect(out).toContain('1 row added to');
});

test.each(['', 'yes', 'Yes', 'ok', 'x', 'true', '1', 'Yes, gladly, but not my surname'])(
  '"%s" where the list asks for consent is no consent',
  async (said) => {
    const run = withList(`${LIST_HEAD}Vashti Loor;;Hours;Drawing;3.2.2026;"${said}"\n`);
    const { out } = await run();
    expect(added()).toBe('Vashti Loor,,help,Drawing,2026-02-03,,02-second-look,no,\n');
    expect(out).toContain('1 supporter did not say that they may be named');
  },
);

test('a mapping that gives everybody’s consent is refused, with its place', async () => {
  const run = withList(LIST_HEAD, {
    'supporters-from.yaml': 'columns: { name: Full name }\nalways:\n  consent: yes\n',
  });
  const { code, out } = await run();
  expect(code).toBe(1);
  expect(out).toMatch(
    /supporters-from\.yaml:3:3 error supporters\/from always: consent cannot stand under always/,
  );
  expect(added()).toBe('');
});

test('a row that is there already is not added again, also under other capitals, accents or order of names', async () => {
  const run = withList(
    `${LIST_HEAD}OMMEN Berta;;Hours;Wheel and board;17.1.2026;\nJérôme Vale;;Hours;Paint;1.2.2026;\nVale, Jerome;;Hours;Paint;1.2.2026;\n`,
  );
  const { out } = await run();
  expect(out).toContain('There already: OMMEN Berta, Vale, Jerome.');
  expect(added().split('\n')).toHaveLength(2);
  expect((await run()).out).toContain('Nothing was written.');
});

test('a second gift of somebody known is a row of its own', async () => {
  const run = withList(`${LIST_HEAD}Berta Ommen;;Spare part;A horn;3.2.2026;\n`);
  await run();
  expect(added()).toBe('Berta Ommen,,gift,A horn,2026-02-03,,02-second-look,no,\n');
});

test('a name one letter off is listed, and added only when told', async () => {
  const run = withList(`${LIST_HEAD}Berta Omman;;Hours;Tea;3.2.2026;\n`);
  expect((await run()).out).toContain('Berta Omman may be Berta Ommen, who is there; left out.');
  expect(added()).toBe('');
  await run('--near', 'take');
  expect(added()).toContain('Berta Omman');
});

test('every wrong row is told with its place and nothing is written', async () => {
  const run = withList(
    `${LIST_HEAD}Vashti Loor;;Beer;Read it;3.2.2026;\n;;Hours;Tea;3.2.2026;\nOsric V;;Hours;=HYPERLINK("x");3.2.2026;\nOsric V;;Hours;Tea;31.2.2026;\n`,
  );
  const { code, out } = await run();
  expect(code).toBe(1);
  expect(
    out
      .split('\n')
      .filter((line) => line.startsWith('list.csv'))
      .map((line) => line.split(' ').slice(0, 3).join(' ')),
  ).toEqual([
    'list.csv:2:14 error supporters/kind',
    'list.csv:3:1 error supporters/name',
    'list.csv:4:16 error supporters/what',
    'list.csv:5:20 error supporters/from',
  ]);
  expect(out).toContain('Nothing was written.');
  expect(added()).toBe('');
});

test('a heading that the list does not have is told with those that it has', async () => {
  const run = withList('Name;Sort\nA;B\n');
  expect((await run()).out).toContain(
    'There is no column "Full name" for name. The list has "Name" and "Sort".',
  );
});

test('the check knows the mapping file', async () => {
  withList(LIST_HEAD);
  expect((await workshop.run('check')).out).not.toContain('supporters-from');
});

test('a dry run shows the rows and writes nothing', async () => {
  const run = withList(`${LIST_HEAD}Vashti Loor;;Hours;Drawing;3.2.2026;\n`);
  expect((await run('--dry-run')).out).toContain(
    'Vashti Loor,,help,Drawing,2026-02-03,,02-second-look,no,\n',
  );
  expect(added()).toBe('');
});
