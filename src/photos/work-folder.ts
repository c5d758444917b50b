// Files are written in a folder of this process and then put in place by a rename, so that whatever is in place is
// whole. What a killed process left is cleared by the next one.
import { mkdir, readdir, rm } from 'node:fs/promises';
import { join } from 'node:path';
import { isRunning } from '../disk/beside.ts';

let folders = 0;

/** Runs with an empty folder beside `place`'s files; the folder is gone afterwards. */
export async function inWorkFolder<T>(place: string, work: (folder: string) => Promise<T>): Promise<T> {
  await mkdir(place, { recursive: true });
  await clearWork(place);
  const folder = join(place, `.making-${process.pid}-${++folders}`);
  await mkdir(folder, { recursive: true });
  try {
    return await work(folder);
  } finally {
    await rm(folder, { recursive: true, force: true });
  }
}

/** Takes away what killed processes were working on. */
export async function clearWork(place: string): Promise<void> {
  for (const name of await readdir(place).catch(() => [])) {
    const owner = /^\.making-(\d+)-\d+$/.exec(name)?.[1];
    if (owner !== undefined && !isRunning(Number(owner)))
      await rm(join(place, name), { recursive: true, force: true });
  }
}
