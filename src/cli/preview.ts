import { existsSync } from 'node:fs';
import { readFile } from 'node:fs/promises';
import { join, resolve } from 'node:path';
import { parseArgs } from 'node:util';
import { basePath } from './build.ts';
import { type Command, UsageError } from './command.ts';
import { serveFolder } from './serve.ts';

export const command: Command = {
  name: 'preview',
  summary: 'serve the built site on this machine, as a host would',
  usage: `
npm run preview -- [--out FOLDER] [--base PATH] [--port NUMBER]

  --out FOLDER    the built site (default: the last one built)
  --base PATH     the path it was built for (default: that of the last build)
  --port NUMBER   default 4322`,

  async run(args, io) {
    const { values } = parseArgs({
      args: [...args],
      options: {
        out: { type: 'string' },
        base: { type: 'string' },
        port: { type: 'string', default: '4322' },
      },
    });
    const port = Number(values.port);
    if (!Number.isInteger(port) || port < 1 || port > 65_535) {
      throw new UsageError(`"${values.port}" is not a port. Write a whole number from 1 to 65535.`);
    }
    const note = join(io.root, '.oilway', 'built.json');
    const last = existsSync(note)
      ? (JSON.parse(await readFile(note, 'utf8')) as { out: string; base: string })
      : undefined;
    const out = resolve(io.root, values.out ?? last?.out ?? 'dist');
    if (!existsSync(join(out, 'index.html')))
      throw new UsageError('There is no built site yet. Run npm run build first.');
    const served = await serveFolder(out, {
      base: values.base ? basePath(values.base) : (last?.base ?? '/'),
      port,
    });
    io.out(`${served.address}\n`);
    await new Promise<void>((stop) => process.once('SIGINT', () => stop()));
    await served.close();
    return 0;
  },
};
