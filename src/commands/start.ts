// `npm start`: checks the record, builds the site and serves it on this machine only.
import type { Server } from 'node:http';
import { asked, portOf } from './asked.ts';
import { buildSite, siteFolder } from './build-site.ts';
import { serveFolder } from './serve-folder.ts';

const USE = 'Use: npm start -- [--port 4321].';

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
  const server = serveFolder(siteFolder());
  listen(server, port, 20);
}

await start();
