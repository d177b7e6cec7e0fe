import { spawn } from 'node:child_process';
import { appendFile, readdir } from 'node:fs/promises';
import { join } from 'node:path';
import { performance } from 'node:perf_hooks';
import type { Measured } from '../bench.ts';
import type { Io } from '../command.ts';
import { writeBareSite } from './bare-site.ts';
import { LARGE, writeMadeSeries } from './made-series.ts';
import { median } from './timed.ts';

const EDITS = 5;

/** Asks for the page until it shows the text; the milliseconds that took. */
async function untilShown(address: string, text: string): Promise<number> {
  const started = performance.now();
  for (;;) {
    const page = await fetch(address).then(
      (answer) => answer.text(),
      () => '',
    );
    if (page.includes(text)) return performance.now() - started;
    if (performance.now() - started > 120_000) throw new Error(`${address} never showed the edit`);
    await new Promise((later) => setTimeout(later, 20));
  }
}

/** Starts a dev server, saves a chapter several times, and returns the median time until its page shows the edit. */
async function edits(options: {
  root: string;
  env: NodeJS.ProcessEnv;
  astro: string;
  port: number;
  page: string;
  file: string;
}): Promise<number> {
  const { root, env, astro, port, page, file } = options;
  const server = spawn(astro, ['dev', '--ignore-lock', '--port', String(port), '--silent'], {
    cwd: root,
    env: { ...process.env, ...env, ASTRO_TELEMETRY_DISABLED: '1' },
    stdio: 'ignore',
    detached: true,
  });
  const address = `http://localhost:${port}${page}`;
  try {
    await untilShown(address, '</html>');
    const times: number[] = [];
    for (let edit = 0; edit < EDITS; edit += 1) {
      const word = `edited${edit}x${port}`;
      await new Promise((settled) => setTimeout(settled, 500));
      await appendFile(file, `\n\nThe word is ${word}.\n`);
      times.push(await untilShown(address, word));
    }
    return median(times);
  } finally {
    if (server.pid !== undefined) process.kill(-server.pid);
  }
}

/** One chapter of a thousand edited while the dev server runs, beside the same edit in a bare dev server. */
export async function measure(io: Io): Promise<Measured> {
  const bench = join(io.root, '.oilway', 'bench');
  const content = join(bench, 'edited');
  const bare = join(bench, 'bare');
  await writeMadeSeries(content, LARGE);
  await writeBareSite(bare, content, 0);
  const chapter = (await readdir(join(content, 'chapters'))).sort()[LARGE.chapters / 2] ?? '';
  const astro = join(io.root, 'node_modules/.bin/astro');
  const ours = await edits({
    root: io.root,
    env: { OILWAY_CONTENT: content },
    astro,
    port: 4391,
    page: `/chapters/${chapter.replace(/^\d+-/, '')}/`,
    file: join(content, 'chapters', chapter, 'chapter.mdx'),
  });
  const theirs = await edits({
    root: bare,
    env: {},
    astro,
    port: 4392,
    page: `/chapters/${chapter}/`,
    file: join(bare, 'src/chapters', `${chapter}.mdx`),
  });
  return {
    lines: [
      `median of ${EDITS} edits: ${ours.toFixed(0)} ms; bare ${theirs.toFixed(0)} ms: ${(ours / theirs).toFixed(2)} times (budget 1.3)`,
    ],
  };
}
