import { afterEach, expect, test } from 'vitest';
import { aWorkshop } from './a-workshop.ts';

let workshop: ReturnType<typeof aWorkshop> | undefined;
afterEach(() => workshop?.clear());
const open = () => {
  workshop = aWorkshop({});
  return workshop;
};

test('A measurement is added with its limits, and limits the wrong way round are told', async () => {
  const { run, read } = open();
  const row = ['add-measurement', '--date', '2026-02-07', '--chapter', '02-second-look', '--item', 'Bore'];
  const { code } = await run(
    ...row,
    '--found',
    '54.06',
    '--found-pm',
    '0.01',
    '--max',
    '54.15',
    '--unit',
    'mm',
  );
  expect(code).toBe(0);
  expect(read('measurements.csv')).toMatch(
    /\n2026-02-07,02-second-look,Bore,,54\.06,0\.01,,,54\.15,,,mm,,\n$/,
  );
  const wrong = await run(...row, '--found', '54', '--min', '55', '--max', '54', '--unit', 'mm');
  expect(wrong.out).toContain('measurements/limits');
  expect(wrong.code).toBe(1);
});

test('A refit line is added, and one that nothing opens is told', async () => {
  const { run, read } = open();
  const row = ['add-refit', '--what', 'Tool box', '--action', 'removed'];
  expect((await run(...row, '--line', 'box', '--removed-in', '02-second-look')).code).toBe(0);
  expect(read('refit.csv')).toMatch(/\nbox,02-second-look,Tool box,removed,,,,\n$/);
  const wrong = await run(...row, '--line', 'lid');
  expect(wrong.out).toContain('Nothing opens the refit line "lid".');
  expect(wrong.code).toBe(1);
});

test('A correction is added, and one of a step that does not exist is told', async () => {
  const { run, read } = open();
  const row = [
    'add-correction',
    '--date',
    '2026-02-08',
    '--chapter',
    '02-second-look',
    '--was',
    '22 Nm.',
    '--now',
    '25 Nm.',
    '--why',
    'Misread.',
    '--can-hurt',
    'yes',
  ];
  expect((await run(...row)).code).toBe(0);
  expect(read('corrections.csv')).toMatch(/\n2026-02-08,02-second-look,,22 Nm\.,25 Nm\.,Misread\.,yes\n$/);
  const wrong = await run(...row, '--step', 'put-the-roof-on');
  expect(wrong.out).toContain('corrections/step');
  expect(wrong.code).toBe(1);
});

test('Every command of the state has help that lists its flags', async () => {
  const { run } = open();
  for (const [name, flag] of Object.entries({
    'open-fault': '--like',
    finding: '--rules-out',
    'put-off': '--review',
    cure: '--rules-in',
    'came-back': '--severity',
    'add-measurement': '--found-pm',
    'add-refit': '--removed-in',
    'add-correction': '--can-hurt',
    release: '--dry-run',
    'bench-list': '--content',
  })) {
    const { out, code } = await run(name, '--help');
    expect([code, out.includes(flag), out.includes(`npm run ${name}`)], name).toEqual([0, true, true]);
  }
});
