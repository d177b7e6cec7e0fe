import { expect, test } from 'vitest';
import { told } from '../../src/cli/check.ts';
import { inOrder, type Problem } from '../../src/record/problem.ts';
import { grouped, oneLine } from '../../src/record/report.ts';
import { nearest } from '../../src/record/text/nearest.ts';

const problem = (values: Partial<Problem>): Problem => ({
  file: 'content/ledger.csv',
  line: 14,
  column: 6,
  rule: 'ledger/amount',
  severity: 'error',
  message: '"12,5o" is not an amount. Write digits and a decimal point, such as 12.50.',
  ...values,
});

test('A problem is one line that editors and terminals jump to', () => {
  expect(oneLine(problem({}))).toBe(
    'content/ledger.csv:14:6 error ledger/amount "12,5o" is not an amount. Write digits and a decimal point, such as 12.50.',
  );
  const { line: _line, column: _column, ...bare } = problem({});
  expect(oneLine(bare)).toMatch(/^content\/ledger\.csv error /);
});

test('Problems come by file, line and column, then the count and what became of the site', () => {
  const problems = [
    problem({ line: 20 }),
    problem({ file: 'content/a.csv', severity: 'warning' }),
    problem({ line: 3, column: 9 }),
    problem({ line: 3, column: 2 }),
  ];
  expect(inOrder(problems).map(({ file, line, column }) => [file, line, column])).toEqual([
    ['content/a.csv', 14, 6],
    ['content/ledger.csv', 3, 2],
    ['content/ledger.csv', 3, 9],
    ['content/ledger.csv', 20, 6],
  ]);
  expect(grouped(problems, { lineOf: () => undefined })).toMatch(
    /\n\n3 errors, 1 warning in 2 files\. Nothing was published\.\n$/,
  );
});

test('A long line is shown around its place', () => {
  const text = grouped([problem({ column: 150 })], { lineOf: () => `${'a'.repeat(149)}X${'b'.repeat(100)}` });
  expect(text).toMatch(/ {2}14 \| …a+Xb+…/);
});

test('For editors and scripts the same comes as JSON', () => {
  const counts = { files: 1, chapters: 0, steps: 0, pictures: 0, ledgerRows: 0 };
  const { text, code } = told(
    { series: undefined, problems: [problem({})], counts },
    { root: '/', json: true },
  );
  expect(JSON.parse(text)).toEqual([problem({})]);
  expect(code).toBe(1);
});

test('The nearest name is the one that was most likely meant, or none', () => {
  const names = ['01-first-look', '07-twelve-volts', 'shoes-front'];
  expect(nearest('07-twelve-volt', names)).toBe('07-twelve-volts');
  expect(nearest('twelve-volts', names)).toBe('07-twelve-volts');
  expect(nearest('shoes-fornt', names)).toBe('shoes-front');
  expect(nearest('ch-17', ['ch-01', 'ch-07'])).toBe('ch-07');
  expect(nearest('gearbox', names)).toBeUndefined();
});
