import { writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { afterEach, describe, expect, test } from 'vitest';
import { asAttributes } from '../../../src/cli/hazards.ts';
import { aWorkshop } from '../../cli/a-workshop.ts';

let workshop: ReturnType<typeof aWorkshop> | undefined;
afterEach(() => workshop?.clear());

const CHAPTER = 'chapters/01-first-look/chapter.mdx';
const chapter = (attributes: string) => `---
title: First look
date: 2026-01-17
summary: What is there.
---

<Step title="Clean the jets" ${attributes}>

Blow every passage through with the air line.

</Step>
`;
const withStep = (attributes: string) => aWorkshop({ [CHAPTER]: chapter(attributes) });

describe('npm run hazards', () => {
  test('lists place, words and what to write where nobody sits at the terminal, and fails on a warning', async () => {
    workshop = withStep('');
    const { code, out } = await workshop.run('hazards');
    expect(code).toBe(1);
    expect(out).toContain('content/chapters/01-first-look/chapter.mdx:9:1\n');
    expect(out).toContain('WARNING: Compressed air, and its note is not here. Add "compressed-air"');
    expect(out).toMatch(/finding.*, 0 hazards ruled out with a reason\.\n$/);
    expect(workshop.read(CHAPTER)).toBe(chapter(''));
  });

  test('is content once it is declared or ruled out, and counts what was ruled out', async () => {
    workshop = withStep('hazards={["compressed-air"]} notHazard={{"petrol-vapour": "The body was dry."}}');
    const { code, out } = await workshop.run('hazards', '--list');
    expect(out).toContain('0 findings, 1 hazard ruled out with a reason.');
    expect(code).toBe(0);
    expect((await workshop.run('check')).out).toContain('1 hazard ruled out with a reason.');
  });

  test('measures the gate on labelled sentences, in all and by hazard', async () => {
    workshop = aWorkshop({});
    const rows = [
      { text: 'Weld the tank.', must: ['welding-near-tank', 'petrol-vapour'], may: [] },
      { text: 'Read the plate.', must: ['noise'], may: [] },
    ];
    const { code, out } = await workshop.run('hazards', '--measure', '--set', workshopFile(workshop, rows));
    expect(code).toBe(0);
    expect(out).toContain('2 labelled sentences');
    expect(out).toMatch(/welding-near-tank\s+1\.000\s+1\/1/);
    expect(out).toMatch(/noise\s+0\.000\s+0\/1/);
  });

  test('tells wrong use', async () => {
    workshop = aWorkshop({});
    expect((await workshop.run('hazards', '--set', 'x.jsonl')).code).toBe(2);
    expect((await workshop.run('hazards', '--measure', '--set', 'x.jsonl')).err).toContain(
      'There is no file "x.jsonl"',
    );
    expect((await workshop.run('hazards', '--content', 'nowhere')).err).toContain(
      'There is no folder "nowhere"',
    );
  });
});

function workshopFile(place: ReturnType<typeof aWorkshop>, rows: readonly object[]): string {
  writeFileSync(join(place.root, 'set.jsonl'), rows.map((row) => JSON.stringify(row)).join('\n'));
  return 'set.jsonl';
}

test('what to write beside a step is plain data, with the author’s reason kept whole', () => {
  expect(asAttributes(['noise'], new Map([['drilling', 'A "hand" drill\\brace.']]))).toBe(
    'hazards={["noise"]} notHazard={{"drilling": "A \\"hand\\" drill\\\\brace."}}',
  );
});
