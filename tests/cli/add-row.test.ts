import { afterEach, describe, expect, test } from 'vitest';
import { aWorkshop } from './a-workshop.ts';

let workshop: ReturnType<typeof aWorkshop> | undefined;
afterEach(() => workshop?.clear());
const open = (files: Record<string, string>) => {
  workshop = aWorkshop(files);
  return workshop;
};

const PLAIN = 'date,kind,item,amount\n2026-01-20,tool,Spanner,12.50\n';
const ROW = ['add-row', '--date', '2026-01-22', '--kind', 'tool', '--amount', '7.90'];

describe('a row added to the ledger', () => {
  test('stands at the end, and nothing before it changes', async () => {
    const { run, read } = open({ 'ledger.csv': PLAIN });
    const { code, out } = await run(...ROW, '--item', 'Oil can');
    expect(read('ledger.csv')).toBe(`${PLAIN}2026-01-22,tool,Oil can,7.90\n`);
    expect(out).toBe(
      'content/ledger.csv:3\n2026-01-22,tool,Oil can,7.90\nWritten, and the check finds nothing new.\n',
    );
    expect(code).toBe(0);
  });

  test('keeps semicolons, decimal commas, Windows line ends, the byte-order mark and the order of columns', async () => {
    const before = '\ufeffamount;item;date;kind\r\n12,50;Spanner;2026-01-20;tool\r\n';
    const { run, read } = open({ 'ledger.csv': before });
    await run(...ROW, '--item', 'Oil can; small');
    expect(read('ledger.csv')).toBe(`${before}7,90;"Oil can; small";2026-01-22;tool\r\n`);
  });

  test('keeps tabs', async () => {
    const before = 'date\tkind\titem\tamount\n2026-01-20\ttool\tSpanner\t12.50\n';
    const { run, read } = open({ 'ledger.csv': before });
    await run(...ROW, '--item', 'Oil can, small');
    expect(read('ledger.csv')).toBe(`${before}2026-01-22\ttool\tOil can, small\t7.90\n`);
  });

  test('is quoted throughout where the table is', async () => {
    const before = '"date","kind","item","amount"\n"2026-01-20","tool","Spanner","12.50"\n';
    const { run, read } = open({ 'ledger.csv': before });
    await run(...ROW, '--item', '5" rule');
    expect(read('ledger.csv')).toBe(`${before}"2026-01-22","tool","5"" rule","7.90"\n`);
  });

  test('starts on a line of its own where the last one has no end', async () => {
    const { run, read } = open({ 'ledger.csv': PLAIN.trimEnd() });
    const { out } = await run(...ROW, '--item', 'Oil can');
    expect(read('ledger.csv')).toBe(`${PLAIN}2026-01-22,tool,Oil can,7.90\n`);
    expect(out).toMatch(/^content\/ledger\.csv:3\n/);
  });

  test('begins the file where there is none', async () => {
    const { run, read } = open({});
    expect((await run(...ROW, '--item', 'Oil can')).code).toBe(0);
    expect(read('ledger.csv').split('\n')).toHaveLength(3);
    expect(read('ledger.csv')).toMatch(/^date,kind,item,part,/);
  });

  test('is only shown with --dry-run', async () => {
    const { run, read, names } = open({ 'ledger.csv': PLAIN });
    const before = names();
    const { code, out } = await run(...ROW, '--item', 'Oil can', '--dry-run');
    expect(out).toBe('content/ledger.csv:3\n2026-01-22,tool,Oil can,7.90\nNothing was written.\n');
    expect([code, read('ledger.csv'), names()]).toEqual([0, PLAIN, before]);
  });

  test('leaves no temporary file behind', async () => {
    const { run, names } = open({ 'ledger.csv': PLAIN });
    const before = names();
    await run(...ROW, '--item', 'Oil can');
    expect(names()).toEqual(before);
  });

  test('is followed by what the check finds wrong with it, and only with it', async () => {
    const { run } = open({
      'ledger.csv': `date,kind,item,part,amount\n2026-01-20,tool,Spanner,lost,12.50\n`,
      'parts.csv': 'part,name,system,status\nshoes-front,Front shoes,brakes,wanted\n',
    });
    const { code, out } = await run(...ROW, '--item', 'Shoes', '--part', 'shoes-frnt');
    expect(out).toContain('Written. The check finds with it:');
    expect(out).toContain(
      'content/ledger.csv:3:23 error ledger/part There is no part "shoes-frnt". The nearest is "shoes-front".',
    );
    expect(out).not.toContain('"lost"');
    expect(code).toBe(1);
  });
});

describe('a row that cannot be added', () => {
  test.each([
    [['--kind', 'tool', '--amount', '5'], '--item is missing, and there is nobody at the terminal to ask.'],
    [['--kind', 'tool'], '--item, --amount are missing'],
    [['--kind', 'tool', '--item', 'x', '--amount', '12,5o'], '--amount: "12,5o" is not an amount.'],
    [['--kind', 'gift', '--item', 'x', '--amount', '5'], '--kind: "gift" is none of the choices.'],
    [
      ['--kind', 'tool', '--item', 'x', '--amount', '5', '--date', '2026-02-30'],
      '--date: "2026-02-30" does not exist',
    ],
    [['--kind', 'tool', '--item', 'x', '--amount', '5', '--currency', 'eur'], 'Write it in capitals: EUR.'],
    [['--kind', 'tool', '--item', 'x', '--amount', '5', '--qty', '-2'], '--qty'],
    [
      ['--kind', 'tool', '--item', 'x', '--amount', '5', '--part', 'y'],
      'content/ledger.csv has no column "part". Add it to the heading first.',
    ],
    [['--colour', 'red'], "Unknown option '--colour'"],
  ])('%j: %s', async (flags, why) => {
    const { run, read } = open({ 'ledger.csv': PLAIN });
    const { code, err } = await run('add-row', ...flags);
    expect(err).toContain(why);
    expect(code).toBe(2);
    expect(read('ledger.csv')).toBe(PLAIN);
  });

  test('a file in another encoding is left as it is', async () => {
    const { run, read } = open({ 'ledger.csv': 'd\0a\0t\0e\0' });
    const { code, err } = await run(...ROW, '--item', 'x');
    expect(err).toContain('ledger.csv is not UTF-8 text');
    expect([code, read('ledger.csv')]).toEqual([2, 'd\0a\0t\0e\0']);
  });
});

test('a figure with a decimal comma fits a table with points, and the other way round', async () => {
  const { run, read } = open({ 'ledger.csv': PLAIN });
  await run('add-row', '--date', '2026-01-22', '--kind', 'tool', '--item', 'Oil can', '--amount', '7,90');
  expect(read('ledger.csv')).toContain('Oil can,7.90\n');
});

test('the help lists every column of the ledger', async () => {
  const { out, code } = await open({}).run('add-row', '--help');
  for (const flag of ['--date', '--kind', '--amount', '--rate', '--private-note', '--dry-run'])
    expect(out).toContain(flag);
  expect(code).toBe(0);
});
