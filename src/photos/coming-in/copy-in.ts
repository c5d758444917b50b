// Copies pictures into photos/, each whole or not at all, and none over another.
import { copyFile, link, mkdir, readFile, rename, rm, stat, utimes } from 'node:fs/promises';
import { dirname, join } from 'node:path';
import { contentOf } from '../plan.ts';
import { progress, type Screen } from '../progress.ts';
import { inWorkFolder } from '../work-folder.ts';
import type { Copy, Plan } from './plan.ts';

/** Copies what the plan says. What fails is taken out of the plan's copies, and given back with its reason. */
export async function copyIn(
  source: string,
  root: string,
  plan: Plan,
  screen: Screen,
): Promise<Plan['refused']> {
  const failed: Plan['refused'] = [];
  if (plan.copies.length === 0) return failed;
  await mkdir(join(root, 'photos'), { recursive: true });
  const bar = progress(plan.copies.length, screen);
  await inWorkFolder(join(root, 'photos'), async (work) => {
    for (const copy of [...plan.copies]) {
      const code = await copyOne(source, root, work, copy).catch(
        (error: NodeJS.ErrnoException) => error.code ?? 'unknown',
      );
      if (code !== undefined) {
        failed.push({ from: copy.from, verdict: { why: 'unopened', code } });
        plan.copies.splice(plan.copies.indexOf(copy), 1);
      }
      bar.step();
    }
  });
  bar.end();
  return failed;
}

/** Nothing when all went well, else a code of what didn't. */
async function copyOne(source: string, root: string, work: string, { from, to, content }: Copy) {
  const [camera, writing, target] = [join(source, from), join(work, 'picture'), join(root, to)];
  await copyFile(camera, writing);
  if (contentOf(await readFile(writing)) !== content) return 'changed while it was copied';
  // A picture without a date of its own keeps that of its file.
  const { atime, mtime } = await stat(camera);
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
  return undefined;
}
