// Serves a built site on this machine alone: to its own address, and to nobody who comes by another name.
import { createReadStream } from 'node:fs';
import { stat } from 'node:fs/promises';
import { createServer, type IncomingMessage, type Server } from 'node:http';
import { extname, join, resolve, sep } from 'node:path';

const TYPES: Record<string, string> = {
  '.html': 'text/html; charset=utf-8',
  '.css': 'text/css; charset=utf-8',
  '.js': 'text/javascript; charset=utf-8',
  '.svg': 'image/svg+xml',
  '.webp': 'image/webp',
  '.woff2': 'font/woff2',
  '.txt': 'text/plain; charset=utf-8',
};

/** No type is guessed, and no page of another address gets a file of the record. */
const CLOSED = { 'x-content-type-options': 'nosniff', 'cross-origin-resource-policy': 'same-origin' };

/** Serves a folder of files; a path that leads out of it is not found. */
export function serveFolder(folder: string): Server {
  const root = resolve(folder);
  return createServer(async (request, response) => {
    const refuse = (status: number, why: string) =>
      response.writeHead(status, { ...CLOSED, 'content-type': 'text/plain; charset=utf-8' }).end(`${why}\n`);
    if (!isOwnAddress(request))
      return void refuse(403, 'The site is served to this machine’s own address alone.');
    if (request.method !== 'GET' && request.method !== 'HEAD')
      return void refuse(405, 'The site is only read.');
    const asked = pathOf(request.url ?? '/');
    const path = resolve(join(root, asked?.endsWith('/') ? `${asked}index.html` : (asked ?? '..')));
    const there = path.startsWith(root + sep) && (await stat(path).catch(() => undefined))?.isFile();
    if (!there) return void refuse(404, 'There is no such page.');
    response.writeHead(200, {
      ...CLOSED,
      'content-type': TYPES[extname(path)] ?? 'application/octet-stream',
    });
    if (request.method === 'HEAD') return void response.end();
    createReadStream(path)
      .once('error', () => response.destroy())
      .pipe(response);
  });
}

/** A page from elsewhere can have its own name point here; then the name it asks by isn’t ours. */
function isOwnAddress({ headers: { host = '' } }: IncomingMessage): boolean {
  return /^(?:127\.0\.0\.1|localhost|\[::1\])(?::\d+)?$/i.test(host);
}

/** The path asked for, or nothing when it isn't one. */
function pathOf(url: string): string | undefined {
  try {
    const path = decodeURIComponent(new URL(url, 'http://localhost').pathname);
    return path.includes('\0') ? undefined : path;
  } catch {
    return undefined;
  }
}
