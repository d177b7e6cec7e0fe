import { createReadStream } from 'node:fs';
import { stat } from 'node:fs/promises';
import { createServer } from 'node:http';
import type { AddressInfo } from 'node:net';
import { extname, join, normalize, sep } from 'node:path';

const TYPES: Record<string, string> = {
  '.html': 'text/html; charset=utf-8',
  '.css': 'text/css; charset=utf-8',
  '.js': 'text/javascript; charset=utf-8',
  '.json': 'application/json; charset=utf-8',
  '.xml': 'application/xml; charset=utf-8',
  '.csv': 'text/csv; charset=utf-8',
  '.txt': 'text/plain; charset=utf-8',
  '.svg': 'image/svg+xml',
  '.jpg': 'image/jpeg',
  '.avif': 'image/avif',
  '.png': 'image/png',
  '.ico': 'image/x-icon',
  '.woff2': 'font/woff2',
  '.vtt': 'text/vtt; charset=utf-8',
  '.mp4': 'video/mp4',
  '.webm': 'video/webm',
  '.mp3': 'audio/mpeg',
  '.m4a': 'audio/mp4',
  '.ogg': 'audio/ogg',
  '.wav': 'audio/wav',
};

export interface Served {
  /** "http://localhost:4322/van/" */
  address: string;
  close(): Promise<void>;
}

/** The file of `folder` that answers `path`, or undefined: a folder answers with its index.html, nothing outside is served. */
async function fileFor(folder: string, path: string): Promise<string | undefined> {
  const file = normalize(join(folder, path));
  if (file !== folder && !file.startsWith(folder + sep)) return undefined;
  const found = await stat(file).catch(() => undefined);
  if (found?.isFile()) return file;
  if (!found?.isDirectory()) return undefined;
  return fileFor(folder, join(path, 'index.html'));
}

/** The part of a file that a player asks for when somebody jumps to a time; undefined for the whole. */
function rangeOf(asked: string | undefined, size: number): { start: number; end: number } | undefined {
  const [, from = '', to = ''] = /^bytes=(\d*)-(\d*)$/.exec(asked ?? '') ?? [];
  if (from === '' && to === '') return undefined;
  const start = from === '' ? Math.max(0, size - Number(to)) : Number(from);
  const end = from === '' || to === '' ? size - 1 : Math.min(Number(to), size - 1);
  return start <= end ? { start, end } : undefined;
}

/**
 * A plain static server, as any host would be: files, index.html for a folder, the site's own 404 page, nothing else.
 * Serves `folder` at `base` ("/" or "/van/") on this machine only; port 0 takes a free one.
 */
export async function serveFolder(folder: string, { base = '/', port = 0 } = {}): Promise<Served> {
  const server = createServer(async (request, response) => {
    let path: string;
    try {
      path = decodeURIComponent(new URL(request.url ?? '/', 'http://localhost').pathname);
    } catch {
      response.writeHead(400).end();
      return;
    }
    const inside = path.startsWith(base) ? path.slice(base.length) : undefined;
    const file = inside === undefined ? undefined : await fileFor(folder, inside);
    const answer = file ?? (await fileFor(folder, '404.html'));
    if (answer === undefined) {
      response.writeHead(404, { 'Content-Type': 'text/plain' }).end('Not found');
      return;
    }
    const headers = {
      'Content-Type': TYPES[extname(answer)] ?? 'application/octet-stream',
      'Accept-Ranges': 'bytes',
    };
    const { size } = await stat(answer);
    const range = file ? rangeOf(request.headers.range, size) : undefined;
    if (range)
      response.writeHead(206, { ...headers, 'Content-Range': `bytes ${range.start}-${range.end}/${size}` });
    else response.writeHead(file ? 200 : 404, headers);
    createReadStream(answer, range).pipe(response);
  });
  await new Promise<void>((ready, failed) => {
    server.once('error', failed);
    server.listen(port, '127.0.0.1', ready);
  });
  const { port: taken } = server.address() as AddressInfo;
  return {
    address: `http://localhost:${taken}${base}`,
    close: () =>
      new Promise((closed) => {
        server.closeAllConnections();
        server.close(() => closed());
      }),
  };
}
