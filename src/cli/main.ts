/** The way in: `node src/cli/main.ts COMMAND …`. Every command is one file here and one line in the table. */
import { fileURLToPath } from 'node:url';
import { type Command, type Io, UsageError } from './command.ts';

const COMMANDS: Record<string, () => Promise<{ command: Command }>> = {
  check: () => import('./check.ts'),
  build: () => import('./build.ts'),
  preview: () => import('./preview.ts'),
  'new-series': () => import('./new-series.ts'),
  photos: () => import('./photos.ts'),
  'video-text': () => import('./video-text.ts'),
  'write-up': () => import('./write-up.ts'),
  desk: () => import('./desk.ts'),
  supporters: () => import('./supporters.ts'),
  'add-row': () => import('./add-row.ts'),
  'add-part': () => import('./add-part.ts'),
  'add-order': () => import('./add-order.ts'),
  'add-rate': () => import('./add-rate.ts'),
  'add-measurement': () => import('./add-measurement.ts'),
  'add-refit': () => import('./add-refit.ts'),
  'add-correction': () => import('./add-correction.ts'),
  'open-fault': () => import('./open-fault.ts'),
  finding: () => import('./finding.ts'),
  'put-off': () => import('./put-off.ts'),
  cure: () => import('./cure.ts'),
  'came-back': () => import('./came-back.ts'),
  'bench-list': () => import('./bench-list.ts'),
  release: () => import('./release.ts'),
  hazards: () => import('./hazards.ts'),
  verify: () => import('./verify.ts'),
  bench: () => import('./bench.ts'),
};

export async function main(args: readonly string[], io: Io): Promise<number> {
  const [name, ...rest] = args;
  const load = name === undefined ? undefined : COMMANDS[name];
  if (!load) {
    const commands = await Promise.all(Object.values(COMMANDS).map((each) => each()));
    const width = Math.max(...commands.map(({ command }) => command.name.length)) + 2;
    const list = commands
      .map(({ command }) => `  ${command.name.padEnd(width)}${command.summary}`)
      .join('\n');
    const asked = name === undefined || name === '--help' || name === 'help';
    (asked ? io.out : io.err)(`${asked ? '' : `There is no command "${name}".\n\n`}Commands:\n${list}\n`);
    return asked ? 0 : 2;
  }
  const { command } = await load();
  if (rest.includes('--help')) {
    io.out(`${command.usage.trim()}\n`);
    return 0;
  }
  try {
    return await command.run(rest, io);
  } catch (error) {
    const wrongFlag =
      error instanceof TypeError && 'code' in error && String(error.code).startsWith('ERR_PARSE_ARGS');
    if (!(error instanceof UsageError) && !wrongFlag) throw error;
    io.err(`${(error as Error).message}\n\n${command.usage.trim()}\n`);
    return 2;
  }
}

if (process.argv[1] === fileURLToPath(import.meta.url)) {
  process.exitCode = await main(process.argv.slice(2), {
    root: fileURLToPath(new URL('../..', import.meta.url)),
    out: (text) => process.stdout.write(text),
    err: (text) => process.stderr.write(text),
    interactive: process.stdin.isTTY === true && process.stdout.isTTY === true,
  });
}
