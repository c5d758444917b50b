// A desk on a small record, for tests that ask it for things as a browser would, or as one that means ill.
import { mkdir, writeFile } from 'node:fs/promises';
import { type IncomingHttpHeaders, request } from 'node:http';
import type { AddressInfo } from 'node:net';
import { dirname, join } from 'node:path';
import { onTestFinished } from 'vitest';
import { recordAt } from '../../src/desk/lying.ts';
import type { Pairing } from '../../src/desk/pairing.ts';
import type { Draws } from '../../src/desk/preview.ts';
import { deskServer } from '../../src/desk/server.ts';
import { emptyFolder } from '../commands/run.ts';
import { SMALL } from '../record/small.ts';

export const TOKEN = 'a-token-for-tests';

export type Answer = { status: number; text: string; headers: IncomingHttpHeaders };
export type Asked = {
  method?: string;
  headers?: Record<string, string>;
  body?: Uint8Array | string | AsyncIterable<Uint8Array>;
};

/** SMALL in a folder of its own. */
export async function smallFolder(changed: Record<string, string> = {}): Promise<string> {
  const folder = await emptyFolder();
  for (const [name, text] of Object.entries({ ...SMALL, ...changed })) {
    await mkdir(dirname(join(folder, name)), { recursive: true });
    await writeFile(join(folder, name), text);
  }
  return folder;
}

/** Opens a desk; `known` asks as its own page does, `ask` with these headers alone. */
export async function openDesk(folder: string, pairing?: Pairing, draw?: Draws) {
  const server = deskServer({ at: recordAt(folder), token: TOKEN, pairing, draw });
  await new Promise<void>((done) => server.listen(0, '127.0.0.1', done));
  onTestFinished(() => {
    server.closeAllConnections();
    server.close();
  });
  const { port } = server.address() as AddressInfo;
  const host = `127.0.0.1:${port}`;
  const ask = (path: string, { method = 'GET', headers = {}, body }: Asked = {}) =>
    new Promise<Answer>((done, failed) => {
      const asking = request({ host: '127.0.0.1', port, path, method, headers }, (answer) => {
        let text = '';
        answer.setEncoding('utf8').on('data', (chunk) => {
          text += chunk;
        });
        answer.on('end', () => done({ status: answer.statusCode ?? 0, text, headers: answer.headers }));
      });
      // What is sent on after an answer may find nobody there.
      asking.on('error', failed);
      if (body === undefined || typeof body === 'string' || body instanceof Uint8Array) asking.end(body);
      else send(asking, body);
    });
  const own = { cookie: `desk-${port}=${TOKEN}`, origin: `http://${host}` };
  const known = (path: string, asked: Asked = {}) =>
    ask(path, { ...asked, headers: { ...own, ...asked.headers } });
  return { host, own, ask, known };
}

async function send(asking: ReturnType<typeof request>, body: AsyncIterable<Uint8Array>): Promise<void> {
  for await (const chunk of body) {
    if (asking.destroyed) return;
    if (!asking.write(chunk))
      await new Promise<void>((more) => {
        const go = () => {
          asking.off('drain', go).off('close', go);
          more();
        };
        asking.on('drain', go).on('close', go);
      });
  }
  asking.end();
}
