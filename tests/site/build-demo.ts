import { spawn } from 'node:child_process';
import { fileURLToPath } from 'node:url';

const root = fileURLToPath(new URL('../..', import.meta.url));

/** One build of the demo series as `npm run build` does it, into a folder of the tests' own. */
function build(...args: string[]): Promise<void> {
  return new Promise((built, failed) => {
    const child = spawn('node', ['src/cli/main.ts', 'build', ...args], {
      cwd: root,
      stdio: ['ignore', 'pipe', 'pipe'],
    });
    let said = '';
    child.stdout.on('data', (text) => {
      said += text;
    });
    child.stderr.on('data', (text) => {
      said += text;
    });
    child.once('exit', (code) =>
      code === 0 ? built() : failed(new Error(`build ${args.join(' ')} ended with ${code}:\n${said}`)),
    );
  });
}

/** Builds the demo at a domain's root and below /van/, before the site's tests; OILWAY_KEEP_SITE=1 takes the last builds. */
export default async function setup(): Promise<void> {
  if (process.env['OILWAY_KEEP_SITE'] === '1') return;
  await build('--out', '.oilway/site-root', '--site', 'https://series.example');
  await build('--out', '.oilway/site-van', '--base', '/van/', '--site', 'https://series.example');
}
