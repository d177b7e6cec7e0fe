import { expect, test } from 'vitest';
import { createReader, readSeries } from '../../src/record/read-series.ts';
import { chapter, madeSeries, put } from './made.ts';

test('Reading again after one edit gives what reading afresh gives', async () => {
  const content = madeSeries();
  const reader = createReader(content);
  const first = await reader.read();
  put(
    content,
    'chapters/03-third/chapter.mdx',
    chapter(
      'Third',
      '2026-03-07',
      '<Step title="Lift it" torque="22 Nm">\n\nA <Part id="nothing" />.\n\n</Step>',
    ),
  );
  put(content, 'ledger.csv', 'date,kind,item,amount\n2026-01-20,part,Shoes,12.5o\n');
  const second = await reader.read();
  expect(first.problems).toEqual([]);
  expect(second).toEqual(await readSeries(content));
  expect(second.problems.map((one) => one.rule)).toEqual(['chapters/part', 'ledger/amount']);
  put(content, 'ledger.csv', 'date,kind,item,amount\n2026-01-20,part,Shoes,12.50\n');
  expect((await reader.read()).problems.map((one) => one.rule)).toEqual(['chapters/part']);
});

test('A chapter that was not edited is not read again', async () => {
  const content = madeSeries();
  const reader = createReader(content);
  const [first] = (await reader.read()).series?.chapters ?? [];
  put(content, 'chapters/03-third/chapter.mdx', chapter('Third', '2026-03-07'));
  const [again] = (await reader.read()).series?.chapters ?? [];
  expect(again?.steps).toBe(first?.steps);
});

test('A change of the machine’s sheet changes the figures of every chapter', async () => {
  const content = madeSeries({
    'chapters/03-third/chapter.mdx': chapter('Third', '2026-03-07', '<Qty of="machine.engine.bore" />'),
  });
  const reader = createReader(content);
  const bore = async () =>
    (await reader.read()).series?.chapters[2]?.quantities.get('machine.engine.bore')?.text;
  expect(await bore()).toBe('54\u00a0mm');
  put(
    content,
    'machine.yaml',
    'name: Tarn\nengine:\n  bore: { label: Bore, as_built: "54 mm", altered: "54.50 mm" }\n',
  );
  expect(await bore()).toBe('54.50\u00a0mm');
});

test('A story’s markup and code become words', async () => {
  const fault = (body: string) =>
    `---\ntitle: T\nsystem: S\nsymptom: Y\nevents:\n  - { chapter: 01-first-look, date: 2026-01-17, what: found, text: X, severity: nuisance }\n---\n\n${body}\n`;
  const content = madeSeries({
    'faults/a.md': fault(
      '<script>alert(1)</script>\n\nText <img src=x onerror=alert(1)> [x](javascript:alert(1)) {1 + 1} | **bold**\n\n| a |\n|---|\n| b |',
    ),
  });
  const story = (await readSeries(content)).series?.faults[0]?.story ?? '';
  expect(story).not.toMatch(/<script|<img|onerror|javascript:/);
  expect(story).toContain('<strong>bold</strong>');
  expect(story).toContain('{1 + 1}');
  expect(story).toContain('<td>b</td>');
});

test('Today is as_of, else the newest released chapter’s day; never the clock', async () => {
  expect((await readSeries(madeSeries())).series?.asOf).toBe('2026-02-07');
  const held = { 'chapters/03-third/chapter.mdx': chapter('Third', '2026-03-07', 'Words.', 'held: true\n') };
  expect((await readSeries(madeSeries(held))).series?.asOf).toBe('2026-02-07');
});

test('Nothing that can stand in a file makes the reader throw', async () => {
  const wild = [
    '---\n',
    '{{{',
    '<',
    '\u0001',
    '- - -',
    '"',
    '&a *a',
    '---\n---\n---',
    'a: &x [*x]',
    '<Step',
    '<Step {...{}}/>',
    '</>',
    '\\',
    '{/*',
    '`',
    '|',
    '%',
  ];
  for (const text of wild) {
    const content = madeSeries({
      'series.yaml': text,
      'machine.yaml': text,
      'ledger.csv': text,
      'faults/a.md': text,
      'chapters/02-second-look/chapter.mdx': text,
      'supporters.csv': text,
      'released.yaml': text,
    });
    const { problems } = await readSeries(content);
    expect(problems.length, text).toBeGreaterThan(0);
  }
});
