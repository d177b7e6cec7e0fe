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

function step([program, ...args]: [string, ...string[]], io: Io): Promise<number> {
  return new Promise((done, failed) => {
    const child = spawn(join(io.root, 'node_modules', '.bin', program), args, {
      cwd: io.root,
      stdio: 'inherit',
      env: { ...process.env, ASTRO_TELEMETRY_DISABLED: '1' },
    });
    child.once('error', failed);
    child.once('exit', (code) => done(code ?? 1));
  });
}

export const command: Command = {
  name: 'verify',
  summary: 'lint, types, every test, the demo built and opened in a browser',
  usage: `
npm test

Runs each step to its end and names those that failed; exits 1 if any did.`,

  async run(_args, io) {
    const failed: string[] = [];
    for (const { says, run } of STEPS) {
      const started = performance.now();
      io.out(`\n== ${says}\n`);
      const code = await step(run, io);
      io.out(
        `== ${says}: ${code === 0 ? 'good' : 'FAILED'}, ${((performance.now() - started) / 1000).toFixed(1)} s\n`,
      );
      if (code !== 0) failed.push(says);
    }
    io.out(failed.length === 0 ? '\nAll good.\n' : `\nFailed: ${failed.join('; ')}.\n`);
    return failed.length === 0 ? 0 : 1;
  },
};
