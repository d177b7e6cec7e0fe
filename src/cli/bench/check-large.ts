import { join } from 'node:path';
import type { Measured } from '../bench.ts';
import type { Io } from '../command.ts';
import { LARGE, scaled, writeMadeSeries } from './made-series.ts';
import { median, timed } from './timed.ts';

const ROUNDS = 3;

/** The check as an author runs it, whole processes, at three sizes: time and memory must grow no faster than the series. */
export async function measure(io: Io): Promise<Measured> {
  const lines: string[] = [];
  for (const size of [scaled(100), scaled(300), LARGE]) {
    const folder = join(io.root, '.oilway', 'bench', `made-${size.chapters}`);
    await writeMadeSeries(folder, size);
    const runs = [];
    for (let round = 0; round < ROUNDS; round += 1) {
      runs.push(await timed('node', ['src/cli/main.ts', 'check', '--content', folder], { cwd: io.root }));
    }
    const failed = runs.find((one) => one.code !== 0);
    if (failed)
      return {
        lines: [
          `The check of ${size.chapters} chapters ended with ${failed.code}: ${failed.said.slice(-400)}`,
        ],
      };
    const peaks = runs.flatMap((one) => one.peak_MB ?? []);
    const memory = peaks.length > 0 ? `, ${median(peaks).toFixed(0)} MB at the peak` : '';
    lines.push(`${size.chapters} chapters: ${median(runs.map((one) => one.seconds)).toFixed(2)} s${memory}`);
  }
  return { lines: [...lines, 'budget at 1000 chapters, 10,000 rows and 500 faults: 3 s, 500 MB'] };
}
