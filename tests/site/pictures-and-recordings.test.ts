import { spawnSync } from 'node:child_process';
import { cpSync, mkdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import type { Browser } from 'playwright-core';
import sharp from 'sharp';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { type Served, serveFolder } from '../../src/cli/serve.ts';
import { launchBrowser } from './browser.ts';
import { filesOf } from './built-site.ts';

const root = fileURLToPath(new URL('../..', import.meta.url));
const place = join(root, '.oilway', 'pictures-and-recordings');
const folder = join(place, 'site');

const CHAPTER = `---
title: Second look
date: 2026-02-07
summary: What is wrong.
recording: ./evening.wav
---

<Step title="Put the seat back" closes={["seat"]} at="0:02">

Done.

</Step>

<Photo src="./hub.jpg" alt="A hub" caption="The hub." credit="Vashti Loor" permission="PLANTED letter"
  mask={["25 25 50 50"]} marks={["circle 60 40 10: The lock nut", "arrow 10 10 40 40: The scribed line"]} />
`;
const CAPTIONS = `WEBVTT

NOTE PLANTED: the gate code is 4711

00:00:00.000 --> 00:00:01.500
<v PLANTED Name>Good evening.

00:00:02.500 --> 00:00:04.000
It sits.
`;

/** Five seconds of silence, 8 bits at 8000 Hz. Source: RIFF WAVE, canonical 44-byte head (memory). */
function silence(): Buffer {
  const head = Buffer.alloc(44);
  head.write('RIFF', 0);
  head.writeUInt32LE(36 + 40000, 4);
  head.write('WAVEfmt ', 8);
  head.writeUInt32LE(16, 16);
  head.writeUInt16LE(1, 20);
  head.writeUInt16LE(1, 22);
  head.writeUInt32LE(8000, 24);
  head.writeUInt32LE(8000, 28);
  head.writeUInt16LE(1, 32);
  head.writeUInt16LE(8, 34);
  head.write('data', 36);
  head.writeUInt32LE(40000, 40);
  return Buffer.concat([head, Buffer.alloc(40000, 128)]);
}

let browser: Browser;
let served: Served;
beforeAll(async () => {
  rmSync(place, { recursive: true, force: true });
  mkdirSync(place, { recursive: true });
  const content = join(place, 'content');
  cpSync(join(root, 'tests', 'series', '_base', 'content'), content, { recursive: true });
  const own = join(content, 'chapters', '02-second-look');
  writeFileSync(join(own, 'chapter.mdx'), CHAPTER);
  writeFileSync(join(own, 'captions.vtt'), CAPTIONS);
  writeFileSync(join(own, 'evening.wav'), silence());
  const drawn =
    '<svg xmlns="http://www.w3.org/2000/svg" width="1200" height="900"><rect width="1200" height="900" fill="#fff"/><rect x="300" y="225" width="600" height="450" fill="#f00"/></svg>';
  await sharp(Buffer.from(drawn)).jpeg().toFile(join(own, 'hub.jpg'));
  const built = spawnSync('node', ['src/cli/main.ts', 'build', '--content', content, '--out', folder], {
    cwd: root,
    encoding: 'utf8',
  });
  expect(built.status, built.stdout + built.stderr).toBe(0);
  browser = await launchBrowser();
  served = await serveFolder(folder);
});
afterAll(async () => {
  await browser?.close();
  await served?.close();
});

async function open(path: string, javaScriptEnabled = true) {
  const context = await browser.newContext({ viewport: { width: 390, height: 900 }, javaScriptEnabled });
  const page = await context.newPage();
  const asked: string[] = [];
  page.on('request', (request) => asked.push(request.url()));
  await page.goto(`${served.address}${path}`, { waitUntil: 'load' });
  return { page, asked };
}

describe('A recording', () => {
  test('is fetched only once the reader asks, and a time in the transcript plays it', async () => {
    const { page, asked } = await open('chapters/second-look/recording/');
    expect(asked.filter((one) => /\.(?:wav|vtt)$/.test(one))).toEqual([]);
    await page.locator('.cues a', { hasText: '0:02' }).click();
    const playing = () =>
      page.locator('#recording').evaluate((player) => (player as HTMLMediaElement).currentTime > 0);
    await expect.poll(playing, { timeout: 10_000 }).toBe(true);
    expect(asked.filter((one) => one.endsWith('/recordings/second-look.wav')).length).toBeGreaterThan(0);
    expect(asked.filter((one) => !one.startsWith(served.address))).toEqual([]);
    await page.context().close();
  });

  test('without JavaScript has its words under the steps, each time a link to its place in the file', async () => {
    const { page } = await open('chapters/second-look/recording/', false);
    const step = page.locator('#put-the-seat-back');
    expect(await step.locator('.cues').textContent()).toMatch(/0:02\s*It sits\./);
    expect(await step.locator('.cues a').getAttribute('href')).toBe('/recordings/second-look.wav#t=2');
    await page.context().close();
  });

  test('is one click from its chapter, and a step’s time leads to its words', async () => {
    const { page } = await open('chapters/second-look/', false);
    const links = await page.$$eval('a[href*="/recording/"]', (all) =>
      all.map((one) => one.getAttribute('href')),
    );
    expect(links).toEqual([
      '/chapters/second-look/recording/',
      '/chapters/second-look/recording/#put-the-seat-back',
    ]);
    await page.context().close();
  });
});

describe('A photo', () => {
  test('shows its marks over the picture on a phone, and says in its caption what they point at', async () => {
    const { page } = await open('chapters/second-look/', false);
    const figure = page.locator('figure', { hasText: 'The hub.' });
    expect(await figure.locator('.mark-words li').allTextContents()).toEqual([
      'The lock nut',
      'The scribed line',
    ]);
    expect(await figure.locator('.mark-figure').allTextContents()).toEqual(['1', '2']);
    const picture = await figure.locator('img').boundingBox();
    const marks = await figure.locator('svg').boundingBox();
    for (const side of ['x', 'y', 'width', 'height'] as const)
      expect(Math.abs((picture?.[side] ?? 0) - (marks?.[side] ?? -9))).toBeLessThan(1.5);
    await page.context().close();
  });

  test('holds nothing of what was masked in any size', async () => {
    const sizes = filesOf(folder).filter((file) => file.startsWith('photos/'));
    expect(sizes.length).toBeGreaterThanOrEqual(3);
    for (const file of sizes) {
      const { data, info } = await sharp(join(folder, file))
        .removeAlpha()
        .raw()
        .toBuffer({ resolveWithObject: true });
      let reddest = 0;
      for (let at = 0; at < data.length; at += info.channels)
        reddest = Math.max(reddest, (data[at] ?? 0) - (data[at + 1] ?? 0));
      expect(reddest, file).toBeLessThan(12);
    }
  });
});

test('the permission, the captions’ notes and the speakers’ names are in no byte of the site', () => {
  for (const file of filesOf(folder))
    expect(readFileSync(join(folder, file)).toString('latin1').includes('PLANTED'), file).toBe(false);
});
