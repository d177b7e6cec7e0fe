import { spawn } from 'node:child_process';
import { mkdirSync, mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { setTimeout as wait } from 'node:timers/promises';
import { fileURLToPath } from 'node:url';
import sharp from 'sharp';
import { afterAll, expect, test } from 'vitest';
import { put } from '../made-picture.ts';

const COUNT = 24;
/** A few each time; OILWAY_KILLS=50 for a thorough run of a minute and a half. */
const KILLS = Number(process.env['OILWAY_KILLS'] ?? 6);
const root = mkdtempSync(join(tmpdir(), 'killed-'));
afterAll(() => rmSync(root, { recursive: true }));

const command = fileURLToPath(new URL('./take-in-process.ts', import.meta.url));

/** Runs the taking in as its own process; killed after `after_ms`, if it still runs. */
async function run(after_ms?: number): Promise<boolean> {
  const child = spawn(process.execPath, [command, root], { stdio: ['ignore', 'pipe', 'inherit'] });
  const ended = new Promise<number | null>((resolve) => {
    child.on('exit', (code) => resolve(code));
  });
  if (after_ms === undefined) return (await ended) === 0;
  // Node itself starts at its own pace; the clock runs from the first picture on.
  await Promise.race([ended, new Promise((resolve) => child.stdout.once('data', resolve))]);
  const killed = await Promise.race([ended.then(() => false), wait(after_ms, true)]);
  if (killed) child.kill('SIGKILL');
  await ended;
  return killed;
}

test(`killed at ${KILLS} random moments, no picture is lost, half there or taken twice`, async () => {
  const chapter = join(root, 'chapter');
  mkdirSync(chapter);
  mkdirSync(join(root, 'camera'));
  writeFileSync(join(chapter, 'chapter.mdx'), '---\ntitle: First\n---\n\nText.\n');
  for (let at = 0; at < COUNT; at += 1) {
    // Noise: no two are alike.
    const noise = await sharp({
      create: {
        width: 24,
        height: 18,
        channels: 3,
        background: '#888',
        noise: { type: 'gaussian', mean: 128, sigma: 60 },
      },
    })
      .png()
      .toBuffer();
    const half = Math.floor(at / 2);
    await put(
      join(root, 'camera'),
      `${at}.jpg`,
      sharp(noise)
        .resize(1200, 900)
        .withExif({ IFD2: { DateTimeOriginal: `2026:03:07 10:00:${String(half).padStart(2, '0')}` } })
        .jpeg(),
    );
  }
  let random = 20260307;
  let kills = 0;
  for (let round = 0; kills < KILLS && round < 4 * KILLS; round += 1) {
    random = (random * 1103515245 + 12345) % 2 ** 31;
    if (await run(random % 400)) kills += 1;
    for (const name of readdirSync(chapter).filter((one) => one.endsWith('.jpg')))
      await sharp(join(chapter, name)).stats();
    if (pictures(chapter) === COUNT) {
      // All in: begin again, so that each kill falls into work.
      rmSync(join(root, 'scratch'), { recursive: true, force: true });
      for (const name of readdirSync(chapter).filter((one) => one.endsWith('.jpg')))
        rmSync(join(chapter, name));
      writeFileSync(join(chapter, 'chapter.mdx'), '---\ntitle: First\n---\n\nText.\n');
    }
  }
  expect(kills).toBe(KILLS);
  expect(await run()).toBe(true);
  expect(pictures(chapter)).toBe(COUNT);
  const text = readFileSync(join(chapter, 'chapter.mdx'), 'utf8');
  const lines = [...text.matchAll(/src="\.\/([^"]+)"/g)].map(([, name]) => name).sort();
  expect(lines).toEqual(
    readdirSync(chapter)
      .filter((one) => one.endsWith('.jpg'))
      .sort(),
  );
  expect(text.startsWith('---\ntitle: First\n---\n\nText.\n')).toBe(true);
  expect(readdirSync(join(root, 'scratch')).filter((name) => name.endsWith('.part'))).toEqual([]);
}, 180_000);

const pictures = (folder: string): number => readdirSync(folder).filter((one) => one.endsWith('.jpg')).length;
