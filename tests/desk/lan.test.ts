import { spawn } from 'node:child_process';
import { readdir } from 'node:fs/promises';
import { request } from 'node:http';
import { createConnection } from 'node:net';
import { join } from 'node:path';
import { expect, it, onTestFinished } from 'vitest';
import { smallFolder } from './at-desk.ts';

/** Linux has all of 127.0.0.0/8 as its own, so one beside the usual can stand for that in a local network. */
const ADDRESS = process.platform === 'linux' ? '127.0.0.2' : '127.0.0.1';

/** The command with --lan, as it is started in a shop, and what it has said so far. */
async function lanDesk(folder: string) {
  const words = ['src/commands/desk.ts', '--lan', '--address', ADDRESS, '--port', '4380', folder];
  const child = spawn(process.execPath, words, { stdio: ['ignore', 'pipe', 'inherit'] });
  onTestFinished(async () => {
    const over = new Promise((done) => child.once('exit', done));
    if (child.kill()) await over;
  });
  let said = '';
  const heard = (what: RegExp, from = 0) =>
    new Promise<string>((found) => {
      const look = () => {
        const [, one] = what.exec(said.slice(from)) ?? [];
        if (one === undefined) return false;
        found(one);
        return true;
      };
      if (!look()) child.stdout.on('data', look);
    });
  child.stdout.on('data', (chunk) => {
    said += chunk;
  });
  const host = await heard(/On a phone in the same network open http:\/\/([\d.:]+)\/ and type the code\./);
  return { host, heard, length: () => said.length };
}

type Asked = { method?: string; headers?: Record<string, string>; body?: string };
const asking =
  (host: string) =>
  (path: string, { method = 'GET', headers = {}, body }: Asked = {}) =>
    new Promise<{ status: number; text: string; cookie: string }>((done, failed) => {
      const [hostname, port] = host.split(':');
      const own = method === 'GET' ? {} : { origin: `http://${host}` };
      const options = { hostname, port, path, method, headers: { ...own, ...headers }, agent: false };
      request(options, (answer) => {
        let text = '';
        answer.setEncoding('utf8').on('data', (chunk) => {
          text += chunk;
        });
        const [cookie = ''] = answer.headers['set-cookie'] ?? [];
        answer.on('end', () =>
          done({ status: answer.statusCode ?? 0, text, cookie: cookie.split(';')[0] ?? '' }),
        );
      })
        .on('error', failed)
        .end(body);
    });

it('with --lan a phone comes in by the code alone, once, and guessing is stopped', async () => {
  const folder = await smallFolder();
  const { host, heard, length } = await lanDesk(folder);
  const ask = asking(host);
  expect(host.startsWith(`${ADDRESS}:`)).toBe(true);
  const code = await heard(/Code for the next phone: (\d{6})\n/);
  const pair = (said: string, headers = {}) =>
    ask('/pair', { method: 'POST', headers, body: `code=${said}` });

  // Without the code there is the page that asks for it, and nothing of the record.
  const door = await ask('/?day=2025-03-03');
  expect(door.status).toBe(401);
  expect(door.text).toContain('shows a code of six figures');
  expect(door.text).not.toMatch(/Aldermere|Stripped/);
  const form = { entry: '2025-03-04', read: '', by: '', lists: {}, words: 'A day.' };
  const body = JSON.stringify({ form, sign: '' });
  for (const path of ['/look', '/write', '/preview', '/picture?day=2025-03-03&name=a.jpg'])
    expect((await ask(path, { method: 'POST', body })).status, path).toBe(403);
  for (const path of [
    '/script/desk.js',
    '/picture?day=2025-03-03&file=a.jpg',
    '/preview/x/day/2025-03-03.html',
  ])
    expect((await ask(path)).status, path).toBe(403);

  // Another name or address that leads here, and a page of another origin.
  const port = host.split(':')[1];
  for (const name of [`127.0.0.9:${port}`, `localhost:${port}`, `elsewhere.example:${port}`, ADDRESS])
    expect((await ask('/', { headers: { host: name } })).status, name).toBe(421);
  expect((await pair(code, { origin: 'http://elsewhere.example' })).status).toBe(403);
  // It listens at that address and at no other.
  if (ADDRESS !== '127.0.0.1')
    await expect(connected('127.0.0.1', Number(port))).rejects.toThrow('ECONNREFUSED');

  const before = length();
  expect((await pair(code === '000000' ? '000001' : '000000')).status).toBe(403);
  const came = await pair(code);
  expect(came.status).toBe(303);
  const inside = { headers: { cookie: came.cookie } };
  expect((await ask('/?day=2025-03-03', inside)).text).toContain('Stripped it.');
  expect((await ask('/look', { ...inside, method: 'POST', body })).status).toBe(200);

  // The next phone needs the next code; five that are wrong end the guessing, for the right one too.
  const next = await heard(/Code for the next phone: (\d{6})\n/, before);
  const wrong = next === '000000' ? '000001' : '000000';
  const tries = [code === next ? wrong : code, wrong, wrong, wrong, wrong];
  const so: number[] = [];
  for (const one of tries) so.push((await pair(one)).status);
  expect(so).toEqual([403, 403, 403, 403, 429]);
  const last = await heard(
    new RegExp(`Code for the next phone: ${next}\\nCode for the next phone: (\\d{6})\\n`),
    before,
  );
  expect((await pair(last)).status).toBe(429);
  // Who is in stays in.
  expect((await ask('/', inside)).status).toBe(200);
  expect(await readdir(join(folder, 'log'))).toEqual(['2025-03-03.md']);
});

function connected(host: string, port: number): Promise<void> {
  return new Promise((done, failed) => {
    const socket = createConnection({ host, port }, () => {
      socket.destroy();
      done();
    });
    socket.on('error', failed);
  });
}
