import { mkdir, readdir, rm, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { performance } from 'node:perf_hooks';
import { draftOf, overviewOf } from '../../notes/draft.ts';
import { sharedDraft } from '../../notes/draft-shared.ts';
import { proposalsText } from '../../notes/proposals-file.ts';
import { readSource } from '../../notes/read/read-source.ts';
import { memoryText } from '../../notes/write/memory.ts';
import { type Plan, settled, writeUp } from '../../notes/write-up.ts';
import type { Measured } from '../bench.ts';
import type { Io } from '../command.ts';
import { scaled, writeMadeSeries } from './made-series.ts';
import { madeTranscript } from './made-transcript.ts';
import { median, timed } from './timed.ts';

const SIZE = 10_000_000;
const ROUNDS = 3;
const BUDGET_s = 10;
const NAME = 'notes/recording.txt';

/** A recording of 10 MB written up: the whole command as an author runs it, then its stages one by one in this process. */
export async function measure(io: Io): Promise<Measured> {
  const folder = join(io.root, '.oilway', 'bench', 'write-up');
  const file = join(folder, NAME);
  const text = madeTranscript(SIZE);
  const runs = [];
  for (let round = 0; round < ROUNDS; round += 1) {
    await writeMadeSeries(folder, { ...scaled(1), pictures: 0 });
    await mkdir(join(folder, 'notes'), { recursive: true });
    await writeFile(file, text);
    const run = await timed('node', ['src/cli/main.ts', 'write-up', file, '--content', folder], {
      cwd: io.root,
    });
    if (run.code !== 0) return { lines: [`The write-up ended with ${run.code}: ${run.said.slice(-400)}`] };
    runs.push(run);
  }
  const made = await readdir(join(folder, 'chapters'));
  await rm(folder, { recursive: true, force: true });
  const peaks = runs.flatMap((one) => one.peak_MB ?? []);
  const memory = peaks.length > 0 ? `, ${median(peaks).toFixed(0)} MB at the peak` : '';
  return {
    lines: [
      `whole command, ${(text.length / 1e6).toFixed(1)} MB into one of ${made.length} chapters: ${median(runs.map(({ seconds }) => seconds)).toFixed(1)} s${memory} (budget ${BUDGET_s} s)`,
      ...(await stages(text)),
    ],
  };
}

async function stages(text: string): Promise<string[]> {
  const lines: string[] = [];
  let started = performance.now();
  const lap = (name: string): void => {
    lines.push(`${name.padEnd(42)}${((performance.now() - started) / 1000).toFixed(2).padStart(6)} s`);
    started = performance.now();
  };
  const read = readSource({ name: NAME, text });
  lap('cut into blocks');
  overviewOf(read, {});
  lap('figures and names');
  draftOf([read], {});
  lap('the same, and read by one core');
  const draft = await sharedDraft([read], {});
  lap('the same, shared among cores');
  const plan: Plan = {
    chapter: '02-recording',
    title: 'Recording',
    date: '2026-01-01',
    currency: 'EUR',
    habits: {},
    around: { texts: new Map([[NAME, text]]) },
  };
  const again = structuredClone(draft);
  started = performance.now();
  settled([read], { ...plan, draft: again });
  lap('proposals');
  const { proposals, memory } = writeUp([read], { ...plan, draft });
  lap('proposals and chapter');
  proposalsText(proposals);
  memoryText(memory);
  lap('texts of the files');
  return lines;
}
