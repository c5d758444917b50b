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
import { basename, dirname, join } from 'node:path';

/** Writes a text where none is yet. False when there was one: it stays as it is. */
export async function writeNewText(path: string, text: string): Promise<boolean> {
  await mkdir(dirname(path), { recursive: true });
  const writing = join(dirname(path), `.${basename(path)}.${process.pid}`);
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

/** Writes a text, over one that is there. A link stays a link, and a file keeps who may read it. */
export async function writeText(path: string, text: string): Promise<void> {
  await mkdir(dirname(path), { recursive: true });
  const target = await realpath(path).catch(() => path);
  const before = await stat(target).catch(() => undefined);
  const writing = join(dirname(target), `.${basename(target)}.${process.pid}`);
  try {
    await writeFile(writing, text);
    if (before) await chmod(writing, before.mode);
    await rename(writing, target);
  } catch (error) {
    await rm(writing, { force: true });
    throw error;
  }
}
