// From a saved file to the page that shows it, in `npm run dev` and in a bare Astro dev of as many pages.
import { spawn } from 'node:child_process';
import { access, readFile, writeFile } from 'node:fs/promises';
import { createServer } from 'node:net';
import { join, resolve } from 'node:path';
import { setTimeout as wait } from 'node:timers/promises';
import { BARE, layDownBare } from './bare.ts';
import type { Row } from './row.ts';
import { memoryOf } from './run.ts';
import { buildAll, FOLDER, lastEntry, SITE } from './site.ts';

/** Saves that count, after one that doesn't; the one in the middle is taken. */
const SAVES = 5;
/** Milliseconds between two looks at a page, and the most that one save may take. */
const [LOOK, MOST] = [20, 180_000];
const GOAL = { seconds: 1 };

export async function devRows(): Promise<Row[]> {
  await access(SITE).catch(buildAll);
  const pages = await layDownBare(SITE, { for: 'dev' });
  const { path, day, text } = await lastEntry();
  const page = pages.find((one) => one.endsWith(day));
  if (page === undefined) throw new Error(`No page of ${day} in ${SITE}`);
  const ours = await saved(
    { words: ['src/commands/dev.ts', '--port'], env: { RECORD: resolve(FOLDER) } },
    { path, text, page },
  );
  const body = join(BARE, 'src', 'bodies', `${page}.txt`);
  const bare = await saved(
    { words: ['dev.mjs'], cwd: BARE },
    { path: body, text: await readFile(body, 'utf8'), page },
  );
  return [
    {
      id: 'dev',
      what: 'dev, from a saved entry to its page',
      took: ours.seconds,
      against: 'a bare Astro dev of as many pages',
      floor: bare.seconds,
      goal: GOAL,
      ...(ours.megabytes > 0 ? { megabytes: ours.megabytes } : {}),
    },
  ];
}

type Server = { words: string[]; env?: Record<string, string>; cwd?: string };
type Saved = { path: string; text: string; page: string };

/** Starts a server, saves a file several times and waits for its page each time; then all is as it was. */
async function saved({ words, env = {}, cwd }: Server, { path, text, page }: Saved) {
  const port = await freePort();
  const server = spawn(process.execPath, [...words, String(port)], {
    env: { ...process.env, ...env },
    ...(cwd === undefined ? {} : { cwd }),
    stdio: 'ignore',
  });
  const memory = memoryOf(server.pid);
  const address = `http://127.0.0.1:${port}/${page}`;
  const times: number[] = [];
  let megabytes = 0;
  try {
    await until(address, '</html>', server);
    for (let save = 0; save <= SAVES; save++) {
      const sign = `Seen at save number ${save} of this run`;
      const start = performance.now();
      await writeFile(path, `${text}\n${sign}.\n`);
      await until(address, sign, server);
      times.push((performance.now() - start) / 1000);
      // What a saved file sets off may go on after the page is there.
      await wait(500);
    }
  } finally {
    megabytes = memory.end();
    server.kill();
    await writeFile(path, text);
  }
  const counted = times.slice(1).sort((one, other) => one - other);
  return { seconds: counted[SAVES >> 1] ?? Number.NaN, megabytes };
}

/** Asks for a page until it says something. Throws when it takes too long or the server has ended. */
async function until(address: string, sign: string, server: { exitCode: number | null }): Promise<void> {
  for (const end = performance.now() + MOST; performance.now() < end; await wait(LOOK)) {
    if (server.exitCode !== null) throw new Error(`The server at ${address} has ended`);
    const page = await fetch(address).then(
      (answer) => answer.text(),
      () => '',
    );
    if (page.includes(sign)) return;
  }
  throw new Error(`${address} never said “${sign}”`);
}

function freePort(): Promise<number> {
  return new Promise((found) => {
    const server = createServer().listen(0, '127.0.0.1', () => {
      const address = server.address();
      server.close(() => found(typeof address === 'object' && address ? address.port : 0));
    });
  });
}
