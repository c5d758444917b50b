// Runs a program, with the time it takes and the most memory that it and its children hold together.
import { spawn } from 'node:child_process';
import { readFile } from 'node:fs/promises';

/** `megabytes` is missing where the system doesn't say (/proc). */
export type Ran = { seconds: number; megabytes?: number; said: string };

type How = { env?: Record<string, string>; cwd?: string };

/** Milliseconds between two looks at the memory; the most of the program itself is kept by the system in between. */
const LOOK = 100;

/** Runs node with these words. Throws with what was said when it doesn't end well. */
export async function runNode(words: readonly string[], { env = {}, cwd }: How = {}): Promise<Ran> {
  const start = performance.now();
  const child = spawn(process.execPath, words, {
    env: { ...process.env, ...env },
    ...(cwd === undefined ? {} : { cwd }),
    stdio: ['ignore', 'pipe', 'pipe'],
  });
  const [out, wrong]: [string[], string[]] = [[], []];
  child.stdout.setEncoding('utf8').on('data', (text: string) => out.push(text));
  child.stderr.setEncoding('utf8').on('data', (text: string) => wrong.push(text));
  const memory = memoryOf(child.pid);
  const code = await new Promise<number | null>((done, failed) => {
    child.on('error', failed);
    child.on('close', done);
  });
  const seconds = (performance.now() - start) / 1000;
  const megabytes = memory.end();
  if (code !== 0)
    throw new Error(`${words.join(' ')} ended with ${code}:\n${[...wrong, ...out].join('').slice(-2000)}`);
  return { seconds, said: out.join(''), ...(megabytes > 0 ? { megabytes } : {}) };
}

/** Watches a process and its children; `end` gives the most that they held at one time, in megabytes, or 0. */
export function memoryOf(id: number | undefined): { end: () => number } {
  let most = 0;
  const look = async () => {
    if (id === undefined) return;
    const own = await statusOf(id);
    if (!own) return;
    const others = await Promise.all((await childrenOf(id)).map(statusOf));
    const together = others.reduce((sum, status) => sum + (status?.now ?? 0), own.now);
    most = Math.max(most, own.most, together);
  };
  const timer = setInterval(() => void look(), LOOK);
  return {
    end: () => {
      clearInterval(timer);
      return most / 1024;
    },
  };
}

/** What a process holds, and the most it ever held, in kilobytes. */
async function statusOf(id: number): Promise<{ now: number; most: number } | undefined> {
  const text = await readFile(`/proc/${id}/status`, 'utf8').catch(() => '');
  const [now, most] = ['VmRSS', 'VmHWM'].map((name) =>
    Number(new RegExp(`${name}:\\s+(\\d+)`).exec(text)?.[1]),
  );
  return now && most ? { now, most } : undefined;
}

/** The children of a process, and theirs. */
async function childrenOf(id: number): Promise<number[]> {
  const text = await readFile(`/proc/${id}/task/${id}/children`, 'utf8').catch(() => '');
  const own = text.split(' ').filter(Boolean).map(Number);
  return [...own, ...(await Promise.all(own.map(childrenOf))).flat()];
}
