import { cpSync, mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { main } from '../../src/cli/main.ts';

const BASE = fileURLToPath(new URL('../series/_base/content', import.meta.url));

/** A small series in a folder of its own, and the commands run in it with nobody at the terminal. */
export function aWorkshop(files: Record<string, string>) {
  const root = mkdtempSync(join(tmpdir(), 'oilway-'));
  const content = join(root, 'content');
  cpSync(BASE, content, { recursive: true });
  for (const [name, text] of Object.entries(files)) writeFileSync(join(content, name), text);
  return {
    async run(...args: string[]) {
      let out = '';
      let err = '';
      const io = {
        root,
        out: (text: string) => {
          out += text;
        },
        err: (text: string) => {
          err += text;
        },
        interactive: false,
      };
      const code = await main(args, io);
      return { code, out, err };
    },
    root,
    read: (name: string) => readFileSync(join(content, name), 'utf8'),
    names: () => readdirSync(content).sort(),
    clear: () => rmSync(root, { recursive: true, force: true }),
  };
}
