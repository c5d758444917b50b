// Compiles the pages, and keeps them for as long as the program is the same: a change in a record compiles nothing.
import { fork } from 'node:child_process';
import { mkdir, readdir, readFile, rename, rm, stat, utimes, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { onDisk } from '../../disk/disk-fault.ts';
import { inWorkFolder } from '../../photos/work-folder.ts';
import { treeDigest } from './program.ts';

/** `pages` is the module that draws them, `command` what builds; `beside` holds what every site has: styles, fonts, scripts. */
export type Compiled = { pages: string; command: string; beside: string };

const KEPT = join('.cache', 'compiled');
const COMPILE = join('src', 'commands', 'build', 'compile.ts');
/** How long what another program compiled is left to builds that may still use it, in milliseconds. */
const LEFT_ALONE = 3_600_000;

/** The compiled pages of a program, by its digest: as kept when they are whole, else made and kept. `signal` gives it up. */
export async function compiledPages(program: string, signal: AbortSignal): Promise<Compiled> {
  const folder = join(KEPT, program);
  await onDisk(KEPT, async () => {
    await mkdir(KEPT, { recursive: true });
    if (!(await isWhole(folder))) await keep(folder, signal);
    await used(folder);
  });
  return within(folder);
}

/** The same if they are kept. */
export async function keptPages(program: string): Promise<Compiled | undefined> {
  const folder = join(KEPT, program);
  if (!(await isWhole(folder))) return undefined;
  await used(folder).catch(() => {});
  return within(folder);
}

function used(folder: string): Promise<void> {
  const now = new Date();
  return utimes(folder, now, now);
}

const within = (folder: string): Compiled => ({
  pages: join(folder, 'program', 'pages.mjs'),
  command: join(folder, 'program', 'command.mjs'),
  beside: join(folder, 'beside'),
});

/** What was kept is used only if every byte of it is as it was written. */
async function isWhole(folder: string): Promise<boolean> {
  const sum = await readFile(join(folder, 'sum'), 'utf8').catch(() => undefined);
  if (sum === undefined) return false;
  try {
    return sum === sumOf(folder);
  } catch {
    return false;
  }
}

function sumOf(folder: string): string {
  return `${treeDigest(join(folder, 'program'))} ${treeDigest(join(folder, 'beside'))}\n`;
}

async function keep(folder: string, signal: AbortSignal): Promise<void> {
  await clearOld();
  await inWorkFolder(KEPT, async (making) => {
    await compile(making, signal);
    await writeFile(join(making, 'sum'), sumOf(making));
    // Another build may have put the same in place meanwhile; what was damaged goes.
    if (await isWhole(folder)) return;
    await rm(folder, { recursive: true, force: true });
    await rename(making, folder).catch(async (error: unknown) => {
      if (!(await isWhole(folder))) throw error;
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
async function compile(into: string, signal: AbortSignal): Promise<void> {
  const compiling = fork(COMPILE, [into], { silent: true, execArgv: [], signal });
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
