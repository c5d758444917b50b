// The servers of this machine answer their own address, and no page that comes by another name or from another place.
import { mkdir, writeFile } from 'node:fs/promises';
import { request } from 'node:http';
import type { AddressInfo } from 'node:net';
import { dirname, join } from 'node:path';
import { expect, it, onTestFinished } from 'vitest';
import { serveFolder } from '../../src/commands/serve-folder.ts';
import { emptyFolder } from '../commands/run.ts';
import { SMALL } from '../record/small.ts';
import { serve } from './served.ts';

type Answer = { status: number; headers: Record<string, unknown>; text: string };

/** Asks as a browser would that was sent here by another site: `fetch` wouldn’t let its own headers be set. */
function ask(
  url: URL,
  headers: Record<string, string>,
  method = 'GET',
  path = url.pathname,
): Promise<Answer> {
  return new Promise((done, failed) => {
    const asking = request({ host: url.hostname, port: url.port, path, method, headers }, (answer) => {
      let text = '';
      answer.setEncoding('utf8').on('data', (chunk) => {
        text += chunk;
      });
      answer.on('end', () => done({ status: answer.statusCode ?? 0, headers: answer.headers, text }));
    });
    asking.on('error', failed).end();
  });
}

const FOREIGN = { origin: 'https://elsewhere.invalid' };

it('npm start’s server answers its own address alone, reads only, and opens nothing to other origins', async () => {
  const folder = await emptyFolder();
  await writeFile(join(folder, 'index.html'), '<!doctype html><title>x</title>');
  await mkdir(join(folder, 'script'));
  await writeFile(join(folder, 'script/a.js'), ';');
  const server = serveFolder(folder);
  await new Promise<void>((done) => server.listen(0, '127.0.0.1', done));
  onTestFinished(() => {
    server.closeAllConnections();
    server.close();
  });
  const url = new URL(`http://127.0.0.1:${(server.address() as AddressInfo).port}/`);
  const own = await ask(url, FOREIGN);
  expect(own.status).toBe(200);
  expect(own.headers['access-control-allow-origin']).toBeUndefined();
  expect(own.headers).toMatchObject({
    'x-content-type-options': 'nosniff',
    'cross-origin-resource-policy': 'same-origin',
  });
  expect((await ask(url, {}, 'GET', '/script/a.js')).headers['content-type']).toMatch(/^text\/javascript/);
  // A name of another’s that was made to point here (DNS rebinding).
  for (const host of ['elsewhere.invalid', `elsewhere.invalid:${url.port}`, '127.0.0.1.elsewhere.invalid']) {
    const { status, text } = await ask(url, { host });
    expect([host, status, text.includes('<title>')]).toEqual([host, 403, false]);
  }
  expect((await ask(url, {}, 'POST')).status).toBe(405);
  for (const path of ['/../secret', '/%2e%2e/secret', '/%00', '/script', '//etc/passwd'])
    expect([path, (await ask(url, {}, 'GET', path)).status]).toEqual([path, 404]);
});

it('npm run dev’s server refuses another name, and lets no other origin read', async () => {
  const folder = await emptyFolder();
  for (const [file, text] of Object.entries(SMALL)) {
    await mkdir(dirname(join(folder, file)), { recursive: true });
    await writeFile(join(folder, file), text);
  }
  const url = new URL(await serve('dev', { RECORD: folder }));
  expect(url.hostname).toBe('127.0.0.1');
  const own = await ask(url, FOREIGN);
  expect(own.status).toBe(200);
  expect(own.headers['access-control-allow-origin']).not.toBe('*');
  expect(own.headers['access-control-allow-origin']).not.toBe(FOREIGN.origin);
  const { status, text } = await ask(url, { host: 'elsewhere.invalid' });
  expect(status).toBe(403);
  expect(text).not.toContain('Aldermere');
  // The record and the machine’s own files aren’t served beside the pages.
  for (const path of ['/@fs/etc/passwd', '/@fs/etc/passwd?raw??', '/@fs/etc/passwd?import&raw??'])
    expect((await ask(url, {}, 'GET', path)).text).not.toContain('root:');
}, 240_000);
