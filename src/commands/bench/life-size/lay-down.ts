// Puts a record of life size on the disk.
import { mkdir, readFile, writeFile } from 'node:fs/promises';
import { dirname, join } from 'node:path';
import { writeCameraFiles } from './camera-files.ts';
import { lifeSize, type Size } from './record.ts';

/** Where a record of this size is kept between runs. */
export function lifeSizeFolder({ entries, photos }: Size): string {
  return join('.cache', 'bench', `record-${entries}-${photos}`);
}

/** Lays the record down; what is there already as it should be isn't written again. Gives the paths of its pictures. */
export async function layDown(folder: string, size: Size): Promise<string[]> {
  const { files, photos } = lifeSize(size);
  for (const { file, text } of files) {
    const path = join(folder, file);
    if ((await readFile(path, 'utf8').catch(() => undefined)) === text) continue;
    await mkdir(dirname(path), { recursive: true });
    await writeFile(path, text);
  }
  await writeCameraFiles(folder, photos);
  return photos;
}
