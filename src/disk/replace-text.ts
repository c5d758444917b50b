// Puts a text in place of one that was read before: whole or not at all, and never over what somebody else wrote since.
import { chmod, link, mkdir, open, readFile, realpath, rename, rm, stat } from 'node:fs/promises';
import { basename, dirname, join } from 'node:path';
import { onDisk } from './disk-fault.ts';

/** What became of a text: written, or left since the file isn’t what it was. */
export type Replaced = 'written' | 'changed';

/** How long a writer may take before the file beside is thought to be left by one that was killed, in milliseconds. */
const STALE = 3_000;

/**
 * Writes `text` where `before` stands; without `before`, where no file is. Writers of one file take turns: each holds
 * the file beside it while it looks and writes. Throws `DiskFault`.
 */
export function replaceText(path: string, before: string | undefined, text: string): Promise<Replaced> {
  return onDisk(path, () => replace(path, before, text));
}

async function replace(path: string, before: string | undefined, text: string): Promise<Replaced> {
  await mkdir(dirname(path), { recursive: true });
  const target = await realpath(path).catch(() => path);
  const beside = join(dirname(target), `.${basename(target)}.writing`);
  const file = await turn(beside);
  // Once it was put in place, the name beside may be another writer’s already.
  let own = true;
  try {
    try {
      await file.writeFile(text);
      await file.sync();
    } finally {
      await file.close();
    }
    if ((await textOf(target)) !== before) return 'changed';
    if (before === undefined && (await linked(beside, target))) return 'written';
    if (before === undefined && (await textOf(target)) !== undefined) return 'changed';
    if (before !== undefined) await chmod(beside, (await stat(target)).mode);
    await rename(beside, target);
    own = false;
    return 'written';
  } finally {
    if (own) await rm(beside, { force: true });
  }
}

/** The text of a file, or nothing when there is none. */
async function textOf(path: string): Promise<string | undefined> {
  try {
    return await readFile(path, 'utf8');
  } catch (error) {
    if ((error as NodeJS.ErrnoException).code === 'ENOENT') return undefined;
    throw error;
  }
}

/** A link is never made over another file, as a rename would be. False where one is there, and on disks without links. */
async function linked(beside: string, target: string): Promise<boolean> {
  return link(beside, target).then(
    () => true,
    () => false,
  );
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
