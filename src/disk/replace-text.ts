// Puts a text in place of one that was read before: whole or not at all, and never over what somebody else wrote since.
import { chmod, mkdir, open, readFile, realpath, rename, rm, stat } from 'node:fs/promises';
import { basename, dirname, join } from 'node:path';

/** What became of a text: written, or left since the file isn’t what it was. */
export type Replaced = 'written' | 'changed';

/** How long a writer may take before the file beside is thought to be left by one that was killed, in milliseconds. */
const STALE = 3_000;

/**
 * Writes `text` where `before` stands; without `before`, where no file is. Writers of one file take turns: each holds
 * the file beside it while it looks and writes.
 */
export async function replaceText(path: string, before: string | undefined, text: string): Promise<Replaced> {
  await mkdir(dirname(path), { recursive: true });
  const target = await realpath(path).catch(() => path);
  const beside = join(dirname(target), `.${basename(target)}.writing`);
  const file = await turn(beside);
  try {
    try {
      await file.writeFile(text);
      await file.sync();
    } finally {
      await file.close();
    }
    const there = await readFile(target, 'utf8').catch((error: NodeJS.ErrnoException) => {
      if (error.code === 'ENOENT') return undefined;
      throw error;
    });
    if (there !== before) {
      await rm(beside, { force: true });
      return 'changed';
    }
    if (before !== undefined) await chmod(beside, (await stat(target)).mode);
    await rename(beside, target);
    return 'written';
  } catch (error) {
    await rm(beside, { force: true });
    throw error;
  }
}

/** Opens the file beside when no other writer holds it; one that was left by a killed writer is taken away. */
async function turn(beside: string) {
  for (;;) {
    try {
      return await open(beside, 'wx');
    } catch (error) {
      if ((error as NodeJS.ErrnoException).code !== 'EEXIST') throw error;
    }
    const held = await stat(beside).catch(() => undefined);
    if (held && Date.now() - held.mtimeMs > STALE) await rm(beside, { force: true });
    else await new Promise((later) => setTimeout(later, 15));
  }
}
