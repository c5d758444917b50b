// Writes a text so that it is there whole or as it was: into a file beside it first, then put in its place.
import { chmod, mkdir, realpath, rename, rm, stat, writeFile } from 'node:fs/promises';
import { basename, dirname, join } from 'node:path';

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
