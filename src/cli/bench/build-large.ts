import { readdir, rm } from 'node:fs/promises';
import { join } from 'node:path';
import type { Measured } from '../bench.ts';
import type { Io } from '../command.ts';
import { writeBareSite } from './bare-site.ts';
import { LARGE, type MadeSize, scaled, writeMadeSeries } from './made-series.ts';
import { median, type Timed, timed } from './timed.ts';

const ROUNDS = 3;

async function pagesIn(folder: string): Promise<number> {
  return (await readdir(folder, { recursive: true })).filter((one) => one.endsWith('.html')).length;
}

async function oneSize(io: Io, size: MadeSize): Promise<string> {
  const bench = join(io.root, '.oilway', 'bench');
  const content = join(bench, `made-${size.chapters}`);
  const out = join(bench, 'out');
  const bare = join(bench, 'bare');
  await writeMadeSeries(content, size);
  const ours = () =>
    timed('node', ['src/cli/main.ts', 'build', '--content', content, '--out', out], { cwd: io.root });
  // The first build makes the photos, which have a budget of their own, and tells how many pages there are.
  const first = await ours();
  if (first.code !== 0)
    return `The build of ${size.chapters} chapters ended with ${first.code}: ${first.said.slice(-600)}`;
  const pages = await pagesIn(out);
  await writeBareSite(bare, content, pages - size.chapters);
  const theirs = () =>
    timed(join(io.root, 'node_modules/.bin/astro'), ['build', '--silent', '--root', bare], { cwd: bare });
  const pairs: [Timed, Timed][] = [];
  for (let round = 0; round < ROUNDS; round += 1) {
    await rm(join(bare, 'dist'), { recursive: true, force: true });
    await rm(join(bare, 'node_modules'), { recursive: true, force: true });
    pairs.push([await ours(), await theirs()]);
  }
  const failed = pairs.flat().find((one) => one.code !== 0);
  if (failed)
    return `A build of ${size.chapters} chapters ended with ${failed.code}: ${failed.said.slice(-600)}`;
  const seconds = (which: 0 | 1) => median(pairs.map((pair) => pair[which].seconds)).toFixed(1);
  const peak = (which: 0 | 1) => median(pairs.map((pair) => pair[which].peak_MB ?? 0)).toFixed(0);
  const ratio = median(pairs.map(([a, b]) => a.seconds / b.seconds)).toFixed(2);
  return `${size.chapters} chapters, ${pages} pages: ${seconds(0)} s, ${peak(0)} MB; bare ${seconds(1)} s, ${peak(1)} MB: ${ratio} times (budget 1.25 at 1000)`;
}

/** Whole builds, ours and a bare one of as many pages in turn. Takes several minutes. */
export async function measure(io: Io): Promise<Measured> {
  const lines: string[] = [];
  for (const size of [scaled(100), scaled(300), LARGE]) lines.push(await oneSize(io, size));
  return { lines };
}
