// Tells when something in a record’s folder was saved. Only folders are watched, so that thousands of pictures cost
// nothing; names that begin with a dot are not the record’s.
import { type FSWatcher, watch } from 'node:fs';
import { readdir } from 'node:fs/promises';
import { join } from 'node:path';

/** How long it must have been quiet before a change is told, in milliseconds, unless asked for: a save is several changes. */
const QUIET = 120;

/** Calls `changed` at once and after each change, never twice at a time, until the signal ends it or nothing is there. */
export async function watchFolder(
  root: string,
  changed: () => Promise<void>,
  signal: AbortSignal,
  quiet = QUIET,
): Promise<void> {
  const watchers = new Map<string, FSWatcher>();
  const follow = async () => {
    const folders = new Set(await foldersIn(root));
    for (const [folder, watcher] of watchers) {
      if (folders.has(folder)) continue;
      watcher.close();
      watchers.delete(folder);
    }
    for (const folder of folders) {
      if (watchers.has(folder)) continue;
      const watcher = watched(folder, (name) => {
        if (!name.startsWith('.')) told();
      });
      if (watcher) watchers.set(folder, watcher);
    }
  };
  let [waiting, running, again]: [NodeJS.Timeout | undefined, boolean, boolean] = [undefined, false, false];
  const run = async () => {
    if (running) {
      again = true;
      return;
    }
    running = true;
    await follow();
    await changed();
    running = false;
    if (again && !signal.aborted) {
      again = false;
      await run();
    }
  };
  const told = () => {
    clearTimeout(waiting);
    waiting = setTimeout(() => void run(), quiet);
  };
  await run();
  if (watchers.size === 0) return;
  await new Promise<void>((done) => signal.addEventListener('abort', () => done(), { once: true }));
  clearTimeout(waiting);
  for (const watcher of watchers.values()) watcher.close();
}

/** Nothing when the folder is gone; one that goes later is seen in the one that held it. */
function watched(folder: string, changed: (name: string) => void): FSWatcher | undefined {
  try {
    const watcher = watch(folder, (_, name) => changed(name ?? ''));
    return watcher.on('error', () => watcher.close());
  } catch {
    return undefined;
  }
}

/** The folder and all below it. */
async function foldersIn(root: string): Promise<string[]> {
  const entries = await readdir(root, { withFileTypes: true }).catch(() => []);
  const below = entries.filter((entry) => entry.isDirectory() && !entry.name.startsWith('.'));
  return [root, ...(await Promise.all(below.map(({ name }) => foldersIn(join(root, name))))).flat()];
}
