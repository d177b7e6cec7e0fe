import { spawnSync } from 'node:child_process';
import { appendFileSync, cpSync, existsSync, mkdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { gunzipSync } from 'node:zlib';
import { beforeAll, describe, expect, test } from 'vitest';
import { filesOf } from './built-site.ts';

const root = fileURLToPath(new URL('../..', import.meta.url));
const base = join(root, 'tests', 'series', '_base', 'content');

/** Amounts and names that stand nowhere else. Goods 171.31 and 10.00, freight 8.42, one sale of 23.07. */
const FILES = {
  'orders.csv': 'order,date,supplier,note\nwicket-order,2026-01-18,Marlpit Stores,Came by the tollkeeper\n',
  'parts.csv':
    'part,name,system,status,estimate\nshoes,Front shoes,brakes,fitted,\ngasket,Head gasket,engine,wanted,61.43-77.29\nhorn,Horn,electrics,wanted,20\n',
  'ledger.csv': `date,kind,item,part,order,supplier,amount,chapter
2026-01-20,part,Sallowbrush shoes,shoes,wicket-order,,171.31,01-first-look
2026-01-20,part,Plain springs,,wicket-order,,10.00,01-first-look
2026-01-20,freight,Fenland post,,wicket-order,,8.42,01-first-look
2026-01-22,sale,Ploverwing badge,,,Gorsedyke collector,23.07,02-second-look
`,
};

const LINES = [
  'Marlpit Stores',
  'tollkeeper',
  'Sallowbrush',
  'Fenland',
  'Ploverwing',
  'Gorsedyke',
  'wicket-order',
  '171.31',
  '61.43',
];
const TOTALS = ['166.66', '189.73'];

function siteWith(publish: string): { words: string; folder: string } {
  const place = join(root, '.oilway', `ledger-${publish}`);
  const content = join(place, 'content');
  const folder = join(place, 'site');
  rmSync(place, { recursive: true, force: true });
  mkdirSync(place, { recursive: true });
  cpSync(base, content, { recursive: true });
  appendFileSync(join(content, 'series.yaml'), `\npublish_ledger: ${publish}\n`);
  for (const [name, text] of Object.entries(FILES)) writeFileSync(join(content, name), text);
  const built = spawnSync('node', ['src/cli/main.ts', 'build', '--content', content, '--out', folder], {
    cwd: root,
    encoding: 'utf8',
  });
  expect(built.status, built.stdout + built.stderr).toBe(0);
  const words = filesOf(folder)
    .map((file) => {
      const bytes = readFileSync(join(folder, file));
      return `${file}\n${(bytes[0] === 0x1f && bytes[1] === 0x8b ? gunzipSync(bytes) : bytes).toString('utf8')}`;
    })
    .join('\n');
  return { words, folder };
}

describe('A ledger of which every line is published', () => {
  let site: ReturnType<typeof siteWith>;
  beforeAll(() => {
    site = siteWith('lines');
  }, 120_000);
  test('shows rows, suppliers, orders and totals', () => {
    for (const word of [...LINES, ...TOTALS]) expect(site.words.includes(word), word).toBe(true);
    for (const file of [
      'ledger.csv',
      'ledger.json',
      'ledger.schema.json',
      'totals.csv',
      'ledger/index.html',
      'orders/wicket-order/index.html',
    ])
      expect(existsSync(join(site.folder, 'costs', file)), file).toBe(true);
  });
});

describe('A ledger of which only totals are published', () => {
  let site: ReturnType<typeof siteWith>;
  beforeAll(() => {
    site = siteWith('totals');
  }, 120_000);
  test('shows what the series and its chapters cost', () => {
    for (const word of TOTALS) expect(site.words.includes(word), word).toBe(true);
  });
  test.each(LINES)('has "%s" in no byte of any file', (word) => {
    expect(site.words.includes(word)).toBe(false);
  });
  test('has no ledger, no orders and no rows to take away', () => {
    for (const file of ['ledger.csv', 'ledger.json', 'ledger', 'orders'])
      expect(existsSync(join(site.folder, 'costs', file)), file).toBe(false);
    expect(existsSync(join(site.folder, 'costs', 'totals.csv'))).toBe(true);
  });
});

describe('A ledger of which nothing is published', () => {
  let site: ReturnType<typeof siteWith>;
  beforeAll(() => {
    site = siteWith('nothing');
  }, 120_000);
  test.each([...LINES, ...TOTALS])('has "%s" in no byte of any file', (word) => {
    expect(site.words.includes(word)).toBe(false);
  });
  test('has no page of costs, and still its parts list', () => {
    expect(existsSync(join(site.folder, 'costs'))).toBe(false);
    expect(site.words.includes('Front shoes')).toBe(true);
  });
});
