import { copyFileSync, existsSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { DISK } from '../../src/cli/write-up-disk.ts';
import { readProposals } from '../../src/notes/proposals-file.ts';
import { failing, MORE, NOTES, writeUpShop } from './write-up-shop.ts';

const newChapter = async () => {
  const shop = writeUpShop({ notes: { 'evening.md': NOTES } });
  return { shop, args: ['write-up', shop.files[0] ?? ''] };
};
const grownChapter = async () => {
  const { shop, args } = await newChapter();
  await shop.run(args);
  shop.note('evening.md', MORE);
  return { shop, args };
};
const taken = async () => {
  const { shop, args } = await grownChapter();
  await shop.run(args);
  const file = shop.path('proposals.yaml');
  writeFileSync(file, readFileSync(file, 'utf8').replace('consent: ""', 'consent: yes'));
  return { shop, args: ['write-up', '--take', shop.folder().split('/').at(-1) ?? '', '--all'] };
};
const SCENES = [
  ['a new chapter', newChapter],
  ['a chapter that grows', grownChapter],
  ['proposals that are taken', taken],
] as const;

/** What only a run that went through leaves. */
const leftovers = (names: Iterable<string>): string[] =>
  [...names].filter((name) => name.includes('.write-up-') || name.endsWith('.new'));

test.each(SCENES)(
  'a full disk at any write of %s is told with the file, and leaves nothing half there',
  async (_, scene) => {
    for (let at = 1; ; at++) {
      const { shop, args } = await scene();
      const before = shop.all();
      const { disk, done } = failing(DISK, at, 'full');
      const { code, err } = await shop.run(args, { disk });
      if (done() < at) {
        expect(at).toBeGreaterThan(3);
        shop.clear();
        break;
      }
      expect(code, `write ${at}: ${err}`).toBe(1);
      expect(err).toMatch(/content\/\S+ could not be written: the disk is full\./);
      const after = shop.all();
      expect(leftovers(after.keys())).toEqual([]);
      if (args[1] !== '--take') expect(after).toEqual(before);
      else {
        // Each register has its rows and is noted as taken, or neither.
        const noted = [
          ...(after.get(`chapters/${args[2]}/proposals.yaml`) ?? '').matchAll(/done: (\S+?)(?::\d+)?$/gm),
        ];
        for (const [, file = ''] of noted) expect(after.has(file), file).toBe(true);
        for (const [name, text] of after)
          if (before.get(name) !== text && !name.endsWith('proposals.yaml'))
            expect(noted.map(([, file]) => file)).toContain(name);
        expect(err).toContain('Not taken:');
      }
      // With room again, the same command goes through.
      expect((await shop.run(args)).code).toBe(0);
      shop.clear();
    }
  },
  120_000,
);

test.each(SCENES)(
  'killed at any action on the disk, %s is whole after the next run',
  async (_, scene) => {
    const { shop: whole, args: once } = await scene();
    await whole.run(once);
    const expected = whole.all();
    whole.clear();
    for (let at = 1; ; at++) {
      const { shop, args } = await scene();
      const before = shop.all();
      const { disk, done } = failing(DISK, at, 'killed');
      await shop.run(args, { disk }).catch(() => undefined);
      if (done() < at) {
        expect(at).toBeGreaterThan(5);
        shop.clear();
        break;
      }
      // Every file of the author's is as it was or as it will be: nothing is half there.
      for (const [name, text] of shop.all()) {
        if (name.includes('.write-up-')) continue;
        // Proposals are noted as taken one register after the other.
        if (args[1] === '--take' && name.endsWith('proposals.yaml'))
          expect(readProposals(text).kept.length).toBe(readProposals(before.get(name) ?? '').kept.length);
        else expect([before.get(name), expected.get(name)], `action ${at}: ${name}`).toContain(text);
      }
      await shop.run(args);
      expect(leftovers(shop.all().keys())).toEqual([]);
      expect([...shop.all()], `action ${at}`).toEqual([...expected]);
      expect(existsSync(join(shop.content, 'chapters'))).toBe(true);
      shop.clear();
    }
  },
  240_000,
);

test('killed right when a new file is in its place, the run after takes nothing a second time', async () => {
  const { shop: whole, args: once } = await taken();
  await whole.run(once);
  const expected = whole.all();
  whole.clear();
  let tried = 0;
  for (let at = 1; ; at++) {
    const { shop, args } = await taken();
    let dead = false;
    let placed = 0;
    const unlessDead =
      <A extends unknown[]>(work: (...args: A) => Promise<void>) =>
      async (...args: A): Promise<void> => {
        if (dead) throw new Error('killed');
        await work(...args);
      };
    const disk = {
      makeFolder: unlessDead(DISK.makeFolder),
      write: unlessDead(DISK.write),
      rename: unlessDead(DISK.rename),
      remove: unlessDead(DISK.remove),
      place: unlessDead(async (from: string, to: string) => {
        placed += 1;
        dead = placed === at;
        // The file has both of its names when the process goes.
        if (dead) copyFileSync(from, to);
        if (dead) throw new Error('killed');
        await DISK.place(from, to);
      }),
    };
    await shop.run(args, { disk }).catch(() => undefined);
    if (!dead) {
      shop.clear();
      break;
    }
    tried += 1;
    await shop.run(args);
    expect([...shop.all()], `new file ${at}`).toEqual([...expected]);
    shop.clear();
  }
  expect(tried).toBeGreaterThan(1);
}, 120_000);
