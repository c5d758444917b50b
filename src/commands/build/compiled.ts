// Compiles the pages, and keeps them for as long as the program is the same: a change in a record compiles nothing.
import { fork } from 'node:child_process';
import { mkdir, readdir, readFile, rename, rm, stat, utimes, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { onDisk } from '../../disk/disk-fault.ts';
import { inWorkFolder } from '../../photos/work-folder.ts';
import { treeDigest } from './program.ts';

/**
 * `pages` is the module that draws them; `beside` holds what every site has: styles, fonts, scripts. Once they are bundled
 * with it `command` is what builds, and `thread` what draws ahead.
 */
export type Compiled = {
  folder: string;
  pages: string;
  command?: string;
  thread?: string;
  beside: string;
};

const KEPT = join('.cache', 'compiled');
const SCRIPTS = join('src', 'commands', 'build');
/** How long what another program compiled is left to builds that may still use it, in milliseconds. */
const LEFT_ALONE = 3_600_000;

/** Work that is under way in another process, or done. */
export type UnderWay<T> = { done: Promise<T> };

/** The compiled pages of a program, by its digest: as kept when they are whole, else made and kept. `signal` gives it up. */
export async function compiledPages(program: string, signal: AbortSignal): Promise<UnderWay<Compiled>> {
  const folder = join(KEPT, program);
  const kept = await keptPages(program);
  if (kept) return { done: Promise.resolve(kept) };
  return underWay((begun) =>
    onDisk(KEPT, async () => {
      await mkdir(KEPT, { recursive: true });
      await keep(folder, signal, begun);
      return plain(folder);
    }),
  );
}

/** The same if they are kept. */
export async function keptPages(program: string): Promise<Compiled | undefined> {
  const folder = join(KEPT, program);
  const kept = (await isWhole(folder, BUNDLED))
    ? bundled(folder)
    : (await isWhole(folder, PAGES))
      ? plain(folder)
      : undefined;
  const now = new Date();
  // Who may not write there uses it all the same.
  if (kept) await utimes(folder, now, now).catch(() => {});
  return kept;
}

/** Bundles compiled pages with the program for the next build, where they aren't. It only saves time: no fault is told. */
export async function bundleForNext(
  { folder, pages, command }: Compiled,
  signal: AbortSignal,
): Promise<UnderWay<void>> {
  if (command !== undefined) return { done: Promise.resolve() };
  return underWay((begun) =>
    inWorkFolder(KEPT, async (work) => {
      const making = join(work, 'program');
      await inOwnProcess('bundle.ts', [pages, making], signal, begun);
      // Another build may have put the same in place meanwhile.
      if (await isWhole(folder, BUNDLED)) return;
      await rm(join(folder, 'program'), { recursive: true, force: true });
      await rename(making, join(folder, 'program'));
      await writeFile(join(folder, 'program.sum'), sumOf(folder, BUNDLED));
    }).catch(() => {}),
  );
}

/** Waits until the process of a work has begun: who goes on without waiting in turns would keep it from beginning. */
async function underWay<T>(work: (begun: () => void) => Promise<T>): Promise<UnderWay<T>> {
  const { promise, resolve } = Promise.withResolvers<void>();
  const done = work(resolve);
  const ended = () => resolve();
  await Promise.race([promise, done.then(ended, ended)]);
  return { done };
}

const plain = (folder: string): Compiled => ({
  folder,
  pages: join(folder, 'pages', 'pages.mjs'),
  beside: join(folder, 'beside'),
});

const bundled = (folder: string): Compiled => ({
  ...plain(folder),
  pages: join(folder, 'program', 'pages.mjs'),
  command: join(folder, 'program', 'command.mjs'),
  thread: join(folder, 'program', 'thread.mjs'),
});

/** What is kept together, and the file that has its sum. */
const PAGES = { holds: ['pages', 'beside'], sum: 'sum' };
const BUNDLED = { holds: ['program', 'beside'], sum: 'program.sum' };

/** What was kept is used only if every byte of it is as it was written. */
async function isWhole(folder: string, what: typeof PAGES): Promise<boolean> {
  const sum = await readFile(join(folder, what.sum), 'utf8').catch(() => undefined);
  if (sum === undefined) return false;
  try {
    return sum === sumOf(folder, what);
  } catch {
    return false;
  }
}

function sumOf(folder: string, { holds }: typeof PAGES): string {
  return `${holds.map((name) => treeDigest(join(folder, name))).join(' ')}\n`;
}

async function keep(folder: string, signal: AbortSignal, begun: () => void): Promise<void> {
  await clearOld();
  await inWorkFolder(KEPT, async (making) => {
    await inOwnProcess('compile.ts', [making], signal, begun);
    await writeFile(join(making, 'sum'), sumOf(making, PAGES));
    // Another build may have put the same in place meanwhile; what was damaged goes.
    if (await isWhole(folder, PAGES)) return;
    await rm(folder, { recursive: true, force: true });
    await rename(making, folder).catch(async (error: unknown) => {
      if (!(await isWhole(folder, PAGES))) throw error;
    });
  });
}

/** Takes away what other programs compiled and nobody has used for a while. */
async function clearOld(): Promise<void> {
  for (const name of await readdir(KEPT)) {
    const path = join(KEPT, name);
    const used = (await stat(path).catch(() => undefined))?.mtimeMs ?? 0;
    if (Date.now() - used > LEFT_ALONE) await rm(path, { recursive: true, force: true });
  }
}

/** Compiles in a process of its own: what it takes of memory is given back, and the record is read meanwhile. */
async function inOwnProcess(
  script: string,
  words: string[],
  signal: AbortSignal,
  begun: () => void,
): Promise<void> {
  const compiling = fork(join(SCRIPTS, script), words, { silent: true, execArgv: [], signal });
  begun();
  const said: string[] = [];
  for (const stream of [compiling.stdout, compiling.stderr]) {
    stream?.setEncoding('utf8').on('data', (text: string) => said.push(text));
  }
  let fault: object = {};
  compiling.on('message', (told: object) => {
    fault = told;
  });
  const code = await new Promise((done, failed) => {
    compiling.on('error', failed);
    compiling.on('close', done);
  });
  // A full disk is told of as one, with its code.
  if (code !== 0) throw Object.assign(new Error(`The pages can’t be compiled.\n${said.join('')}`), fault);
}
