import { execFileSync } from 'node:child_process';
import { cpSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath, pathToFileURL } from 'node:url';
import { describe, expect, test } from 'vitest';
import { boltTension } from '../../../src/calc/bolt-tension.ts';
import { calculators } from '../../../src/calc/index.ts';
import { hazard, hazardIds, hazards } from '../../../src/record/hazards/catalogue.ts';
import { rank } from '../../../src/record/hazards/hazard.ts';
import { KIT, kitIds, kitOf } from '../../../src/record/hazards/kit.ts';
import { SYMBOLS, type SymbolId, symbolSvg } from '../../../src/record/hazards/symbols.ts';

const ASKED_FOR =
  `under-raised-vehicle lifting-engine petrol-vapour fuel-on-hot-engine mixing-fuel engine-indoors rotating-parts
hot-parts battery-gas battery-acid charger-voltage short-circuit ht-spark stored-spring compressed-air cylinder-pressure
cranking-fuel-mist hydraulic-lock runaway-engine oil-starved-overrun brake-dust brake-fluid failed-brakes road-test slow-vehicle
filming-driving towing solvents isocyanate-paint lead-paint grinding drilling hammer-hardened welding-near-tank heating-bearings
tyres-rims starting-fluid used-oil noise manual-lifting working-alone hot-coolant coolant-poison`.split(
    /\s+/,
  );

test('the catalogue holds the hazards of a home vehicle workshop, at least forty', () => {
  expect(hazards.length).toBeGreaterThanOrEqual(40);
  expect(ASKED_FOR.filter((id) => hazard(id) === undefined)).toEqual([]);
  expect(new Set(hazardIds).size).toBe(hazardIds.length);
});

test('hazards stand worst first', () => {
  const ranks = hazards.map((entry) => rank(entry.signal));
  expect(ranks).toEqual([...ranks].sort((a, b) => a - b));
});

describe.each(hazards.map((entry) => [entry.id, entry] as const))('%s', (_, entry) => {
  const words = [
    entry.title,
    entry.harm,
    ...entry.avoid,
    ...entry.ifItHappens,
    entry.callLicensed,
    entry.defersTo,
  ];

  test('says what can happen, how to avoid it, what to do, when to call, and where it was read', () => {
    expect(entry.id).toMatch(/^[a-z]+(-[a-z]+)*$/);
    expect(entry.harm.length).toBeGreaterThan(20);
    expect(entry.avoid.length).toBeGreaterThan(0);
    expect(entry.ifItHappens.length).toBeGreaterThan(0);
    expect(entry.callLicensed).not.toBe('');
    expect(entry.sources.length).toBeGreaterThan(0);
    expect(entry.words.length).toBeGreaterThan(0);
    for (const source of entry.sources) expect(['found', 'memory', 'common practice']).toContain(source.mark);
  });

  test('gives way to the maker, the law or the label, and gives no permission', () => {
    expect(entry.defersTo).toMatch(/maker|law|label|local|authority|rules|practice|notes of the work/);
    expect(words.join(' ')).not.toMatch(
      /\bsafe (if|when|to|for|as long|below|up to)\b|\bsafely\b|(?<!until |if |that |how much |past |where )\byou (can|may)\b|no danger|harmless/i,
    );
  });

  test('speaks in whole sentences without a cry', () => {
    for (const line of [entry.harm, ...entry.avoid, ...entry.ifItHappens, entry.callLicensed])
      expect(line).toMatch(/^[A-Z0-9].*\.$/s);
    expect(words.join(' ')).not.toMatch(/!/);
    expect(entry.defersTo).not.toMatch(/\.$/);
  });

  test('is a notice only where nobody is hurt', () => {
    const injury = /death|burn|crush|blind|poison|injur|hand|eye|wound|fracture/i;
    if (entry.signal === 'NOTICE') expect(`${entry.harm} ${entry.avoid.join(' ')}`).not.toMatch(injury);
  });
});

test('an engine runs outside, or not at all, with the limits of the bodies that set them, the most careful first', () => {
  const entry = hazard('engine-indoors');
  expect(entry?.avoid[0]).toMatch(/^Outside, or not at all/);
  const bodies = entry?.figures?.map((row) => row.body).join(' ') ?? '';
  for (const body of ['HSE', 'NIOSH', 'OSHA', 'ACGIH', 'CPSC', 'AIHA']) expect(bodies).toContain(body);
  expect(entry?.figures?.[0]?.figure).toMatch(/^20 ppm: the more careful value/);
});

test('the drawn paths of every picture have whole sets of figures', () => {
  const NEEDS: Record<string, number> = { m: 2, l: 2, h: 1, v: 1, c: 6, s: 4, q: 4, a: 7, z: 0 };
  for (const [id, picture] of Object.entries(SYMBOLS)) {
    for (const path of ['fill' in picture ? picture.fill : '', 'line' in picture ? picture.line : '']) {
      for (const [whole, command = '', rest = ''] of path.matchAll(/([a-z])([^a-z]*)/gi)) {
        const figures = rest.match(/-?(?:\d+\.?\d*|\.\d+)/g)?.length ?? 0;
        const needs = NEEDS[command.toLowerCase()] ?? Number.NaN;
        expect(needs === 0 ? figures : figures % needs, `${id}: ${whole}`).toBe(0);
      }
    }
  }
});

test('a picture is hidden from screen readers where words stand beside it, and named where none do', () => {
  expect(symbolSvg('flame')).toContain('aria-hidden="true"');
  expect(symbolSvg('flame', { label: true })).toContain('role="img" aria-label="Fire"');
  for (const id of Object.keys(SYMBOLS) as SymbolId[]) expect(symbolSvg(id)).not.toMatch(/ style=| on\w+=/);
});

test('kit is laid out once, and closed goggles stand in for glasses', () => {
  expect(kitOf([['glasses', 'work-gloves'], ['goggles'], ['work-gloves']])).toEqual([
    'goggles',
    'work-gloves',
  ]);
  const worn = new Set(hazards.flatMap((entry) => entry.wear));
  expect(
    kitIds.filter((id) => !worn.has(id)),
    'kit that no hazard asks for',
  ).toEqual([]);
  for (const id of kitIds) expect(KIT[id].name).not.toBe('');
});

test('one more hazard is one entry: gate, note and catalogue follow', () => {
  const copy = mkdtempSync(join(tmpdir(), 'oilway-'));
  try {
    const folder = fileURLToPath(new URL('../../../src/record/hazards', import.meta.url));
    cpSync(folder, join(copy, 'hazards'), { recursive: true });
    writeFileSync(join(copy, 'package.json'), '{"type":"module"}');
    const file = join(copy, 'hazards/road.ts');
    const entry = `{ id: 'geese', signal: 'WARNING', title: 'Geese in the yard', symbol: 'alone', harm: 'Bitten calves and a fall.',
      avoid: ['Shut the gate.'], wear: [], ifItHappens: ['Walk, do not run.'], callLicensed: 'Call the farmer.', defersTo: 'the farmer’s rules',
      sources: [{ title: 'Yard', publisher: 'yard', mark: 'common practice' }], words: ['goose|geese + yard|gate'] },`;
    const text = readFileSync(file, 'utf8').replace('export const roadHazards: Hazard[] = [', `$&\n${entry}`);
    writeFileSync(file, text);
    const at = (name: string) => JSON.stringify(pathToFileURL(join(copy, 'hazards', name)).href);
    const script = `const { findHazards } = await import(${at('find.ts')});
      const { noteText } = await import(${at('note-text.ts')});
      const { hazardIds } = await import(${at('catalogue.ts')});
      console.log(JSON.stringify([findHazards({ text: 'Two geese stood in the yard.' }).map((one) => one.hazard),
        noteText(['geese']).split('\\n')[0], hazardIds.includes('geese')]));`;
    const out = execFileSync(process.execPath, ['--input-type=module', '-e', script], { encoding: 'utf8' });
    expect(JSON.parse(out)).toEqual([
      ['geese'],
      'WARNING: Geese in the yard. Bitten calves and a fall.',
      true,
    ]);
  } finally {
    rmSync(copy, { recursive: true, force: true });
  }
});

test('bolt tension shows the note of a bolt that gives way, and the maker’s torque comes first', () => {
  expect(boltTension.hazards).toContain('overstretched-bolt');
  const entry = hazard('overstretched-bolt');
  expect(entry?.avoid[0]).toMatch(/^Use the vehicle maker’s torque/);
  expect(entry?.defersTo).toMatch(/^the vehicle maker’s torque/);
});

test('every hazard that a calculator names stands in the catalogue', () => {
  for (const one of calculators)
    for (const id of one.hazards) expect(hazard(id), `${one.id}: ${id}`).toBeDefined();
});
