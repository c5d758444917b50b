// A file is written beside its place and then put there, so that what stands in a place is whole. What a killed writer
// left beside is taken away by the next one that writes into that folder.
import { readdir, rm } from 'node:fs/promises';
import { basename, dirname, join } from 'node:path';

const BESIDE = /^\..+\.(\d+)\.beside$/;

/** Where this process writes what is to stand at a path: a name that no reader of a record or a folder looks at. */
export function besideOf(path: string): string {
  return join(dirname(path), `.${basename(path)}.${process.pid}.beside`);
}

/** Takes away what killed writers left beside the files of a folder. */
export async function clearLeft(folder: string): Promise<void> {
  for (const name of await readdir(folder).catch(() => [])) {
    const writer = BESIDE.exec(name)?.[1];
    if (writer !== undefined && !isRunning(Number(writer)))
      await rm(join(folder, name), { recursive: true, force: true });
  }
}

/** Whether a process runs on this machine. */
export function isRunning(id: number): boolean {
  try {
    process.kill(id, 0);
    return true;
  } catch (error) {
    return (error as NodeJS.ErrnoException).code === 'EPERM';
  }
}
