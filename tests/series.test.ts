import { cpSync, existsSync, mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { describe, expect, test } from 'vitest';
import { told } from '../src/cli/check.ts';
import { readSeries } from '../src/record/read-series.ts';
import { RULES } from '../src/record/rules.ts';

/**
 * One folder a situation: its files laid over those of _base (or alone, with "base": false in case.json), and the exact
 * text that the check prints. UPDATE=1 writes the text anew; the difference is then reviewed.
 */
const FOLDER = fileURLToPath(new URL('series/', import.meta.url));
const situations = readdirSync(FOLDER, { withFileTypes: true })
  .filter((entry) => entry.isDirectory() && entry.name !== '_base')
  .map((entry) => entry.name);

interface Case {
  base?: boolean;
  limits?: { bytes?: number; rows?: number; pixels?: number };
}

async function check(situation: string): Promise<{ text: string; code: number }> {
  const caseFile = join(FOLDER, situation, 'case.json');
  const { base = true, limits = {} }: Case = existsSync(caseFile)
    ? JSON.parse(readFileSync(caseFile, 'utf8'))
    : {};
  const root = mkdtempSync(join(tmpdir(), 'oilway-'));
  try {
    const content = join(root, 'content');
    if (base) cpSync(join(FOLDER, '_base', 'content'), content, { recursive: true });
    cpSync(join(FOLDER, situation, 'content'), content, { recursive: true });
    return told(await readSeries(content, { root, limits }), { root, json: false });
  } finally {
    rmSync(root, { recursive: true, force: true });
  }
}

describe('The check prints exactly what each situation expects', () => {
  test.each(situations)('%s', async (situation) => {
    const { text, code } = await check(situation);
    const file = join(FOLDER, situation, 'expected.txt');
    const update = process.env['UPDATE'] === '1' || (!existsSync(file) && !process.env['CI']);
    if (update) writeFileSync(file, text);
    expect(existsSync(file), `${situation} lacks expected.txt`).toBe(true);
    expect(text).toBe(readFileSync(file, 'utf8'));
    expect(code).toBe(/ error \S+\/\S+ /.test(text) ? 1 : 0);
  });

  test('the base that situations are laid over has no problem', async () => {
    const { problems } = await readSeries(join(FOLDER, '_base', 'content'));
    expect(problems).toEqual([]);
  });
});

const printed = (situation: string): string[] => {
  const file = join(FOLDER, situation, 'expected.txt');
  if (!existsSync(file)) return [];
  return [...readFileSync(file, 'utf8').matchAll(/^\S.* (?:error|warning) ([a-z-]+\/[\w-]+) /gm)].map(
    (found) => found[1] ?? '',
  );
};

describe('The catalogue of rules and the situations agree', () => {
  test.each([...RULES])('%s is shown by its situation', (id, { fixture }) => {
    expect(situations).toContain(fixture);
    expect(printed(fixture)).toContain(id);
  });

  test('every problem that a situation prints has its rule in the catalogue', () => {
    for (const situation of situations)
      for (const id of printed(situation)) expect([...RULES.keys()]).toContain(id);
  });
});
