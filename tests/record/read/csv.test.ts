import { parse } from 'csv-parse/sync';
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { readCsv } from '../../../src/record/read/csv.ts';
import { Report } from '../../../src/record/report-to.ts';
import { Lines } from '../../../src/record/text/lines.ts';

const read = (text: string) => {
  const report = new Report();
  return { records: readCsv(new Lines('content/ledger.csv', text), report), problems: report.problems };
};
const texts = (text: string) => read(text).records.map((record) => record.cells.map((cell) => cell.text));

test('Commas, semicolons and tabs part cells, whichever the heading shows', () => {
  for (const delimiter of [',', ';', '\t'])
    expect(texts(`${['a', 'b'].join(delimiter)}\n${['1.5', 'x'].join(delimiter)}`)).toEqual([
      ['a', 'b'],
      ['1.5', 'x'],
    ]);
  expect(texts('a;b\n1,5;x\n')).toEqual([
    ['a', 'b'],
    ['1,5', 'x'],
  ]);
  expect(texts('a\tb\n1;5\tx, y\n')).toEqual([
    ['a', 'b'],
    ['1;5', 'x, y'],
  ]);
  expect(texts('"a;b;c",d\n1,2\n')).toEqual([
    ['a;b;c', 'd'],
    ['1', '2'],
  ]);
});

test('A cell keeps its line and its column in characters, also after a quoted line break and an emoji', () => {
  const { records } = read('a,b,c\n"one\ntwo",🔧🔧,x\n1,2,3\n');
  expect(records[1]?.cells.map(({ place }) => [place.line, place.column])).toEqual([
    [2, 2],
    [3, 6],
    [3, 9],
  ]);
  expect(records[2]?.cells[0]?.place).toEqual({ file: 'content/ledger.csv', line: 4, column: 1 });
});

test('A quote that is never closed is told where its row starts', () => {
  const { problems, records } = read('a,b\n1,2\nx,"open\ny,z\n');
  expect(problems).toMatchObject([{ rule: 'csv/unclosed-quote', line: 3, column: 1 }]);
  expect(records).toHaveLength(2);
});

test('An inch sign inside an unquoted cell is a plain character', () => {
  expect(texts('item,qty\n3/8" spanner,1\n')[1]).toEqual(['3/8" spanner', '1']);
});

test('Whatever a spreadsheet quotes comes back as it was, and as csv-parse reads it', () => {
  const cell = fc
    .string({ unit: fc.constantFrom('a', 'ö', '"', ',', ';', '\n', ' ', '🔧', '=') })
    .map((text) => `x${text}x`);
  fc.assert(
    fc.property(
      fc.array(fc.array(cell, { minLength: 2, maxLength: 4 }), { minLength: 1, maxLength: 5 }),
      (rows) => {
        const width = rows[0]?.length ?? 0;
        const even = rows.map((row) => Array.from({ length: width }, (_, at) => row[at] ?? 'x'));
        const heading = even[0]?.map((_, at) => `h${at}`) ?? [];
        const text = [heading, ...even]
          .map((row) => row.map((one) => `"${one.replaceAll('"', '""')}"`).join(','))
          .join('\n');
        expect(texts(text)).toEqual([heading, ...even]);
        expect(texts(text)).toEqual(parse(text));
      },
    ),
  );
});
