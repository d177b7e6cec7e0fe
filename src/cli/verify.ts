import { spawn } from 'node:child_process';
import { join } from 'node:path';
import { performance } from 'node:perf_hooks';
import type { Command, Io } from './command.ts';

/** Everything that has to hold before a change is shown to anybody, cheapest first. */
const STEPS: { says: string; run: [string, ...string[]] }[] = [
  { says: 'Lint and format', run: ['biome', 'ci', '.'] },
  { says: 'Types of the calculators, without browser or Node', run: ['tsc', '-p', 'src/calc'] },
  { says: 'Types', run: ['astro', 'check'] },
  { says: 'Tests, with the demo built twice and opened in a browser', run: ['vitest', 'run'] },
];

/** The tests' own count, as tests/plain-count.ts ends a run with it. */
const COUNT = /^\d+ passed, \d+ failed(?:, \d+ skipped)?$/m;

/** Runs one step, passing on what it says; the count of tests, if it says one. */
function step(
  [program, ...args]: [string, ...string[]],
  io: Io,
): Promise<{ code: number; count: string | undefined }> {
  return new Promise((done, failed) => {
    const child = spawn(join(io.root, 'node_modules', '.bin', program), args, {
      cwd: io.root,
      stdio: ['ignore', 'pipe', 'inherit'],
      env: { ...process.env, ASTRO_TELEMETRY_DISABLED: '1' },
    });
    let end = '';
    child.stdout.setEncoding('utf8');
    child.stdout.on('data', (text: string) => {
      io.out(text);
      end = (end + text).slice(-4000);
    });
    child.once('error', failed);
    child.once('close', (code) => done({ code: code ?? 1, count: COUNT.exec(end)?.[0] }));
  });
}

export const command: Command = {
  name: 'verify',
  summary: 'lint, types, every test, the demo built and opened in a browser',
  usage: `
npm test

Runs each step to its end and names those that failed; exits 1 if any did. Ends with the count of tests.`,

  async run(_args, io) {
    const failed: string[] = [];
    let count: string | undefined;
    for (const { says, run } of STEPS) {
      const started = performance.now();
      io.out(`\n== ${says}\n`);
      const ran = await step(run, io);
      count = ran.count ?? count;
      const seconds = ((performance.now() - started) / 1000).toFixed(1);
      io.out(`== ${says}: ${ran.code === 0 ? 'good' : 'FAILED'}, ${seconds} s\n`);
      if (ran.code !== 0) failed.push(says);
    }
    io.out(failed.length === 0 ? '\nAll good.\n' : `\nFailed: ${failed.join('; ')}.\n`);
    if (count !== undefined) io.out(`${count}\n`);
    return failed.length === 0 ? 0 : 1;
  },
};
