import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { basePath } from '../../src/cli/build.ts';
import { type Served, serveFolder } from '../../src/cli/serve.ts';

let folder = '';
let served: Served;
beforeAll(async () => {
  folder = mkdtempSync(join(tmpdir(), 'serve-'));
  mkdirSync(join(folder, 'site', 'chapters'), { recursive: true });
  writeFileSync(join(folder, 'secret.txt'), 'not for readers');
  writeFileSync(join(folder, 'site', 'index.html'), 'home');
  writeFileSync(join(folder, 'site', 'chapters', 'index.html'), 'chapters');
  writeFileSync(join(folder, 'site', '404.html'), 'nothing here');
  served = await serveFolder(join(folder, 'site'), { base: '/van/' });
});
afterAll(async () => {
  await served.close();
  rmSync(folder, { recursive: true, force: true });
});

const ask = async (path: string) => {
  const answer = await fetch(new URL(path, served.address));
  return [answer.status, await answer.text()];
};

test('A folder answers with its page, with or without the stroke at its end', async () => {
  expect(await ask('/van/')).toEqual([200, 'home']);
  expect(await ask('/van/chapters/')).toEqual([200, 'chapters']);
  expect(await ask('/van/chapters')).toEqual([200, 'chapters']);
});

test('What is not there, outside the base or outside the folder, is the site’s own 404', async () => {
  for (const path of ['/van/nowhere/', '/', '/chapters/', '/van/..%2Fsecret.txt', '/van/%2e%2e/secret.txt']) {
    expect(await ask(path), path).toEqual([404, 'nothing here']);
  }
});

test('An address that cannot be read is refused, and the server goes on', async () => {
  expect((await fetch(`${served.address}%E0%A4%A`)).status).toBe(400);
  expect(await ask('/van/')).toEqual([200, 'home']);
});

test('A base path is the same however it is written', () => {
  for (const written of ['/van/', 'van', '/van', 'van/']) expect(basePath(written)).toBe('/van/');
  for (const written of ['/', '']) expect(basePath(written)).toBe('/');
  expect(() => basePath('a b')).toThrow('is not a path');
});

test('A player that jumps to a time gets the part it asks for', async () => {
  const part = await fetch(served.address, { headers: { Range: 'bytes=1-2' } });
  expect([part.status, part.headers.get('Content-Range'), await part.text()]).toEqual([
    206,
    'bytes 1-2/4',
    'om',
  ]);
  const tail = await fetch(served.address, { headers: { Range: 'bytes=-2' } });
  expect([tail.status, await tail.text()]).toEqual([206, 'me']);
  const beyond = await fetch(served.address, { headers: { Range: 'bytes=9-' } });
  expect([beyond.status, await beyond.text()]).toEqual([200, 'home']);
});
