// A shop of its own for what goes wrong: a copy of the program with what it keeps, a small record with pictures, a
// card, and a folder for what comes out, all below one folder, which may be a small disk.
import { spawn } from 'node:child_process';
import { cp, mkdir, readFile, rm, symlink, utimes, writeFile } from 'node:fs/promises';
import { dirname, join, resolve } from 'node:path';
import { scene } from '../photos/pictures.ts';
import { bytesIn } from '../photos/record-of.ts';
import { SMALL } from '../record/small.ts';

/** What the program is made of, packages aside. */
const PROGRAM = [
  'astro.config.mjs',
  'package.json',
  'package-lock.json',
  'tsconfig.json',
  'public',
  'shared',
  'src',
];
const PRELOAD = new URL('./at-a-step.ts', import.meta.url).href;
/** What every picture of the card was taken at: none carries a date of its own. */
export const TAKEN = new Date('2025-03-05T10:00:00');

export type Shop = { program: string; record: string; card: string; out: string; count: string };
/** `before` is put before the command in a shell, `killAfter` are milliseconds. */
export type Disturbed = { env?: NodeJS.ProcessEnv; before?: string[]; killAfter?: number };
export type Ran = { code: number | null; signal: string | null; out: string; err: string };

/** Lays the program down below a folder. */
export async function shopIn(folder: string): Promise<Shop> {
  const [program = '', record = '', card = '', out = ''] = ['program', 'record', 'card', 'out'].map((name) =>
    join(folder, name),
  );
  for (const name of PROGRAM) await cp(name, join(program, name), { recursive: true });
  await symlink(resolve('node_modules'), join(program, 'node_modules'));
  return { program, record, card, out, count: join(folder, 'count.json') };
}

/** Lays record and card down as they were at first, with nothing made of them yet but what goes before a work. */
export async function layDown(
  shop: Shop,
  { first }: { first?: (shop: Shop) => string[] } = {},
): Promise<void> {
  const { program, record, card, out } = shop;
  for (const folder of [record, card, out, join(program, '.cache', 'photos')])
    await rm(folder, { recursive: true, force: true });
  await mkdir(out);
  for (const [name, text] of Object.entries(TEXTS)) await lay(join(record, name), Buffer.from(text));
  for (const [n, name] of ['a.jpg', 'b.jpg'].entries())
    await lay(join(record, 'photos/2025-03-03', name), await picture(n));
  for (const [n, name] of ['c.jpg', 'd.jpg', 'e.jpg'].entries()) {
    await lay(join(card, name), await picture(n + 2));
    await utimes(join(card, name), TAKEN, TAKEN);
  }
  if (first && (await run(shop, first(shop))).code !== 0) throw new Error('what goes before failed');
}

const TEXTS = {
  ...SMALL,
  'log/2025-03-03.md': SMALL['log/2025-03-03.md'].replace(
    'finished:',
    'photos:\n  - { file: a.jpg, caption: Before }\n  - { file: b.jpg, caption: After }\nfinished:',
  ),
};

async function lay(path: string, bytes: Buffer): Promise<void> {
  await mkdir(dirname(path), { recursive: true });
  await writeFile(path, bytes);
}

const picture = (n: number) =>
  scene(96 + 8 * n, 64)
    .jpeg({ quality: 90 })
    .toBuffer();

/** Runs a command of the program as npm would, but for npm, so that what is killed is the command itself. */
export function run(
  shop: Shop,
  [name = '', ...words]: readonly string[],
  disturbed: Disturbed = {},
): Promise<Ran> {
  const { RECORD: _, ...env } = process.env;
  const line = [...(disturbed.before ?? []), process.execPath, '--import', PRELOAD];
  const [program = '', ...rest] = [...line, `src/commands/${name}.ts`, ...words];
  return new Promise((done) => {
    const running = spawn(program, rest, {
      cwd: shop.program,
      env: { ...env, RECORD: shop.record, COUNT_INTO: shop.count, ...disturbed.env },
      stdio: ['ignore', 'pipe', 'pipe'],
    });
    const said = { out: '', err: '' };
    running.stdout.setEncoding('utf8').on('data', (more) => {
      said.out += more;
    });
    running.stderr.setEncoding('utf8').on('data', (more) => {
      said.err += more;
    });
    const { killAfter } = disturbed;
    const timer = killAfter === undefined ? undefined : setTimeout(() => running.kill('SIGKILL'), killAfter);
    running.on('close', (code, signal) => {
      clearTimeout(timer);
      done({ code, signal, ...said });
    });
  });
}

/** How often the last command changed the disk, and how often it turned to the file that is to vanish. */
export async function counted({ count }: Shop): Promise<{ steps: number; turns: number }> {
  return JSON.parse(await readFile(count, 'utf8'));
}

/** Every file of the record, of what came out and of the pictures that are kept, with its bytes. */
export async function standing({ program, record, out }: Shop): Promise<Map<string, string>> {
  const cache = join(program, '.cache');
  const kept = new Map([...(await bytesIn(cache))].filter(([name]) => !OF_THE_RUN.test(name)));
  const all = await Promise.all([bytesIn(record), bytesIn(out), kept]);
  return new Map(
    ['record', 'out', 'cache'].flatMap((of, n) =>
      [...(all[n] ?? [])].map(([name, bytes]) => [`${of}/${name}`, bytes] as const),
    ),
  );
}

/** Compiled pages, and what is remembered of files by the times of this disk. */
const OF_THE_RUN = /^compiled\/[0-9a-f]+\/|^photos\/seen-|^kept\/[^.]/;
