// `npm start`: checks the record, builds the site and serves it on this machine only.
import { createReadStream } from 'node:fs';
import { stat } from 'node:fs/promises';
import { createServer, type Server } from 'node:http';
import { extname, join, resolve, sep } from 'node:path';
import { asked, portOf } from './asked.ts';
import { buildSite, siteFolder } from './build-site.ts';

const USE = 'Use: npm start -- [--port 4321].';

const TYPES: Record<string, string> = {
  '.html': 'text/html; charset=utf-8',
  '.css': 'text/css; charset=utf-8',
  '.svg': 'image/svg+xml',
  '.webp': 'image/webp',
  '.woff2': 'font/woff2',
  '.txt': 'text/plain; charset=utf-8',
};

/** Serves a folder of files; a path that leads out of it is not found. */
function serve(folder: string): Server {
  const root = resolve(folder);
  return createServer(async (request, response) => {
    const asked = pathOf(request.url ?? '/');
    const path = resolve(join(root, asked?.endsWith('/') ? `${asked}index.html` : (asked ?? '..')));
    const there = path.startsWith(root + sep) && (await stat(path).catch(() => undefined))?.isFile();
    if (!there) {
      response
        .writeHead(404, { 'content-type': 'text/plain; charset=utf-8' })
        .end('There is no such page.\n');
      return;
    }
    response.writeHead(200, { 'content-type': TYPES[extname(path)] ?? 'application/octet-stream' });
    createReadStream(path).pipe(response);
  });
}

/** The path asked for, or nothing when it isn't one. */
function pathOf(url: string): string | undefined {
  try {
    return decodeURIComponent(new URL(url, 'http://localhost').pathname);
  } catch {
    return undefined;
  }
}

/** Listens on the port, or on the next that is free, and prints the address. */
function listen(server: Server, first: number, tries: number): void {
  let port = first;
  server.on('error', (error: NodeJS.ErrnoException) => {
    if (error.code === 'EADDRINUSE' && port < first + tries) {
      port += 1;
      server.listen(port, '127.0.0.1');
      return;
    }
    console.error(`Port ${port} can’t be used (${error.code}). Name another: npm start -- --port 8080.`);
    process.exitCode = 1;
  });
  server.once('listening', () => {
    console.log(`The record is at http://127.0.0.1:${port}/ — Ctrl-C stops it.`);
  });
  server.listen(port, '127.0.0.1');
}

async function start(): Promise<void> {
  const words = asked(USE, { port: { type: 'string' } });
  const port = words && portOf(words.values.port);
  if (port === undefined) {
    if (words) console.error(USE);
    process.exitCode = 2;
    return;
  }
  if (!(await buildSite())) {
    process.exitCode = 1;
    return;
  }
  const server = serve(siteFolder());
  listen(server, port, 20);
}

await start();
