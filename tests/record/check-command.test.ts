import { dirname } from 'node:path';
import { expect, test } from 'vitest';
import { main } from '../../src/cli/main.ts';
import { madeSeries } from './made.ts';

async function check(content: string, ...flags: string[]) {
  let out = '';
  let err = '';
  const code = await main(['check', '--content', content, ...flags], {
    root: dirname(content),
    out: (text) => {
      out += text;
    },
    err: (text) => {
      err += text;
    },
    interactive: false,
  });
  return { code, out, err };
}

test('A series without problems exits 0 and says what was read', async () =>
  expect(await check(madeSeries())).toEqual({
    code: 0,
    out: '0 errors, 0 warnings. 5 files read: 2 chapters, 2 steps.\n',
    err: '',
  }));

test('Errors exit 1, warnings alone exit 0', async () => {
  expect(
    (await check(madeSeries({ 'ledger.csv': 'date,kind,item,amount\n2026-01-20,part,Shoes,x\n' }))).code,
  ).toBe(1);
  expect((await check(madeSeries({ 'ledgr.csv': 'date\n' }))).code).toBe(0);
});

test('A wrong flag or a folder that does not exist exits 2 with the usage', async () => {
  const content = madeSeries();
  expect(await check(content, '--jason')).toMatchObject({ code: 2, err: expect.stringContaining('--json') });
  expect(await check(`${content}-gone`)).toMatchObject({
    code: 2,
    err: expect.stringContaining('There is no folder'),
  });
});

test('As JSON the problems can be read by a program', async () => {
  const { out } = await check(
    madeSeries({ 'ledger.csv': 'date,kind,item,amount\n2026-01-20,part,Shoes,x\n' }),
    '--json',
  );
  expect(JSON.parse(out)).toMatchObject([
    { file: 'content/ledger.csv', line: 2, column: 23, rule: 'ledger/amount', severity: 'error' },
  ]);
});
