// Puts a record of life size on the disk.
import { mkdir, readFile, rm, writeFile } from 'node:fs/promises';
import { dirname, join } from 'node:path';
import { readFolder } from '../../../disk/folder.ts';
import { writeCameraFiles } from './camera-files.ts';
import { lifeSize, type Size } from './record.ts';

/** Where a record of this size is kept between runs. Nothing else is kept there. */
export function lifeSizeFolder({ entries, photos }: Size): string {
  return join('.cache', 'bench', `record-${entries}-${photos}`);
}

/** Lays the record down where it is kept, and takes out what doesn't belong to it. Gives the paths of its pictures. */
export async function layDownKept(size: Size): Promise<string[]> {
  const folder = lifeSizeFolder(size);
  const made = lifeSize(size);
  await put(folder, made);
  const own = new Set([...made.files.map(({ file }) => file), ...made.photos]);
  const there = await readFolder(folder);
  for (const file of [...there.files.map((written) => written.file), ...there.photos]) {
    if (!own.has(file)) await rm(join(folder, file));
  }
  return made.photos;
}

/** Lays the record down; what is there already as it should be isn't written again. */
export async function layDown(folder: string, size: Size): Promise<void> {
  await put(folder, lifeSize(size));
}

async function put(folder: string, { files, photos }: ReturnType<typeof lifeSize>): Promise<void> {
  for (const { file, text } of files) {
    const path = join(folder, file);
    if ((await readFile(path, 'utf8').catch(() => undefined)) === text) continue;
    await mkdir(dirname(path), { recursive: true });
    await writeFile(path, text);
  }
  await writeCameraFiles(folder, photos);
}
