import { cpSync, mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { onTestFinished } from 'vitest';

const BASE = fileURLToPath(new URL('../series/_base/content', import.meta.url));

/** A folder with the base series and the files given, gone when the test is over. Its content folder is returned. */
export function madeSeries(files: Record<string, string | Uint8Array> = {}): string {
  const root = mkdtempSync(join(tmpdir(), 'oilway-'));
  onTestFinished(() => rmSync(root, { recursive: true, force: true }));
  const content = join(root, 'content');
  cpSync(BASE, content, { recursive: true });
  for (const [name, data] of Object.entries(files)) put(content, name, data);
  return content;
}

export function put(content: string, name: string, data: string | Uint8Array): void {
  mkdirSync(dirname(join(content, name)), { recursive: true });
  writeFileSync(join(content, name), data);
}

/** A chapter's text. */
export function chapter(title: string, date: string, body = 'Words.', more = ''): string {
  return `---\ntitle: ${title}\ndate: ${date}\nsummary: In short.\n${more}---\n\n${body}\n`;
}
