// A web host that serves a folder below a path, as plain files.
import { readFileSync, statSync } from 'node:fs';
import { createServer } from 'node:http';
import type { AddressInfo } from 'node:net';
import { extname, join } from 'node:path';

const TYPES: Record<string, string> = {
  '.html': 'text/html',
  '.css': 'text/css',
  '.js': 'text/javascript',
  '.svg': 'image/svg+xml',
  '.webp': 'image/webp',
  '.woff2': 'font/woff2',
};

/** Serves a folder below a path, such as `/` or `/x/y/`, while `use` is at it; anything else is not there. */
export async function hosted<T>(
  below: string,
  folder: string,
  use: (root: string) => Promise<T>,
): Promise<T> {
  const server = createServer((request, response) => {
    const path = decodeURIComponent(new URL(request.url ?? '', 'http://host').pathname);
    const file = join(folder, path.slice(below.length));
    if (
      !path.startsWith(below) ||
      !file.startsWith(folder) ||
      !statSync(file, { throwIfNoEntry: false })?.isFile()
    ) {
      response.writeHead(404).end();
      return;
    }
    response.writeHead(200, { 'content-type': TYPES[extname(file)] ?? 'text/plain' }).end(readFileSync(file));
  });
  await new Promise<void>((ready) => server.listen(0, '127.0.0.1', ready));
  try {
    return await use(`http://127.0.0.1:${(server.address() as AddressInfo).port}${below}`);
  } finally {
    server.close();
    server.closeAllConnections();
  }
}
