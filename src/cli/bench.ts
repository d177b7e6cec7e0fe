import { parseArgs } from 'node:util';
import { type Command, type Io, UsageError } from './command.ts';

/** One part of the budgets: measures, prints a line a figure with its budget beside it, and says whether all were kept. */
export interface Measured {
  lines: string[];
}

const PARTS: Record<string, { says: string; load(): Promise<{ measure(io: Io): Promise<Measured> }> }> = {
  check: { says: 'reading and checking a large series', load: () => import('./bench/check-large.ts') },
  build: { says: 'building it, beside a bare site', load: () => import('./bench/build-large.ts') },
  edit: { says: 'one chapter saved while the dev server runs', load: () => import('./bench/edit-in-dev.ts') },
  photos: { says: 'the demo’s photos, beside sharp alone', load: () => import('./bench/photos-cold.ts') },
  'photos-taken-in': {
    says: 'two hundred phone photos taken in, beside sharp alone',
    load: () => import('./bench/photos-taken-in.ts'),
  },
  'write-up': {
    says: 'a recording of 10 MB written up, stage by stage',
    load: () => import('./bench/write-up-long.ts'),
  },
  keystroke: { says: 'a key pressed in each calculator', load: () => import('./bench/keystroke.ts') },
};

export const command: Command = {
  name: 'bench',
  summary: 'measure the budgets on this machine',
  usage: `
npm run bench -- [PART …]

${Object.entries(PARTS)
  .map(([name, { says }]) => `  ${name.padEnd(17)}${says}`)
  .join('\n')}

Without a part, all of them. Times differ from machine to machine; ratios are taken side by side in one run.`,

  async run(args, io) {
    const { positionals } = parseArgs({ args: [...args], allowPositionals: true });
    const unknown = positionals.find((one) => !(one in PARTS));
    if (unknown !== undefined) throw new UsageError(`There is no part "${unknown}".`);
    for (const [name, part] of Object.entries(PARTS)) {
      if (positionals.length > 0 && !positionals.includes(name)) continue;
      io.out(`\n${name}: ${part.says}\n`);
      const { measure } = await part.load();
      for (const line of (await measure(io)).lines) io.out(`  ${line}\n`);
    }
    return 0;
  },
};
