// Puts a folder that was made elsewhere in its place, whole: what stands there is the old one or the new one.
import { rmSync } from 'node:fs';
import { cp, mkdir, rename, rm } from 'node:fs/promises';
import { basename, dirname, join, resolve } from 'node:path';
import { besideOf, clearLeft } from './beside.ts';
import { onDisk } from './disk-fault.ts';

/**
 * Moves `made` to `place`, over a folder that is there. Where they lie on different disks it is copied beside the place
 * first, so that a disk that fills up leaves the old one as it was. `stays` names folders of the old one that go on in
 * the new one, whole. Throws `DiskFault`.
 */
export function putFolder(made: string, place: string, stays: readonly string[] = []): Promise<void> {
  return onDisk(place, async () => {
    const path = resolve(place);
    await mkdir(dirname(path), { recursive: true });
    await clearLeft(dirname(path));
    const fresh = besideOf(path);
    try {
      await rm(fresh, { recursive: true, force: true });
      await rename(made, fresh).catch(async (error: NodeJS.ErrnoException) => {
        if (error.code !== 'EXDEV') throw error;
        await cp(made, fresh, { recursive: true });
        await rm(made, { recursive: true });
      });
      await change(fresh, path, stays);
    } catch (error) {
      await rm(fresh, { recursive: true, force: true });
      throw error;
    }
  });
}

/** A full folder can’t be renamed over: the old one steps aside, and back when the new one can’t take its place. */
async function change(fresh: string, path: string, stays: readonly string[]): Promise<void> {
  const old = besideOf(join(dirname(path), `${basename(path)}.old`));
  await rm(old, { recursive: true, force: true });
  const stood = await rename(path, old).then(
    () => true,
    (error: NodeJS.ErrnoException) => {
      if (error.code === 'ENOENT') return false;
      throw error;
    },
  );
  const moved: string[] = [];
  try {
    for (const name of stays) {
      await rename(join(old, name), join(fresh, name));
      moved.push(name);
    }
    await rename(fresh, path);
  } catch (error) {
    for (const name of moved) await rename(join(fresh, name), join(old, name));
    if (stood) await rename(old, path);
    throw error;
  }
  // Without waiting in turns: of thousands of files the turns would take longer than the removing.
  rmSync(old, { recursive: true, force: true });
}
