// Copies pictures into photos/, each whole or not at all, and none over another.
import { link, mkdir, readFile, rename, rm, stat, utimes, writeFile } from 'node:fs/promises';
import { dirname, join } from 'node:path';
import { DiskFault, onDisk } from '../../disk/disk-fault.ts';
import { contentOf } from '../plan.ts';
import { progress, type Screen } from '../progress.ts';
import { clearWork, inWorkFolder } from '../work-folder.ts';
import type { Copy, Plan } from './plan.ts';

/**
 * Copies what the plan says. What can't be read is taken out of the plan's copies, and given back with its reason.
 * Throws `DiskFault` where the record's disk takes no more; what was copied by then is known again when it is brought in anew.
 */
export async function copyIn(
  source: string,
  root: string,
  plan: Plan,
  screen: Screen,
): Promise<Plan['refused']> {
  const failed: Plan['refused'] = [];
  const photos = join(root, 'photos');
  // An earlier run may have been killed when nothing was left but to list what it had copied.
  if (plan.copies.length === 0) {
    await clearWork(photos);
    return failed;
  }
  const bar = progress(plan.copies.length, screen);
  const inTurn = async (work: string) => {
    for (const copy of [...plan.copies]) {
      const code = await copyOne(source, root, work, copy).catch((error: NodeJS.ErrnoException) => {
        if (error instanceof DiskFault) throw error;
        return error.code ?? 'unknown';
      });
      if (code !== undefined) {
        failed.push({ from: copy.from, verdict: { why: 'unopened', code } });
        plan.copies.splice(plan.copies.indexOf(copy), 1);
      }
      bar.step();
    }
  };
  try {
    await onDisk(photos, () => inWorkFolder(photos, inTurn));
  } finally {
    bar.end();
  }
  return failed;
}

/** Nothing when all went well, else a code of what didn't. */
async function copyOne(source: string, root: string, work: string, { from, to, content }: Copy) {
  const [camera, writing, target] = [join(source, from), join(work, 'picture'), join(root, to)];
  const picture = await readFile(camera);
  if (contentOf(picture) !== content) return 'changed while it was copied';
  const { atime, mtime } = await stat(camera);
  await onDisk(target, async () => {
    await writeFile(writing, picture);
    // A picture without a date of its own keeps that of its file.
    await utimes(writing, atime, mtime);
    await mkdir(dirname(target), { recursive: true });
    // A link is never made over another file, as a rename would be.
    await link(writing, target).catch(async (error: NodeJS.ErrnoException) => {
      if (error.code === 'EEXIST') throw error;
      // Some disks know no links; there the plan alone keeps names apart.
      await rename(writing, target);
    });
    // Both names are one file now: the next copy mustn't be written through this one.
    await rm(writing, { force: true });
  });
  return undefined;
}
