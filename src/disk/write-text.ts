// Writes a text so that it is there whole or as it was: into a file beside it first, then put in its place.
import {
  chmod,
  constants,
  copyFile,
  link,
  mkdir,
  realpath,
  rename,
  rm,
  stat,
  writeFile,
} from 'node:fs/promises';
import { dirname } from 'node:path';
import { besideOf, clearLeft } from './beside.ts';
import { onDisk } from './disk-fault.ts';

/** Writes a text where none is yet. False when there was one: it stays as it is. Throws `DiskFault`. */
export function writeNewText(path: string, text: string): Promise<boolean> {
  return onDisk(path, () => putNew(path, text));
}

/** Writes a text, over one that is there. A link stays a link, and a file keeps who may read it. Throws `DiskFault`. */
export function writeText(path: string, text: string): Promise<void> {
  return onDisk(path, () => put(path, text));
}

async function putNew(path: string, text: string): Promise<boolean> {
  await mkdir(dirname(path), { recursive: true });
  await clearLeft(dirname(path));
  const writing = besideOf(path);
  try {
    await writeFile(writing, text);
    // A link is refused where there is a file already, also one that came a moment ago. Some disks know no links.
    await link(writing, path).catch((error: NodeJS.ErrnoException) => {
      if (error.code === 'EEXIST') throw error;
      return copyFile(writing, path, constants.COPYFILE_EXCL);
    });
    return true;
  } catch (error) {
    if ((error as NodeJS.ErrnoException).code === 'EEXIST') return false;
    throw error;
  } finally {
    await rm(writing, { force: true });
  }
}

async function put(path: string, text: string): Promise<void> {
  await mkdir(dirname(path), { recursive: true });
  const target = await realpath(path).catch(() => path);
  const before = await stat(target).catch(() => undefined);
  await clearLeft(dirname(target));
  const writing = besideOf(target);
  try {
    await writeFile(writing, text);
    if (before) await chmod(writing, before.mode);
    await rename(writing, target);
  } catch (error) {
    await rm(writing, { force: true });
    throw error;
  }
}
