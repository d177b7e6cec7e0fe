import { afterEach, expect, test } from 'vitest';
import { aWorkshop } from './a-workshop.ts';

let workshop: ReturnType<typeof aWorkshop> | undefined;
afterEach(() => workshop?.clear());

test('a part, an order, its rows and a rate, one after the other, make a series without problems', async () => {
  workshop = aWorkshop({});
  const { run, read } = workshop;
  const steps = [
    [
      'add-part',
      '--part',
      'shoes',
      '--name',
      'Brake shoes',
      '--system',
      'brakes',
      '--status',
      'ordered',
      '--estimate',
      '40-60',
    ],
    [
      'add-order',
      '--order',
      'korbel-1',
      '--date',
      '2026-01-20',
      '--supplier',
      'Korbel & Sons',
      '--freight-by',
      'weight',
    ],
    [
      'add-rate',
      '--date',
      '2026-01-20',
      '--base',
      'EUR',
      '--quote',
      'CZK',
      '--rate',
      '24.6100',
      '--source',
      'a bank',
    ],
    [
      'add-row',
      '--date',
      '2026-01-21',
      '--kind',
      'part',
      '--item',
      'Brake shoes',
      '--part',
      'shoes',
      '--order',
      'korbel-1',
      '--amount',
      '980',
      '--currency',
      'CZK',
      '--weight',
      '0.9',
    ],
    [
      'add-row',
      '--date',
      '2026-01-21',
      '--kind',
      'freight',
      '--item',
      'Parcel',
      '--order',
      'korbel-1',
      '--amount',
      '8.40',
    ],
  ];
  for (const step of steps) {
    const { code, out, err } = await run(...step);
    expect([code, err], out).toEqual([0, '']);
    expect(out).toContain('Written, and the check finds nothing new.');
  }
  expect(read('rates.csv')).toBe('date,base,quote,rate,source\n2026-01-20,EUR,CZK,24.6100,a bank\n');
  expect(read('parts.csv')).toContain('\nshoes,Brake shoes,brakes,,,ordered,,,40-60,,,\n');
});

test('a part of a name that is taken is told, with the line that has it', async () => {
  workshop = aWorkshop({ 'parts.csv': 'part,name,system,status\nshoes,Brake shoes,brakes,wanted\n' });
  const { out, code } = await workshop.run(
    'add-part',
    '--part',
    'shoes',
    '--name',
    'Shoes',
    '--system',
    'brakes',
    '--status',
    'wanted',
  );
  expect(out).toContain('content/parts.csv:3:1 error parts/part "shoes" already stands in line 2.');
  expect(code).toBe(1);
});

test('a rate of 0 is refused', async () => {
  workshop = aWorkshop({});
  const { err, code } = await workshop.run(
    'add-rate',
    '--base',
    'EUR',
    '--quote',
    'CZK',
    '--rate',
    '0',
    '--source',
    'a bank',
  );
  expect(err).toContain('--rate: "0" is too small');
  expect(code).toBe(2);
});
