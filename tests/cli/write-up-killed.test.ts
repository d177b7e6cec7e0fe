import { spawn } from 'node:child_process';
import { cpSync, rmSync, watch } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { expect, test } from 'vitest';
import { readProposals } from '../../src/notes/proposals-file.ts';
import { MORE, NOTES, writeUpShop } from './write-up-shop.ts';

const MAIN = fileURLToPath(new URL('../../src/cli/main.ts', import.meta.url));

/** At so many moments of each kind of run; OILWAY_KILLS=50 tries more. */
const KILLS = Number(process.env['OILWAY_KILLS'] ?? 3);

/** What the author wrote into the chapter meanwhile. */
const OWN = 'Nobody smoked within ten metres, and the can stood in the yard.';

const newChapter = async () => {
  const shop = writeUpShop({ notes: { 'evening.md': NOTES } });
  return { shop, args: ['write-up', shop.files[0] ?? ''] };
};
const grownChapter = async () => {
  const { shop, args } = await newChapter();
  await shop.run(args);
  shop.write('chapter.mdx', shop.read('chapter.mdx').replace('\n</Step>', `\n${OWN}\n\n</Step>`));
  shop.note('evening.md', MORE);
  return { shop, args };
};
const taken = async () => {
  const { shop, args } = await grownChapter();
  await shop.run(args);
  shop.write('proposals.yaml', shop.read('proposals.yaml').replace('consent: ""', 'consent: yes'));
  return { shop, args: ['write-up', '--take', shop.folder().split('/').at(-1) ?? '', '--all'] };
};

/** Runs the command as a process of its own and kills it: after a time, or so long after it begins to write. */
function killed(args: readonly string[], content: string, after_ms: number, from: 'start' | 'writing') {
  return new Promise<boolean>((done) => {
    const child = spawn(process.execPath, [MAIN, ...args, '--content', content], { stdio: 'ignore' });
    let timer: NodeJS.Timeout | undefined;
    const arm = (): void => {
      timer ??= setTimeout(() => child.kill('SIGKILL'), after_ms);
    };
    const watcher = watch(content, (_, name) => {
      if (from === 'writing' && name?.startsWith('.write-up-')) arm();
    });
    if (from === 'start') arm();
    child.on('exit', (_, signal) => {
      clearTimeout(timer);
      watcher.close();
      done(signal === 'SIGKILL');
    });
  });
}

test.each([
  ['a new chapter', newChapter],
  ['a chapter that the author edited and whose notes grew', grownChapter],
  ['proposals that are taken', taken],
] as const)(
  'killed as a process at any moment, %s loses nothing and leaves nothing half there',
  async (_, scene) => {
    const { shop, args } = await scene();
    const [kept, before] = [join(shop.root, 'kept'), shop.all()];
    cpSync(shop.content, kept, { recursive: true });
    const again = (): void => {
      rmSync(shop.content, { recursive: true, force: true });
      cpSync(kept, shop.content, { recursive: true });
    };
    // How long a whole run takes here and now, and what it makes.
    const started = performance.now();
    expect(await killed(args, shop.content, 60_000, 'start')).toBe(false);
    const whole_ms = performance.now() - started;
    const expected = shop.all();
    expect([...expected]).not.toEqual([...before]);

    let stopped = 0;
    for (let n = 0; n < KILLS; n++) {
      again();
      const writing = n % 2 === 0;
      const wait_ms = writing ? (n * 6) / KILLS : whole_ms * (0.5 + (0.6 * n) / KILLS);
      if (await killed(args, shop.content, wait_ms, writing ? 'writing' : 'start')) stopped += 1;
      for (const [name, text] of shop.all()) {
        if (name.startsWith('.write-up-')) continue;
        // Proposals are noted as taken one register after the other.
        if (args[1] === '--take' && name.endsWith('proposals.yaml'))
          expect(readProposals(text).kept.length).toBe(readProposals(before.get(name) ?? '').kept.length);
        else expect([before.get(name), expected.get(name)], `kill ${n}: ${name}`).toContain(text);
      }
      for (const name of before.keys()) expect(shop.all().has(name), `kill ${n}: ${name}`).toBe(true);
      const { code, err } = await shop.run(args);
      expect(code, err).toBe(0);
      expect([...shop.all()], `kill ${n}`).toEqual([...expected]);
      if (scene !== newChapter) expect(shop.read('chapter.mdx')).toContain(OWN);
    }
    // Some were stopped, or nothing was tried.
    expect(stopped).toBeGreaterThan(0);
    shop.clear();
  },
  60_000 + KILLS * 10_000,
);
