// Every file below a folder. Links aren't followed: what they point to may lie outside, and isn't part of the bag.
import { lstat, readdir } from 'node:fs/promises';
import { join } from 'node:path';

/** A file below a folder; `path` is relative to it, with `/`. */
export type Found = { path: string; octets: number; link?: true };

/** All files, sorted by path; nothing where there is no folder. */
export async function filesBelow(folder: string, path = ''): Promise<Found[]> {
  const found: Found[] = [];
  const names = await readdir(join(folder, path)).catch((error: NodeJS.ErrnoException) => {
    if (error.code === 'ENOENT') return [];
    throw error;
  });
  for (const name of names.sort()) {
    const own = path === '' ? name : `${path}/${name}`;
    const about = await lstat(join(folder, own));
    if (about.isDirectory()) found.push(...(await filesBelow(folder, own)));
    else found.push({ path: own, octets: about.size, ...(about.isFile() ? {} : { link: true }) });
  }
  return found;
}
