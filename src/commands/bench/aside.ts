// Puts what a timed run mustn't find out of its way. It is taken away after all is timed: a file system that looks past the
// places of files that went a moment ago (ext4 does, for some minutes) makes new files ten times slower meanwhile.
import { mkdir, rename, rm } from 'node:fs/promises';
import { join } from 'node:path';

const ASIDE = join('.cache', 'bench', 'aside');

let count = 0;

/** Puts a file or folder aside, if there is one. */
export async function putAside(path: string): Promise<void> {
  await mkdir(ASIDE, { recursive: true });
  count += 1;
  await rename(path, join(ASIDE, `${process.pid}-${count}`)).catch((error: NodeJS.ErrnoException) => {
    if (error.code !== 'ENOENT') throw error;
  });
}

/** Takes away all that was put aside, by a run that was stopped too. */
export function clearAside(): Promise<void> {
  return rm(ASIDE, { recursive: true, force: true });
}
