import { existsSync } from 'node:fs';
import { mkdir, readdir, readFile, rename, rm, stat, writeFile } from 'node:fs/promises';
import { basename, dirname, join, relative, resolve } from 'node:path';
import { performance } from 'node:perf_hooks';
import { parseArgs } from 'node:util';
import { gzipSync } from 'node:zlib';
import { build as astroBuild } from 'astro';
import { derivePhotos } from '../photos/derive.ts';
import { offTheRoad } from '../record/off-the-road.ts';
import { asPublished } from '../record/publish.ts';
import { createReader, type Reading } from '../record/read-series.ts';
import { counted, grouped } from '../record/report.ts';
import { type Command, UsageError } from './command.ts';
import { handOver, originals, photoCache } from './site.ts';

/** "/van" and "van/" are both "/van/". */
export function basePath(written: string): string {
  const inner = written.replace(/^\/+|\/+$/g, '');
  if (!/^[\w~./-]*$/.test(inner)) throw new UsageError(`"${written}" is not a path. Write it as /van/.`);
  return inner === '' ? '/' : `/${inner}/`;
}

interface Page {
  path: string;
  /** Bytes that a reader's browser fetches to show it: the page, its styles and scripts compressed, as a host sends them. */
  bytes: number;
}

/** Every file below a folder, as paths from it. */
async function filesBelow(folder: string): Promise<string[]> {
  const entries = await readdir(folder, { recursive: true, withFileTypes: true });
  return entries.filter((one) => one.isFile()).map((one) => relative(folder, join(one.parentPath, one.name)));
}

/** Pages weighed to find the heaviest: among the largest as they lie on the disk, since packing a whole site takes seconds. */
const WEIGHED = 20;

async function weigh(
  folder: string,
  base: string,
): Promise<{ total: number; heaviest: Page | undefined; pages: number }> {
  const files = await filesBelow(folder);
  const sizes = new Map<string, number>();
  for (const file of files) sizes.set(file, (await stat(join(folder, file))).size);
  const total = [...sizes.values()].reduce((sum, one) => sum + one, 0);
  const zipped = async (file: string) => gzipSync(await readFile(join(folder, file))).length;
  const pages = files.filter((one) => one.endsWith('.html'));
  const largest = [...pages].sort((a, b) => (sizes.get(b) ?? 0) - (sizes.get(a) ?? 0)).slice(0, WEIGHED);
  let heaviest: Page | undefined;
  for (const path of largest) {
    const html = await readFile(join(folder, path), 'utf8');
    let bytes = await zipped(path);
    for (const [, href] of html.matchAll(/(?:href|src)="([^"]+\.(?:css|js))"/g)) {
      const file = href?.startsWith(base) ? href.slice(base.length) : undefined;
      if (file !== undefined && sizes.has(file)) bytes += await zipped(file);
    }
    if (!heaviest || bytes > heaviest.bytes) heaviest = { path, bytes };
  }
  return { total, heaviest, pages: pages.length };
}

const size = (bytes: number) =>
  bytes < 1e6 ? `${(bytes / 1e3).toFixed(1)} kB` : `${(bytes / 1e6).toFixed(1)} MB`;

/** Puts a finished folder in the place of the last good one; the old one goes only once the new one stands. */
async function swap(next: string, out: string): Promise<void> {
  const old = `${next}.old`;
  if (existsSync(out)) await rename(out, old);
  await rename(next, out);
  await rm(old, { recursive: true, force: true });
}

function summary(reading: Reading, seconds: number, weight: Awaited<ReturnType<typeof weigh>>): string {
  const { series, problems } = reading;
  if (!series) return '';
  const shown = asPublished(series);
  const steps = shown.chapters.reduce((sum, one) => sum + one.steps.length, 0);
  const pictures = shown.chapters.reduce((sum, one) => sum + one.photos.length, 0);
  const held = series.chapters.length - shown.chapters.length;
  const lines = [
    ['Chapters', `${shown.chapters.length}${held ? ` and ${held} held` : ''}`],
    ['Steps', String(steps)],
    ['Pictures', String(pictures)],
    ['Ledger', counted.ledger(shown)],
    ['Open faults', counted.openFaults(shown)],
    ['Problems', counted.problems(problems)],
    ['Time', `${seconds.toFixed(1)} s`],
    ['Site', `${size(weight.total)} in ${weight.pages} pages`],
    [
      'Heaviest page',
      weight.heaviest
        ? `${weight.heaviest.path}, ${size(weight.heaviest.bytes)} compressed, without pictures`
        : 'none',
    ],
  ];
  return `\n${lines.map(([name, value]) => `${name?.padEnd(15)}${value}`).join('\n')}\n${offTheRoad(shown).text}\n`;
}

export const command: Command = {
  name: 'build',
  summary: 'check the series and build its site into dist/',
  usage: `
npm run build -- [--base PATH] [--site ADDRESS] [--out FOLDER] [--content FOLDER]

  --base PATH        the site lives below a path of its domain, such as /van/ (default /)
  --site ADDRESS     the domain, such as https://example.org; feeds and the sitemap need it
  --out FOLDER       where the site goes (default dist)
  --content FOLDER   the author's folder (default content)

With errors in the author's files nothing is built and the last good site stays where it is.`,

  async run(args, io) {
    const { values } = parseArgs({
      args: [...args],
      options: {
        base: { type: 'string', default: process.env['OILWAY_BASE'] ?? '/' },
        site: { type: 'string' },
        out: { type: 'string', default: 'dist' },
        content: { type: 'string', default: process.env['OILWAY_CONTENT'] ?? 'content' },
      },
    });
    const base = basePath(values.base);
    if (values.site !== undefined && !URL.canParse(values.site)) {
      throw new UsageError(`"${values.site}" is not a web address. Write it as https://example.org.`);
    }
    const started = performance.now();
    const content = resolve(io.root, values.content);
    const out = resolve(io.root, values.out);
    const reading = await createReader(content, { root: io.root }).read();
    if (reading.problems.length > 0) io.out(grouped(reading.problems, { root: io.root }));
    if (!reading.series || reading.problems.some((one) => one.severity === 'error')) return 1;
    const cache = photoCache(io.root);
    const photos = await derivePhotos(originals(asPublished(reading.series)), { cache, root: io.root });
    if (photos.problems.length > 0) {
      io.out(grouped(photos.problems, { root: io.root }));
      return 1;
    }

    const next = join(dirname(out), `.${basename(out)}.next`);
    await rm(next, { recursive: true, force: true });
    handOver({ content, reading, photos });
    process.env['OILWAY_CONTENT'] = content;
    // Whatever the shell says: pages show some things only while writing.
    process.env['NODE_ENV'] = 'production';
    try {
      await astroBuild({
        root: io.root,
        base,
        outDir: next,
        logLevel: 'warn',
        ...(values.site ? { site: values.site } : {}),
      });
    } catch (error) {
      await rm(next, { recursive: true, force: true });
      throw error;
    }
    await swap(next, out);
    await mkdir(join(io.root, '.oilway'), { recursive: true });
    await writeFile(join(io.root, '.oilway', 'built.json'), JSON.stringify({ out, base }));
    io.out(summary(reading, (performance.now() - started) / 1000, await weigh(out, base)));
    return 0;
  },
};
